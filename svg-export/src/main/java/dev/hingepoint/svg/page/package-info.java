/**
 * Sheets and pages: the pieces of one size, or of several in one another, drawn as they are cut, laid out, and cut into pages to tape together; the pages to read first; and
 * how the pieces lie on cloth.
 *
 * <p>Start with {@link dev.hingepoint.svg.page.Printing} and {@link dev.hingepoint.svg.page.PrintOptions}; {@link dev.hingepoint.svg.page.ClothLayout} tells how much cloth is
 * needed. There is one page model, {@link dev.hingepoint.svg.page.Page}: strokes and texts in mm, x to the right and y down from the paper's upper left corner, which
 * {@link dev.hingepoint.svg.page.SvgPage} and {@link dev.hingepoint.svg.page.PdfPages} write each in its own form. Line styles are those of common practice: cutting line solid, stitching
 * line dashed, double-headed grain arrow. Text carries the width that the font shipped with the library gives it, so that it keeps that width in every renderer.
 *
 * <p>Not here: where on a sheet or a cloth things lie ({@code dev.hingepoint.svg.lay}), and patterns in files ({@code dev.hingepoint.svg.file}).
 */
package dev.hingepoint.svg.page;
