package dev.hingepoint.svg.lesson;

import dev.hingepoint.Reason;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Area;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Tint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/**
 * The pictures of one step: of a cut, its lines, the slashes, the parts as they move, and what is filled or taken away; of anything else, the lines before and after. All of it comes from
 * the {@link Step}.
 */
final class StepScenes {
    /** So much of the paper in mm is shown round what is done. */
    private static final double ROUND = 60;

    /** A picture of less than so many mm of a pattern shows no more than a finger's breadth of line. */
    private static final double LEAST = 140;

    /** Nor is it slimmer than this part of its length. */
    private static final double SLIMMEST = 0.8;

    /** Radius in mm of the ring round a hinge. */
    private static final double HINGE = 2;

    /** Less than so many mm of the picture is not shown by an arrow. */
    private static final double SHOWN = 0.4;

    /** Paper let in or taken away of less than so many mm2 is rounding. */
    private static final double PAPER = 1;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Step step;
    private final Motion upright;
    private final StepWords words;
    private final Unit unit;
    private final View view;
    private final Motion place;

    StepScenes(Step step, Motion upright, Unit unit) {
        this.step = step;
        this.upright = upright;
        this.words = new StepWords(step);
        this.unit = unit;
        this.view = View.of(region(), 0);
        this.place = upright.then(view.place());
    }

    List<Scene> scenes() {
        return step.isCut() ? List.of(lines(), slashed(), moved(), rejoined()) : List.of(trued());
    }

    private Box region() {
        Box paper = bounds(step.before().outline()).union(bounds(step.after().outline()));
        List<Box> done = new ArrayList<>();
        Stream.concat(step.lines().stream(), step.fills().stream()).forEach(path -> done.add(bounds(path)));
        if (done.isEmpty()) {
            return paper.grownBy(ROUND / 2);
        }
        Box box = done.stream().reduce(Box::union).orElseThrow();
        double least = Math.max(LEAST, Math.max(box.width(), box.height()) * SLIMMEST);
        double wider = Math.max(ROUND, (least - box.width()) / 2);
        double higher = Math.max(ROUND, (least - box.height()) / 2);
        return new Box(
                Math.max(box.left() - wider, paper.left() - ROUND / 2),
                Math.max(box.top() - higher, paper.top() - ROUND / 2),
                Math.min(box.right() + wider, paper.right() + ROUND / 2),
                Math.min(box.bottom() + higher, paper.bottom() + ROUND / 2));
    }

    private Box bounds(Path path) {
        return path.moved(upright).bounds();
    }

