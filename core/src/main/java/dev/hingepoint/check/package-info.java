/**
 * What must hold, and whether it does: laws as values, walking the seams, and the ledger of what changed.
 *
 * <p>Start with {@link dev.hingepoint.check.SeamWalk}, {@link dev.hingepoint.check.Law} and {@link dev.hingepoint.check.Ledger}.
 * Nothing here changes a piece.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.check;
