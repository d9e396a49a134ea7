/**
 * Alters flat sewing-pattern pieces as a fitter does with scissors and paper, exactly.
 *
 * <p>Everywhere in the library x runs to the right, away from a piece's centre line, and y runs <em>down</em>, from neck to
 * hem, as on the paper and in SVG: nothing is ever flipped. Lengths are millimetres and angles radians, clockwise as one
 * looks at the paper. Every type is immutable and safe to share between threads. What a user, a file or a body gets wrong is
 * answered with one unchecked exception, {@link dev.hingepoint.Refusal}; its {@link dev.hingepoint.Message}
 * can be told in an app's own words. {@link java.lang.IllegalArgumentException} is for a programmer's error only.
 */
package dev.hingepoint;
