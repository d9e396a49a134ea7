/**
 * How a garment is made up: facings, bindings and bands, yokes, finishes, and what else one decides after fitting. Every choice follows the altered
 * lines, makes or changes pieces, and keeps the list of seams that join them.
 *
 * <p>Start with {@link dev.hingepoint.make.Choices}, the registry, and {@link dev.hingepoint.make.MadeUp}, an order carried out. A choice is written
 * as an {@link dev.hingepoint.alter.Alteration} is: one file that answers with the size made up, the steps in words, and the laws that must hold.
 * {@link dev.hingepoint.make.JoinedEdge} lays pieces together where they are sewn, as one does before tracing a facing.
 *
 * <p>What is made is cut beside the pieces, under a name of its own; its edges have names that no alteration looks for, so that a pattern which is
 * made up can be altered again. Not here: moves of the paper, and alterations for a body.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.make;
