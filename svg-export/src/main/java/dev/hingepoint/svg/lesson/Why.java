package dev.hingepoint.svg.lesson;

import java.util.Optional;

/** What on a body calls for an alteration. */
public record Why(String calledForBy) {
    public static Optional<Why> of(String alteration) {
        return Optional.empty();
    }
}
