/**
 * Pattern pieces as paper: a closed stitching line of named edges with everything else drawn on it.
 *
 * <p>Start with {@link dev.hingepoint.pattern.Piece}, {@link dev.hingepoint.pattern.Pattern} and
 * {@link dev.hingepoint.pattern.Place}. A piece is validated when it is built, so one that exists is closed, simple and sound. Lengths
 * are <em>sewn</em> lengths: darts closed. {@link dev.hingepoint.pattern.JtsBridge} is the one door to JTS.
 *
 * <p>Not here: changing a piece (package {@code move}), comparing pieces (package {@code check}), files (another module).
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.pattern;
