package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;

/**
 * A place on the stitching line, told as a fitter tells it: free of coordinates, of the order of edges and of the way round that the
 * piece was drawn.
 */
public sealed interface Place {
    /**
     * Where the place is on {@code piece}.
     *
     * @throws Refusal naming what the piece does not have
     */
    Spot on(Piece piece);

    /** The end of an edge where it meets a neighbour: the armhole, at the side seam. */
    static Place corner(String edge, String neighbour) {
        return new Along(edge, neighbour, 0, false);
    }

    /** So many mm along an edge from the end where it meets a neighbour. */
    static Place along(String edge, String fromNeighbour, double mm) {
        return new Along(edge, fromNeighbour, mm, false);
    }

    /** So large a part of an edge's length from the end where it meets a neighbour. */
    static Place fraction(String edge, String fromNeighbour, double fraction) {
        return new Along(edge, fromNeighbour, fraction, true);
    }

    /** Where a level meets an edge. */
    static Place level(String level, String edge) {
        return new AtLevel(level, edge);
    }

    /** The place of an edge nearest to a point that a recipe has found. */
    static Place near(String edge, Point point) {
        return new Near(edge, point);
    }

    /** The place of an edge nearest to a point. */
    record Near(String edge, Point point) implements Place {
        @Override
        public Spot on(Piece piece) {
            return piece.nearest(piece.edge(edge), point);
        }
    }

    /** A distance along an edge from its end at a neighbour, in mm or as a fraction of the edge's length. */
    record Along(String edge, String neighbour, double amount, boolean isFraction) implements Place {
        @Override
        public Spot on(Piece piece) {
            Path path = piece.from(edge, neighbour);
            double distance = isFraction ? amount * path.length() : amount;
            if (!(distance >= 0 && distance <= path.length())) {
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of("pattern.place.off-edge", Quantity.millimetres(distance), neighbour),
                        piece.where().edge(edge),
                        distance,
                        path.length()));
            }
            boolean asDrawn = path == piece.edge(edge).path();
            Path drawn = piece.edge(edge).path();
            Position position = drawn.positionAt(asDrawn ? distance : drawn.length() - distance);
            return new Spot(edge, position, drawn.at(position));
        }
    }

    /** Where a level meets an edge. */
    record AtLevel(String level, String edge) implements Place {
        @Override
        public Spot on(Piece piece) {
            return piece.levelFrame(level).endOn(edge);
        }
    }
}
