package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where lines and marks are to be drawn anew, told by how far they lie from the old ones where a person can find the place: at the levels, at the corners and at marked
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

    private final Piece before;
    private final Piece after;

    Redrawn(Piece before, Piece after) {
        this.before = before;
        this.after = after;
    }

    /**
     * "How far the new line lies from the old one: at the hip 15.8 mm outwards, at the corner of side seam and hem 15.7 mm outwards"; empty where no such
     * place moves.
     *
     * @param old the course of what is redrawn
     */
    Optional<String> lines(List<Path> old) {
        return told(
                "How far the new line lies from the old one: ",
                Stream.concat(levels(old).stream(), corners().stream()));
    }

    /** "Mark on the front anew: the bust apex 15 mm down"; empty where no mark moves. */
    Optional<String> marks() {
        return told(
                "Mark on the " + before.name() + " anew: ", points().stream().filter(Shift::isMoved));
    }

    private static Optional<String> told(String what, Stream<Shift> shifts) {
        List<String> told = shifts.map(shift -> shift.place + " " + shift.told).toList();
        return told.isEmpty() ? Optional.empty() : Optional.of(what + String.join(", ", told));
    }

    /** The ends of the levels. Where the new line moves an outer end, it is told as well at which other ends that it passes it meets the old one. */
    private List<Shift> levels(List<Path> lines) {
        List<Shift> outer = new ArrayList<>();
        List<Shift> inner = new ArrayList<>();
        before.marks(Level.class).map(Level::name).filter(after::hasLevel).forEach(level -> {
            LevelFrame old = before.levelFrame(level);
            LevelFrame now = after.levelFrame(level);
            Shift end = shift("at the " + level, old.outerEnd(), now.outerEnd());
            if (end.isMoved() || isPassed(lines, old.outerEnd())) {
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

    private static boolean isPassed(List<Path> lines, Point point) {
        return lines.stream().anyMatch(line -> line.distanceTo(point) < DRAWN);
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
        Stream<Shift> folds = before.marks(DoublePointedDart.class)
                .flatMap(old -> after.find(DoublePointedDart.class, old.name())
                        .map(now -> Stream.of(
                                shift("one tip of the " + old.name(), old.firstTip(), now.firstTip()),
                                shift("the other tip of the " + old.name(), old.secondTip(), now.secondTip())))
                        .orElse(Stream.empty()));
        return Stream.of(marked, darts, folds).flatMap(shifts -> shifts).toList();
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
