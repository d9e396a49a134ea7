package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The edge of one piece on the body's centre line, sewn or on the fold. */
record CentreEdge(Draft draft, Piece piece, Edge edge) {
    /** A fold is straight to within so many mm: the width of a pencil line. */
    private static final double STRAIGHT = 0.5;

    /** @throws Refusal where the piece has no edge on the centre line */
    static CentreEdge of(Draft draft, Piece piece) {
        return new CentreEdge(
                draft,
                piece,
                piece.centre()
                        .orElseThrow(() ->
                                new Refusal(new Reason.Missing(Message.of("make.centre-edge.none"), piece.where()))));
    }

    boolean isFold() {
        return edge.kind() == Edge.Kind.FOLD;
    }

    /**
     * The piece on the fold, its seam and any opening in it gone.
     *
     * @throws Refusal where the seam is not straight, saying how far from straight it is and where; or where one could no longer get in
     */
    Altered toFold() {
        if (isFold()) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("make.centre-edge.fold-already"), piece.where().edge(edge.name())));
        }
        requireStraight();
        List<Opening> kept = draft.openings().stream()
                .filter(opening -> !opening.edge().equals(new EdgeRef(piece.name(), edge.name())))
                .toList();
        boolean closes = kept.size() < draft.openings().size();
        Path straight = Path.through(edge.path().start(), edge.path().end());
        Altered altered = changed(
                Edge.Kind.FOLD,
                straight,
                draft.construction().withOpenings(kept),
                "Cut the " + piece.name() + " on the fold at " + edge.name());
        Entry.requireNoNarrower(Entry.into(draft), Entry.into(altered.draft()));
        return closes
                ? altered.withNote("the opening in the " + edge.name() + " of the " + piece.name()
                        + " is closed; one still gets in through the rest")
                : altered;
    }

    /** The piece as a pair, with a seam. */
    Altered toSeam() {
        if (!isFold()) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("make.centre-edge.seam-already"), piece.where().edge(edge.name())));
        }
        return changed(
                Edge.Kind.SEAM,
                edge.path(),
                draft.construction(),
                "Cut the " + piece.name() + " as a pair, with a seam at " + edge.name());
    }

    private void requireStraight() {
        Path path = edge.path();
        Point start = path.start();
        Vector along = path.end().minus(start).unit();
        Point farthest = path.flatten(0.05).stream()
                .max(Comparator.comparingDouble(point -> Math.abs(along.cross(point.minus(start)))))
                .orElseThrow();
        double off = Math.abs(along.cross(farthest.minus(start)));
        if (off > STRAIGHT) {
            Path down = piece.downwards(edge.name());
            throw new Refusal(new Reason.BeyondLimit(
                    Message.of(
                            "make.centre-edge.not-straight",
                            Quantity.millimetres(off),
                            Quantity.millimetres(Math.rint(down.distanceAlong(down.nearest(farthest))))),
                    piece.where().edge(edge.name()),
                    OptionalDouble.of(off),
                    OptionalDouble.empty()));
        }
    }

    private Altered changed(Edge.Kind kind, Path path, Construction construction, String caption) {
        List<Edge> edges = piece.edges().stream()
                .map(old -> old.name().equals(edge.name()) ? new Edge(edge.name(), kind, path) : old)
                .toList();
        List<Mark> marks = piece.marks().stream()
                .map(mark -> kind == Edge.Kind.FOLD && mark instanceof Grain grain ? along(grain, path) : mark)
                .toList();
        Cutting.How from = kind == Edge.Kind.FOLD ? Cutting.How.PAIR : Cutting.How.ON_FOLD;
        Cutting.How to = kind == Edge.Kind.FOLD ? Cutting.How.ON_FOLD : Cutting.How.PAIR;
        List<Cutting> cuttings = piece.cuttings().stream()
                .map(cutting -> cutting.how() == from ? new Cutting(cutting.count(), to, cutting.cloth()) : cutting)
                .toList();
        Piece now = piece.with(edges, marks).named(piece.name(), cuttings);
        Step step = new Step(caption, piece, now, List.of(), List.of(), List.of(), List.of(path));
        return new Altered(
                draft.with(now).with(construction),
                Map.of("as", kind == Edge.Kind.FOLD ? "fold" : "seam"),
                List.of(step),
                laws(),
                List.of());
    }

    /** The grain runs along a fold; where it ran slightly aslant, it turns. */
    private static Grain along(Grain grain, Path fold) {
        Vector along = fold.startTangent();
        Vector down = along.dot(grain.down()) > 0 ? along : along.negated();
        Point middle = grain.line().at(0.5);
        Vector half = down.times(grain.line().length() / 2);
        return new Grain(new Line(middle.minus(half), middle.plus(half)));
    }

    private List<Law> laws() {
        return piece.edges().stream()
                .map(old -> Law.keepsLength(piece.name(), old.name(), STRAIGHT))
                .toList();
    }
}
