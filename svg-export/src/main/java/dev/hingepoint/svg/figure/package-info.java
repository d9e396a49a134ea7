/**
 * Figures: a plain outline of a body in a dress, from the front, the back or the side, with the wrinkles that the dress shows. All of it is drawn by this code, as smooth curves.
 *
 * <p>Start with {@link dev.hingepoint.svg.figure.FigurePictures}. A figure is drawn in heads, the height of the head, from its crown down; {@link
 * dev.hingepoint.svg.figure.FigurePicture} is in mm. How bodies and dresses differ, which wrinkles show and what the labels say is written down in {@code figures.yaml}.
 *
 * <p>Not here: what is said about an alteration ({@code dev.hingepoint.svg.lesson}), and how a picture is written ({@code dev.hingepoint.svg.page}).
 *
 * <p>All types are immutable and safe to share between threads.
 */
package dev.hingepoint.svg.figure;
