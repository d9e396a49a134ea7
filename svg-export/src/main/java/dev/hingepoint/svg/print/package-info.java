/**
 * Printing: the pieces of one size, or of several in one another, drawn as they are cut, laid out, and cut into pages to tape together; the pages to read first; and
 * how the pieces lie on cloth.
 *
 * <p>Start with {@link dev.hingepoint.svg.print.Printing} and {@link dev.hingepoint.svg.print.PrintOptions}; {@link dev.hingepoint.svg.print.ClothLayout} tells how much cloth is
 * needed.
 *
 * <p>Not here: where on a sheet or a cloth things lie ({@code dev.hingepoint.svg.lay}), and how a page is written ({@code dev.hingepoint.svg.page}).
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.svg.print;
