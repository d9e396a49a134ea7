package dev.hingepoint.svg.figure;

import java.util.Optional;

/**
 * What a dress looks like on a body that calls for an alteration.
 *
 * @param without as it is before it, with the wrinkles that tell
 * @param right after it
 * @param wrong after something else that people try
 */
public record FigurePictures(FigurePicture without, FigurePicture right, FigurePicture wrong) {
    /** Those of an alteration of the {@link dev.hingepoint.alter.Catalogue}; none for any other. */
    public static Optional<FigurePictures> of(String alteration) {
        return Sketches.of(alteration)
                .map(sketches -> new FigurePictures(
                        sketches.picture("without"), sketches.picture("right"), sketches.picture("wrong")));
    }
}
