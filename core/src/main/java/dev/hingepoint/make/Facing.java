package dev.hingepoint.make;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Bisection;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.make.JoinedEdge.Part;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
    private static final double SHORTER = 0.01;
    private static final double USUAL_DEPTH = 60;
    private static final double LEAST_DEPTH = 20;

    @Override
    public String name() {
        return "facing";
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("edge", "depth", "cloth");
        String edge = options.choice("edge", "neckline", "armhole")
                .orElseThrow(() -> options.refuse("which edge? write for example {edge: neckline, depth: 60 mm}"));
        double depth = options.length("depth").map(Length::mm).orElse(USUAL_DEPTH);
        JoinedEdge run = JoinedEdge.of(draft, edge);
        run.parts().forEach(part -> requireFaceable(part.piece(), edge));
        requireFree(draft, run);
        requireNotSheer(options.text("cloth"), Where.UNKNOWN.edge(edge));
        if (!isClear(run, depth)) {
            throw tooDeep(run, depth);
        }
        return new Faced(draft, run, depth, options.text("cloth")).altered();
    }

    private static void requireFaceable(Piece piece, String edge) {
        piece.cuttings()
                .forEach(cutting ->
                        requireNotSheer(cutting.cloth(), piece.where().edge(edge)));
        if (piece.edge(edge).kind() == Edge.Kind.BOUND) {
            throw new Refusal(Reason.BeyondLimit.of(
                    "it is bound already; an edge is bound or faced",
                    piece.where().edge(edge)));
        }
        piece.marks(EdgeDart.class)
                .filter(dart -> SewnEdge.isOn(piece.edge(edge).path(), dart))
                .findFirst()
                .ifPresent(dart -> {
                    throw new Refusal(Reason.BeyondLimit.of(
                            "a facing is traced from a smooth edge, and the " + dart.name()
                                    + " opens in it; move the dart to another edge first",
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
                        "it is sewn to " + Seam.nameOf(other) + " already"
                                + (other.get(0).edge().equals("cap") ? "; make it sleeveless first" : ""),
                        part.piece().where().edge(run.edge())));
            });
        }
    }

    private static void requireNotSheer(Optional<String> cloth, Where where) {
        if (cloth.filter("sheer"::equals).isPresent()) {
            throw new Refusal(Reason.BeyondLimit.of(
                    "a facing shows through sheer cloth; bind the edge, or finish it with a rolled edge", where));
        }
    }

    /** Whether the outer edge stays within the pieces, clear of their other edges. */
    private static boolean isClear(JoinedEdge run, double depth) {
        FacingShape shape;
        List<Path> outers = new ArrayList<>();
        try {
            shape = new FacingShape(run, depth);
            for (Part part : run.parts()) {
                outers.add(new TracedFacing(run, shape, part, 0, 0).outerPath(false, false));
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
            return new Refusal(Reason.BeyondLimit.of("there is no room for a facing beside this edge; bind it", where));
        }
        double most = Bisection.largest(LEAST_DEPTH, depth, deep -> isClear(run, deep));
        return new Refusal(Reason.BeyondLimit.of(
                "at a depth of " + Reason.millimetres(depth) + " the facing would come out at another edge",
                where,
                depth,
                most));
    }

    /** One facing, drawn. */
    private static final class Faced {
        private final Draft draft;
        private final JoinedEdge run;
        private final double depth;
        private final Optional<String> cloth;
        private final FacingShape shape;
        private final double whole;
        private final double taken;

        Faced(Draft draft, JoinedEdge run, double depth, Optional<String> cloth) {
            this.draft = draft;
            this.run = run;
            this.depth = depth;
            this.cloth = cloth;
            this.shape = new FacingShape(run, depth);
            this.whole = run.sewnLength() * run.halves();
            this.taken = Math.min(MOST, SHORTER * whole);
        }

        Altered altered() {
            List<Piece> pieces = new ArrayList<>();
            List<Step> steps = new ArrayList<>();
            List<Law> laws = new ArrayList<>();
            Construction construction = draft.construction();
            TracedFacing before = null;
            TracedFacing first = null;
            for (Part part : run.parts()) {
                double own = taken / whole * part.path().length();
                TracedFacing facing =
                        new TracedFacing(run, shape, part, own * shareAtStart(part), own - own * shareAtStart(part));
                Piece made = facing.piece(
                        facing.cuttings(cloth), opens(part, part.startNeighbour()), opens(part, part.endNeighbour()));
                NewPiece.named(draft, facing.name());
                pieces.add(made);
                steps.add(facing.step(caption(part, own), made));
                construction = with(construction, facing, own);
                if (before != null) {
                    construction = construction.withSeam(seam(before, facing));
                }
                laws.addAll(laws(facing, own));
                first = first == null ? facing : first;
                before = facing;
            }
            if (run.isClosed()) {
                construction = construction.withSeam(seam(before, first));
            }
            Draft made = NewPiece.laidOut(draft, pieces).with(construction);
            Map<String, Object> amounts = new LinkedHashMap<>();
            amounts.put("edge", run.edge());
            amounts.put("depth", depth);
            amounts.put("shorter", taken);
            Altered faced = new Altered(made, amounts, steps, laws, List.of());
            Altered altered = run.parts().stream().anyMatch(part -> part.piece().hasEdge(Yoke.SEAM))
                    ? faced.withNote(
                            "the facing is divided where the yoke is; ordered before the yoke it would be whole")
                    : faced;
            return isKnit()
                    ? altered.withNote("a facing stops the stretch of a knit: the " + run.edge() + " opens to "
                            + Reason.millimetres(Math.rint(whole)) + " and no farther; a band or binding stretches")
                    : altered;
        }

        private boolean isKnit() {
            return draft.pattern().card().stretchAcross() > 0;
        }

        /** Half at each end of a piece; of a ring, all at its shoulders: the underarm is in the curve. */
        private double shareAtStart(Part part) {
            boolean curvedStart = JoinedEdge.isUnderarm(part.startNeighbour());
            boolean curvedEnd = JoinedEdge.isUnderarm(part.endNeighbour());
            return curvedStart == curvedEnd ? 0.5 : curvedStart ? 0 : 1;
        }

        private boolean opens(Part part, String neighbour) {
            EdgeRef edge = new EdgeRef(part.piece().name(), neighbour);
            return draft.openings().stream()
                    .anyMatch(opening ->
                            opening.edge().equals(edge) && opening.from().equals(run.edge()));
        }

        private String caption(Part part, double own) {
            return "Lay the pieces together at their seams, trace the " + run.edge() + " of the "
                    + part.piece().name() + ", and draw the facing " + Reason.millimetres(depth) + " deep; take "
                    + Reason.millimetres(Math.rint(10 * own) / 10)
                    + " out of it at its ends, so that it draws the edge in";
        }

        private Construction with(Construction construction, TracedFacing facing, double own) {
            Part part = facing.part();
            Piece piece = part.piece();
            EdgeRef edge = new EdgeRef(piece.name(), run.edge());
            Construction with = construction
                    .withSeam(Seam.of(edge, facing.joined()).withEase(own, own))
                    .withAllowance(facing.joined(), draft.allowances().of(piece, piece.edge(run.edge())))
                    .withAllowance(facing.outer(), Length.ZERO)
                    .withFinish(facing.outer(), "overlocked")
                    .withLabel(facing.name(), List.of("interface it; understitch it when it is sewn on"));
            for (String neighbour : List.of(part.startNeighbour(), part.endNeighbour())) {
                with = with.withAllowance(
                        facing.endAt(neighbour), draft.allowances().of(piece, piece.edge(neighbour)));
            }
            return with;
        }

        private static Seam seam(TracedFacing one, TracedFacing next) {
            return Seam.of(
                    one.endAt(one.part().endNeighbour()), next.endAt(next.part().startNeighbour()));
        }

        private List<Law> laws(TracedFacing facing, double own) {
            Piece piece = facing.part().piece();
            Where where = Where.inPiece(facing.name());
            return List.of(
                    Law.keepsPiece(piece),
                    new Law(
                            "makes the joined edge " + Reason.millimetres(own) + " shorter than the " + run.edge(),
                            where.edge(TracedFacing.JOINED),
                            (before, after) -> after.piece(piece.name()).sewnLength(run.edge()) - own,
                            (before, after) -> after.piece(facing.name()).sewnLength(TracedFacing.JOINED),
                            0.01),
                    new Law(
                            "keeps the outer edge " + Reason.millimetres(depth) + " from the " + run.edge(),
                            where.edge(TracedFacing.OUTER),
                            (before, after) -> 0,
                            (before, after) -> shape.offParallel(facing.outerOf(after.piece(facing.name()))),
                            0.5));
        }
    }
}
