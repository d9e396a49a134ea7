package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.move.Step;
import dev.hingepoint.svg.page.Area;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Tint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The pictures of a cut, all from its {@link Step}: its lines, the slashes, the parts as they move, and what is filled or taken away. */
final class CutScenes {
    /** Radius in mm of the ring round a hinge. */
    private static final double HINGE = 2;

    /** Less than so many mm of the picture is not shown by an arrow. */
    private static final double SHOWN = 0.4;

    /** Paper let in or taken away of less than so many mm2 is rounding. */
    private static final double PAPER = 1;

    private final Step step;
    private final Stage stage;
    private final Motion place;
    private final StepWords words;

    CutScenes(Step step, Stage stage) {
        this.step = step;
        this.stage = stage;
        this.place = stage.place();
        this.words = new StepWords(step);
    }

    List<Scene> scenes() {
        return List.of(lines(), slashed(), moved(), rejoined());
    }

    private Scene lines() {
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.before(), place));
        step.lines().forEach(line -> strokes.add(PaperLines.stroke(Style.SLASH, line, place)));
        return stage.scene(Scene.Kind.LINES, words.lines(), stage.paper(step.before()), strokes, labels -> {
            if (step.lines().size() > 1) {
                IntStream.range(0, step.lines().size())
                        .forEach(i -> labels.name(
                                String.valueOf(i + 1), stage.middle(step.lines().get(i))));
            }
        });
    }

    private Scene slashed() {
        List<Area> areas = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        Map<Step.Part, String> names = names();
        int number = 0;
        for (Step.Part part : names.keySet()) {
            areas.addAll(stage.area(
                    tint(part, part.isMoved() ? number++ : number), stage.polygon(part.outline(), Motion.STAY)));
            strokes.add(PaperLines.stroke(Style.DRAWN, part.outline(), place));
        }
        strokes.addAll(PaperLines.of(step.before(), place));
        step.hinges().forEach(hinge -> strokes.add(PaperLines.circle(Style.HINGE, place.of(hinge), HINGE)));
        return stage.scene(Scene.Kind.SLASHED, words.slashed(), areas, strokes, labels -> {
            names.forEach((part, name) -> labels.name(name, stage.inside(stage.polygon(part.outline(), Motion.STAY))));
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
            areas.addAll(stage.area(tint, stage.polygon(part.outline(), part.motion())));
            strokes.add(PaperLines.stroke(Style.DRAWN, part.outline().moved(part.motion()), place));
            if (part.isMoved()) {
                strokes.add(PaperLines.stroke(Style.LEFT, part.outline(), place));
                List<Point> path = way(part, farthest);
                if (path.get(0).distanceTo(path.get(path.size() - 1)) > SHOWN) {
                    strokes.addAll(PaperLines.arrow(Style.WAY, path));
                    amounts.put(path.get(path.size() / 2), StepWords.length(way));
                }
            }
        }
        step.hinges().forEach(hinge -> strokes.add(PaperLines.circle(Style.HINGE, place.of(hinge), HINGE)));
        strokes.addAll(PaperLines.marks(step.after(), place));
        return stage.scene(Scene.Kind.MOVED, words.moved(names, ways), areas, strokes, labels -> {
            amounts.forEach((at, amount) -> labels.name(amount, at));
            names.forEach((part, name) -> {
                if (!part.isFolded()) {
                    labels.name(name, stage.inside(stage.polygon(part.outline(), part.motion())));
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

    private Point farthest(Step.Part part) {
        return Stream.concat(
                        part.outline().flatten(0.5).stream(),
                        Stream.of(part.outline().start()))
                .filter(point -> stage.shows(point))
                .max(Comparator.comparingDouble(point -> part.motion().of(point).distanceTo(point)))
                .orElse(part.outline().start());
    }

    private Scene rejoined() {
        List<Geometry> parts = step.parts().stream()
                .filter(part -> !part.isFolded())
                .map(part -> (Geometry) stage.polygon(part.outline(), part.motion()))
                .toList();
        Geometry together = OverlayNGRobust.union(parts);
        Geometry paper = stage.polygon(step.after().outline(), Motion.STAY);
        Geometry gap = OverlayNGRobust.overlay(paper, together, OverlayNG.DIFFERENCE);
        List<Geometry> doubles = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Geometry both = OverlayNGRobust.overlay(parts.get(i), parts.get(j), OverlayNG.INTERSECTION);
                if (stage.area(both) > PAPER) {
                    doubles.add(both);
                }
            }
        }
        boolean opens = stage.area(gap) > PAPER;
        List<Area> areas = new ArrayList<>(stage.paper(step.after()));
        if (opens) {
            areas.addAll(stage.area(Tint.CHANGED, gap));
        }
        doubles.forEach(both -> areas.addAll(stage.area(Tint.SECOND, both)));
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.after(), place));
        step.fills().forEach(fill -> strokes.add(PaperLines.stroke(Style.DRAWN, fill, place)));
        // paper that is folded away lies flat on the line of the fold
        step.parts().stream()
                .filter(Step.Part::isFolded)
                .forEach(part -> strokes.add(new Stroke(
                        Style.DRAWN, place.of(part.motion().of(part.outline().flatten(0.1))))));
        return stage.scene(Scene.Kind.REJOINED, words.rejoined(opens, !doubles.isEmpty()), areas, strokes, labels -> {
            for (Path fill : step.fills()) {
                labels.name(StepWords.length(fill.length()), stage.middle(fill));
            }
        });
    }

    /** The parts by letters: those that stay and those that move, in the order of the step. */
    private Map<Step.Part, String> names() {
        Map<Step.Part, String> names = new LinkedHashMap<>();
        for (Step.Part part : step.parts()) {
            names.put(part, String.valueOf((char) ('A' + names.size() % 26)));
        }
        return names;
    }
}
