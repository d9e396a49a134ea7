package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.check.Law;
import dev.hingepoint.make.JoinedEdge.Part;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The facings of one edge, as a {@link Facing} orders them: drawn, laid on the table, sewn to the edge and to each other. */
final class FacedEdge {
    private final Draft draft;
    private final JoinedEdge run;
    private final double depth;
    private final Optional<String> cloth;
    private final FacingShape shape;
    private final double whole;
    private final double taken;

    FacedEdge(Draft draft, JoinedEdge run, double depth, Optional<String> cloth) {
        this.draft = draft;
        this.run = run;
        this.depth = depth;
        this.cloth = cloth;
        this.shape = new FacingShape(run, depth);
        this.whole = run.sewnLength() * run.halves();
        this.taken = Math.min(Facing.MOST, Facing.SHORTER * whole);
    }

    Altered altered() {
        List<TracedFacing> facings = run.undivided().stream().map(this::traced).toList();
        List<Piece> pieces = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        run.parts().forEach(part -> laws.add(Law.keepsPiece(part.piece())));
        Construction construction = draft.construction();
        for (TracedFacing facing : facings) {
            NewPiece.named(draft, facing.name());
            Piece made = facing.piece(facing.cuttings(cloth), opens(facing.besideStart()), opens(facing.besideEnd()));
            pieces.add(made);
            steps.add(facing.step(caption(facing), made));
            construction = with(construction, facing);
            laws.addAll(laws(facing));
        }
        for (int i = run.isClosed() ? 0 : 1; i < facings.size(); i++) {
            TracedFacing before = facings.get((i + facings.size() - 1) % facings.size());
            construction = construction.withSeam(Seam.of(
                    before.endAt(before.endNeighbour()),
                    facings.get(i).endAt(facings.get(i).startNeighbour())));
        }
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("edge", run.edge());
        amounts.put("depth", depth);
        amounts.put("shorter", taken);
        Altered altered =
                new Altered(NewPiece.laidOut(draft, pieces).with(construction), amounts, steps, laws, List.of());
        return draft.pattern().card().isKnit()
                ? altered.withNote("a facing stops the stretch of a knit: the " + run.edge() + " opens to "
                        + Reason.millimetres(Math.rint(whole)) + " and no farther; a band or binding stretches")
                : altered;
    }

    /** What is taken out goes half to each end of a piece; of a ring, all to its shoulders: the underarm is in the curve. */
    private TracedFacing traced(List<Part> parts) {
        double own = taken
                / whole
                * parts.stream().mapToDouble(part -> part.path().length()).sum();
        boolean curvedStart = JoinedEdge.isUnderarm(parts.get(0).startNeighbour());
        boolean curvedEnd = JoinedEdge.isUnderarm(parts.get(parts.size() - 1).endNeighbour());
        double atStart = own * (curvedStart == curvedEnd ? 0.5 : curvedStart ? 0 : 1);
        return new TracedFacing(run, shape, parts, atStart, own - atStart);
    }

    private boolean opens(EdgeRef edge) {
        return draft.openings().stream()
                .anyMatch(
                        opening -> opening.edge().equals(edge) && opening.from().equals(run.edge()));
    }

    private String caption(TracedFacing facing) {
        return "Lay the pieces together at their seams, trace the " + run.edge() + " of the " + facing.laidOn()
                + ", and draw the facing " + Reason.millimetres(depth) + " deep; take "
                + new Length(facing.shorter()).tenths()
                + " out of it at its ends, so that it draws the edge in";
    }

    private Construction with(Construction construction, TracedFacing facing) {
        Construction with = construction
                .withSeam(new Seam(facing.edges(), List.of(facing.joined()), facing.shorter(), facing.shorter(), false))
                .withAllowance(facing.joined(), allowance(facing.edges().get(0)))
                .withAllowance(facing.outer(), Length.ZERO)
                .withFinish(facing.outer(), "overlocked")
                .withLabel(facing.name(), List.of("interface it; understitch it when it is sewn on"));
        for (EdgeRef beside : List.of(facing.besideStart(), facing.besideEnd())) {
            with = with.withAllowance(facing.endAt(beside.edge()), allowance(beside));
        }
        return with;
    }

    private Length allowance(EdgeRef edge) {
        Piece piece = draft.piece(edge.piece());
        return draft.allowances().of(piece, piece.edge(edge.edge()));
    }

    private List<Law> laws(TracedFacing facing) {
        Where where = Where.inPiece(facing.name());
        return List.of(
                new Law(
                        Message.of("make.faced-edge.law.shorter", Quantity.millimetres(facing.shorter()), run.edge()),
                        where.edge(TracedFacing.JOINED),
                        (before, after) -> facing.edges().stream()
                                        .mapToDouble(after::sewnLength)
                                        .sum()
                                - facing.shorter(),
                        (before, after) -> after.sewnLength(facing.joined()),
                        0.01),
                new Law(
                        Message.of("make.faced-edge.law.keeps-depth", Quantity.millimetres(depth), run.edge()),
                        where.edge(TracedFacing.OUTER),
                        (before, after) -> 0,
                        (before, after) -> shape.offParallel(facing.outerOf(after.piece(facing.name()))),
                        0.5));
    }
}
