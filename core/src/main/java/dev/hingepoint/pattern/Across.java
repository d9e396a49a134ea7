package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Vector;
import java.util.Comparator;
import java.util.List;

/** A straight line across a piece, from a place on one edge to a place on another. */
public record Across(Spot start, Spot end) {
    /**
     * The line through a point inside the piece, drawn out both ways until it first meets the stitching line.
     *
     * @param along its direction, towards its end
     * @throws Refusal where it does not meet the stitching line on both sides
     */
    public static Across through(Piece piece, Point inside, Vector along) {
        return new Across(meets(piece, inside, along.negated()), meets(piece, inside, along));
    }

    private static Spot meets(Piece piece, Point from, Vector direction) {
        return piece.edges().stream()
                .flatMap(edge -> edge.path().crossings(from, direction).stream().map(position -> spot(edge, position)))
                .filter(spot -> spot.point().minus(from).dot(direction) > 0)
                .min(Comparator.comparingDouble(spot -> spot.point().distanceTo(from)))
                .orElseThrow(() ->
                        new Refusal(new Reason.Unsound(Message.of("pattern.across.not-edge-to-edge"), piece.where())));
    }

    private static Spot spot(Edge edge, Position position) {
        return new Spot(edge.name(), position, edge.path().at(position));
    }

    public Line line() {
        return new Line(start.point(), end.point());
    }

    /** The names of the edges that it meets. */
    public List<String> edges() {
        return List.of(start.edge(), end.edge());
    }

    /** The place where it meets an edge. */
    public Spot on(String edge) {
        return start.edge().equals(edge) ? start : end;
    }
}
