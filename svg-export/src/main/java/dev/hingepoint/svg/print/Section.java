package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A heading and the lines below it, to be read. */
record Section(String heading, List<Entry> entries) {
    /** Sizes of type in mm. */
    static final double HEADING = 4.2;

    static final double TYPE = 3.4;
    private static final double LINE = 4.3;

    /** Room in mm above a heading, and between the columns of a table. */
    private static final double ABOVE = 3;

    private static final double CELL = 17;
    private static final double INSET = 3;

    Section {
        entries = List.copyOf(entries);
    }

    /** A section of plain lines. */
    static Section of(String heading, List<String> lines) {
        return new Section(heading, lines.stream().map(Entry::of).toList());
    }

    /**
     * One entry of a section, on as many lines as it needs.
     *
     * @param lead drawn before the words, its base line at y = 0
     * @param cells set to the right, each ending at a column of its own
     */
    record Entry(String words, List<Stroke> lead, List<String> cells) {
        private static final double BOX = 3;
        private static final double SAMPLE = 26;
        private static final double AFTER_LEAD = 2;

        Entry {
            lead = List.copyOf(lead);
            cells = List.copyOf(cells);
        }

        static Entry of(String words) {
            return new Entry(words, List.of(), List.of());
        }

        static Entry row(String words, List<String> cells) {
            return new Entry(words, List.of(), cells);
        }

        /** With a box to tick. */
        static Entry toTick(String words) {
            return new Entry(
                    words, List.of(new Stroke(Style.RULE, new Box(0, -BOX + 0.3, BOX, 0.3).corners())), List.of());
        }

        /** With a sample of a line. */
        static Entry sample(Style style, String words) {
            return new Entry(words, List.of(Stroke.of(style, new Point(0, -1.2), new Point(SAMPLE, -1.2))), List.of());
        }

        private double indent() {
            return lead.stream()
                    .mapToDouble(stroke -> stroke.bounds().right() + AFTER_LEAD)
                    .max()
                    .orElse(0);
        }
    }

    /**
     * What stands on one line.
     *
     * @param height that it takes, in mm
     */
    record Row(Drawn drawn, double height) {}

    /** One entry, line by line, for a column of a width in mm; the heading goes with the first. */
    List<Row> block(int number, double width) {
        List<Row> block = number == 0 ? heading(width) : new ArrayList<>();
        block.addAll(rows(entries.get(number), width));
        return block;
    }

    /** All of it, line by line, for a column of a width in mm. */
    List<Row> rows(double width) {
        return IntStream.range(0, entries.size())
                .mapToObj(number -> block(number, width))
                .flatMap(List::stream)
                .toList();
    }

    /** Whether the whole of it has room in a box. */
    boolean fits(Box box) {
        return rows(box.width()).stream().mapToDouble(Row::height).sum() <= box.height();
    }

    /** The whole of it, from a box's upper left corner on. */
    Drawn set(Box box) {
        List<Drawn> set = new ArrayList<>();
        double y = box.top();
        for (Row row : rows(box.width())) {
            set.add(row.drawn().moved(Motion.shift(new Vector(box.left(), y))));
            y += row.height();
        }
        return Drawn.of(set);
    }

    private List<Row> heading(double width) {
        List<Row> rows = new ArrayList<>();
        double above = ABOVE;
        for (String line : Type.wrapped(heading, width, width, HEADING)) {
            Text text = new Text(line, new Point(0, above + HEADING), HEADING, 0);
            rows.add(new Row(new Drawn(List.of(), List.of(text)), above + HEADING + 2));
            above = 0;
        }
        return rows;
    }

    private static List<Row> rows(Entry entry, double width) {
        double indent = entry.indent();
        double taken = indent + CELL * entry.cells().size();
        List<String> lines = Type.wrapped(entry.words(), width - taken, width - indent - INSET, TYPE);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            List<Text> texts = new ArrayList<>();
            boolean isFirst = i == 0;
            double inset = indent + (isFirst || indent > 0 ? 0 : INSET);
            if (!lines.get(i).isEmpty()) {
                texts.add(new Text(lines.get(i), new Point(inset, TYPE), TYPE, 0));
            }
            if (isFirst) {
                texts.addAll(cells(entry.cells(), width));
            }
            Motion down = Motion.shift(new Vector(0, TYPE));
            List<Stroke> lead = isFirst
                    ? entry.lead().stream().map(stroke -> stroke.moved(down)).toList()
                    : List.of();
            rows.add(new Row(new Drawn(lead, texts), LINE));
        }
        return rows;
    }

    private static List<Text> cells(List<String> cells, double width) {
        return IntStream.range(0, cells.size())
                .filter(i -> !cells.get(i).isEmpty())
                .mapToObj(i -> {
                    String cell = cells.get(i);
                    double right = width - CELL * (cells.size() - 1 - i);
                    return new Text(cell, new Point(right - Type.width(cell, TYPE), TYPE), TYPE, 0);
                })
                .toList();
    }
}
