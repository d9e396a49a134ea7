package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.svg.page.Clipping;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Pages are put back together as a person does it: by the crosses that neighbours share, on a printer that scales each direction by its own. Random pieces on
 * random papers, from {@code Tiling} itself; what must come out is derived from the sheet alone.
 */
class ReassemblyTest {
    /** What a reader can see, in mm. */
    private static final double SEEN = 0.01;

    @Provide
    Arbitrary<PrintOptions> papers() {
        Arbitrary<Paper> paper = Arbitraries.oneOf(
                Arbitraries.of("a4", "a3", "a2", "letter", "legal", "tabloid").map(Paper::named),
                Combinators.combine(
                                Arbitraries.integers().between(200, 500),
                                Arbitraries.integers().between(290, 700))
                        .as((width, height) -> Paper.named(width + "x" + height)));
        return Combinators.combine(
                        paper,
                        Arbitraries.doubles().between(4, 12),
                        Arbitraries.doubles().between(6.5, 25),
                        Arbitraries.doubles().between(96, 104),
                        Arbitraries.doubles().between(96, 104),
                        Arbitraries.of(Scale.FULL, Scale.FULL, Scale.HALF))
                .as((on, margin, overlap, across, down, scale) -> PrintOptions.of(on)
                        .withMargin(margin)
                        .withOverlap(overlap)
                        .with(new Calibration(across, down))
                        .with(scale));
    }

    /** Pieces with as many corners as a star or as few as a triangle, small and large, anywhere. */
    @Provide
    Arbitrary<Drawn> sheets() {
        Arbitrary<Stroke> piece = Combinators.combine(
                        Arbitraries.integers().between(3, 24),
                        Arbitraries.doubles().between(40, 500),
                        Arbitraries.doubles().between(0, 900),
                        Arbitraries.doubles().between(0, 900),
                        Arbitraries.doubles().between(0.3, 1).list().ofSize(24))
                .as((corners, radius, x, y, depths) -> {
                    Point middle = new Point(x + radius, y + radius);
                    List<Point> ring = new ArrayList<>(IntStream.range(0, corners)
                            .mapToObj(i -> middle.plus(Vector.ofAngle(2 * StrictMath.PI * i / corners)
                                    .times(radius * depths.get(i))))
                            .toList());
                    ring.add(ring.get(0));
                    return new Stroke(Style.CUTTING, ring);
                });
        return piece.list().ofMinSize(1).ofMaxSize(4).map(strokes -> new Drawn(strokes, List.of()));
    }

    @Property(tries = 150, seed = "5")
    void putTogetherByTheirCrossesThePagesAreTheSheet(
            @ForAll("sheets") Drawn sheet, @ForAll("papers") PrintOptions options) {
        List<Page> pages = Tiling.pages("test", sheet, List.of(), options);
        Map<String, Motion> places = placed(pages, options);
        for (List<Page> together : islands(pages, places)) {
            // an island that no joint ties to another is laid by hand; here, by where its first page lies
            Page first = together.get(0);
            Vector wanted =
                    new Vector((first.column() - 1) * options.stepAcross(), (first.row() - 1) * options.stepDown());
            Point corner = new Point(options.margin(), options.margin());
            Vector by = wanted.minus(places.get(first.name()).of(corner).minus(new Point(0, 0)));
            together.forEach(
                    page -> places.computeIfPresent(page.name(), (name, place) -> place.then(Motion.shift(by))));
        }
        Geometry whole = union(sheet.strokes().stream());
        Geometry taped = union(pages.stream()
                .flatMap(page -> page.drawn().strokes().stream().map(stroke -> stroke.moved(places.get(page.name())))));
        assertTrue(isAlsoIn(taped, whole), "a line on the pages that the sheet has not");
        assertTrue(isAlsoIn(whole, taped), "a line of the sheet on no page");
    }

