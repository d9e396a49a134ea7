package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.make.JoinedEdge.Part;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A straight strip that finishes an edge: a binding or a band. Its length is a share of the sewn length of the edge; notches on both at every quarter of the way round
 * say how it is stretched on. The edge it is sewn to becomes bound: cut on the line, without an allowance. The garment's lines stay where they are.
 *
 * @param kind "binding" or "band": the strip's name is the edge's and this
 * @param ratio of the strip's length to the edge's
 * @param high millimetres from long edge to long edge, without allowances
 * @param allowance on both long edges
 * @param lines where it is folded or stitched, in mm from the joined edge
 * @param isBias whether the grain runs slantwise
 */
record EdgeStrip(
        String kind,
        JoinedEdge run,
        double ratio,
        double high,
        Length allowance,
        Map<String, Double> lines,
        boolean isBias,
        Optional<String> cloth,
        List<String> label) {
    static final String JOINED = "joined edge";
    private static final String OTHER = "other edge";
    private static final String START = "start";
    private static final String END = "end";
    private static final double NOTCH = 5;
    private static final double JOINS = 10;

    String name() {
        return run.title() + " " + kind;
    }

    /** As it is drawn: half of it where the run is half of a whole. */
    double length() {
        return ratio * run.sewnLength();
    }

    private boolean isOnFold() {
        Part first = run.parts().get(0);
        Part last = run.parts().get(run.parts().size() - 1);
        return first.piece().edge(first.startNeighbour()).kind() == Edge.Kind.FOLD
                || last.piece().edge(last.endNeighbour()).kind() == Edge.Kind.FOLD;
    }

    /** The run begins at the fold that the strip lies on. */
    private boolean foldsAtStart() {
        Part first = run.parts().get(0);
        return first.piece().edge(first.startNeighbour()).kind() == Edge.Kind.FOLD;
    }

    /**
     * @throws Refusal where the edge is sewn to something, or bound, already
     */
    Altered on(Draft draft, Map<String, Object> amounts) {
        Facing.requireFree(draft, run);
        run.parts().forEach(part -> requireUnbound(part.piece()));
        NewPiece.named(draft, name());
        Piece strip = strip();
        List<Piece> bound = bound();
        Construction construction = construction(draft);
        Map<String, Object> told = new LinkedHashMap<>();
        told.put("edge", run.edge());
        told.putAll(amounts);
        told.put("ratio", ratio);
        told.put("length", run.halves() * length());
        return new Altered(
                NewPiece.laidOut(draft.with(bound), List.of(strip)).with(construction),
                told,
                List.of(Step.of(caption(), strip, strip)),
                laws(),
                List.of());
    }

    private void requireUnbound(Piece piece) {
        if (piece.edge(run.edge()).kind() == Edge.Kind.BOUND) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("make.bound-already"), piece.where().edge(run.edge())));
        }
    }

    private String caption() {
        double edge = run.halves() * run.sewnLength();
        return "Cut a strip for the " + run.edge() + ": " + told(edge) + " round, times "
                + Math.rint(ratio * 1000) / 1000 + " is " + told(run.halves() * length())
                + "; notch strip and edge at every quarter";
    }

    private static String told(double mm) {
        return Reason.millimetres(Math.rint(mm * 1000) / 1000);
    }

    /** Drawn lying, its joined edge below. */
    private Piece strip() {
        Point corner = new Point(0, 0);
        Point along = new Point(length(), 0);
        Point above = new Point(length(), -high);
        Point back = new Point(0, -high);
        Edge.Kind longKind = allowance.mm() == 0 ? Edge.Kind.BOUND : Edge.Kind.SEAM;
        boolean startsOnFold = isOnFold() && foldsAtStart();
        boolean endsOnFold = isOnFold() && !foldsAtStart();
        List<Edge> edges = List.of(
                new Edge(JOINED, longKind, Path.through(corner, along)),
                new Edge(END, endsOnFold ? Edge.Kind.FOLD : Edge.Kind.SEAM, Path.through(along, above)),
                new Edge(OTHER, longKind, Path.through(above, back)),
                new Edge(START, startsOnFold ? Edge.Kind.FOLD : Edge.Kind.SEAM, Path.through(back, corner)));
        List<Mark> marks = new ArrayList<>();
        quarters().forEach((quarter, part) -> {
            Point at = corner.towards(along, part);
            marks.add(new Notch(quarter, 1, new Line(at, at.plus(new Vector(0, -NOTCH)))));
        });
        lines.forEach((line, up) ->
                marks.add(new DrawnLine(line, Path.through(new Point(0, -up), new Point(length(), -up)))));
        marks.add(grain());
        Cutting.How how = isOnFold() ? Cutting.How.ON_FOLD : Cutting.How.PAIR;
        Piece first = run.parts().get(0).piece();
        return Piece.of(name(), first.size(), first.front(), List.of(new Cutting(1, how, cloth)), edges, marks);
    }

    /** A knit strip stretches along its length, across the cloth; a bias one lies slantwise on it, and is printed lying straight. */
    private Mark grain() {
        Point middle = new Point(length() / 8, -high / 2);
        Vector half = (isBias ? new Vector(1, -1).unit() : new Vector(0, 1)).times(0.35 * high);
        Line line = new Line(middle.minus(half), middle.plus(half));
        return isBias ? new DrawnLine(Grain.SLANTING, Path.of(line)) : new Grain(line);
    }

    /** The quarters of the way round that no seam, fold or end stands at, with their share of the run. */
    private Map<String, Double> quarters() {
        Map<String, Double> quarters = new LinkedHashMap<>();
        int shares = run.isClosed() ? 4 : 2;
        for (int i = 1; i < shares; i++) {
            quarters.put(run.edge() + " quarter" + (shares > 2 ? " " + i : ""), (double) i / shares);
        }
        return quarters;
    }

    private List<Piece> bound() {
        List<Piece> bound = new ArrayList<>();
        double before = 0;
        for (Part part : run.parts()) {
            Piece piece = NewPiece.withKind(part.piece(), run.edge(), Edge.Kind.BOUND);
            double own = piece.sewnLength(run.edge());
            for (Map.Entry<String, Double> quarter : quarters().entrySet()) {
                double along = quarter.getValue() * run.sewnLength() - before;
                if (along > 0 && along <= own) {
                    piece = piece.withMark(
                            NewPiece.notch(piece, quarter.getKey(), run.edge(), part.startNeighbour(), along));
                }
            }
            before += own;
            bound.add(piece);
        }
        return bound;
    }

    private List<EdgeRef> edges() {
        return run.parts().stream()
                .map(part -> new EdgeRef(part.piece().name(), run.edge()))
                .toList();
    }

    private EdgeRef edge(String edge) {
        return new EdgeRef(name(), edge);
    }

    private Construction construction(Draft draft) {
        double shorter = run.sewnLength() - length();
        Construction construction = draft.construction()
                .withSeam(new Seam(edges(), List.of(edge(JOINED)), shorter, shorter, false))
                .withLabel(name(), label);
        if (allowance.mm() > 0) {
            construction = construction.withAllowance(edge(JOINED), allowance).withAllowance(edge(OTHER), allowance);
        }
        for (EdgeRef bound : edges()) {
            construction = construction.withLabelOn(bound.piece(), bound.edge(), "cut on the line, for the " + name());
        }
        if (run.isClosed()) {
            construction = construction.withSeam(Seam.of(edge(START), edge(END)));
        }
        for (String end : List.of(START, END)) {
            construction = construction.withAllowance(edge(end), new Length(JOINS));
        }
        return construction;
    }

    private List<Law> laws() {
        List<Law> laws = new ArrayList<>();
        laws.add(new Law(
                Message.of("make.edge-strip.law.share-of-edge", Math.rint(ratio * 1000) / 1000, run.edge()),
                Where.inPiece(name()).edge(JOINED),
                (before, after) ->
                        ratio * edges().stream().mapToDouble(before::sewnLength).sum(),
                (before, after) -> after.sewnLength(edge(JOINED)),
                0.01));
        run.parts().forEach(part -> laws.add(Law.keepsPlace(part.piece().name(), run.edge())));
        return laws;
    }
}
