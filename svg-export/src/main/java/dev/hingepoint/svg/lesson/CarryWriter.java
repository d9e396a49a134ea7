package dev.hingepoint.svg.lesson;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
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
import java.util.stream.Stream;

/** Carries an alteration from nothing to its full amount, and writes down every line on the way. */
final class CarryWriter {
    /** Frames after the first, which is the pattern as it was. */
    private static final int STEPS = 12;

    private static final double HUNDREDTHS = 100;
    private static final double ROUND = 30;

    /** So much of the paper in mm is shown round what moves. */
    private static final double BESIDE = 60;

    private final Draft before;
    private final Altered whole;
    private final Map<String, Motion> places;
    private final Unit unit;

    private CarryWriter(Draft before, Altered whole, Together together, Unit unit) {
        this.before = before;
        this.whole = whole;
        this.unit = unit;
        this.places = new LinkedHashMap<>();
        Motion fine = Motion.stretch(new Point(0, 0), new Vector(1, 0), HUNDREDTHS)
                .then(Motion.stretch(new Point(0, 0), new Vector(0, 1), HUNDREDTHS));
        together.places().forEach((piece, place) -> places.put(piece, place.then(fine)));
    }

    static Carry of(Draft before, Alteration alteration, Options options, Altered whole, Together together, Unit unit) {
        CarryWriter writer = new CarryWriter(before, whole, together, unit);
        List<Draft> drafts = new ArrayList<>(List.of(before));
        List<Carry.Frame> frames = new ArrayList<>();
        frames.add(writer.frame(0, writer.told(0, Map.of()), before));
        for (int i = 1; i <= STEPS; i++) {
            double fraction = (double) i / STEPS;
            Altered part = i == STEPS ? whole : Catalogue.checked(before, alteration, options.carriedTo(fraction));
            drafts.add(part.draft());
            frames.add(writer.frame(fraction, writer.told(fraction, part.amounts()), part.draft()));
        }
        Box box = writer.box(drafts);
        return new Carry(box, writer.moves(box), frames, writer.places);
    }

    private Box box(List<Draft> drafts) {
        return drafts.stream()
                .flatMap(draft -> places.keySet().stream()
                        .map(name -> Box.around(places.get(name)
                                .of(CuttingLine.of(draft, draft.piece(name)).outline()))))
                .reduce(Box::union)
                .orElse(new Box(0, 0, 1, 1))
                .grownBy(ROUND * HUNDREDTHS);
    }

    /** Where the steps draw, cut and fill; all of it, where they do nothing of that. */
    private Box moves(Box box) {
        return whole.steps().stream()
                .filter(step -> places.containsKey(step.after().name()))
                .flatMap(step -> Stream.concat(step.lines().stream(), step.fills().stream())
                        .map(path -> path.moved(places.get(step.after().name())).bounds()))
                .reduce(Box::union)
                .map(moves -> within(moves.grownBy(BESIDE * HUNDREDTHS), box))
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
    private String told(double fraction, Map<String, Object> amounts) {
        List<String> told = new ArrayList<>();
        whole.amounts().forEach((name, all) -> {
            Object now = fraction == 0 ? Double.valueOf(0) : amounts.get(name);
            if (all instanceof Double full && now instanceof Double part && full != 0 && isCarried(name, full)) {
                told.add(name + " " + millimetres(part) + " of " + millimetres(full));
            }
        });
        return told.isEmpty() ? Math.round(100 * fraction) + " % of the way" : String.join(", ", told);
    }

    private boolean isCarried(String name, double full) {
        return full != 0 && !name.equals("above");
    }

    private String millimetres(double mm) {
        return Length.retold(new Length(mm).tenths().toString(), unit);
    }

    private Carry.Frame frame(double fraction, String told, Draft draft) {
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
        return new Carry.Frame(fraction, told, lines);
    }

    private static Stream<Path> edges(Piece piece, boolean onFold) {
        return piece.edges().stream()
                .filter(edge -> (edge.kind() == Edge.Kind.FOLD) == onFold)
                .map(Edge::path);
    }

    private interface Drawing {
        Stream<Path> of(Piece piece);
    }

    private Carry.Line line(Style style, Draft draft, Drawing drawing) {
        PathWriter data = new PathWriter();
        places.forEach((name, place) -> drawing.of(draft.piece(name)).forEach(path -> data.add(path.moved(place))));
        return new Carry.Line(style.layer(), style, data.toString());
    }

    private Carry.Line cutting(Draft draft) {
        PathWriter data = new PathWriter();
        places.forEach((name, place) ->
                data.add(place.of(CuttingLine.of(draft, draft.piece(name)).outline())));
        return new Carry.Line(Style.CUTTING.layer(), Style.CUTTING, data.toString());
    }
}
