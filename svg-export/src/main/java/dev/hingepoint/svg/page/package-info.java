/**
 * Pages: lines, areas and words in mm on paper, and their writers.
 *
 * <p>Start with {@link dev.hingepoint.svg.page.Drawn}. There is one page model, {@link dev.hingepoint.svg.page.Page}: what is drawn, x to the right and y down from the paper's
 * upper left corner, which {@link dev.hingepoint.svg.page.SvgPage} and {@link dev.hingepoint.svg.page.PdfPages} write each in its own form. Line styles are those of common practice:
 * cutting line solid, stitching line dashed, double-headed grain arrow. Text carries the width that the font shipped with the library gives it, so that it keeps that width in every
 * renderer.
 *
 * <p>Not here: what is drawn ({@code dev.hingepoint.svg.print}, {@code dev.hingepoint.svg.lesson}), and patterns in files ({@code dev.hingepoint.svg.file}).
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.svg.page;
