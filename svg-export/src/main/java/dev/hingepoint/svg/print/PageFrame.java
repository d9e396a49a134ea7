package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a page says of itself: its name, and how it is joined to its neighbours. Left and above, where it has a neighbour, it is trimmed along an unbroken line and laid
 * on that one; right and below, a broken line shows how far the neighbour will lie on its glue strip. In each strip stand two crosses or more, which are on both pages, well inside what a printer
 * reaches: cross on cross, the pages fit. The distances to check run over whole rows and columns, so that small errors cannot add up unseen.
 */
final class PageFrame {
    /** How far in mm the arms of a cross reach. */
    static final double ARM = 3;

    /** A joint has a cross about every so many mm, and two at the least. */
    private static final double BETWEEN_CROSSES = 200;

    /** Sizes of type in mm. */
    private static final double NAME = 5;

    private static final double WORDS = 2.8;
    private static final double SMALL = 2.5;

    /** Width in mm of short lines. */
    private static final double NARROW = 34;

    private static final Point ORIGIN = new Point(0, 0);

    /** The words along a joint are tried at so many places from its middle to its ends. */
    private static final int PLACES = 16;

    /** How far in mm words keep from what is drawn, and how far the page's own name, which is none of the pattern's words, as far as there is room. */
    private static final double CLEAR = 0.8;

    private static final double[] CLEAR_OF_NAME = {8, 4, 2, CLEAR};

    /** How far in mm they keep where there is more room. */
    private static final double BESIDE_WORDS = 3;

    /** How far in mm words stand from the line that they speak of. */
    private static final double BESIDE = 1.5;

    private final String title;
    private final Cell cell;
    private final NavigableSet<Cell> pages;
    private final PrintOptions options;
    private final Box area;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<List<Text>> words = new ArrayList<>();

    /** @param pages all that there are */
    PageFrame(String title, Cell cell, NavigableSet<Cell> pages, PrintOptions options) {
        this.title = title;
        this.cell = cell;
        this.pages = pages;
        this.options = options;
        this.area = Tiling.area(cell, options);
    }

    /**
     * Its marks and words, where the page lies on the sheet.
     *
     * @param onPage what is printed there, which words keep clear of
     */
    Drawn drawn(Drawn onPage) {
        if (options.paper().kind() == Paper.Kind.PROJECTION) {
            return Drawn.NOTHING;
        }
        joints();
        checks();
        Drawn band = options.scale() == Scale.FULL ? Drawn.NOTHING : SmallScale.band(area, cell.name(), title, options);
        FreeSpace free = FreeSpace.within(area, CLEAR);
        onPage.strokes().forEach(free::take);
        onPage.texts().forEach(free::take);
        strokes.forEach(free::take);
        List<Text> texts = new ArrayList<>();
        FreeSpace wide = free.keepingOff(BESIDE_WORDS);
        words.forEach(places -> texts.add(wide.place(places.stream())
                .or(() -> free.place(places.stream()))
                .orElse(places.get(0))));
        if (options.scale() == Scale.FULL) {
            texts.addAll(name(free));
        }
        return new Drawn(strokes, texts).and(band);
    }

    private void joints() {
        Point upperLeft = new Point(area.left(), area.top());
        Point upperRight = new Point(area.right(), area.top());
        Point lowerLeft = new Point(area.left(), area.bottom());
        Point lowerRight = new Point(area.right(), area.bottom());
        Vector across = new Vector(options.overlap(), 0);
        Vector down = new Vector(0, options.overlap());
        if (pages.contains(cell.left())) {
            trim(upperLeft, lowerLeft, across, cell.left());
        }
        if (pages.contains(cell.above())) {
            trim(upperLeft, upperRight, down, cell.above());
        }
        if (pages.contains(cell.right())) {
            glue(upperRight.minus(across), lowerRight.minus(across), across, cell.right());
        }
        if (pages.contains(cell.below())) {
            glue(lowerLeft.minus(down), lowerRight.minus(down), down, cell.below());
        }
    }

    private void trim(Point from, Point to, Vector strip, Cell neighbour) {
        strokes.add(Stroke.of(Style.TRIM, from, to));
        joint(from, to, strip, "trim; lies on " + neighbour.name());
    }

    private void glue(Point from, Point to, Vector strip, Cell neighbour) {
        strokes.add(Stroke.of(Style.GLUE, from, to));
        joint(from, to, strip, "glue; " + neighbour.name() + " lies here");
    }

    /** Two crosses or more in the middle of a strip, and between them, or wherever there is room, its words. */
    private void joint(Point from, Point to, Vector strip, String said) {
        int crosses = (int) Math.max(2, Math.round(from.distanceTo(to) / BETWEEN_CROSSES));
        for (int i = 0; i < crosses; i++) {
            Point at = from.towards(to, (i + 0.5) / crosses).plus(strip.times(0.5));
            Vector across = new Vector(ARM, 0);
            Vector down = new Vector(0, ARM);
            strokes.add(Stroke.of(Style.JOIN, at.minus(across), at.plus(across)));
            strokes.add(Stroke.of(Style.JOIN, at.minus(down), at.plus(down)));
        }
        boolean isUpright = strip.x() > 0;
        double angle = isUpright ? -StrictMath.PI / 2 : 0;
        Vector reading = Vector.ofAngle(angle);
        Vector half = reading.times(Type.width(said, WORDS) / 2);
        Vector low = reading.right().times(WORDS * Text.ABOVE / 2);
        words.add(fromTheMiddle()
                .flatMap(part -> Stream.of(0.5, 0.3, 0.7)
                        .map(deep -> from.towards(to, part).plus(strip.times(deep))))
                .map(middle -> new Text(said, middle.minus(half).plus(low), WORDS, angle))
                .toList());
    }

