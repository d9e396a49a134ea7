package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How a seam or a free edge is finished: its allowances follow, on both sides of a seam, and the labels say where to stitch and what to trim. A rolled edge becomes bound: cut on
 * its line.
 */
final class FinishChoice implements Alteration {
    private static final int STEPS = 16;

    @Override
    public String name() {
        return "finish";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("edge", "side seam", "as", "overlocked");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("edge", "as", "allowance");
        Finish finish = options.choice("as", Finish.all())
                .map(Finish::named)
                .orElseThrow(() -> options.refuse("make.finish.how"));
        Optional<Double> given = options.length("allowance").map(Length::mm);
        String written = options.text("edge").orElseThrow(() -> options.refuse("make.finish.which-edge"));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("edge", written);
        amounts.put("as", finish.words());
        Altered altered = new Altered(draft, amounts, List.of(), List.of(), List.of());
        Set<EdgeRef> done = new LinkedHashSet<>();
        for (EdgeRef edge : edges(draft, written)) {
            if (!done.contains(edge)) {
                Optional<Seam> seam =
                        draft.seams().stream().filter(sewn -> sewn.joins(edge)).findFirst();
                List<EdgeRef> all = new ArrayList<>(seam.map(Seam::join).orElse(List.of(edge)));
                seam.ifPresent(sewn -> all.addAll(sewn.to()));
                done.addAll(all);
                altered = altered.then(before -> on(before, all, seam.isPresent(), finish, given));
            }
        }
        return altered;
    }

    private static List<EdgeRef> edges(Draft draft, String written) {
        if (written.contains("/")) {
            EdgeRef edge = EdgeRef.parse(written);
            draft.piece(edge.piece()).edge(edge.edge());
            return List.of(edge);
        }
        List<EdgeRef> edges = draft.piecesWithEdges(written).stream()
                .map(piece -> new EdgeRef(piece.name(), written))
                .toList();
        if (edges.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("make.no-such-edge", written), Where.UNKNOWN.size(draft.size())));
        }
        return edges;
    }

    private static Altered on(Draft draft, List<EdgeRef> edges, boolean isSeam, Finish finish, Optional<Double> given) {
        Construction construction = draft.construction();
        List<Piece> changed = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (EdgeRef ref : edges) {
            Piece piece = changed.stream()
                    .filter(other -> other.name().equals(ref.piece()))
                    .findFirst()
                    .orElse(draft.piece(ref.piece()));
            Edge edge = piece.edge(ref.edge());
            if (!edge.kind().takesAllowance()) {
                throw new Refusal(Reason.BeyondLimit.of(
                        edge.kind() == Edge.Kind.FOLD
                                ? Message.of("make.finish.fold")
                                : Message.of("make.bound-already"),
                        piece.where().edge(edge.name())));
            }
            double usual = draft.allowances().of(piece, edge).mm();
            double allowance = given.orElse(finish.allowance(isSeam).orElse(usual));
            String told = finish.told(isSeam, allowance, piece.where().edge(edge.name()));
            Piece now = finish == Finish.ROLLED_EDGE ? NewPiece.withKind(piece, edge.name(), Edge.Kind.BOUND) : piece;
            changed.removeIf(other -> other.name().equals(now.name()));
            changed.add(now);
            construction = construction
                    .withAllowance(ref, new Length(allowance))
                    .withLabelOn(ref.piece(), ref.edge(), finish.words() + ", " + told);
            steps.add(Step.of("Finish the " + edge.name() + " " + finish.words() + ": " + told, piece, now));
            laws.add(Law.keepsPlace(piece.name(), edge.name()));
            double radius = tightest(edge.path());
            if (finish == Finish.FRENCH && radius < Finish.TURNS) {
                notes.add("a French seam does not turn well where the " + ref + " bends to a radius of "
                        + Reason.millimetres(Math.rint(radius)) + "; a narrow seam does");
            }
        }
        construction = construction.withFinish(edges.get(0), finish.words());
        return new Altered(draft.with(changed).with(construction), Map.of(), steps, laws, notes);
    }

    /** The smallest radius in mm along a path; infinite where it is straight. */
    static double tightest(Path path) {
        double sharpest = 0;
        for (Segment segment : path.segments()) {
            for (int i = 0; i <= STEPS; i++) {
                sharpest = Math.max(sharpest, Math.abs(segment.curvature((double) i / STEPS)));
            }
        }
        return 1 / sharpest;
    }
}
