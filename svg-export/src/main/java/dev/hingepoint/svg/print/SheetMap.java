package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The map: the whole sheet small, with the pages and their names, to tape them together by, and the pieces by their numbers. */
final class SheetMap {
    private static final double MARGIN = 10;

    /** Sizes of type in mm. */
    private static final double HEADING = 4;

    private static final double NUMBER = 5;

    /** Smaller names of pages cannot be read. */
    private static final double SMALLEST = 1.9;

    private static final double CLEAR = 0.3;

    /** A word is tried so many steps from the middle of its box to its side. */
    private static final int PLACES = 9;

    private final Printed printed;
    private final double width;
    private final double height;

    SheetMap(Printed printed) {
        this.printed = printed;
        PrintOptions options = printed.options();
        int rows = printed.pages().stream().mapToInt(Page::row).max().orElseThrow();
        int columns = printed.pages().stream().mapToInt(Page::column).max().orElseThrow();
        this.width = Math.max(
                columns == 1 ? 0 : columns * options.stepAcross() + options.overlap(),
                printed.sheet().bounds().right());
        this.height = Math.max(
                rows == 1 ? 0 : rows * options.stepDown() + options.overlap(),
                printed.sheet().bounds().bottom());
    }

    /** The map on a sheet of its own, its heading telling which piece has which number. */
    String svg() {
        PrintOptions options = printed.options();
        boolean isSmallSheet = options.paper().kind() == Paper.Kind.SHEET && !options.areLeavesOnSheet();
        Paper paper = isSmallSheet ? options.paper() : Paper.A4;
        Drawn map = withHeading(new Box(MARGIN, MARGIN, paper.width() - MARGIN, paper.height() - MARGIN));
        return SvgPage.write(paper.width(), paper.height(), map, "map of the pages");
    }

    /** The map below words that tell what it is. */
    Drawn withHeading(Box room) {
        List<Text> words = new ArrayList<>();
        double y = room.top();
        for (String line : heading()) {
            for (String part : Type.wrapped(line, room.width(), room.width(), HEADING)) {
                y += 1.3 * HEADING;
                words.add(new Text(part, new Point(room.left(), y), HEADING, 0));
            }
        }
        return drawn(new Box(room.left(), y + HEADING, room.right(), room.bottom()))
                .and(new Drawn(List.of(), words));
    }

    private List<String> heading() {
        List<String> pieces = printed.pieces().stream()
                .map(piece -> piece.number() + " " + piece.piece())
                .toList();
        return List.of(
                printed.pages().size() + " pages of "
                        + printed.options().paper().name() + ": how they go together, row.column. Not to scale.",
                String.join(", ", pieces));
    }

    /** Whether the names of the pages can be read where the map has that room. */
    boolean isReadableIn(Box room) {
        return typeSize(scale(room)) >= SMALLEST;
    }

    private double scale(Box room) {
        return Math.min(room.width() / width, room.height() / height);
    }

    /** A page's name has about two thirds of the width of its page, and a third of its height. */
    private double typeSize(double scale) {
        PrintOptions options = printed.options();
        return Math.min(HEADING, Math.min(options.stepAcross() * scale / 3.2, options.stepDown() * scale / 3));
    }

    /** The map as large as its room lets it be, in the middle. */
    Drawn drawn(Box room) {
        double scale = scale(room);
        double left = room.left() + (room.width() - width * scale) / 2;
        double top = room.top() + (room.height() - height * scale) / 2;
        Motion small = Motion.enlargement(scale).then(Motion.shift(new Vector(left, top)));
        List<Stroke> strokes = new ArrayList<>();
        List<List<List<Point>>> pieces = printed.pieces().stream()
                .map(piece -> piece.rings().stream()
                        .map(ring -> ring.stream().map(small::of).toList())
                        .toList())
                .toList();
        pieces.forEach(rings -> rings.forEach(ring -> strokes.add(new Stroke(Style.MARK, ring))));
        for (Page page : printed.pages()) {
            strokes.add(new Stroke(Style.RULE, area(page).corners()).moved(small));
        }
        FreeSpace free = FreeSpace.within(room.grownBy(1), CLEAR);
        strokes.forEach(free::take);
        double size = typeSize(scale);
        List<Text> texts = new ArrayList<>();
        for (Page page : printed.pages()) {
            List<Text> places = places(area(page), small, page.name(), size);
            texts.add(free.place(places.stream()).orElse(places.get(0)));
        }
        // a number that has no room stands on the piece itself all the same
        for (int i = 0; i < pieces.size(); i++) {
            Box box = printed.pieces().get(i).box();
            String number = Integer.toString(printed.pieces().get(i).number());
            free.alsoWithin(pieces.get(i))
                    .place(Stream.of(Math.min(NUMBER, 1.6 * size), size)
                            .flatMap(each -> places(box, small, number, each).stream()))
                    .ifPresent(texts::add);
        }
        return new Drawn(strokes, texts);
    }

    private Box area(Page page) {
        Box area = Tiling.area(new Cell(page.row() - 1, page.column() - 1), printed.options());
        return new Box(area.left(), area.top(), Math.min(area.right(), width), Math.min(area.bottom(), height));
    }

    /** Where a word may stand in a box, nearest to its middle first. */
    private static List<Text> places(Box box, Motion small, String word, double size) {
        Point middle = small.of(box.centre());
        Vector across = small.of(new Vector(box.width() / (2 * PLACES), 0));
        Vector down = small.of(new Vector(0, box.height() / (2 * PLACES)));
        Vector half = new Vector(Type.width(word, size) / 2, -size * Text.ABOVE / 2);
        return IntStream.rangeClosed(1 - PLACES, PLACES - 1)
                .boxed()
                .flatMap(i -> IntStream.rangeClosed(1 - PLACES, PLACES - 1)
                        .mapToObj(k -> middle.plus(across.times(i)).plus(down.times(k))))
                .sorted(Comparator.comparingDouble(middle::distanceTo))
                .map(at -> new Text(word, at.minus(half), size, 0))
                .toList();
    }
}
