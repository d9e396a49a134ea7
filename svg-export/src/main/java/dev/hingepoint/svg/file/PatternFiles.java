package dev.hingepoint.svg.file;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Pattern;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads and writes patterns: a card and the drawing beside it. */
public final class PatternFiles {
    private PatternFiles() {}

    /**
     * A pattern as it was read.
     *
     * @param notes what the reader left alone
     */
    public record LoadedPattern(Pattern pattern, List<String> notes) {
        public LoadedPattern {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The pattern of a card and the drawing that it names.
     *
     * @throws Refusal saying which file, where in it, and why
     */
    public static Pattern read(Path card) {
        return readWithNotes(card).pattern();
    }

    /** The same, with what the reader left alone. */
    public static LoadedPattern readWithNotes(Path card) {
        String cardName = WholeFiles.name(card);
        String yaml = WholeFiles.text(card);
        CardReader.ReadCard read = CardReader.read(cardName, yaml);
        Path drawing = WholeFiles.beside(card, read.drawing(), Yaml.parse(cardName, yaml));
        String drawingName = WholeFiles.name(drawing);
        DrawingReader.Drawing drawn = DrawingReader.read(drawingName, WholeFiles.bytes(drawing));
        List<String> notes = new ArrayList<>();
        if (drawn.ignored() > 0) {
            notes.add(drawingName + ": " + drawn.ignored()
                    + " drawn elements are no part of the pattern, and were left alone");
        }
        read.unknown().forEach(key -> notes.add(cardName + ": '" + key + "' is not known, and was left alone"));
        Pattern pattern = pattern(read.card(), drawn, drawingName);
        CardCheck.check(pattern, cardName);
        return new LoadedPattern(pattern, notes);
    }

    private static Pattern pattern(Card card, DrawingReader.Drawing drawn, String drawing) {
        try {
            return new Pattern(card, drawn.pieces());
        } catch (Refusal refusal) {
            throw refusal.in(drawing);
        }
    }

    /** The two files of a pattern, by name: {@code stem.svg} and {@code stem.yaml}. */
    public static Map<String, String> contents(Pattern pattern, String stem) {
        Map<String, String> contents = new LinkedHashMap<>();
        contents.put(stem + ".svg", DrawingWriter.write(pattern));
        contents.put(stem + ".yaml", CardWriter.write(pattern.card(), stem + ".svg"));
        return contents;
    }

    /**
     * Writes both files, or neither.
     *
     * @throws Refusal where the folder cannot be written to
     */
    public static void write(Pattern pattern, Path folder, String stem) {
        WholeFiles.writeAll(folder, contents(pattern, stem));
    }
}
