package dev.hingepoint.make;

import dev.hingepoint.Reason;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Darts that end in a seam are closed into it: the dart is drawn on to the seam, its wedge folded away, and the paper beside it turns about the tip. The seam keeps its
 * length, and bends where the dart was; both it and the edge that the dart opened in are drawn fair.
 */
final class ClosedDarts {
    /** A dart whose tip lies within so many mm of the seam ends in it. */
    static final double NEAR = 25;

    /** A fairing shorter than this in mm is none. */
    private static final double SHORTEST = 1;

    private ClosedDarts() {}

    static Altered into(Draft draft, String name, String seam) {
        Altered altered = Altered.of(draft);
        Optional<EdgeDart> next = ending(draft.piece(name), seam);
        while (next.isPresent()) {
            EdgeDart dart = next.get();
            altered = altered.then(before -> closed(before, before.piece(name), dart, seam));
            next = ending(altered.draft().piece(name), seam);
        }
        return altered;
    }

    private static Optional<EdgeDart> ending(Piece piece, String seam) {
        Path path = piece.edge(seam).path();
        return piece.marks(EdgeDart.class)
                .filter(dart -> path.distanceTo(dart.tip()) <= NEAR && path.distanceTo(dart.mouthMiddle()) > NEAR)
                .findFirst();
    }

    /** Where the dart's own direction, or the shortest way, leads to the seam. */
    private static Spot tip(Piece piece, EdgeDart dart, String seam) {
        Edge edge = piece.edge(seam);
        Vector on = dart.tip().minus(dart.mouthMiddle());
        return edge.path().crossings(dart.tip(), on).stream()
                .filter(position -> edge.path().at(position).isCloseTo(dart.tip(), 2 * NEAR))
                .findFirst()
                .map(position -> piece.nearest(edge, edge.path().at(position)))
                .orElseGet(() -> piece.nearest(edge, dart.tip()));
    }

    private static Altered closed(Draft draft, Piece piece, EdgeDart dart, String seam) {
        Point tip = tip(piece, dart, seam).point();
        String edge = piece.nearest(dart.mouthMiddle()).edge();
        Piece plain = piece.withMarks(
                piece.marks().stream().filter(mark -> !mark.equals(dart)).toList());
        // the part with the grain stays
        Point grain = piece.grain().line().at(0.5);
        Vector axis = dart.mouthMiddle().minus(tip);
        boolean grainAtStart =
                axis.cross(grain.minus(tip)) * axis.cross(dart.mouthStart().minus(tip)) > 0;
        // a drawing's dart may begin a hair beside its edge, and a slash must begin on it
        Edge mouth = piece.edge(edge);
        Point kept = piece.nearest(mouth, grainAtStart ? dart.mouthStart() : dart.mouthEnd())
                .point();
        Point closed = piece.nearest(mouth, grainAtStart ? dart.mouthEnd() : dart.mouthStart())
                .point();
        String caption =
                "Close the " + dart.name() + " into the " + seam + " and turn the paper beside it about its tip";
        Motion turn = Motion.turn(tip, closed.minus(tip), kept.minus(tip));
        Cut cut = Cut.along(caption, Path.through(kept, tip), Path.through(closed, tip))
                .folding(Place.near(edge, dart.mouthMiddle()), Motion.fold(tip, kept, closed))
                .moving(beside(plain, edge, closed, kept), turn);
        Paper paper = Paper.of(plain).then(cut);
        paper = faired(paper, edge, kept, turn.of(closed));
        paper = faired(paper, seam, tip, tip);
        List<Law> laws = new ArrayList<>();
        piece.edges().forEach(old -> laws.add(Law.keepsLength(piece.name(), old.name(), 0.5)));
        return new Altered(
                draft.with(paper.piece()),
                Map.of("closed", Reason.millimetres(dart.intake())),
                paper.steps(),
                laws,
                List.of());
    }

    /** The corner that closing left, or the step where the dart's legs were not equal, drawn fair by the one rule. */
    private static Paper faired(Paper paper, String edge, Point one, Point other) {
        Piece piece = paper.piece();
        Spot at = piece.nearest(piece.edge(edge), one);
        Spot there = piece.nearest(piece.edge(edge), other);
        Spot first = Spot.first(at, there);
        Spot last = Spot.last(at, there);
        double reach = Redraw.reach(piece, first, last);
        return reach < SHORTEST
                ? paper
                : paper.then(Redraw.faired("Draw the " + edge + " fair", piece, first, last, reach));
    }

    /** A place on the edge just beyond the mouth, on the side that turns. */
    private static Place beside(Piece piece, String edge, Point closed, Point kept) {
        Path path = piece.edge(edge).path();
        double at = path.distanceAlong(path.nearest(closed));
        double other = path.distanceAlong(path.nearest(kept));
        double beyond = at > other ? Math.min(path.length(), at + 1) : Math.max(0, at - 1);
        return Place.near(edge, path.at(beyond));
    }
}
