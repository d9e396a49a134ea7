package dev.hingepoint.samples;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.PatternFiles.LoadedPattern;
import dev.hingepoint.svg.file.WholeFiles;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** One size of a loaded pattern, with refusals that name the card. */
final class Pieces {
    private Pieces() {}

    static Draft of(LoadedPattern loaded, Path card, String size, Optional<String> front) {
        return named(card, () -> loaded.pattern().in(size, front));
    }

    static <T> T named(Path file, Supplier<T> doing) {
        try {
            return doing.get();
        } catch (Refusal refusal) {
            throw refusal.in(file.getFileName().toString());
        }
    }

    /** Writes one file, whole or not at all. */
    static void write(Path file, String contents) {
        Path folder = file.toAbsolutePath().normalize().getParent();
        WholeFiles.writeAll(folder, Map.of(file.getFileName().toString(), contents));
    }
}
