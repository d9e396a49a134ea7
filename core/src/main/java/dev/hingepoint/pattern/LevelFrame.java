package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A level as a frame: its origin at its end on the centre line, x running along it. Where the piece has no centre line, the origin is
 * the end the drawing begins with. Widths and intakes are mm along the level.
 */
public final class LevelFrame {
    /** A part of a level counts as running along the grain within 1 degree of it: steps are drawn exactly so. */
    private static final double ALONG_GRAIN = StrictMath.cos(StrictMath.toRadians(1));

    private final Piece piece;
    private final String name;
    private final Path path;

    private LevelFrame(Piece piece, String name, Path path) {
        this.piece = piece;
        this.name = name;
        this.path = path;
    }

    static LevelFrame of(Piece piece, Level level) {
        Path drawn = level.path();
        boolean asDrawn = piece.centre()
                .map(Edge::path)
                .map(centre -> centre.distanceTo(drawn.start()) <= centre.distanceTo(drawn.end()))
                .orElse(true);
        return new LevelFrame(piece, level.name(), asDrawn ? drawn : drawn.reversed());
    }

    public String name() {
        return name;
    }

    /** The level's line from the centre line outwards. */
    public Path path() {
        return path;
    }

    public Point origin() {
        return path.start();
    }

    /** The end away from the centre line. */
    public Point outerEnd() {
        return path.end();
    }

    /** Unit direction of x at the outer end: across the grain there, away from the centre line. */
    public Vector outwards() {
        List<Segment> parts = path.segments();
        for (int i = parts.size() - 1; i >= 0; i--) {
            if (!isAlongGrain(parts.get(i))) {
                return parts.get(i).tangent(1);
            }
        }
        return path.endTangent();
    }

    /** Unit direction square to {@link #outwards}, down the body. */
    public Vector downwards() {
        Vector square = outwards().left();
        return square.dot(piece.grain().down()) > 0 ? square : square.negated();
    }

    /** The width in mm: dart intake and parts along the grain left out. */
    public double width() {
        return paperWidth() - intake();
    }

    /** The width of the paper in mm: parts along the grain left out, darts open. */
    public double paperWidth() {
        return path.segments().stream()
                .filter(part -> !isAlongGrain(part))
                .mapToDouble(Segment::length)
                .sum();
    }

    /** How much in mm the darts that the level crosses take away. */
    public double intake() {
        return piece.marks(Dart.class).mapToDouble(this::intakeOf).sum();
    }

    /**
     * How much in mm a dart takes out of the level's width, measured along the level: from where it enters the dart to the place on the other leg
     * that is sewn there, as far from the tip. Where the level ends in the dart's mouth, it ends, sewn, at the nearer leg. 0 where it does not cross
     * both legs.
     */
    public double intakeOf(Dart dart) {
        if (dart instanceof EdgeDart edge && endsInMouthOf(edge)) {
            boolean isNearerToStart =
                    outerEnd().distanceTo(edge.mouthStart()) < outerEnd().distanceTo(edge.mouthEnd());
            Point legEnd = isNearerToStart ? edge.mouthStart() : edge.mouthEnd();
            return outerEnd().minus(legEnd).dot(outwards());
        }
        List<Path> legs = dart.legsFromTip();
        Optional<Position> one = crossing(legs.get(0));
        Optional<Position> other = crossing(legs.get(1));
        if (one.isEmpty() || other.isEmpty()) {
            return 0;
        }
        boolean entersByFirst =
                along(legs.get(0).at(one.get())) <= along(legs.get(1).at(other.get()));
        Path entered = legs.get(entersByFirst ? 0 : 1);
        Path left = legs.get(entersByFirst ? 1 : 0);
        Position at = entersByFirst ? one.get() : other.get();
        Point sewnThere = left.at(Math.min(entered.distanceAlong(at), left.length()));
        return sewnThere.minus(entered.at(at)).dot(outwards());
    }

    /** Whether the level's outer end lies in the mouth of a dart, on the line across which the edge is not sewn. */
    public boolean endsInMouthOf(EdgeDart dart) {
        if (!outerEnd().isCloseTo(dart.mouthMiddle(), dart.intake())) {
            return false;
        }
        Path edge = piece.edge(piece.nearest(outerEnd()).edge()).path();
        if (!SewnEdge.isOn(edge, dart)) {
            return false;
        }
        double end = edge.distanceAlong(edge.nearest(outerEnd()));
        double one = edge.distanceAlong(edge.nearest(dart.mouthStart()));
        double other = edge.distanceAlong(edge.nearest(dart.mouthEnd()));
        return Math.min(one, other) < end && end < Math.max(one, other);
    }

    /** Where the level first crosses a dart's leg. */
    private Optional<Position> crossing(Path leg) {
        if (leg.bounds().top() > path.bounds().bottom() + Tolerance.COINCIDENT
                || leg.bounds().bottom() < path.bounds().top() - Tolerance.COINCIDENT) {
            return Optional.empty();
        }
        return path.segments().stream()
                .map(Line.class::cast)
                .flatMap(part -> leg.crossings(part).stream())
                .min(Comparator.comparingDouble(position -> along(leg.at(position))));
    }

    private double along(Point point) {
        return path.distanceAlong(path.nearest(point));
    }

    private boolean isAlongGrain(Segment part) {
        return Math.abs(part.tangent(0).dot(piece.grain().down())) > ALONG_GRAIN;
    }

    /**
     * The end of the level that lies on {@code edge}.
     *
     * @throws Refusal where neither does
     */
    public Spot endOn(String edge) {
        Edge wanted = piece.edge(edge);
        return List.of(path.start(), path.end()).stream()
                .map(end -> piece.nearest(wanted, end))
                .filter(spot -> spot.point().isCloseTo(path.start(), Tolerance.JOINING)
                        || spot.point().isCloseTo(path.end(), Tolerance.JOINING))
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("pattern.level.does-not-reach", name, edge),
                        piece.where().edge(edge).mark(name))));
    }

    /**
     * The level as one straight line from edge to edge, moved up along the grain by {@code above} mm. Where an end comes within the joining
     * tolerance of a corner, the corner is meant.
     *
     * @throws Refusal where it does not reach both edges there
     */
    public Line across(String centre, String side, double above) {
        Vector up = piece.grain().down().times(-above);
        Vector along = outerEnd().minus(origin());
        Point from = crossing(centre, origin().plus(up), along);
        return new Line(from, crossing(side, outerEnd().plus(up), along));
    }

    private Point crossing(String edge, Point near, Vector along) {
        Path path = piece.edge(edge).path();
        return path.crossings(near, along).stream()
                .map(path::at)
                .min(Comparator.comparingDouble(point -> point.distanceTo(near)))
                .map(point -> path.corners(Tolerance.CORNER).stream()
                        .map(path::at)
                        .filter(corner -> corner.isCloseTo(point, Tolerance.JOINING))
                        .findFirst()
                        .orElse(point))
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("pattern.level.line-does-not-reach", name, edge),
                        piece.where().edge(edge).mark(name))));
    }

    /** Where the straight line along the level's outer end, endless, first meets a path from the inside; the nearest to that end. */
    public Optional<Position> meets(Path other) {
        return other.crossings(outerEnd(), outwards()).stream()
                .min(Comparator.comparingDouble(position -> other.at(position).distanceTo(outerEnd())));
    }
}
