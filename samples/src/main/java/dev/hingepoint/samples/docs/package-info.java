/**
 * Writes what the javadoc shows: the pictures of the moves, and the page of alterations with a picture of each and what it keeps.
 *
 * <p>Start with {@link dev.hingepoint.samples.docs.DocFiles}. The alterations draw and tell themselves, so the docs cannot say what the code does not do.
 */
package dev.hingepoint.samples.docs;
