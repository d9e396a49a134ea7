package dev.hingepoint.svg.page;

import dev.hingepoint.Reason;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** One piece as it is cut, upright with its grain: every line that is drawn, and every word, as {@link Lettering} sets them. */
final class PieceDrawing {
    /** How far in mm words keep from lines and from one another, and how closely the outline is drawn that they lie within. */
    private static final double CLEAR = 1;

    private static final double OUTLINE = 0.1;

    /** Width of an arrow's head in mm. */
    private static final double HEAD = 3;

    /** How far in mm the arms of a point's cross reach. */
    private static final double CROSS = 5;

    /** Length of a fold's bracket, at most, and how far in mm its line stands from the fold. */
    private static final double BRACKET = 120;

    private static final double BRACKET_DEPTH = 12;

    private final Draft draft;
    private final Piece piece;
    private final CuttingLine cutting;
    private final List<Stroke> strokes = new ArrayList<>();
    private final FreeSpace free;

    /** The line of each fold's bracket. */
    private final List<Path> folds = new ArrayList<>();

    private PieceDrawing(Draft draft, Piece piece) {
        this.draft = draft;
        this.piece = piece;
        this.cutting = CuttingLine.of(draft, piece);
        this.free = FreeSpace.within(piece.outline().flatten(OUTLINE), CLEAR);
    }

    /**
     * A piece as it is drawn.
     *
     * @param isNamed whether its name is on its paper, and not only beside it
     */
    record Result(Drawn drawn, boolean isNamed) {}

    /**
     * @param label its lines, the second of them the piece's name
     * @param joints the strips where pages are joined, which words keep off where they can
     */
    static Result of(Draft draft, Piece drawn, List<String> label, List<Box> joints) {
        Vector down = drawn.grain().down();
        Vector upright = new Vector(0, 1);
        Piece piece = down.equals(upright)
                ? drawn
                : drawn.moved(Motion.turn(drawn.outline().bounds().centre(), down, upright));
        return new PieceDrawing(draft, piece).drawn(label, joints);
    }

    static List<PieceDrawing> of(List<Draft> sizes, PrintOptions options) {
        Draft d = sizes.get(0);
        List<PieceDrawing> all = new ArrayList<>();
        for (int i = 0; i < d.pieces().size(); i++) {
            Piece drawn = d.pieces().get(i);
            Vector down = drawn.grain().down();
            Vector upright = new Vector(0, 1);
            Piece piece = down.equals(upright)
                    ? drawn
                    : drawn.moved(Motion.turn(drawn.outline().bounds().centre(), down, upright));
            PieceDrawing one = new PieceDrawing(d, piece);
            one.label = Label.lines(d, drawn, i + 1, d.pieces().size(), options);
            all.add(one);
        }
        return all;
    }

    List<String> label;

    String name() {
        return piece.name();
    }

    String toTick() {
        return piece.name();
    }

    dev.hingepoint.pattern.Lays.Way way() {
        return draft.pattern().card().lays().of(piece);
    }

    List<List<Point>> cutting() {
        return List.of(cutting.outline());
    }

    Result drawn(List<Box> joints) {
        return new PieceDrawing(draft, piece).drawn(label, joints);
    }

    private Result drawn(List<String> label, List<Box> joints) {
        lines();
        Lettering lettering = new Lettering(piece, free, cutting.outline(), joints);
        boolean isLabelled = lettering.label(label);
        words(lettering);
        List<Beside.Row> rows = new ArrayList<>(lettering.rows());
        if (!isLabelled) {
            rows.add(new Beside.Row(label, lettering.inside()));
        }
        if (rows.isEmpty()) {
            return new Result(new Drawn(strokes, lettering.texts()), true);
        }
        Drawn beside = Beside.of(strokes.get(0).bounds(), rows, lettering.texts());
        beside.strokes().forEach(free::take);
        boolean isNamed = isLabelled || lettering.name(label.get(1));
        return new Result(new Drawn(strokes, lettering.texts()).and(beside), isNamed);
    }

    private void lines() {
        draw(Style.CUTTING, cutting.outline());
        cutting.notches().forEach(notch -> draw(Style.MARK, List.of(notch.start(), notch.end())));
        for (Edge edge : piece.edges()) {
            draw(edge.kind() == Edge.Kind.FOLD ? Style.FOLD : Style.STITCHING, flat(edge.path()));
        }
        piece.edges().stream().filter(edge -> edge.kind() == Edge.Kind.FOLD).forEach(edge -> fold(edge.path()));
        piece.marks(Dart.class).forEach(this::dart);
        piece.marks(Level.class).forEach(level -> draw(Style.LEVEL, flat(level.path())));
        piece.marks(DrawnLine.class).forEach(line -> draw(Style.MARK, flat(line.path())));
        piece.marks(MarkedPoint.class).forEach(this::point);
        piece.marks(Grain.class).forEach(grain -> arrow(grain.line(), true));
    }

