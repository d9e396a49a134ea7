package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;

/** The leaf that is printed alone first: two squares to measure, in them what to do with them and the map of the pages, and around them room to read. */
final class FirstLeaf {
    static final int SQUARES = 2;

    /** The least room in mm that the leaf needs with its squares one above the other. */
    static final double SHORT = 160;

    static final double LONG = 240;

    /** The least room in mm that it needs with its squares side by side. */
    private static final double SIDE_BY_SIDE_WIDTH = 212;

    private static final double SIDE_BY_SIDE_HEIGHT = 165;
    private static final double INCHES_4 = 4 * Unit.INCH.inMillimetres();
    private static final double LEFT = 1;
    private static final double TOP = 29;
    private static final double GAP = 4;

    /** Room in mm below the squares' own names, and beside what is in them. */
    private static final double INSIDE = 9;

    private final Box room;
    private final Box small;
    private final Box large;

    /** @param room the leaf, in mm */
    FirstLeaf(Box room) {
        this.room = room;
        Point corner = new Point(room.left() + LEFT, room.top() + TOP);
        this.small = square(corner, Calibration.SIDE);
        boolean isStacked = stackedSpare(room.width(), room.height()) >= 0;
        this.large = square(
                isStacked
                        ? corner.plus(new Vector(0, Calibration.SIDE + GAP))
                        : corner.plus(new Vector(Calibration.SIDE + GAP, 0)),
                INCHES_4);
    }

    private static Box square(Point corner, double side) {
        return Box.of(corner, corner.plus(new Vector(side, side)));
    }

    /** How much in mm a leaf is larger than its squares and words need; negative where it is smaller. */
    static double spare(double width, double height) {
        return Math.max(
                stackedSpare(width, height), Math.min(width - SIDE_BY_SIDE_WIDTH, height - SIDE_BY_SIDE_HEIGHT));
    }

    private static double stackedSpare(double width, double height) {
        return Math.min(width - SHORT, height - LONG);
    }

    /** Where words have room to the right of the squares, column by column. */
    List<Box> columns() {
        double right = Math.max(small.right(), large.right()) + 2 * GAP;
        return Columns.in(box(right, room.top() + TOP - 3, room.right(), room.bottom()));
    }

    /** The room below the squares. */
    Box below() {
        double bottom = Math.max(small.bottom(), large.bottom()) + 1;
        return box(room.left() + LEFT, bottom, Math.max(small.right(), large.right()), room.bottom());
    }

    private static Box box(double left, double top, double right, double bottom) {
        return new Box(left, top, Math.max(left, right), Math.max(top, bottom));
    }

    /** Where the map has room, in the larger square. */
    Box mapRoom() {
        return new Box(large.left() + 3, large.top() + INSIDE, large.right() - 3, large.bottom() - 3);
    }

    Drawn drawn(String title, String whoFor, PrintOptions options) {
        List<Text> texts = new ArrayList<>();
        double left = room.left() + LEFT;
        texts.add(new Text(title, new Point(left, room.top() + 6.5), 6, 0));
        if (!whoFor.isEmpty()) {
            texts.add(new Text(whoFor, new Point(left, room.top() + 12.5), 4, 0));
        }
        texts.add(new Text(
                "Print this page alone first, at 100 %, and measure both squares, across and down.",
                new Point(left, room.top() + 19.5), 4, 0));
        texts.add(new Text(
                options.scale() == Scale.FULL
                        ? "The one is 100 mm each way, the other 4 inches. If they are not, do not cut."
                        : SmallScale.warning(options.scale()) + ": these squares alone are full size.",
                new Point(left, room.top() + 25),
                4,
                0));
        texts.add(new Text("100 mm", new Point(small.left() + 4, small.top() + 6.5), 5, 0));
        texts.add(new Text("4 in", new Point(large.left() + 4, large.top() + 6.5), 5, 0));
        Drawn squares = new Drawn(
                List.of(new Stroke(Style.SQUARE, small.corners()), new Stroke(Style.SQUARE, large.corners())), texts);
        return squares.and(steps(options));
    }

    /** What to do, step by step, in the smaller square. */
    private Drawn steps(PrintOptions options) {
        List<String> steps = new ArrayList<>();
        steps.add("Print at 100 %, not \u201cfit to page\u201d.");
        steps.add(
                options.calibration().isTrue()
                        ? "Measure this square. If it is 98.5 mm wide and 99 mm high, print again with the option measured"
                                + " 98.5x99mm: the pages are then scaled to come out true."
                        : "These pages are " + PageFrame.madeFor(options.calibration())
                                + ". Measure again: it must now be 100 mm each way.");
        if (options.paper().kind() == Paper.Kind.SHEET) {
            steps.add("Print all pages. Lay them out as the map shows; a page is named row.column.");
            steps.add(
                    "Cut off each page along its unbroken line, where it says \u201ctrim\u201d, on the left and above.");
            steps.add(
                    "Lay it on the \u201cglue\u201d strip of its neighbour, as far as the broken line, cross on cross. Glue or tape.");
            steps.add(
                    "Measure the long distances that say \u201ccheck\u201d, from the left line, or the top one, of a page to that of the other.");
        } else {
            steps.add("Print all of it, and measure the squares once more before you cut.");
            steps.add("Where it is in more than one strip, trim, glue and check as is written along the joints.");
        }
        List<Text> texts = new ArrayList<>();
        double y = small.top() + INSIDE + 4;
        double width = small.width() - 12;
        for (int i = 0; i < steps.size(); i++) {
            texts.add(new Text((i + 1) + "", new Point(small.left() + 4, y + Section.TYPE), Section.TYPE, 0));
            for (String line : Type.wrapped(steps.get(i), width, width, Section.TYPE)) {
                texts.add(new Text(line, new Point(small.left() + 9, y + Section.TYPE), Section.TYPE, 0));
                y += 4.6;
            }
            y += 2;
        }
        return new Drawn(List.of(), texts);
    }
}
