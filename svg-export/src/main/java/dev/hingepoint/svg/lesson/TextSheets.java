package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** Sheets for a class, written from the top down, sheet after sheet: headings, words, pictures and tables. */
final class TextSheets {
    private static final double MARGIN = 15;

    /** Sizes of type in mm: to be read at arm's length. */
    private static final double TITLE = 6.5;

    private static final double HEADING = 5;
    private static final double TYPE = 4.2;
    private static final double SMALL = 3.2;
    private static final double LINE = 1.35;

    /** The first column's part of a table's width. */
    private static final double FIRST_COLUMN = 0.46;

    private final Paper paper;
    private final int number;
    private final List<String> foot;
    private final List<Drawn> sheets = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Drawn> pictures = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private double y = MARGIN;

    /**
     * @param number of the lesson that the sheets belong to
     * @param foot what stands at the foot of every sheet
     */
    TextSheets(Paper paper, int number, String foot) {
        this.paper = paper;
        this.number = number;
        this.foot = Type.wrapped(foot, width(), width(), SMALL);
    }

    private double width() {
        return paper.width() - 2 * MARGIN;
    }

    TextSheets title(String words) {
        return lines(words, TITLE, 0, 2);
    }

    /** A heading stays with what follows it. */
    TextSheets heading(String words) {
        room(6 * TYPE * LINE);
        y += HEADING * 0.6;
        return lines(words, HEADING, 0, 1);
    }

    TextSheets words(String words) {
        return lines(words, TYPE, 0, 1);
    }

    TextSheets small(String words) {
        return lines(words, SMALL, 0, 1);
    }

    TextSheets items(List<String> items) {
        items.forEach(item -> {
            room(TYPE * LINE);
            texts.add(new Text("\u2013", new Point(MARGIN, y + TYPE), TYPE, 0));
            lines(item, TYPE, 5, 0.5);
        });
        return this;
    }

    TextSheets numbered(List<String> items) {
        IntStream.range(0, items.size()).forEach(i -> {
            room(TYPE * LINE);
            texts.add(new Text((i + 1) + ".", new Point(MARGIN, y + TYPE), TYPE, 0));
            lines(items.get(i), TYPE, 8, 1);
        });
        return this;
    }

    private TextSheets lines(String words, double size, double indent, double after) {
        for (String line : Type.wrapped(words, width() - indent, width() - indent, size)) {
            room(size * LINE);
            texts.add(new Text(line, new Point(MARGIN + indent, y + size), size, 0));
            y += size * LINE;
        }
        y += after;
        return this;
    }

    /** A row of a table; there is room to write in an empty cell. */
    TextSheets row(List<String> cells) {
        double first = width() * FIRST_COLUMN;
        double rest = (width() - first) / (cells.size() - 1);
        List<String> lead = Type.wrapped(cells.get(0), first - 3, first - 3, TYPE);
        room(lead.size() * TYPE * LINE + 2);
        for (int i = 1; i < cells.size(); i++) {
            double right = MARGIN + first + i * rest;
            String cell = cells.get(i);
            texts.add(new Text(cell, new Point(right - Type.width(cell, TYPE), y + TYPE), TYPE, 0));
        }
        for (String line : lead) {
            texts.add(new Text(line, new Point(MARGIN, y + TYPE), TYPE, 0));
            y += TYPE * LINE;
        }
        y += 0.8;
        strokes.add(Stroke.of(Style.GRID, new Point(MARGIN, y), new Point(MARGIN + width(), y)));
        y += 1;
        return this;
    }

    /** A picture in the middle of the sheet's width. */
    TextSheets picture(Drawn drawn, Box box) {
        return pictures(List.of(drawn), List.of(box), List.of(""));
    }

    /**
     * Pictures beside each other.
     *
     * @param names of the pictures, below them
     */
    TextSheets pictures(List<Drawn> drawn, List<Box> boxes, List<String> names) {
        double high = boxes.stream().mapToDouble(Box::height).max().orElse(0);
        room(high + TYPE * LINE);
        double all = boxes.stream().mapToDouble(Box::width).sum();
        double gap = Math.max(0, (width() - all) / (boxes.size() + 1));
        double x = MARGIN + gap;
        for (int i = 0; i < drawn.size(); i++) {
            Box box = boxes.get(i);
            pictures.add(drawn.get(i).moved(Motion.shift(new Vector(x - box.left(), y - box.top()))));
            String name = names.get(i);
            texts.add(new Text(
                    name, new Point(x + (box.width() - Type.width(name, TYPE)) / 2, y + high + TYPE), TYPE, 0));
            x += box.width() + gap;
        }
        y += high + TYPE * LINE + 2;
        return this;
    }

    /** What follows stands on a new sheet. */
    TextSheets end() {
        if (!texts.isEmpty() || !pictures.isEmpty()) {
            for (int i = 0; i < foot.size(); i++) {
                double above = (foot.size() - 1 - i) * SMALL * LINE;
                texts.add(new Text(foot.get(i), new Point(MARGIN, paper.height() - MARGIN - above), SMALL, 0));
            }
            pictures.add(new Drawn(strokes, texts));
            sheets.add(Drawn.of(pictures));
            strokes.clear();
            texts.clear();
            pictures.clear();
        }
        y = MARGIN;
        return this;
    }

    private void room(double needed) {
        double footed = 2 * SMALL + (foot.size() - 1) * SMALL * LINE;
        if (y > MARGIN && y + needed > paper.height() - MARGIN - footed) {
            end();
        }
    }

    /** Every sheet, named by the lesson's number and its own, from 1. */
    List<Page> pages() {
        return pages(i -> i + 1);
    }

    /** @param named the number of a sheet, from which it is, counted from 0 */
    List<Page> pages(IntUnaryOperator named) {
        end();
        return IntStream.range(0, sheets.size())
                .mapToObj(i -> new Page(number, named.applyAsInt(i), paper, 0, 1, sheets.get(i), Drawn.NOTHING))
                .toList();
    }
}
