package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.svg.lay.Laid;
import dev.hingepoint.svg.lay.Pages;
import dev.hingepoint.svg.lay.Shape;
import dev.hingepoint.svg.lay.SheetLayout;
import dev.hingepoint.svg.lay.StripLayout;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where drawings lie on the sheet.
 *
 * @param rings of each drawing, the closed lines that all within belongs to it
 * @param places how each moves: a turn by whole quarters, then a shift
 */
record Layout(List<Drawn> drawings, List<List<List<Point>>> rings, List<Motion> places, PrintOptions options) {
    /** How far in mm a piece keeps from the sheet's edges, where its line would run along a page's frame, and from the next. */
    private static final double APART = 3;

    Layout {
        drawings = List.copyOf(drawings);
        rings = List.copyOf(rings);
        places = List.copyOf(places);
    }

    /**
     * Drawings on few pages; on a light's single page, about as wide as the cloth that it is thrown on.
     *
     * @param rings of each, the closed lines that all within belongs to it
     * @param ways which ways round each may lie
     */
    static Layout of(List<Drawn> drawings, List<List<List<Point>>> rings, List<Lays.Way> ways, PrintOptions options) {
        List<Shape> shapes = IntStream.range(0, drawings.size())
                .mapToObj(i -> Ground.of(drawings.get(i), rings.get(i), ways.get(i)))
                .toList();
        Laid laid =
                options.paper().kind() == Paper.Kind.PROJECTION ? projected(shapes, options) : paged(shapes, options);
        return new Layout(drawings, rings, laid.places(), options);
    }

    private static Laid paged(List<Shape> shapes, PrintOptions options) {
        Pages pages = new Pages(options.printableWidth(), options.printableHeight(), options.overlap());
        double widest = SheetLayout.widest(pages, APART);
        if (StripLayout.narrowest(shapes, APART) > widest) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "print.piece-too-wide",
                            Quantity.millimetres(Math.floor(widest)),
                            options.paper().name()),
                    Where.UNKNOWN));
        }
        return SheetLayout.laid(shapes, pages, APART);
    }

    private static Laid projected(List<Shape> shapes, PrintOptions options) {
        double cloth = options.cloths().of(ClothWidths.MAIN).mm();
        return StripLayout.laid(shapes, Math.max(cloth, StripLayout.narrowest(shapes, APART)), APART);
    }

    Motion place(int number) {
        return places.get(number);
    }

    /** The same places with other drawings. */
    Layout with(List<Drawn> others) {
        return new Layout(others, rings, places, options);
    }

    /** Whether another drawing can lie in the place of one of them, and on nothing else. */
    boolean hasRoomFor(int number, Drawn other) {
        return Ground.holds(drawings.get(number), rings.get(number), other, APART / 2);
    }

    Drawn sheet() {
        return Drawn.of(IntStream.range(0, drawings.size()).mapToObj(this::laid).toList());
    }

    /** One of the drawings in its place. */
    Drawn laid(int number) {
        return drawings.get(number).moved(places.get(number));
    }

    /** The strips across one of the drawings where pages will be joined, as it lies before it moves; none where it lies whole on one page. */
    List<Box> jointsOn(int number) {
        Box box = laid(number).bounds();
        Motion back = places.get(number).inverse();
        Stream<Box> across = joints(box.left(), box.right(), options.stepAcross())
                .mapToObj(left -> new Box(left, box.top(), left + options.overlap(), box.bottom()));
        Stream<Box> down = joints(box.top(), box.bottom(), options.stepDown())
                .mapToObj(top -> new Box(box.left(), top, box.right(), top + options.overlap()));
        return Stream.concat(across, down).map(joint -> moved(joint, back)).toList();
    }

    /** Where the strips begin that lie between two ends, or reach in from before the first. */
    private DoubleStream joints(double from, double to, double step) {
        int first = Math.max(1, (int) Math.ceil((from - options.overlap()) / step));
        return IntStream.iterate(first, i -> i * step < to, i -> i + 1).mapToDouble(i -> i * step);
    }

    /** A box after a turn by whole quarters. */
    private static Box moved(Box box, Motion motion) {
        return Box.of(motion.of(new Point(box.left(), box.top())), motion.of(new Point(box.right(), box.bottom())));
    }
}
