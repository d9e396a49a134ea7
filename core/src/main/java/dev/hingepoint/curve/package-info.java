/**
 * Lines and cubic Béziers in the plane, and paths made of them: the bottom of the library, knowing nothing of patterns.
 *
 * <p>Start with {@link dev.hingepoint.curve.Path}, {@link dev.hingepoint.curve.Cubic} and
 * {@link dev.hingepoint.curve.Motion}. Lengths are millimetres, angles radians; x runs to the right and y <em>down</em>, as
 * on paper and in SVG, so a positive angle turns clockwise as one looks at the paper. Splitting and moving are exact;
 * every approximate operation takes or names its tolerance. All types are immutable and safe to share
 * between threads.
 *
 * <p>Not here: polygons (JTS answers those, see {@code dev.hingepoint.pattern.JtsBridge}) and anything with a name.
 */
package dev.hingepoint.curve;
