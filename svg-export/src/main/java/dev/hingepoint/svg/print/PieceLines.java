package dev.hingepoint.svg.print;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The lines of one size of a piece on its drawing. What stands for something, an arrow or a cross, is as large at any scale. */
final class PieceLines {
    /** Width of an arrow's head in mm, at most. */
    private static final double HEAD = 3;

    /** How far in mm the arms of a point's cross reach. */
    private static final double CROSS = 5;

    /** The same for one size of several, whose points lie close together. */
    private static final double SMALL_CROSS = 2;

    /** Length of a fold's bracket, and how far in mm its line stands from the fold; at most so large a part of the fold and of the paper beside it. */
    private static final double BRACKET = 120;

    private static final double BRACKET_DEPTH = 12;
    private static final double BRACKET_PART = 1.0 / 3;
    private static final double BRACKET_DEPTH_PART = 1.0 / 8;

    private final LaidSize size;
    private final Piece piece;
    private final double signs;
    private final List<Stroke> strokes = new ArrayList<>();

    /** The edges on the fold of the cloth as they lie on the drawing, and all others. */
    private final List<Path> folds;

    private final List<Path> others;

    /** The line of each fold's bracket. */
    private final List<Path> brackets = new ArrayList<>();

    PieceLines(LaidSize size, TypeSizes types) {
        this.size = size;
        this.piece = size.piece();
        this.signs = types.signs();
        Map<Boolean, List<Path>> edges = piece.edges().stream()
                .collect(Collectors.partitioningBy(
                        edge -> edge.kind() == Edge.Kind.FOLD
                                && !size.unfolding().opens(edge),
                        Collectors.mapping(edge -> edge.path().moved(size.place()), Collectors.toList())));
        this.folds = edges.get(true);
        this.others = edges.get(false);
    }

    List<Stroke> strokes() {
        return strokes;
    }

    List<Path> brackets() {
        return brackets;
    }

    /** How far in mm the mark of a point reaches. */
    double cross() {
        return CROSS * signs;
    }

    /** Where it lies on the fold of the cloth, nothing is cut. */
    void cutting() {
        runs(false).forEach(run -> draw(size.style(), run));
    }

    /** The fold, as far as the paper lies on it: with the allowances at its ends. */
    void foldLine() {
        runs(true).forEach(run -> draw(Style.FOLD, run));
    }

    /** The stretches of the cutting line on a fold, or those off it. */
    private List<List<Point>> runs(boolean areOnFold) {
        List<List<Point>> runs = new ArrayList<>();
        for (List<Point> ring : size.cutting()) {
            List<Point> run = new ArrayList<>();
            for (int i = 1; i < ring.size(); i++) {
                if (isOnFold(ring.get(i - 1), ring.get(i)) != areOnFold) {
                    end(run, runs);
                    continue;
                }
                if (run.isEmpty()) {
                    run.add(ring.get(i - 1));
                }
                run.add(ring.get(i));
            }
            end(run, runs);
        }
        return runs;
    }

    private static void end(List<Point> run, List<List<Point>> runs) {
        if (!run.isEmpty()) {
            runs.add(List.copyOf(run));
            run.clear();
        }
    }

    private boolean isOnFold(Point one, Point other) {
        Point middle = one.midpoint(other);
        return folds.stream()
                        .anyMatch(fold -> isInLine(fold, one) && isInLine(fold, other)
                                || fold.distanceTo(middle) <= Tolerance.FLATTENING)
                && others.stream().noneMatch(edge -> edge.distanceTo(middle) <= Tolerance.FLATTENING);
    }

    private static boolean isInLine(Path fold, Point point) {
        Vector along = fold.end().minus(fold.start()).unit();
        return Math.abs(along.cross(point.minus(fold.start()))) <= Tolerance.FLATTENING;
    }

    void notches() {
        size.line().notches().forEach(notch -> draw(Style.MARK, Path.of(notch)));
    }

    void stitching() {
        for (Edge edge : piece.edges()) {
            if (edge.kind() != Edge.Kind.FOLD) {
                draw(Style.STITCHING, edge.path());
            }
        }
    }

    void original(List<Path> lines) {
        lines.forEach(line -> draw(Style.BEFORE, line));
    }

    void folds() {
        for (Edge edge : piece.edges()) {
            if (size.unfolding().opens(edge)) {
                draw(Style.CENTRE, flat(edge.path().moved(size.place())));
            } else if (edge.kind() == Edge.Kind.FOLD) {
                bracket(edge);
            }
        }
    }

    /** Of several sizes each has its darts in lines like its cutting line, to tell them apart. */
    void darts() {
        Style style = size.style() == Style.CUTTING ? Style.DART : size.style();
        piece.marks(Dart.class).flatMap(dart -> dart.legs().stream()).forEach(leg -> draw(style, leg));
    }

