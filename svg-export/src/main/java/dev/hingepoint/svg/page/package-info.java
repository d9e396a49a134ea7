/**
 * Sheets and pages: the pieces of one size drawn as they are cut, laid out, and cut into pages to tape together.
 *
 * <p>Start with {@link dev.hingepoint.svg.page.Printing}. There is one page model, {@link dev.hingepoint.svg.page.Page}: strokes and texts in mm, which any writer turns into its own form. Line styles are those
 * of common practice: cutting line solid, stitching line dashed, double-headed grain arrow. Text carries the width that the font shipped with the library gives it, so that it
 * keeps that width in every renderer.
 */
package dev.hingepoint.svg.page;
