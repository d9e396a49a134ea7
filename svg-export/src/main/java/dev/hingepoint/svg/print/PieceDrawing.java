package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * One thing to lay on the sheet: a piece as it is cut, upright with its grain, in one size or in several that lie in one another; as its paper is, laid open, or mirrored. Every
 * line that is drawn, and every word, as {@link Lettering} sets them. Where there are several sizes, what would only crowd the drawing is left out: the
 * stitching lines, the lines as drawn, and the grain and the levels of all but the largest.
 */
final class PieceDrawing {
    /** Lines beside a piece have at most so many characters, where there is a place to break them. */
    private static final int BESIDE = 44;

    private static final Vector ACROSS = new Vector(1, 0);

    private final String name;
    private final int number;
    private final Lays.Way way;
    private final TypeSizes types;
    private final List<String> label;
    private final boolean isNest;
    private final List<LaidSize> sizes;
    private final LaidSize largest;
    private final SizeNames sizeNames;
    private final PieceLines lines;
    private final List<Stroke> strokes;
    private final List<List<Point>> cutting;
    private final PieceWords words;

    /**
     * A piece as it is drawn.
     *
     * @param isNamed whether its name is on its paper, and not only beside it
     */
    record Result(Drawn drawn, boolean isNamed) {}

    /** @param of each size of the piece that is drawn */
    private PieceDrawing(List<Sized> of, Copy copy, int number, int pieces, PrintOptions options) {
        Sized main = of.stream()
                .max(Comparator.comparingDouble(size -> size.piece().area()))
                .orElseThrow();
        Draft draft = main.draft();
        this.name = copy.named(main.piece().name());
        this.number = number;
        this.way = draft.pattern().card().lays().of(main.piece());
        this.types = TypeSizes.of(options);
        this.isNest = main.isOneOfSeveral();
        this.label = Label.lines(
                of.stream().map(Sized::draft).toList(), draft, main.piece(), copy, number + " of " + pieces, options);
        List<Motion> together = Nesting.of(of.stream().map(Sized::piece).toList(), main.piece());
        Motion upright = upright(main.piece(), copy)
                .then(Motion.enlargement(options.scale().factor()));
        this.sizes = IntStream.range(0, of.size())
                .mapToObj(i -> of.get(i).laid(copy, together.get(i).then(upright)))
                .toList();
        this.largest = sizes.get(of.indexOf(main));
        this.cutting = sizes.size() == 1 ? largest.cutting() : union(sizes);
        List<Path> original = options.original() == PrintOptions.Original.SHOWN && !isNest
                ? OriginalLines.of(draft, main.piece())
                : List.of();
        this.sizeNames = new SizeNames(sizes);
        this.lines = new PieceLines(largest, types);
        this.strokes = isNest ? nest() : single(original);
        this.words =
                new PieceWords(largest, lines, isNest ? Optional.of(sizeNames) : Optional.empty(), original, options);
    }

    /**
     * One size of a piece.
     *
     * @param style of its cutting line
     */
    private record Sized(Draft draft, Piece piece, Style style) {
        boolean isOneOfSeveral() {
            return style != Style.CUTTING;
        }

        LaidSize laid(Copy copy, Motion place) {
            Unfolding unfolding = copy == Copy.UNFOLDED ? Unfolding.of(piece) : Unfolding.NONE;
            return new LaidSize(draft, piece, style, CuttingLine.of(draft, piece), unfolding, place);
        }
    }

    /**
     * What is laid on the sheet, in the order of the pieces.
     *
     * @param sizes of one pattern, in the order in which they were asked for
     * @throws Refusal for more sizes than can be told apart, and where a piece cannot be drawn, for example because its allowance is too wide
     */
    static List<PieceDrawing> of(List<Draft> sizes, PrintOptions options) {
        int most = Style.nest().size();
        if (sizes.size() > most) {
            throw new Refusal(
                    Reason.BeyondLimit.of(Message.of("print.too-many-sizes", sizes.size(), most), Where.UNKNOWN));
        }
        Map<String, List<Sized>> byName = new LinkedHashMap<>();
        for (int i = 0; i < sizes.size(); i++) {
            Draft draft = sizes.get(i);
            Style style = sizes.size() == 1 ? Style.CUTTING : Style.nest().get(i);
            draft.pieces()
                    .forEach(piece -> byName.computeIfAbsent(piece.name(), any -> new ArrayList<>())
                            .add(new Sized(draft, piece, style)));
        }
        List<PieceDrawing> drawings = new ArrayList<>();
        int number = 0;
        for (List<Sized> of : byName.values()) {
            number++;
            for (Copy copy : Copy.of(of.get(0).piece(), options)) {
                drawings.add(new PieceDrawing(of, copy, number, byName.size(), options));
            }
        }
        return drawings;
    }

