package dev.hingepoint.svg.lesson;

import dev.hingepoint.svg.figure.FigurePicture;
import java.util.List;
import java.util.Optional;

/**
 * Why an alteration is made.
 *
 * @param calledForBy what on the body calls for it
 * @param withoutIt what a dress looks like where it is missing
 * @param without the same as a picture
 * @param confusedWith what looks much the same, the likeliest first
 * @param right what cures it
 * @param wrong what people try, and what is then wrong
 */
public record Why(
        String calledForBy,
        String withoutIt,
        FigurePicture without,
        List<Confusion> confusedWith,
        Cure right,
        Cure wrong,
        List<Source> sources) {
    public Why {
        confusedWith = List.copyOf(confusedWith);
        sources = List.copyOf(sources);
    }

    /**
     * Another cause of the same look.
     *
     * @param tell how to tell the two apart
     */
    public record Confusion(String cause, String tell) {}

    /**
     * What is done about it.
     *
     * @param does what that does to the cloth
     * @param picture the same body after it
     */
    public record Cure(String name, String does, FigurePicture picture) {}

    /**
     * Where it is written, or that it is written nowhere.
     *
     * @param grade what kind of source it is, in words
     * @param says what was read there
     */
    public record Source(String name, String grade, String says) {}

    /** For an alteration of the {@link dev.hingepoint.alter.Catalogue}; empty for any other. */
    public static Optional<Why> of(String alteration) {
        return Whys.of(alteration);
    }
}
