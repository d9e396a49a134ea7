package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
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

    /** A curve is followed within so many mm of the pattern, to find what goes farthest. */
    private static final double CLOSELY = 0.5;

    /** The same where it is drawn. */
    private static final double DRAWN = 0.1;

    /** Into so many parts the way of a part is drawn. */
    private static final int WAY = 8;

    /** The word beside a hinge is left out where it would stand farther from it in mm. */
    private static final double HINGE_WORD = 4;

    /** A part as it is called and tinted in every picture. */
    private record Named(Step.Part part, String name, Tint tint) {}

    private final Step step;
    private final Stage stage;
    private final Motion place;
    private final StepWords words;
    private final List<Named> parts;

    CutScenes(Step step, Stage stage) {
        this.step = step;
        this.stage = stage;
        this.place = stage.place();
        this.words = new StepWords(step);
        this.parts = named(step.parts());
    }

    /** By letters, in the order of the step; tinted are those that move. */
    private static List<Named> named(List<Step.Part> parts) {
        List<Named> named = new ArrayList<>();
        int moved = 0;
        for (Step.Part part : parts) {
            String letter = String.valueOf((char) ('A' + named.size() % 26));
            Tint still = part.isFolded() ? Tint.CHANGED : Tint.STAYS;
            named.add(new Named(part, letter, part.isMoved() && !part.isFolded() ? Tint.ofPart(moved) : still));
            moved += part.isMoved() ? 1 : 0;
        }
        return named;
    }

    List<Scene> scenes() {
        return List.of(lines(), slashed(), moved(), rejoined());
    }

    private Scene lines() {
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.before(), place));
        step.lines().forEach(line -> strokes.add(PaperLines.stroke(Style.SLASH, line, place)));
        return stage.scene(Scene.Kind.LINES, words.lines(), stage.paper(step.before()), strokes, labels -> {
            List<Path> lines = words.numbered();
            if (lines.size() > 1) {
                IntStream.range(0, lines.size())
                        .forEach(i -> labels.name(String.valueOf(i + 1), stage.middle(lines.get(i))));
            }
            stage.names(step.before(), labels);
        });
    }

    private Scene slashed() {
        List<Area> areas = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        for (Named each : parts) {
            areas.addAll(stage.area(each.tint, stage.polygon(each.part.outline(), Motion.STAY)));
            strokes.add(PaperLines.stroke(Style.DRAWN, each.part.outline(), place));
        }
        strokes.addAll(PaperLines.of(step.before(), place));
        strokes.addAll(rings(step.hinges()));
        return stage.scene(Scene.Kind.SLASHED, words.slashed(), areas, strokes, labels -> {
            parts.forEach(
                    each -> labels.name(each.name, stage.inside(stage.polygon(each.part.outline(), Motion.STAY))));
            step.hinges().stream().limit(1).forEach(hinge -> labels.nameNear("hinge", place.of(hinge), HINGE_WORD));
        });
    }

    private Scene moved() {
        List<Area> areas = new ArrayList<>();
        List<Stroke> strokes = new ArrayList<>();
        Map<Point, String> amounts = new LinkedHashMap<>();
        List<String> told = new ArrayList<>();
        for (Named each : parts) {
            Step.Part part = each.part;
            Point farthest = farthest(part);
            double far = farthest.distanceTo(part.motion().of(farthest));
            told.add(StepWords.goes(part, each.name, far));
            if (part.isFolded()) {
                strokes.add(PaperLines.stroke(Style.LEFT, part.outline(), place));
                continue;
            }
            areas.addAll(stage.area(each.tint, stage.polygon(part.outline(), part.motion())));
            strokes.add(PaperLines.stroke(Style.DRAWN, part.outline().moved(part.motion()), place));
            if (part.isMoved()) {
                strokes.add(PaperLines.stroke(Style.LEFT, part.outline(), place));
                List<Point> way = way(part, farthest);
                if (way.get(0).distanceTo(way.get(WAY)) > SHOWN) {
                    strokes.addAll(PaperLines.arrow(Style.WAY, way));
                    amounts.put(way.get(WAY / 2), StepWords.length(far));
                }
            }
        }
        strokes.addAll(rings(step.hinges().stream().map(this::landed).toList()));
        strokes.addAll(PaperLines.marks(step.after(), place));
        return stage.scene(Scene.Kind.MOVED, words.moved(told), areas, strokes, labels -> {
            amounts.forEach((at, amount) -> labels.name(amount, at));
            parts.stream()
                    .filter(each -> !each.part.isFolded())
                    .forEach(each -> labels.name(
                            each.name, stage.inside(stage.polygon(each.part.outline(), each.part.motion()))));
        });
    }

    private List<Stroke> rings(List<Point> hinges) {
        return hinges.stream()
                .map(hinge -> PaperLines.circle(Style.HINGE, place.of(hinge), HINGE))
                .toList();
    }

    /** Where a hinge lies once the parts have moved: where two that move otherwise still meet. */
    private Point landed(Point hinge) {
        List<Step.Part> there = step.parts().stream()
                .filter(part -> !part.isFolded() && part.outline().distanceTo(hinge) <= Tolerance.COINCIDENT)
                .toList();
        return there.stream()
                .filter(one -> there.stream()
                        .anyMatch(other -> !other.motion().equals(one.motion())
                                && other.motion()
                                        .of(hinge)
                                        .isCloseTo(one.motion().of(hinge), Tolerance.COINCIDENT)))
                .findFirst()
                .map(part -> part.motion().of(hinge))
                .orElse(hinge);
    }

    /** The way that a point of a part goes: the arc of a turn, a straight line of a shift. */
    private List<Point> way(Step.Part part, Point from) {
        return IntStream.rangeClosed(0, WAY)
                .mapToObj(i -> place.of(part.motion().part((double) i / WAY).of(from)))
                .toList();
    }

    private Point farthest(Step.Part part) {
        return Stream.concat(
                        part.outline().flatten(CLOSELY).stream(),
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
                if (stage.size(both) > PAPER) {
                    doubles.add(both);
                }
            }
        }
        boolean opens = stage.size(gap) > PAPER;
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
                        Style.DRAWN, place.of(part.motion().of(part.outline().flatten(DRAWN))))));
        return stage.scene(Scene.Kind.REJOINED, words.rejoined(opens, !doubles.isEmpty()), areas, strokes, labels -> {
            for (Path fill : step.fills()) {
                labels.name(StepWords.length(fill.length()), stage.middle(fill));
            }
            stage.names(step.after(), labels);
        });
    }
}
