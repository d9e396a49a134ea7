package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Area;
import dev.hingepoint.svg.page.Clipping;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Tint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What the pictures of one step have in common: which part of the paper they show, how large, and how a shape of the pattern gets there. */
final class Stage {
    /** So much of the paper in mm is shown round what is done. */
    private static final double ROUND = 60;

    /** Where more than this part of the longer side of the paper is to be seen, all of it is: nothing is cut off for little. */
    private static final double MOST = 2.0 / 3;

    /** A picture of less than so many mm of a pattern shows no more than a finger's breadth of line. */
    private static final double LEAST = 140;

    /** Nor is it slimmer than this part of its length. */
    private static final double SLIMMEST = 0.8;

    /** Room for words, in mm of the picture, beside a whole piece. */
    private static final double BESIDE = 26;

    /** What of an edge or a level is shown shorter than this in mm is not named. */
    private static final double NAMED = 8;

    /** Nor where its name would stand farther from it. */
    private static final double NAME = 3;

    /** Where along an edge its name may stand, the best first. */
    private static final List<Double> EDGE_NAMES = List.of(0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9);

    /** The same of a level, which is crossed by darts and the grain in the middle. */
    private static final List<Double> LEVEL_NAMES = List.of(0.02, 0.98, 0.12, 0.88, 0.3, 0.7, 0.5);

    /** What of a shape is less than so many mm2 of the picture is rounding. */
    private static final double ROUNDING = 0.01;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Step step;
    private final Motion upright;
    private final Box whole;
    private final Box region;
    private final View view;
    private final Picture picture;

    /** @param upright lays the piece as it hangs on the body */
    Stage(Step step, Motion upright, Unit unit) {
        this.step = step;
        this.upright = upright;
        Box paper = bounds(step.before().outline()).union(bounds(step.after().outline()));
        this.whole = paper.grownBy(ROUND / 2);
        this.region = region(paper);
        this.view = region.equals(whole)
                ? View.of(region, BESIDE)
                : InPlace.isBelow(region)
                        ? View.of(region, 0, View.WIDTH, View.HEIGHT - InPlace.HEIGHT)
                        : View.of(region, 0, View.WIDTH - InPlace.WIDTH, View.HEIGHT);
        this.picture = new Picture(view, unit);
    }

    /** In which lengths are told. */
    Unit unit() {
        return picture.unit();
    }

    /** From the pattern to the picture. */
    Motion place() {
        return upright.then(view.place());
    }

    /** Whether a place of the pattern is in the picture. */
    boolean shows(Point point) {
        return view.box().distanceTo(place().of(point)) == 0;
    }

    private Box region(Box paper) {
        List<Box> done = new ArrayList<>();
        Stream.concat(step.lines().stream(), step.fills().stream()).forEach(path -> done.add(bounds(path)));
        if (done.isEmpty()) {
            return whole;
        }
        Box box = done.stream().reduce(Box::union).orElseThrow();
        double least = Math.max(LEAST, Math.max(box.width(), box.height()) * SLIMMEST);
        double wider = Math.max(ROUND, (least - box.width()) / 2);
        double higher = Math.max(ROUND, (least - box.height()) / 2);
        Box close = new Box(
                Math.max(box.left() - wider, whole.left()),
                Math.max(box.top() - higher, whole.top()),
                Math.min(box.right() + wider, whole.right()),
                Math.min(box.bottom() + higher, whole.bottom()));
        boolean isMost = paper.height() > paper.width()
                ? close.height() > MOST * paper.height()
                : close.width() > MOST * paper.width();
        return isMost ? whole : close;
    }

    private Box bounds(Path path) {
        return path.moved(upright).bounds();
    }

    /** Half way along a line of the pattern, in the picture. */
    Point middle(Path line) {
        return place().of(line.at(line.length() / 2));
    }

    /** How large a shape of the picture is, in mm2 of the pattern. */
    double size(Geometry geometry) {
        return geometry.getArea() / view.scale() / view.scale();
    }

    /** @param lettered sets the words */
    Scene scene(Scene.Kind kind, String caption, List<Area> areas, List<Stroke> strokes, Consumer<Labels> lettered) {
        Scene scene = picture.scene(kind, caption, step.after().name(), areas, strokes, lettered);
        return region.equals(whole)
                ? scene
                : new InPlace(step.after().outline().moved(upright), whole, region).beside(scene);
    }

    /** Sets the names of its edges and levels, where enough of them is shown and there is room beside them. */
    void names(Piece piece, Labels labels) {
        piece.edges().forEach(edge -> named(edge.name(), edge.path(), EDGE_NAMES, labels));
        piece.marks(Level.class).forEach(level -> named(level.name(), level.path(), LEVEL_NAMES, labels));
    }

    private void named(String name, Path path, List<Double> fractions, Labels labels) {
        Clipping.clipped(PaperLines.stroke(Style.STITCHING, path, place()), view.box()).stream()
                .filter(part -> part.points().size() > 1)
                .map(part -> Path.through(part.points()))
                .filter(part -> part.length() > NAMED)
                .max(Comparator.comparingDouble(Path::length))
                .ifPresent(part -> labels.nameNear(
                        name,
                        fractions.stream()
                                .map(fraction -> part.at(fraction * part.length()))
                                .toList(),
                        NAME));
    }

    /** A shape of the pattern, where a motion takes it, in the picture. */
    Polygon polygon(Path outline, Motion motion) {
        return JtsBridge.polygon(outline.moved(motion).moved(place()).flatten(PaperLines.FLAT));
    }

    /** A place well inside a shape of the picture, so far as that is shown. */
    Point inside(Geometry polygon) {
        Geometry shown = polygon.intersection(box());
        Coordinate at = (shown.isEmpty() ? polygon : shown).getInteriorPoint().getCoordinate();
        return new Point(at.x, at.y);
    }

    private Geometry box() {
        Box box = view.box();
        return FACTORY.toGeometry(new Envelope(box.left(), box.right(), box.top(), box.bottom()));
    }

    /** A piece as a sheet of paper. */
    List<Area> paper(Piece piece) {
        return area(Tint.STAYS, polygon(piece.outline(), Motion.STAY));
    }

    /** What of a shape of the picture is shown, tinted. */
    List<Area> area(Tint tint, Geometry shape) {
        Geometry shown = OverlayNGRobust.overlay(shape, box(), OverlayNG.INTERSECTION);
        return IntStream.range(0, shown.getNumGeometries())
                .mapToObj(shown::getGeometryN)
                .filter(part -> part instanceof Polygon && part.getArea() > ROUNDING)
                .map(part -> new Area(tint, JtsBridge.points(((Polygon) part).getExteriorRing())))
                .toList();
    }
}
