package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lines of text that are set together, in one column or several beside one another. Two spaces before a line set it in.
 *
 * @param columns each as long as the first, but for the last, which may be shorter
 */
record Block(List<List<String>> columns) {
    private static final double LINE_SPACING = 1.3;

    Block {
        columns = List.copyOf(columns);
    }

    /** Lines below one another. */
    static Block of(List<String> lines) {
        return new Block(List.of(lines));
    }

    /** Lines below one another, none with more than so many characters where there is a place to break it. */
    static Block wrapped(List<String> lines, int most) {
        List<String> all = new ArrayList<>();
        for (String line : lines) {
            String inset = line.startsWith("  ") ? "  " : "";
            String rest = line.strip();
            for (int at = breakIn(rest, most); at > 0; at = breakIn(rest, most)) {
                all.add(inset + rest.substring(0, at).strip());
                rest = rest.substring(at).strip();
                inset = "  ";
            }
            all.add(inset + rest);
        }
        return of(all);
    }

    /** Where a line too long is broken: before its last two spaces together, which part what belongs together, else before a word; 0 where it is not. */
    private static int breakIn(String line, int most) {
        if (line.length() <= most) {
            return 0;
        }
        int parted = line.lastIndexOf("  ", most);
        return Math.max(0, parted > 0 ? parted : line.lastIndexOf(' ', most));
    }

    /** Lines in so many columns, for a strip that is too low for all of them. */
    static Block inColumns(List<String> lines, int count) {
        int rows = (lines.size() + count - 1) / count;
        List<List<String>> columns = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += rows) {
            columns.add(lines.subList(i, Math.min(lines.size(), i + rows)));
        }
        return new Block(columns);
    }

    /** Width in mm, set in type of {@code size} mm. */
    double width(double size) {
        return columns.stream().mapToDouble(column -> width(column, size)).sum() + 2 * size * (columns.size() - 1);
    }

    double height(double size) {
        return columns.get(0).size() * size * LINE_SPACING;
    }

    private static double width(List<String> lines, double size) {
        return lines.stream()
                .mapToDouble(line -> inset(line, size) + Type.width(line.strip(), size))
                .max()
                .orElse(0);
    }

    private static double inset(String line, double size) {
        return line.startsWith("  ") ? size : 0;
    }

    /**
     * Set round (0, 0).
     *
     * @param angle of the lines in radians, clockwise from x
     */
    List<Text> set(double size, double angle) {
        Vector along = Vector.ofAngle(angle);
        Vector down = along.right();
        Point corner = new Point(0, 0).minus(along.times(width(size) / 2)).minus(down.times(height(size) / 2));
        List<Text> texts = new ArrayList<>();
        for (List<String> column : columns) {
            Point first = corner.plus(down.times(size));
            IntStream.range(0, column.size())
                    .mapToObj(i -> new Text(
                            column.get(i).strip(),
                            first.plus(down.times(i * size * LINE_SPACING))
                                    .plus(along.times(inset(column.get(i), size))),
                            size,
                            angle))
                    .forEach(texts::add);
            corner = corner.plus(along.times(width(column, size) + 2 * size));
        }
        return texts;
    }
}
