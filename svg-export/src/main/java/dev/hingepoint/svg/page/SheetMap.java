package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The map: the whole sheet small, with the pages and their names, to tape them together by; its heading tells which piece has which number. */
final class SheetMap {
    private static final double MARGIN = 10;

    /** Sizes of type in mm. */
    private static final double HEADING = 4;

    private static final double NUMBER = 5;
    private static final int HEADING_CHARACTERS = 90;
    private static final double CLEAR = 0.4;

    /** A word is tried so many steps from the middle of its box to its side. */
    private static final int PLACES = 9;

    private SheetMap() {}

    static String write(Printed printed) {
        PrintOptions options = printed.options();
        int rows = printed.pages().stream().mapToInt(Page::row).max().orElseThrow();
        int columns = printed.pages().stream().mapToInt(Page::column).max().orElseThrow();
        double sheetWidth = columns * options.stepAcross() + options.overlap();
        double sheetHeight = rows * options.stepDown() + options.overlap();
        double width = options.paper().width();
        double height = options.paper().height();
        Block heading = Block.wrapped(heading(printed), HEADING_CHARACTERS);
        double top = MARGIN + heading.height(HEADING) + HEADING;
        double scale = Math.min((width - 2 * MARGIN) / sheetWidth, (height - MARGIN - top) / sheetHeight);
        Motion small = new Motion(scale, 0, 0, scale, MARGIN, top);

        List<Text> texts = new ArrayList<>();
        Motion place =
                Motion.shift(new Vector(MARGIN + heading.width(HEADING) / 2, MARGIN + heading.height(HEADING) / 2));
        heading.set(HEADING, 0).forEach(text -> texts.add(text.moved(place)));
        List<Stroke> strokes = new ArrayList<>();
        printed.sheet().strokes().stream()
                .filter(stroke -> stroke.style() == Style.CUTTING)
                .forEach(stroke -> strokes.add(stroke.moved(small)));
        for (Page page : printed.pages()) {
            strokes.add(new Stroke(Style.SQUARE, corners(area(page, options))).moved(small));
        }
        Box paper = new Box(0, 0, width, height);
        FreeSpace free = FreeSpace.within(corners(paper), CLEAR);
        strokes.forEach(free::take);
        for (int i = 0; i < printed.pieces().size(); i++) {
            Box box = printed.pieces().get(i).box();
            texts.add(placed(free, box, small, Integer.toString(i + 1), NUMBER));
        }
        double size = Math.min(HEADING, 40 * scale);
        printed.pages().forEach(page -> texts.add(placed(free, area(page, options), small, page.name(), size)));
        return SvgPage.write(width, height, new Drawn(strokes, texts), "map of the pages");
    }

    private static List<String> heading(Printed printed) {
        List<String> pieces = IntStream.range(0, printed.pieces().size())
                .mapToObj(i -> (i + 1) + " " + printed.pieces().get(i).piece())
                .toList();
        return List.of(
                printed.pages().size() + " pages of "
                        + printed.options().paper().name() + ": how they go together (row.column). Not to scale.",
                String.join(", ", pieces));
    }

    private static Box area(Page page, PrintOptions options) {
        double left = (page.column() - 1) * options.stepAcross();
        double top = (page.row() - 1) * options.stepDown();
        return new Box(left, top, left + options.printableWidth(), top + options.printableHeight());
    }

    private static List<Point> corners(Box box) {
        return List.of(
                new Point(box.left(), box.top()),
                new Point(box.right(), box.top()),
                new Point(box.right(), box.bottom()),
                new Point(box.left(), box.bottom()),
                new Point(box.left(), box.top()));
    }

    /** A word in a box, as near to its middle as it is clear of lines and other words; in the middle where there is no such place. */
    private static Text placed(FreeSpace free, Box box, Motion small, String word, double size) {
        Point middle = small.of(box.centre());
        Vector across = small.of(new Vector(box.width() / (2 * PLACES), 0));
        Vector down = small.of(new Vector(0, box.height() / (2 * PLACES)));
        Vector half = new Vector(Type.width(word, size) / 2, -size * Text.ABOVE / 2);
        List<Text> places = IntStream.rangeClosed(1 - PLACES, PLACES - 1)
                .boxed()
                .flatMap(i -> IntStream.rangeClosed(1 - PLACES, PLACES - 1)
                        .mapToObj(k -> middle.plus(across.times(i)).plus(down.times(k))))
                .sorted(Comparator.comparingDouble(middle::distanceTo))
                .map(at -> new Text(word, at.minus(half), size, 0))
                .toList();
        return free.place(places.stream()).orElse(places.get(0));
    }
}
