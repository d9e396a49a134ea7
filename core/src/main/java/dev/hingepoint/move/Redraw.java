package dev.hingepoint.move;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Refit;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Redraw: replace stretches of edges by other courses. The paper inside stays as it is; what stands on a redrawn stretch (notches, the
 * ends of darts) stays where the new course passes through it, and else keeps its fraction of the stretch; levels and lines that end there are drawn out, or cut off, along themselves.
 *
 * <p><img src="doc-files/redraw.svg" alt="the front of a dress with its neckline, and with a lower one" style="max-height: 26em">
 *
 * <p>Kept: every edge that is not redrawn, to the last bit; the course of a redrawn one outside its stretches; edge names and order; the paper, so that the
 * {@linkplain Move.Moved#map() map} is {@link PaperMap#STAY}.
 *
 * @param stretches those of one edge do not overlap
 */
public record Redraw(String caption, List<Stretch> stretches) implements Move {
    /**
     * A stretch of an edge and its new course, both in the direction in which the edge is drawn.
     *
     * @param from where the stretch begins on the edge's path
     * @param to where it ends
     * @param newCourse empty for an end of an edge that is cut off
     */
    public record Stretch(String edge, Position from, Position to, Optional<Path> newCourse) {
        public Stretch(String edge, Position from, Position to, Path course) {
            this(edge, from, to, Optional.of(course));
        }

        public Path course() {
            return newCourse.orElseThrow();
        }

        /** Nothing old is left out: the course is put in at an end of the edge. */
        boolean isRunOn() {
            return from.equals(to);
        }
    }

    public Redraw {
        stretches = List.copyOf(stretches);
    }

    /**
     * The whole of an edge takes a new course, given from the end where the edge meets {@code from}. Segments that both courses have at an
     * end are left alone, and what stands on them stays to the last bit.
     */
    public static Redraw whole(String caption, Piece piece, String edge, String from, Path course) {
        Path old = piece.edge(edge).path();
        Path drawn = piece.before(edge).name().equals(from) ? course : course.reversed();
        int first = alike(old, drawn);
        int last = old.segments().size() - alike(old.reversed(), drawn.reversed());
        int most = Math.min(old.segments().size(), drawn.segments().size());
        if (first + old.segments().size() - last >= most) {
            return new Redraw(caption, List.of(new Stretch(edge, old.startPosition(), old.endPosition(), drawn)));
        }
        int drawnLast = drawn.segments().size() - (old.segments().size() - last);
        Path changed = Path.of(drawn.segments().subList(first, drawnLast));
        return new Redraw(
                caption, List.of(new Stretch(edge, new Position(first, 0), new Position(last - 1, 1), changed)));
    }

    /** How many segments two paths begin with alike. */
    private static int alike(Path one, Path other) {
        int alike = 0;
        while (alike < Math.min(one.segments().size(), other.segments().size())
                && one.segments().get(alike).equals(other.segments().get(alike))) {
            alike++;
        }
        return alike;
    }

    /** The first {@code upTo} mm of an edge, from the end where it meets {@code from}, take a new course, given from that end. */
    public static Redraw end(String caption, Piece piece, String edge, String from, double upTo, Path course) {
        Path old = piece.edge(edge).path();
        boolean asDrawn = piece.before(edge).name().equals(from);
        double length = old.length();
        Stretch stretch = asDrawn
                ? new Stretch(edge, old.startPosition(), old.positionAt(upTo), course)
                : new Stretch(edge, old.positionAt(length - upTo), old.endPosition(), course.reversed());
        return new Redraw(caption, List.of(stretch));
    }

    /** The stretch between two places of one edge takes a new course, given in the direction in which the edge is drawn. */
    public static Redraw between(String caption, Spot from, Spot to, Path course) {
        return new Redraw(caption, List.of(new Stretch(from.edge(), from.position(), to.position(), course)));
    }

    /** The stretch between two places of one edge, in either order, becomes straight. */
    public static Redraw straight(String caption, Spot one, Spot other) {
        Spot from = Spot.first(one, other);
        Spot to = Spot.last(one, other);
        return between(caption, from, to, Path.through(from.point(), to.point()));
    }

    /**
     * The corner at a place inside an edge is faired by the one rule over {@code reach} mm either way.
     *
     * @see Fairing
     */
    public static Redraw faired(String caption, Piece piece, Spot corner, double reach) {
        return faired(caption, piece, corner, corner, reach);
    }

    /**
     * The step between two places of an edge is left out and the two sides are faired where they now meet, half way, by the one rule over
     * {@code reach} mm either way.
     */
    public static Redraw faired(String caption, Piece piece, Spot one, Spot other, double reach) {
        Spot stepStart = Spot.first(one, other);
        Spot stepEnd = Spot.last(one, other);
        Path old = piece.edge(stepStart.edge()).path();
        Position from = old.positionAt(Math.max(0, old.distanceAlong(stepStart.position()) - reach));
        Position to = old.positionAt(Math.min(old.length(), old.distanceAlong(stepEnd.position()) + reach));
        Path before = old.part(from, stepStart.position());
        Path after = old.part(stepEnd.position(), to);
        return new Redraw(caption, List.of(new Stretch(stepStart.edge(), from, to, Fairing.corner(before, after))));
    }

    /**
     * The step between two places of an edge is left out: the side that begins at {@code from} begins at {@code at} instead, and finds back to its
     * old course over {@code reach} mm. A corner there stays one.
     */
    public static Redraw stepClosed(String caption, Piece piece, Spot from, Spot at, double reach) {
        Path old = piece.edge(from.edge()).path();
        boolean isForwards = at.compareTo(from) <= 0;
        Path away = isForwards
                ? old.part(from.position(), old.endPosition())
                : old.part(old.startPosition(), from.position()).reversed();
        double over = Math.min(reach, Fairing.toCorner(away));
        Path course = Path.of(Refit.cubic(away.part(0, over))).withStart(at.point());
        double start = old.distanceAlong(from.position());
        Position back = old.positionAt(isForwards ? start + over : start - over);
        return isForwards
                ? new Redraw(caption, List.of(new Stretch(at.edge(), at.position(), back, course)))
                : new Redraw(caption, List.of(new Stretch(at.edge(), back, at.position(), course.reversed())));
    }

    /**
     * The stretch between two places of an edge, and up to {@code reach} mm on either side of it, becomes one curve that keeps the
     * directions of its two ends; where paper was put in or taken away, the edge then runs fair past it.
     */
    public static Redraw bridged(String caption, Piece piece, Spot one, Spot other, double reach) {
        Path old = piece.edge(one.edge()).path();
        double start = old.distanceAlong(Spot.first(one, other).position());
        double end = old.distanceAlong(Spot.last(one, other).position());
        Position bridgeFrom = old.positionAt(Math.max(0, start - reach));
        Position bridgeTo = old.positionAt(Math.min(old.length(), end + reach));
        return bridged(
                caption,
                new Spot(one.edge(), bridgeFrom, old.at(bridgeFrom)),
                old.tangent(bridgeFrom),
                new Spot(one.edge(), bridgeTo, old.at(bridgeTo)),
                old.tangent(bridgeTo));
    }

    /**
     * The stretch between two places of an edge, in either order, becomes one curve from the one to the other.
     *
     * @param leaving the unit direction in which it leaves the first place
     * @param arriving the unit direction in which it arrives at the other
     */
    public static Redraw bridged(String caption, Spot from, Vector leaving, Spot to, Vector arriving) {
        if (from.position().compareTo(to.position()) > 0) {
            return bridged(caption, to, arriving.negated(), from, leaving.negated());
        }
        Point one = from.point();
        Point other = to.point();
        double third = one.distanceTo(other) / 3;
        Cubic fair = new Cubic(one, one.plus(leaving.times(third)), other.minus(arriving.times(third)), other);
        Path course = fair.isStraight(Tolerance.COINCIDENT) ? Path.through(one, other) : Path.of(fair);
        return between(caption, from, to, course);
    }

    /**
     * An edge becomes longer by so many mm at its end at a neighbour, which must be redrawn to meet it: it runs on straight; where they are negative, so much
     * is cut off, with the notches there. What stands on the rest of the edge stays.
     */
    public static Redraw runOn(String caption, Piece piece, String edge, String neighbour, double mm) {
        Path old = piece.edge(edge).path();
        boolean atEnd = piece.after(edge).name().equals(neighbour);
        if (mm < 0) {
            Position from = atEnd ? old.positionAt(old.length() + mm) : old.startPosition();
            Position to = atEnd ? old.endPosition() : old.positionAt(-mm);
            return new Redraw(caption, List.of(new Stretch(edge, from, to, Optional.empty())));
        }
        Path outwards = piece.from(edge, neighbour).reversed();
        Path more = Path.through(
                outwards.end(), outwards.end().plus(outwards.endTangent().times(mm)));
        Position end = atEnd ? old.endPosition() : old.startPosition();
        return new Redraw(caption, List.of(new Stretch(edge, end, end, atEnd ? more : more.reversed())));
    }

    /** The rule's reach in mm for the corner at a place inside an edge. */
    public static double reach(Piece piece, Spot corner) {
        return reach(piece, corner, corner);
    }

    /** The rule's reach in mm for the corner that is left where the step between two places is taken out. */
    public static double reach(Piece piece, Spot one, Spot other) {
        Path old = piece.edge(one.edge()).path();
        return Fairing.reach(
                old.part(old.startPosition(), Spot.first(one, other).position()),
                old.part(Spot.last(one, other).position(), old.endPosition()));
    }

    /** This redrawing and another's, in one step with this one's caption. */
    public Redraw and(Redraw other) {
        List<Stretch> all = new ArrayList<>(stretches);
        all.addAll(other.stretches);
        return new Redraw(caption, all);
    }

    @Override
    public Moved on(Piece piece) {
        List<Edge> edges =
                meetingTheirNeighbours(piece.edges().stream().map(this::redrawn).toList());
        Piece result = piece.with(edges, new MarksAfterRedraw(piece, stretches, this::redrawn).marks());
        Step step = new Step(
                caption,
                piece,
                result,
                stretches.stream()
                        .filter(stretch -> !stretch.isRunOn())
                        .map(stretch -> piece.edge(stretch.edge()).path().part(stretch.from(), stretch.to()))
                        .toList(),
                List.of(),
                List.of(),
                stretches.stream()
                        .flatMap(stretch -> stretch.newCourse().stream())
                        .toList());
        return new Moved(result, PaperMap.STAY, step);
    }

    /** Edges that were not redrawn stay to the last bit: a redrawn neighbour's end is brought exactly to theirs. */
    private List<Edge> meetingTheirNeighbours(List<Edge> edges) {
        List<Edge> meeting = new ArrayList<>(edges);
        for (int i = 0; i < edges.size(); i++) {
            Edge before = edges.get((i + edges.size() - 1) % edges.size());
            Edge after = edges.get((i + 1) % edges.size());
            if (isRedrawn(edges.get(i))) {
                Path path = edges.get(i).path();
                if (!isRedrawn(before) && path.start().isCloseTo(before.path().end(), Tolerance.COINCIDENT)) {
                    path = path.withStart(before.path().end());
                }
                if (!isRedrawn(after) && path.end().isCloseTo(after.path().start(), Tolerance.COINCIDENT)) {
                    path = path.withEnd(after.path().start());
                }
                meeting.set(i, edges.get(i).with(path));
            }
        }
        return meeting;
    }

    private boolean isRedrawn(Edge edge) {
        return stretches.stream().anyMatch(stretch -> stretch.edge().equals(edge.name()));
    }

    private Edge redrawn(Edge edge) {
        return edge.with(redrawn(edge.name(), edge.path()));
    }

    private Path redrawn(String edge, Path old) {
        Path path = null;
        Position last = old.startPosition();
        for (Stretch stretch : stretches.stream()
                .filter(s -> s.edge().equals(edge))
                .sorted(Comparator.comparing(Stretch::from))
                .toList()) {
            Path before = followedBy(path, old, last, stretch.from());
            path = stretch.newCourse().map(course -> followedBy(before, course)).orElse(before);
            last = stretch.to();
        }
        return last.equals(old.startPosition()) && path == null ? old : followedBy(path, old, last, old.endPosition());
    }

    private static Path followedBy(Path path, Path old, Position from, Position to) {
        boolean isNothing = old.distanceAlong(to) - old.distanceAlong(from) <= Tolerance.COINCIDENT;
        return isNothing ? path : followedBy(path, old.part(from, to));
    }

    private static Path followedBy(Path path, Path next) {
        return path == null ? next : path.then(next);
    }
}