    /** A bias strip's grain is such a line; laid open, the strip has one grain, and not the image of it as well. */
    void drawnLines() {
        piece.marks(DrawnLine.class)
                .forEach(line -> size.images(line.path())
                        .limit(line.name().equals(Grain.SLANTING) ? 1 : Long.MAX_VALUE)
                        .forEach(image -> draw(Style.MARK, flat(image))));
    }

    void smallPoints() {
        piece.marks(MarkedPoint.class)
                .flatMap(point -> size.images(point.at()))
                .forEach(at -> cross(at, SMALL_CROSS * signs));
    }

    /** What is drawn of one size only, where several lie in one another. */
    void marks() {
        piece.marks(Dart.class)
                .forEach(dart ->
                        size.images(Path.of(pressed(dart))).forEach(across -> arrow(across.start(), across.end(), 1)));
        piece.marks(Level.class).forEach(level -> draw(Style.LEVEL, level.path()));
        piece.marks(MarkedPoint.class).flatMap(point -> size.images(point.at())).forEach(this::point);
        piece.marks(Grain.class)
                .map(grain -> grain.line().moved(size.place()))
                .forEach(line -> arrow(line.start(), line.end(), 2));
    }

    private void draw(Style style, Path path) {
        size.images(path).forEach(image -> draw(style, flat(image)));
    }

    private void draw(Style style, List<Point> points) {
        strokes.add(new Stroke(style, points));
    }

    private static List<Point> flat(Path path) {
        return path.flatten(Tolerance.FLATTENING);
    }

    private void cross(Point at, double arm) {
        Vector across = new Vector(arm, 0);
        Vector down = new Vector(0, arm);
        draw(Style.MARK, List.of(at.minus(across), at.plus(across)));
        draw(Style.MARK, List.of(at.minus(down), at.plus(down)));
    }

    private void point(Point at) {
        cross(at, cross());
        List<Point> circle = IntStream.rangeClosed(0, 24)
                .mapToObj(i -> at.plus(Vector.ofAngle(i * StrictMath.PI / 12).times(cross() / 2)))
                .toList();
        draw(Style.MARK, circle);
    }

    /** A bracket whose two arrows point at the fold (common practice). */
    private void bracket(Edge edge) {
        Path fold = edge.path().moved(size.place());
        Path outline = piece.outline().moved(size.place());
        Point middle = fold.at(fold.length() / 2);
        Vector along = fold.end().minus(fold.start()).unit();
        Vector onPaper = edge.path().end().minus(edge.path().start()).unit();
        Vector inwards = size.place().of(piece.inwards(onPaper)).unit();
        double room = outline.crossings(middle, inwards).stream()
                .map(outline::at)
                .mapToDouble(point -> point.minus(middle).dot(inwards))
                .filter(far -> far > Tolerance.JOINING)
                .min()
                .orElse(BRACKET_DEPTH * signs);
        Vector depth = inwards.times(Math.min(BRACKET_DEPTH * signs, room * BRACKET_DEPTH_PART));
        Vector half = along.times(Math.min(BRACKET * signs, fold.length() * BRACKET_PART) / 2);
        Point first = middle.minus(half);
        Point second = middle.plus(half);
        arrow(first.plus(depth), first, 1);
        arrow(second.plus(depth), second, 1);
        Path bracket = Path.through(first.plus(depth), second.plus(depth));
        draw(Style.MARK, flat(bracket));
        brackets.add(bracket);
    }

    /** The arrow across a dart, from leg to leg, in the direction in which it is pressed. */
    private Line pressed(Dart dart) {
        Line across = across(dart);
        Vector reach = across.step().times(0.3);
        return new Line(across.at(0.5).minus(reach), across.at(0.5).plus(reach));
    }

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

    /** Which way a dart is pressed, in words. */
    String pressedWords(Dart dart) {
        return Math.abs(across(dart).tangent(0).dot(piece.grain().down())) > 0.7 ? "fold down" : "fold to the centre";
    }

    /** An arrow with one head, at its end, or two; a short arrow has small heads. */
    private void arrow(Point from, Point to, int heads) {
        draw(Style.MARK, List.of(from, to));
        Vector direction = to.minus(from).unit();
        double width = Math.min(HEAD * signs, from.distanceTo(to) / (2 * heads));
        head(to, direction, width);
        if (heads == 2) {
            head(from, direction.negated(), width);
        }
    }

    private void head(Point tip, Vector direction, double width) {
        Point back = tip.minus(direction.times(4 * width / 3));
        Vector aside = direction.left().times(width / 2);
        draw(Style.MARK, List.of(back.plus(aside), tip, back.minus(aside)));
    }
}