    private void words(Lettering lettering) {
        piece.marks(Level.class)
                .forEach(level -> lettering.along(
                        level.path(),
                        level.name() + " " + Reason.millimetres(Math.rint(draft.girth(level.name()))) + " round"));
        piece.marks(DrawnLine.class).forEach(line -> lettering.along(line.path(), line.name()));
        folds.forEach(line -> lettering.along(line, "place on fold"));
        piece.marks(MarkedPoint.class).forEach(point -> lettering.beside(point.at(), CROSS, point.name()));
        piece.marks(Dart.class).forEach(dart -> lettering.along(dart.legs().get(0), pressed(dart)));
    }

    private void draw(Style style, List<Point> points) {
        Stroke stroke = new Stroke(style, points);
        strokes.add(stroke);
        free.take(stroke);
    }

    private static List<Point> flat(Path path) {
        return path.flatten(Tolerance.FLATTENING);
    }

    private void point(MarkedPoint point) {
        Vector across = new Vector(CROSS, 0);
        Vector down = new Vector(0, CROSS);
        draw(Style.MARK, List.of(point.at().minus(across), point.at().plus(across)));
        draw(Style.MARK, List.of(point.at().minus(down), point.at().plus(down)));
        List<Point> circle = IntStream.rangeClosed(0, 24)
                .mapToObj(i ->
                        point.at().plus(Vector.ofAngle(i * StrictMath.PI / 12).times(CROSS / 2)))
                .toList();
        draw(Style.MARK, circle);
    }

    /** A bracket whose two arrows point at the fold (common practice). */
    private void fold(Path fold) {
        Point middle = fold.at(fold.length() / 2);
        Vector along = fold.end().minus(fold.start()).unit();
        Vector inwards = piece.isClockwise() ? along.right() : along.left();
        double room = piece.outline().crossings(middle, inwards).stream()
                .map(piece.outline()::at)
                .mapToDouble(point -> point.minus(middle).dot(inwards))
                .filter(far -> far > Tolerance.JOINING)
                .min()
                .orElse(BRACKET_DEPTH);
        Vector depth = inwards.times(Math.min(BRACKET_DEPTH, room / 3));
        Vector half = along.times(Math.min(BRACKET, fold.length() / 2) / 2);
        Point first = middle.minus(half);
        Point second = middle.plus(half);
        arrow(new Line(first.plus(depth), first), false);
        arrow(new Line(second.plus(depth), second), false);
        Path bracket = Path.through(first.plus(depth), second.plus(depth));
        draw(Style.MARK, flat(bracket));
        folds.add(bracket);
    }

    private void dart(Dart dart) {
        dart.legs().forEach(leg -> draw(Style.DART, flat(leg)));
        Line across = across(dart);
        Point middle = across.at(0.5);
        Vector reach = across.step().times(0.3);
        arrow(new Line(middle.minus(reach), middle.plus(reach)), false);
    }

    /** From leg to leg across the dart, in the direction in which it is pressed. */
    private Line across(Dart dart) {
        if (dart instanceof EdgeDart edge) {
            Vector half = CuttingLine.pressedTowards(piece, edge).times(edge.intake() / 2 * 0.88);
            Point middle = edge.mouthMiddle().towards(edge.tip(), 0.12);
            return new Line(middle.minus(half), middle.plus(half));
        }
        // an upright dart is pressed to the centre; the arrow stands a little below its widest
        Path one = dart.legs().get(0);
        Path other = dart.legs().get(1).reversed();
        Point first = one.at(one.length() * 0.56);
        Point second = other.at(other.length() * 0.56);
        boolean isFirstNearer = piece.centre()
                .map(edge -> edge.path().distanceTo(first) < edge.path().distanceTo(second))
                .orElse(true);
        return isFirstNearer ? new Line(second, first) : new Line(first, second);
    }

    private String pressed(Dart dart) {
        return Math.abs(across(dart).tangent(0).dot(piece.grain().down())) > 0.7 ? "fold down" : "fold to the centre";
    }

    private void arrow(Line line, boolean isDouble) {
        draw(Style.MARK, List.of(line.start(), line.end()));
        head(line.end(), line.tangent(1));
        if (isDouble) {
            head(line.start(), line.tangent(0).negated());
        }
    }

    private void head(Point tip, Vector direction) {
        Vector back = direction.times(-4 * HEAD / 3);
        draw(
                Style.MARK,
                List.of(
                        tip.plus(back).plus(direction.left().times(HEAD / 2)),
                        tip,
                        tip.plus(back).plus(direction.right().times(HEAD / 2))));
    }
}
