package dev.hingepoint.svg.figure;

import dev.hingepoint.svg.page.Drawn;

/**
 * A small picture of a figure in a dress.
 *
 * @param describes what it shows, in a sentence for who cannot see it
 * @param drawn in mm, {@value #WIDTH} wide and {@value #HEIGHT} high from its upper left corner
 */
public record FigurePicture(String describes, Drawn drawn) {
    public static final double WIDTH = 50;
    public static final double HEIGHT = 110;
}
