/**
 * From a body to an order: choosing the size, the front, blends and alterations, and whether the garment has its ease, can be put on and
 * worn.
 *
 * <p>Start with {@link dev.hingepoint.fit.Planner}. Everything is in mm; girths are of the whole body and of the whole garment. Nothing here
 * changes a piece except through the alterations of the catalogue, so what a plan promises is measured on the altered paper.
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.fit;