    private static Motion upright(Piece piece, Copy copy) {
        Motion upright = Upright.of(piece);
        Point middle = piece.outline().bounds().centre();
        return copy == Copy.OTHER_OF_PAIR ? upright.then(Motion.stretch(middle, ACROSS, -1)) : upright;
    }

    private List<Stroke> single(List<Path> original) {
        lines.cutting();
        lines.foldLine();
        lines.notches();
        lines.stitching();
        lines.folds();
        lines.darts();
        lines.drawnLines();
        lines.marks();
        lines.original(original);
        return lines.strokes();
    }

    private List<Stroke> nest() {
        // what sizes have in common is drawn once
        Set<Stroke> all = new LinkedHashSet<>();
        for (LaidSize size : sizes) {
            PieceLines own = size == largest ? lines : new PieceLines(size, types);
            if (sizeNames.lines().contains(size)) {
                own.cutting();
            }
            own.notches();
            own.darts();
            own.drawnLines();
            if (size == largest) {
                own.foldLine();
                own.folds();
                own.marks();
            } else {
                own.smallPoints();
            }
            all.addAll(own.strokes());
        }
        return List.copyOf(all);
    }

    /** The piece's name; that of a mirrored drawing says so. */
    String name() {
        return name;
    }

    /** Which of the pieces it is, from 1. */
    int number() {
        return number;
    }

    /** How it may be turned where it is laid. */
    Lays.Way way() {
        return way;
    }

    /** The rings round what is cut out, whichever of the sizes is. */
    List<List<Point>> cutting() {
        return cutting;
    }

    private static List<List<Point>> union(List<LaidSize> sizes) {
        Geometry union = OverlayNGRobust.union(sizes.stream()
                .flatMap(size -> size.cutting().stream())
                .map(ring -> (Geometry) JtsBridge.polygon(ring))
                .toList());
        return IntStream.range(0, union.getNumGeometries())
                .mapToObj(i -> JtsBridge.points(((Polygon) union.getGeometryN(i)).getExteriorRing()))
                .toList();
    }

    /** @param joints the strips where pages are joined, which words keep off where they can */
    Result drawn(List<Box> joints) {
        FreeSpace free = FreeSpace.withinRings(isNest ? smallest().cutting() : largest.stitching(), types.clear());
        strokes.forEach(free::take);
        Lettering lettering = new Lettering(free, joints, types);
        boolean isLabelled = lettering.label(label);
        words.set(lettering);
        List<Beside.Row> rows = new ArrayList<>(lettering.rows());
        if (!isLabelled) {
            rows.add(new Beside.Row(Block.wrapped(label, BESIDE).columns().get(0), lettering.inside()));
        }
        if (rows.isEmpty()) {
            return new Result(new Drawn(strokes, lettering.texts()), true);
        }
        Box box = strokes.stream().map(Stroke::bounds).reduce(Box::union).orElseThrow();
        Drawn beside = Beside.of(box, rows, lettering.texts(), types);
        beside.strokes().forEach(free::take);
        boolean isNamed = isLabelled
                || lettering.name(label.get(Label.NAME), edges(), smallest().cutting());
        return new Result(new Drawn(strokes, lettering.texts()).and(beside), isNamed);
    }

    private LaidSize smallest() {
        return sizes.stream()
                .min(Comparator.comparingDouble(size -> size.piece().area()))
                .orElseThrow();
    }

    private List<Path> edges() {
        return largest.piece().edges().stream()
                .filter(edge -> !largest.unfolding().opens(edge))
                .map(Edge::path)
                .flatMap(largest::images)
                .toList();
    }
}
