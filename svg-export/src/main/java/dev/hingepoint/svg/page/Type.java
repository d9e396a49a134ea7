package dev.hingepoint.svg.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The widths of the font that ships with the library, Liberation Sans (SIL Open Font License 1.1), read from its own tables (ISO/IEC 14496-22: head, hhea,
 * hmtx, cmap format 4), so that they are the same on every machine.
 */
public final class Type {
    private static final ByteBuffer FONT = font();
    private static final int UNITS_PER_EM = FONT.getShort(table("head") + 18);
    private static final int WIDTHS = FONT.getShort(table("hhea") + 34);
    private static final int HMTX = table("hmtx");
    private static final int CMAP = unicodeMap();

    private Type() {}

    /** The font itself, for who embeds it. */
    static InputStream file() {
        return Type.class.getResourceAsStream("LiberationSans-Regular.ttf");
    }

    private static ByteBuffer font() {
        try (InputStream file = file()) {
            return ByteBuffer.wrap(file.readAllBytes());
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private static int table(String tag) {
        int tables = FONT.getShort(4);
        for (int i = 0; i < tables; i++) {
            int entry = 12 + 16 * i;
            byte[] name = new byte[4];
            FONT.get(entry, name);
            if (new String(name, StandardCharsets.ISO_8859_1).equals(tag)) {
                return FONT.getInt(entry + 8);
            }
        }
        throw new IllegalStateException("the font has no table " + tag);
    }

    /** The cmap subtable for Windows, Unicode BMP. */
    private static int unicodeMap() {
        int cmap = table("cmap");
        int tables = FONT.getShort(cmap + 2);
        for (int i = 0; i < tables; i++) {
            int entry = cmap + 4 + 8 * i;
            int offset = cmap + FONT.getInt(entry + 4);
            if (FONT.getShort(entry) == 3 && FONT.getShort(entry + 2) == 1 && FONT.getShort(offset) == 4) {
                return offset;
            }
        }
        throw new IllegalStateException("the font maps no characters");
    }

    /** Width in mm of a line of text set in type of {@code size} mm. */
    public static double width(String words, double size) {
        return words.codePoints()
                        .mapToDouble(character -> ems(glyph(character)))
                        .sum()
                * size;
    }

    /**
     * Words on lines of a width in mm, broken at spaces.
     *
     * @param first the width of the first line
     * @param rest the width of every other
     */
    public static List<String> wrapped(String words, double first, double rest, double size) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.strip().split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > (lines.isEmpty() ? first : rest)) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** Width of a glyph, as a part of the type's size. */
    static double ems(int glyph) {
        int units = FONT.getShort(HMTX + 4 * Math.min(glyph, WIDTHS - 1)) & 0xFFFF;
        return (double) units / UNITS_PER_EM;
    }

    /** The number of a character's glyph; 0, which is a box, for one that the font lacks. */
    public static int glyph(int character) {
        int segments = (FONT.getShort(CMAP + 6) & 0xFFFF) / 2;
        int ends = CMAP + 14;
        int starts = ends + 2 * segments + 2;
        int deltas = starts + 2 * segments;
        int ranges = deltas + 2 * segments;
        for (int i = 0; i < segments; i++) {
            if ((FONT.getShort(ends + 2 * i) & 0xFFFF) >= character) {
                int start = FONT.getShort(starts + 2 * i) & 0xFFFF;
                if (start > character) {
                    return 0;
                }
                int delta = FONT.getShort(deltas + 2 * i);
                int range = FONT.getShort(ranges + 2 * i) & 0xFFFF;
                if (range == 0) {
                    return (character + delta) & 0xFFFF;
                }
                int glyph = FONT.getShort(ranges + 2 * i + range + 2 * (character - start)) & 0xFFFF;
                return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
            }
        }
        return 0;
    }
}
