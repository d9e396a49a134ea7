/**
 * Lessons: how an alteration moves the lines, step by step, as pictures, as one page for a browser, and as sheets for a class.
 *
 * <p>Start with {@link dev.hingepoint.svg.lesson.Lesson}. Everything in a lesson comes from the alteration's own steps, laws and account, so that an alteration of your own has its
 * lesson as well; only the {@link dev.hingepoint.svg.lesson.Why}, what on a body calls for it, is written down for each.
 *
 * <p>Not here: how a picture is written ({@code dev.hingepoint.svg.page}), and pages to sew from ({@code dev.hingepoint.svg.print}).
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.svg.lesson;
