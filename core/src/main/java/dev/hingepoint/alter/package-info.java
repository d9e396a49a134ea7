/**
 * The catalogue of alterations: one file each, a short recipe over the moves of the paper.
 *
 * <p>Start with {@link dev.hingepoint.alter.Catalogue}. An {@link dev.hingepoint.alter.Alteration} takes one size of a pattern and
 * answers with that size altered, the steps a fitter would take, and the laws that must hold; the catalogue checks the laws and
 * refuses a result that breaks one. <a href="doc-files/alterations.html">All alterations</a> are shown as pictures, with what each
 * keeps. To add an alteration, write its file, name it in the catalogue, and test it;
 * or hand one of your own to {@link dev.hingepoint.alter.Fitting}, written with what the recipes here are written with: {@link dev.hingepoint.alter.Options},
 * {@link dev.hingepoint.alter.Altered}, {@link dev.hingepoint.alter.Faired} and {@link dev.hingepoint.alter.LargestAmount}.
 *
 * <p>Not here: geometry. Where a recipe needs arithmetic of its own, a move is missing a verb.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.alter;