    private static Stream<Double> fromTheMiddle() {
        return IntStream.rangeClosed(0, 2 * PLACES)
                .mapToObj(i -> 0.5 + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 0.45 / PLACES);
    }

    /** On the last page of a row, and of a column, how far it lies from the first one. */
    private void checks() {
        check(Cell::left, "left", new Vector(options.stepAcross(), 0));
        check(Cell::above, "top", new Vector(0, options.stepDown()));
        if (isFirst(Cell::left) && pages.contains(cell.right())) {
            strokes.add(
                    Stroke.of(Style.TRIM, new Point(area.left(), area.top()), new Point(area.left(), area.bottom())));
        }
        if (isFirst(Cell::above) && pages.contains(cell.below())) {
            strokes.add(Stroke.of(Style.TRIM, new Point(area.left(), area.top()), new Point(area.right(), area.top())));
        }
    }

    private boolean isFirst(UnaryOperator<Cell> before) {
        return !pages.contains(before.apply(cell));
    }

    private void check(UnaryOperator<Cell> before, String side, Vector step) {
        boolean isAcross = step.x() > 0;
        boolean isLast = !pages.contains(isAcross ? cell.right() : cell.below());
        Cell first = cell;
        int steps = 0;
        while (pages.contains(before.apply(first))) {
            first = before.apply(first);
            steps++;
        }
        if (!isLast || steps == 0) {
            return;
        }
        String said = "check: from " + first.name() + " " + side + " to " + cell.name() + " " + side + ": "
                + options.shown(step.length() * steps);
        // beside the edge that it speaks of, inside the strip's far side, so that it is not trimmed or covered
        double angle = isAcross ? -StrictMath.PI / 2 : 0;
        Vector reading = Vector.ofAngle(angle);
        Vector in = isAcross ? new Vector(1, 0) : new Vector(0, 1);
        Point from = new Point(area.left(), area.top());
        Vector along = isAcross ? new Vector(0, area.height()) : new Vector(area.width(), 0);
        Vector half = reading.times(Type.width(said, WORDS) / 2);
        words.add(Stream.of(1, 2, 3, 5, 8, 12)
                .flatMap(far -> fromTheMiddle()
                        .map(part ->
                                from.plus(along.times(part)).plus(in.times(options.overlap() + BESIDE + far * WORDS))))
                .map(middle -> new Text(said, middle.minus(half), WORDS, angle))
                .toList());
    }

    /** That the page is no longer at 100 %, and why. */
    static String madeFor(Calibration measured) {
        return "scaled for a printer whose 100 mm square measured " + measured;
    }

    /** The page's name and the sheet's, in free space as near to the lower left corner as there is room. */
    private List<Text> name(FreeSpace free) {
        List<Point> places = new ArrayList<>();
        for (double up = 6; up < area.height() - 6; up += 5) {
            for (double across = 6; across < area.width() - 6; across += 5) {
                places.add(new Point(area.left() + across, area.bottom() - up));
            }
        }
        List<List<Text>> wordings = List.of(inARow(), stacked(0), stacked(-StrictMath.PI / 2));
        return DoubleStream.of(CLEAR_OF_NAME)
                .mapToObj(free::keepingOff)
                .flatMap(space -> wordings.stream().map(words -> space.place(words, places.stream())))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseGet(() -> List.of(new Text(cell.name(), places.get(0), NAME, 0)));
    }

    private List<Text> inARow() {
        double after = Type.width(cell.name(), NAME) + 3;
        List<Text> row = new ArrayList<>(
                List.of(new Text(cell.name(), ORIGIN, NAME, 0), new Text(title, new Point(after, 0), SMALL, 0)));
        if (!options.calibration().isTrue()) {
            row.add(new Text(madeFor(options.calibration()), new Point(0, 4), SMALL, 0));
        }
        return row;
    }

    /** Narrow, for a page that has little room: short lines below the name. */
    private List<Text> stacked(double angle) {
        List<String> lines = new ArrayList<>(Type.wrapped(title, NARROW, NARROW, SMALL));
        if (!options.calibration().isTrue()) {
            lines.addAll(Type.wrapped(madeFor(options.calibration()), NARROW, NARROW, SMALL));
        }
        Vector down = Vector.ofAngle(angle).right();
        List<Text> stack = new ArrayList<>(List.of(new Text(cell.name(), ORIGIN, NAME, angle)));
        for (int i = 0; i < lines.size(); i++) {
            stack.add(new Text(lines.get(i), ORIGIN.plus(down.times(4 + 1.4 * SMALL * i)), SMALL, angle));
        }
        return stack;
    }
}