    private Scene lines() {
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.before(), place));
        step.lines().forEach(line -> strokes.add(PaperLines.stroke(Style.SLASH, line, place)));
        return scene(Scene.Kind.LINES, words.lines(), List.of(), strokes, labels -> {
            if (step.lines().size() > 1) {
                IntStream.range(0, step.lines().size())
                        .forEach(i -> labels.name(
                                String.valueOf(i + 1), middle(step.lines().get(i))));
            }
        });
    }

    private Point middle(Path line) {
        return place.of(line.at(line.length() / 2));
    }

    private Scene slashed() {
        List<Area> areas = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        Map<Step.Part, String> names = names();
        int number = 0;
        for (Step.Part part : names.keySet()) {
            areas.addAll(area(tint(part, part.isMoved() ? number++ : number), polygon(part.outline(), Motion.STAY)));
            strokes.add(PaperLines.stroke(Style.DRAWN, part.outline(), place));
        }
        strokes.addAll(PaperLines.of(step.before(), place));
        step.hinges().forEach(hinge -> strokes.add(PaperLines.circle(Style.HINGE, place.of(hinge), HINGE)));
        return scene(Scene.Kind.SLASHED, words.slashed(), areas, strokes, labels -> {
            names.forEach((part, name) -> labels.name(name, inside(polygon(part.outline(), Motion.STAY))));
            step.hinges().stream().limit(1).forEach(hinge -> labels.nameNear("hinge", place.of(hinge), 4));
        });
    }

    private Scene moved() {
        List<Area> areas = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        Map<Step.Part, String> names = names();
        Map<Step.Part, Double> ways = new LinkedHashMap<>();
        Map<Point, String> amounts = new LinkedHashMap<>();
        int number = 0;
        for (Step.Part part : names.keySet()) {
            Tint tint = tint(part, part.isMoved() ? number++ : number);
            Point farthest = farthest(part);
            double way = farthest.distanceTo(part.motion().of(farthest));
            ways.put(part, way);
            if (part.isFolded()) {
                strokes.add(PaperLines.stroke(Style.LEFT, part.outline(), place));
                continue;
            }
            areas.addAll(area(tint, polygon(part.outline(), part.motion())));
            strokes.add(PaperLines.stroke(Style.DRAWN, part.outline().moved(part.motion()), place));
            if (part.isMoved()) {
                strokes.add(PaperLines.stroke(Style.LEFT, part.outline(), place));
                for (Point from : arrowed(part, farthest)) {
                    List<Point> path = way(part, from);
                    if (path.get(0).distanceTo(path.get(path.size() - 1)) > SHOWN) {
                        strokes.addAll(PaperLines.arrow(Style.WAY, path));
                        amounts.put(
                                path.get(path.size() / 2),
                                Reason.millimetres(
                                        tenth(from.distanceTo(part.motion().of(from)))));
                    }
                }
            }
        }
        step.hinges().forEach(hinge -> strokes.add(PaperLines.circle(Style.HINGE, place.of(hinge), HINGE)));
        strokes.addAll(PaperLines.marks(step.after(), place));
        return scene(Scene.Kind.MOVED, words.moved(names, ways), areas, strokes, labels -> {
            amounts.forEach((at, amount) -> labels.name(amount, at));
            names.forEach((part, name) -> {
                if (!part.isFolded()) {
                    labels.name(name, inside(polygon(part.outline(), part.motion())));
                }
            });
        });
    }

    private static Tint tint(Step.Part part, int number) {
        if (part.isFolded()) {
            return Tint.CHANGED;
        }
        return part.isMoved() ? Tint.ofPart(number) : Tint.STAYS;
    }

    /** The way that a point of a part goes: the arc of a turn, a straight line of a shift. */
    private List<Point> way(Step.Part part, Point from) {
        return IntStream.rangeClosed(0, 8)
                .mapToObj(i -> place.of(part.motion().part(i / 8.0).of(from)))
                .toList();
    }

    /** Where the arrows of a part begin: at the place that goes farthest of all that is shown. */
    private static List<Point> arrowed(Step.Part part, Point farthest) {
        return List.of(farthest);
    }

    private Point farthest(Step.Part part) {
        return Stream.concat(
                        part.outline().flatten(0.5).stream(),
                        Stream.of(part.outline().start()))
                .filter(point -> view.box().distanceTo(place.of(point)) == 0)
                .max(Comparator.comparingDouble(point -> part.motion().of(point).distanceTo(point)))
                .orElse(part.outline().start());
    }

    private Scene rejoined() {
        List<Geometry> parts = step.parts().stream()
                .filter(part -> !part.isFolded())
                .map(part -> (Geometry) polygon(part.outline(), part.motion()))
                .toList();
        Geometry together = OverlayNGRobust.union(parts);
        Geometry paper = polygon(step.after().outline(), Motion.STAY);
        Geometry gap = OverlayNGRobust.overlay(paper, together, OverlayNG.DIFFERENCE);
        List<Geometry> doubles = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Geometry both = OverlayNGRobust.overlay(parts.get(i), parts.get(j), OverlayNG.INTERSECTION);
                if (both.getArea() > PAPER / 100 && toPattern(both) > PAPER) {
                    doubles.add(both);
                }
            }
        }
        boolean opens = toPattern(gap) > PAPER;
        List<Area> areas = new ArrayList<>();
        if (opens) {
            areas.addAll(area(Tint.CHANGED, gap));
        }
        doubles.forEach(both -> areas.addAll(area(Tint.SECOND, both)));
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.after(), place));
        step.fills().forEach(fill -> strokes.add(PaperLines.stroke(Style.DRAWN, fill, place)));
        // paper that is folded away lies flat on the line of the fold
        step.parts().stream()
                .filter(Step.Part::isFolded)
                .forEach(part -> strokes.add(new Stroke(
                        Style.DRAWN, place.of(part.motion().of(part.outline().flatten(0.1))))));
        return scene(Scene.Kind.REJOINED, words.rejoined(opens, !doubles.isEmpty()), areas, strokes, labels -> {
            for (Path fill : step.fills()) {
                labels.name(Reason.millimetres(tenth(fill.length())), middle(fill));
            }
        });
    }

    private double toPattern(Geometry geometry) {
        return geometry.getArea() / view.scale() / view.scale();
    }

    private Scene trued() {
        boolean arePaired = step.lines().size() == step.fills().size();
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.after(), place));
        step.lines().forEach(line -> strokes.add(PaperLines.stroke(Style.BEFORE, line, place)));
        step.fills().forEach(line -> strokes.add(PaperLines.stroke(Style.DRAWN, line, place)));
        double farthest = 0;
        Point at = null;
        for (int i = 0; i < step.fills().size(); i++) {
            List<Path> old = arePaired ? step.lines().subList(i, i + 1) : step.lines();
            for (Point point : step.fills().get(i).flatten(0.1)) {
                double off = old.stream()
                        .mapToDouble(line -> line.distanceTo(point))
                        .min()
                        .orElse(0);
                if (off > farthest) {
                    farthest = off;
                    at = point;
                }
            }
        }
        Point where = at;
        double most = farthest;
        return scene(Scene.Kind.TRUED, words.trued(farthest), List.of(), strokes, labels -> {
            if (where != null && most > Tolerance.LAST_DECIMAL) {
                labels.name(Reason.millimetres(tenth(most)), place.of(where));
            }
        });
    }

    private Scene scene(
            Scene.Kind kind, String caption, List<Area> areas, List<Stroke> strokes, Consumer<Labels> lettered) {
        return Picture.scene(kind, caption, step.after().name(), areas, strokes, lettered, view, unit);
    }

    /** The parts by letters: those that stay and those that move, in the order of the step. */
    private Map<Step.Part, String> names() {
        Map<Step.Part, String> names = new LinkedHashMap<>();
        for (Step.Part part : step.parts()) {
            names.put(part, String.valueOf((char) ('A' + names.size() % 26)));
        }
        return names;
    }

    private Polygon polygon(Path outline, Motion motion) {
        return JtsBridge.polygon(outline.moved(motion).moved(place).flatten(0.02));
    }

    private Point inside(Geometry polygon) {
        Geometry shown = polygon.intersection(box());
        Coordinate at = (shown.isEmpty() ? polygon : shown).getInteriorPoint().getCoordinate();
        return new Point(at.x, at.y);
    }

    private Geometry box() {
        Box box = view.box();
        return FACTORY.toGeometry(new Envelope(box.left(), box.right(), box.top(), box.bottom()));
    }

    /** What of a shape is shown. */
    private List<Area> area(Tint tint, Geometry shape) {
        Geometry shown = OverlayNGRobust.overlay(shape, box(), OverlayNG.INTERSECTION);
        return IntStream.range(0, shown.getNumGeometries())
                .mapToObj(shown::getGeometryN)
                .filter(part -> part instanceof Polygon && part.getArea() > 0.01)
                .map(part -> new Area(tint, JtsBridge.points(((Polygon) part).getExteriorRing())))
                .toList();
    }

    private static double tenth(double mm) {
        return mm < 1 ? Math.rint(mm * 100) / 100 : Math.rint(mm * 10) / 10;
    }
}
