package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.make.JoinedEdge.Part;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A facing for the neckline or the armhole, traced from the altered edge with its shoulder seams laid together: a piece for each that the edge runs over,
 * on the fold where that is on the fold. The garment's own pieces stay as they are.
 *
 * <p>The joined edge is 1 % shorter than the edge, at most {@value #MOST} mm in all, so that the facing draws the edge in and rolls to the inside; that is taken
 * out at the shoulders and at the centre, where the edge is straight, never in the curve (common practice, no source). The outer edge is parallel to the edge and fair past the
 * shoulder; beside an opening it ends clear of it.
 *
 * <p>Refused: sheer cloth, which shows a facing; a depth at which the outer edge would come out at another edge, with the deepest that does not; an edge with
 * an open dart. On a knit a note says that a facing stops the stretch.
 */
final class Facing implements Alteration {
    static final double MOST = 4;
    static final double SHORTER = 0.01;
    private static final double USUAL_DEPTH = 60;
    private static final double LEAST_DEPTH = 20;

    @Override
    public String name() {
        return "facing";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("edge", "neckline", "depth", "60 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("edge", "depth", "cloth");
        String edge = options.choice("edge", "neckline", "armhole")
                .orElseThrow(() -> options.refuse("make.facing.which-edge"));
        double depth = options.length("depth").map(Length::mm).orElse(USUAL_DEPTH);
        JoinedEdge run = JoinedEdge.of(draft, edge);
        run.parts().forEach(part -> requireFaceable(part.piece(), edge));
        requireFree(draft, run);
        requireNotSheer(options.text("cloth"), Where.UNKNOWN.edge(edge));
        if (!isClear(run, depth)) {
            throw tooDeep(run, depth);
        }
        return new FacedEdge(draft, run, depth, options.text("cloth")).altered();
    }

    private static void requireFaceable(Piece piece, String edge) {
        piece.cuttings()
                .forEach(cutting ->
                        requireNotSheer(cutting.cloth(), piece.where().edge(edge)));
        if (piece.edge(edge).kind() == Edge.Kind.BOUND) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("make.facing.bound-already"), piece.where().edge(edge)));
        }
        piece.marks(EdgeDart.class)
                .filter(dart -> SewnEdge.isOn(piece.edge(edge).path(), dart))
                .findFirst()
                .ifPresent(dart -> {
                    throw new Refusal(Reason.BeyondLimit.of(
                            Message.of("make.facing.dart-opens-in-it", dart.name()),
                            piece.where().edge(edge)));
                });
    }

    /** An edge that is sewn to something already, a sleeve or a collar, needs no facing of its own. */
    static void requireFree(Draft draft, JoinedEdge run) {
        for (Part part : run.parts()) {
            EdgeRef edge = new EdgeRef(part.piece().name(), run.edge());
            draft.seams().stream().filter(seam -> seam.joins(edge)).findFirst().ifPresent(seam -> {
                List<EdgeRef> other = seam.join().contains(edge) ? seam.to() : seam.join();
                throw new Refusal(Reason.BeyondLimit.of(
                        other.get(0).edge().equals(Names.CAP)
                                ? Message.of("make.facing.sewn-to-sleeve", Seam.nameOf(other))
                                : Message.of("make.facing.sewn-already", Seam.nameOf(other)),
                        part.piece().where().edge(run.edge())));
            });
        }
    }

    private static void requireNotSheer(Optional<String> cloth, Where where) {
        if (cloth.filter("sheer"::equals).isPresent()) {
            throw new Refusal(Reason.BeyondLimit.of(Message.of("make.facing.shows-through"), where));
        }
    }

    /** Whether the outer edge stays within the pieces, clear of their other edges. */
    private static boolean isClear(JoinedEdge run, double depth) {
        FacingShape shape;
        List<Path> outers = new ArrayList<>();
        try {
            shape = new FacingShape(run, depth);
            for (List<Part> parts : run.undivided()) {
                outers.add(new TracedFacing(run, shape, parts, 0, 0).outerPath(false, false));
            }
        } catch (IllegalArgumentException tight) {
            return false;
        }
        return run.parts().stream()
                .allMatch(part -> part.piece().edges().stream()
                        .filter(edge -> !edge.name().equals(run.edge())
                                && !edge.name().equals(part.startNeighbour())
                                && !edge.name().equals(part.endNeighbour()))
                        .map(edge -> edge.path().moved(part.laid()))
                        .allMatch(other -> outers.stream().allMatch(outer -> isBeside(outer, other))));
    }

    private static boolean isBeside(Path outer, Path other) {
        for (Point point : outer.flatten(0.5)) {
            if (other.hull().distanceTo(point) < TracedFacing.CLEAR && other.distanceTo(point) < TracedFacing.CLEAR) {
                return false;
            }
        }
        return Path.through(outer.flatten(0.5)).segments().stream()
                .noneMatch(chord -> !other.crossings((Line) chord).isEmpty());
    }

    private static Refusal tooDeep(JoinedEdge run, double depth) {
        Where where = run.parts().get(0).piece().where().edge(run.edge());
        if (!isClear(run, LEAST_DEPTH)) {
            return new Refusal(Reason.BeyondLimit.of(Message.of("make.facing.no-room"), where));
        }
        double most = Bisection.largest(LEAST_DEPTH, depth, deep -> isClear(run, deep));
        return new Refusal(Reason.BeyondLimit.of(
                Message.of("make.facing.too-deep", Quantity.millimetres(depth)), where, depth, most));
    }
}
