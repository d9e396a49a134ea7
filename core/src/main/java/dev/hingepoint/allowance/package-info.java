/**
 * Seam allowance: the cutting line round a piece, with its corners, hems, dart caps and notches.
 *
 * <p>Start with {@link dev.hingepoint.allowance.CuttingLine}. Allowances are in mm, outward. The stitching line stays a curve; the cutting line is a polyline within
 * {@link dev.hingepoint.curve.Tolerance#FLATTENING} of the true parallel, since it is only ever cut along.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.allowance;
