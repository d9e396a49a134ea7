package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Where new lines are to be drawn, told by how far they lie from the old ones where a person can find the place: at the levels, at the corners and at marked
 * points. Seen on the body: outwards is away from the centre line; on a piece without one, away from its middle. On the centre line itself
 * that would be misread, and the side is named.
 */
final class Redrawn {
    /** A line that moves by less in mm is drawn by eye. */
    private static final double DRAWN = 0.5;

    private static final String NOTHING = "nothing";

    /** A place on the paper, and how far from there the line now runs. */
    private record Shift(String place, String told) {
        boolean isMoved() {
            return !told.equals(NOTHING);
        }
    }

    private final Step step;
    private final Piece before;
    private final Piece after;

    Redrawn(Step step) {
        this.step = step;
        this.before = step.before();
        this.after = step.after();
    }

    /** "The new line lies from the old one: at the hip 15.8 mm outwards, at the corner of side seam and hem 15.7 mm outwards"; empty where no such place moves. */
    List<String> words() {
        List<Shift> shifts = new ArrayList<>(levels());
        shifts.addAll(corners());
        List<String> told = new ArrayList<>();
        if (!shifts.isEmpty()) {
            told.add("How far the new line lies from the old one: "
                    + String.join(
                            ", ",
                            shifts.stream()
                                    .map(shift -> shift.place + " " + shift.told)
                                    .toList()));
        }
        points().stream()
                .filter(Shift::isMoved)
                .forEach(point -> told.add("Mark " + point.place + " anew, " + point.told));
        return told;
    }

    /** The ends of the levels. Where the new line moves an outer end, it is told as well at which other ends that it passes it meets the old one. */
    private List<Shift> levels() {
        List<Shift> outer = new ArrayList<>();
        List<Shift> inner = new ArrayList<>();
        before.marks(Level.class).map(Level::name).filter(after::hasLevel).forEach(level -> {
            LevelFrame old = before.levelFrame(level);
            LevelFrame now = after.levelFrame(level);
            Shift end = shift("at the " + level, old.outerEnd(), now.outerEnd());
            if (end.isMoved() || isPassed(old.outerEnd())) {
                outer.add(end);
            }
            String other = before.centre().map(Edge::name).orElse("its other end");
            inner.add(shift("at the " + level + " at " + other, old.origin(), now.origin()));
        });
        return Stream.concat(
                        outer.stream().filter(end -> outer.stream().anyMatch(Shift::isMoved)),
                        inner.stream().filter(Shift::isMoved))
                .toList();
    }

    private boolean isPassed(Point point) {
        return step.lines().stream().anyMatch(line -> line.distanceTo(point) < DRAWN);
    }

    private List<Shift> corners() {
        List<Shift> shifts = new ArrayList<>();
        for (Edge edge : before.edges()) {
            String neighbour = before.before(edge.name()).name();
            if (after.hasEdge(edge.name()) && after.before(edge.name()).name().equals(neighbour)) {
                shifts.add(shift(
                        "at the corner of " + neighbour + " and " + edge.name(),
                        edge.path().start(),
                        after.edge(edge.name()).path().start()));
            }
        }
        return shifts.stream().filter(Shift::isMoved).toList();
    }

    private List<Shift> points() {
        Stream<Shift> marked = before.marks(MarkedPoint.class)
                .flatMap(old -> after
                        .find(MarkedPoint.class, old.name())
                        .map(now -> shift("the " + old.name(), old.at(), now.at()))
                        .stream());
        Stream<Shift> darts = before.marks(EdgeDart.class)
                .flatMap(old -> after.find(EdgeDart.class, old.name())
                        .map(now -> Stream.of(
                                shift("the tip of the " + old.name(), old.tip(), now.tip()),
                                shift("the mouth of the " + old.name(), old.mouthMiddle(), now.mouthMiddle())))
                        .orElse(Stream.empty()));
        return Stream.concat(marked, darts).toList();
    }

    private Shift shift(String place, Point from, Point to) {
        Vector down = before.grain().down();
        Vector by = to.minus(from);
        List<String> told = new ArrayList<>();
        boolean isAtCentre = before.centre()
                .filter(centre -> centre.path().distanceTo(from) < DRAWN)
                .isPresent();
        tell(
                by.dot(outwards(from)),
                isAtCentre ? "towards the side" : "outwards",
                isAtCentre ? "away from the side" : "inwards",
                told);
        tell(by.dot(down), "down", "up", told);
        return new Shift(place, told.isEmpty() ? NOTHING : Words.joined(told));
    }

    private static void tell(double mm, String way, String back, List<String> told) {
        if (Math.abs(mm) >= DRAWN) {
            told.add(StepWords.length(Math.abs(mm)) + " " + (mm > 0 ? way : back));
        }
    }

    private Vector outwards(Point from) {
        Vector across = before.grain().down().left();
        Point middle = before.outline().bounds().centre();
        Vector away = before.centre()
                .map(centre -> middle.minus(
                        centre.path().start().midpoint(centre.path().end())))
                .orElse(from.minus(middle));
        return away.dot(across) < 0 ? across.negated() : across;
    }
}