    /** Both pages of a joint carry the same strip: everything drawn in it is on both. */
    @Property(tries = 60, seed = "6")
    void neighboursCarryTheSameStrip(@ForAll("sheets") Drawn sheet, @ForAll("papers") PrintOptions options) {
        List<Page> pages = Tiling.pages("test", sheet, List.of(), options);
        Map<String, Page> byName = new HashMap<>();
        pages.forEach(page -> byName.put(page.name(), page));
        for (Page page : pages) {
            Page right = byName.get(page.row() + "." + (page.column() + 1));
            if (right != null) {
                Vector step = new Vector(options.stepAcross(), 0);
                Box strip = new Box(options.stepAcross(), 0, options.printableWidth(), options.printableHeight());
                Geometry one = union(inside(page, strip, options));
                Geometry other = union(inside(right, strip.moved(step.negated()), options)
                        .map(stroke -> stroke.moved(Motion.shift(step))));
                assertTrue(isAlsoIn(one, other) && isAlsoIn(other, one), page.name());
            }
        }
    }

    /** Strokes as the printer makes them, from the upper left of what it prints. */
    private static Stream<Stroke> inside(Page page, Box box, PrintOptions options) {
        Motion back = options.toPaper(0, 0).inverse();
        return page.drawn().strokes().stream().flatMap(stroke -> Clipping.clipped(stroke.moved(back), box).stream());
    }

    @Property(tries = 100, seed = "7")
    void everyJointHasTwoCrossesAndNoMarkIsOutsideWhatIsPrinted(
            @ForAll("sheets") Drawn sheet, @ForAll("papers") PrintOptions options) {
        List<Page> pages = Tiling.pages("a title that is rather long", sheet, List.of(), options);
        List<String> names = pages.stream().map(Page::name).toList();
        for (Page page : pages) {
            Box printable = page.printable().grownBy(1e-6);
            page.layers().values().forEach(layer -> {
                layer.strokes()
                        .forEach(stroke -> stroke.points().forEach(at -> assertEquals(0, printable.distanceTo(at))));
            });
            page.frame()
                    .texts()
                    .forEach(text ->
                            assertEquals(printable, printable.union(text.bounds()), page.name() + ": " + text.words()));
            long joints = Stream.of(
                            page.row() + "." + (page.column() + 1),
                            page.row() + "." + (page.column() - 1),
                            (page.row() + 1) + "." + page.column(),
                            (page.row() - 1) + "." + page.column())
                    .filter(names::contains)
                    .count();
            assertTrue(2 * joints <= crosses(page).size());
            String words = String.join(
                    "|", page.frame().texts().stream().map(Text::words).toList());
            assertEquals(joints, words.split("trim; lies on|glue; [0-9.]+ lies here", -1).length - 1, words);
        }
    }

    private static final Pattern CHECK =
            Pattern.compile("check: from (\\d+)\\.(\\d+) (left|top) to (\\d+)\\.(\\d+) (left|top): ([0-9.]+) mm");

    /** Derived: pages stand a step apart. Read off the page as a person would, between the edges that it names. */
    @Property(tries = 60, seed = "8")
    void theLongDistancesAreAsFarAsTheySay(@ForAll("sheets") Drawn sheet, @ForAll("papers") PrintOptions options) {
        List<Page> pages = Tiling.pages("test", sheet, List.of(), options);
        Map<String, Motion> places = placed(pages, options);
        int checked = 0;
        for (Page page : pages) {
            for (Text text : page.frame().texts()) {
                Matcher check = CHECK.matcher(text.words());
                if (check.matches()) {
                    checked++;
                    Point corner = new Point(options.margin(), options.margin());
                    Point from =
                            places.get(check.group(1) + "." + check.group(2)).of(corner);
                    Point to = places.get(check.group(4) + "." + check.group(5)).of(corner);
                    assertEquals(from.distanceTo(to), Double.parseDouble(check.group(7)), 0.051);
                }
            }
        }
        Optional<Page> third = pages.stream()
                .filter(page -> pages.stream()
                                .filter(other -> other.row() == page.row())
                                .count()
                        == pages.stream()
                                .filter(other -> other.row() == page.row())
                                .mapToInt(Page::column)
                                .max()
                                .orElse(0))
                .filter(page -> page.column() == 3)
                .findFirst();
        assertTrue(third.isEmpty() || checked > 0, "a row of three pages says how far it runs");
    }

