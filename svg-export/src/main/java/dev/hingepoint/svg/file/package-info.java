/**
 * Patterns in files: the drawing (SVG), the card and the order (YAML), and the ledger (JSON).
 *
 * <p>Start with {@link dev.hingepoint.svg.file.PatternFiles}. Whatever is wrong with a file is answered with a
 * {@link dev.hingepoint.Refusal} that names it; nothing in a file can load another one, name a class, or grow without limit. Writing is all or nothing, and
 * the same pattern gives the same bytes in any locale.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.svg.file;
