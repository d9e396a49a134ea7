/**
 * The three things a fitter does to paper, and the only ways to change a piece: {@link dev.hingepoint.move.Cut} and move,
 * {@link dev.hingepoint.move.Redraw}, {@link dev.hingepoint.move.Divide} (and {@link dev.hingepoint.move.Trim}, a division whose offcut is thrown away).
 *
 * <p>A move is a value. Laid on a piece it answers with the new piece, the {@link dev.hingepoint.move.PaperMap map of the
 * paper} and the {@link dev.hingepoint.move.Step} that a fitter would tell. Everything drawn on the paper moves with the part of
 * the paper it lies on. A recipe strings moves together with {@link dev.hingepoint.move.Paper}.
 *
 * <p>Not here: amounts, laws and the names of alterations.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.move;