    /** Where each page goes, in mm as printed, laid cross on cross upon one that lies already; the first of each island lies anywhere. */
    private static Map<String, Motion> placed(List<Page> pages, PrintOptions options) {
        Motion printed = options.toPaper(0, 0).inverse();
        Map<String, Page> byName = new HashMap<>();
        pages.forEach(page -> byName.put(page.name(), page));
        Map<String, Motion> places = new HashMap<>();
        for (Page start : pages) {
            if (places.containsKey(start.name())) {
                continue;
            }
            places.put(start.name(), printed);
            Deque<Page> open = new ArrayDeque<>(List.of(start));
            while (!open.isEmpty()) {
                Page page = open.remove();
                for (int[] way : new int[][] {{0, 1}, {1, 0}, {0, -1}, {-1, 0}}) {
                    Page next = byName.get((page.row() + way[0]) + "." + (page.column() + way[1]));
                    if (next != null && !places.containsKey(next.name())) {
                        List<Point> here = crosses(page, way);
                        List<Point> there = crosses(next, new int[] {-way[0], -way[1]});
                        assertTrue(here.size() >= 2);
                        assertEquals(here.size(), there.size());
                        Motion place = places.get(page.name());
                        Vector one = place.of(here.get(0)).minus(printed.of(there.get(0)));
                        int last = here.size() - 1;
                        Vector other = place.of(here.get(last)).minus(printed.of(there.get(last)));
                        assertEquals(0, one.minus(other).length(), SEEN, "the two crosses disagree");
                        places.put(next.name(), printed.then(Motion.shift(one)));
                        open.add(next);
                    }
                }
            }
        }
        return places;
    }

    private static List<List<Page>> islands(List<Page> pages, Map<String, Motion> places) {
        List<List<Page>> islands = new ArrayList<>();
        List<Page> left = new ArrayList<>(pages);
        while (!left.isEmpty()) {
            List<Page> island = new ArrayList<>(List.of(left.remove(0)));
            for (int i = 0; i < island.size(); i++) {
                Page page = island.get(i);
                List<Page> beside = left.stream()
                        .filter(other ->
                                Math.abs(other.row() - page.row()) + Math.abs(other.column() - page.column()) == 1)
                        .toList();
                island.addAll(beside);
                left.removeAll(beside);
            }
            islands.add(island);
        }
        return islands;
    }

    /** The middles of a page's crosses. */
    private static List<Point> crosses(Page page) {
        List<Stroke> arms = page.frame().strokes().stream()
                .filter(stroke -> stroke.style() == Style.JOIN)
                .toList();
        return IntStream.range(0, arms.size() / 2)
                .mapToObj(i -> {
                    Point one = arms.get(2 * i).bounds().centre();
                    assertEquals(0, one.distanceTo(arms.get(2 * i + 1).bounds().centre()), 1e-9);
                    return one;
                })
                .toList();
    }

    /** Those of the joint on one side: all that lie as near to it as the nearest, in order along it. */
    private static List<Point> crosses(Page page, int[] way) {
        Box printable = page.printable();
        ToDoubleFunction<Point> outwards = at -> way[1] > 0
                ? printable.right() - at.x()
                : way[1] < 0
                        ? at.x() - printable.left()
                        : way[0] > 0 ? printable.bottom() - at.y() : at.y() - printable.top();
        Comparator<Point> along = Comparator.comparingDouble(at -> way[1] != 0 ? at.y() : at.x());
        double nearest = crosses(page).stream().mapToDouble(outwards).min().orElse(0);
        return crosses(page).stream()
                .filter(at -> outwards.applyAsDouble(at) < nearest + 1e-6)
                .sorted(along)
                .toList();
    }

    /** But for what is too short to be seen. */
    private static boolean isAlsoIn(Geometry lines, Geometry others) {
        return lines.difference(others.buffer(SEEN)).getLength() < SEEN;
    }

    private static Geometry union(Stream<Stroke> strokes) {
        return strokes.map(s -> (Geometry) JtsBridge.lineString(dev.hingepoint.curve.Path.through(s.points())))
                .reduce(Geometry::union)
                .orElseGet(() -> new GeometryFactory().createLineString());
    }
}
