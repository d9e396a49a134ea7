package dev.hingepoint.svg.lesson;

import dev.hingepoint.Refusal;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Carries an alteration from nothing to its full amount, and writes down every line on the way. */
final class CarryWriter {
    /** Frames after the first, which is the pattern as it was. */
    private static final int STEPS = 12;

    /** So much of the paper in mm is shown round all pieces. */
    private static final double ROUND = 30;

    /** So much of the paper in mm is shown round what moves. */
    private static final double BESIDE = 60;

    private final Altered whole;
    private final Map<String, Double> amounts;
    private final Map<String, Motion> places = new LinkedHashMap<>();
    private final Unit unit;

    private CarryWriter(SortedMap<Integer, Altered> parts, Options options, Together together, Unit unit) {
        this.whole = parts.get(STEPS);
        this.amounts = growing(parts.get(parts.firstKey()), fraction(parts.firstKey()), whole, options);
        this.unit = unit;
        Motion fine = Motion.enlargement(Carry.UNITS);
        together.places().forEach((piece, place) -> places.put(piece, place.then(fine)));
    }

    static Carry of(Draft before, Alteration alteration, Options options, Altered whole, Together together, Unit unit) {
        SortedMap<Integer, Altered> parts = parts(before, alteration, options);
        parts.put(STEPS, whole);
        CarryWriter writer = new CarryWriter(parts, options, together, unit);
        List<Draft> drafts = new ArrayList<>(List.of(before));
        List<Carry.Frame> frames = new ArrayList<>(List.of(writer.frame(0, before)));
        for (int step = 1; step <= STEPS; step++) {
            if (parts.containsKey(step)) {
                drafts.add(parts.get(step).draft());
                frames.add(writer.frame(fraction(step), parts.get(step).draft()));
            } else {
                frames.add(frames.get(step - 1));
            }
        }
        Box box = writer.box(drafts);
        return new Carry(box, writer.moves(box), frames, writer.places);
    }

    /**
     * What works of it; a part may be refused where the whole is not: a hem that cuts off a level whole may not cut into it; and what cannot be cut out with its seam allowance
     * cannot be shown.
     */
    private static SortedMap<Integer, Altered> parts(Draft before, Alteration alteration, Options options) {
        SortedMap<Integer, Altered> parts = new TreeMap<>();
        for (int step = 1; step < STEPS; step++) {
            try {
                Altered part = Catalogue.checked(before, alteration, options.carriedTo(fraction(step)));
                Together.changed(before, part.draft()).forEach(piece -> CuttingLine.of(part.draft(), piece));
                parts.put(step, part);
            } catch (Refusal leftOut) {
                // the frame before stands in its place
            }
        }
        return parts;
    }

    private static double fraction(int step) {
        return (double) step / STEPS;
    }

    /** The amounts that grow evenly from nothing: a place stays where it is, and a width that is wished is come to from the width that there was. */
    private static Map<String, Double> growing(Altered first, double fraction, Altered whole, Options options) {
        Map<String, Double> growing = new LinkedHashMap<>();
        whole.amounts().forEach((name, amount) -> {
            if (amount instanceof Double full
                    && full != 0
                    && first.amounts().get(name) instanceof Double part
                    && Math.abs(part - fraction * full) < Tolerance.COINCIDENT) {
                growing.put(full < 0 ? ordered(name, full, whole, options) : name, Math.abs(full));
            }
        });
        return growing;
    }

    /** What is less than nothing of one thing may have been ordered as so much of its opposite: an apex that goes down by -10 mm is raised. */
    private static String ordered(String name, double full, Altered whole, Options options) {
        return options.names().stream()
                .filter(option -> !options.has(name)
                        && !whole.amounts().containsKey(option)
                        && Math.abs(lengthOf(option, options) + full) < Tolerance.COINCIDENT)
                .findFirst()
                .orElse(name);
    }

    /** In mm; nothing, for an option that is no length. */
    private static double lengthOf(String option, Options options) {
        try {
            return options.length(option).map(Length::mm).orElse(0.0);
        } catch (Refusal isNoLength) {
            return 0;
        }
    }

    private Box box(List<Draft> drafts) {
        return drafts.stream()
                .flatMap(draft -> places.keySet().stream()
                        .map(name -> Box.around(places.get(name)
                                .of(CuttingLine.of(draft, draft.piece(name)).outline()))))
                .reduce(Box::union)
                .orElse(new Box(0, 0, 1, 1))
                .grownBy(ROUND * Carry.UNITS);
    }

    /** Where the steps draw, cut and fill; all of it, where they do nothing of that. */
    private Box moves(Box box) {
        return whole.steps().stream()
                .filter(step -> places.containsKey(step.after().name()))
                .flatMap(step -> Stream.concat(step.lines().stream(), step.fills().stream())
                        .map(path -> path.moved(places.get(step.after().name())).bounds()))
                .reduce(Box::union)
                .map(moves -> within(moves.grownBy(BESIDE * Carry.UNITS), box))
                .orElse(box);
    }

    private static Box within(Box inner, Box outer) {
        return new Box(
                Math.max(inner.left(), outer.left()),
                Math.max(inner.top(), outer.top()),
                Math.min(inner.right(), outer.right()),
                Math.min(inner.bottom(), outer.bottom()));
    }

    /** "wedge 3 mm of 12 mm"; where no amount grows, how much of the way. */
    private String told(double fraction) {
        return amounts.isEmpty()
                ? Math.round(100 * fraction) + " % of the way"
                : amounts.entrySet().stream()
                        .map(amount -> amount.getKey() + " " + length(fraction * amount.getValue()) + " of "
                                + length(amount.getValue()))
                        .collect(Collectors.joining(", "));
    }

    private String length(double mm) {
        return Length.retold(new Length(mm).tenths().toString(), unit);
    }

    private Carry.Frame frame(double fraction, Draft draft) {
        List<Carry.Line> lines = new ArrayList<>();
        lines.add(line(Style.STITCHING, draft, piece -> edges(piece, false)));
        lines.add(line(Style.ON_FOLD, draft, piece -> edges(piece, true)));
        lines.add(line(Style.DART, draft, piece -> piece.marks(Dart.class).flatMap(dart -> dart.legs().stream())));
        lines.add(line(Style.LEVEL, draft, piece -> piece.marks(Level.class).map(Level::path)));
        lines.add(line(
                Style.MARK,
                draft,
                piece -> Stream.concat(
                        piece.marks(Notch.class).map(notch -> Path.of(notch.line())),
                        piece.marks(DrawnLine.class).map(DrawnLine::path))));
        lines.add(cutting(draft));
        return new Carry.Frame(fraction, told(fraction), lines);
    }

    private static Stream<Path> edges(Piece piece, boolean onFold) {
        return piece.edges().stream()
                .filter(edge -> (edge.kind() == Edge.Kind.FOLD) == onFold)
                .map(Edge::path);
    }

    private Carry.Line line(Style style, Draft draft, Function<Piece, Stream<Path>> drawn) {
        PathWriter data = new PathWriter();
        places.forEach((name, place) -> drawn.apply(draft.piece(name)).forEach(path -> data.add(path.moved(place))));
        return new Carry.Line(style.layer(), style, data.toString());
    }

    private Carry.Line cutting(Draft draft) {
        PathWriter data = new PathWriter();
        places.forEach((name, place) ->
                data.add(place.of(CuttingLine.of(draft, draft.piece(name)).outline())));
        return new Carry.Line(Style.CUTTING.layer(), Style.CUTTING, data.toString());
    }
}
