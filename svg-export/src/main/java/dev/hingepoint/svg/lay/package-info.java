/**
 * The geometry of laying: shapes on a sheet that is cut into pages, or on a strip of cloth, without overlap and with little waste.
 *
 * <p>Start with {@link dev.hingepoint.svg.lay.SheetLayout}, {@link dev.hingepoint.svg.lay.StripLayout} and {@link dev.hingepoint.svg.lay.Shape}. Ground is counted in the squares of a grid, always too many rather
 * than too few: shapes whose squares are disjoint keep apart, and nothing needs to be tested afterwards. Lengths are millimetres, x to the right and y down; the upper
 * left corner of a sheet or strip is (0, 0).
 *
 * <p>Not here: what the shapes are, and what is drawn on them.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.svg.lay;
