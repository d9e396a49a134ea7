/**
 * The drafts of the samples, as code: the Larkfield concert dress and shell, which are our own, and a back block after a public-domain book.
 *
 * <p>Each draft says where its numbers come from. {@link dev.hingepoint.samples.draft.WriteSamples} writes them to the folder {@code patterns}.
 */
package dev.hingepoint.samples.draft;
