package dev.hingepoint.check;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * Walks seams: lays the two sides along each other, as a fitter does with two pieces of paper, and tells how they match.
 *
 * <p>Which ends meet is decided by what is known, in this order: neighbours that are sewn to each other, or together to a third edge;
 * neighbours of one name; notches of one name; and where none of these speaks, the sides run as drawn, one of them backwards where the
 * seam says {@code reversed}.
 */
public final class SeamWalk {
    private static final Set<String> OPEN_ENDS = Set.of("neckline", "armhole");

    private final Draft draft;
    private final List<Seam> seams;

    private SeamWalk(Draft draft) {
        this.draft = draft;
        this.seams = draft.seams();
    }

    /** Every seam whose pieces are drawn in this size; pieces that are not drawn in any size are a mistake of the card's. */
    public static List<Walked> all(Draft draft) {
        return draft.seams().stream()
                .filter(seam -> isDrawn(draft, seam))
                .map(seam -> of(draft, seam))
                .toList();
    }

    private static boolean isDrawn(Draft draft, Seam seam) {
        List<EdgeRef> edges = new ArrayList<>(seam.join());
        edges.addAll(seam.to());
        for (EdgeRef edge : edges) {
            boolean anywhere = draft.pattern().nest().stream()
                    .anyMatch(piece -> piece.name().equals(edge.piece()));
            if (!anywhere) {
                throw new Refusal(new Reason.Missing(
                        Message.of("check.seam-walk.piece-not-drawn", seam, edge.piece()), Where.UNKNOWN));
            }
        }
        return edges.stream().allMatch(edge -> draft.find(edge.piece()).isPresent());
    }

    /**
     * Walks one seam.
     *
     * @throws Refusal where a piece or an edge of it is not drawn
     */
    public static Walked of(Draft draft, Seam seam) {
        SeamWalk walk = new SeamWalk(draft);
        SewnRun join = null;
        SewnRun to = null;
        double best = Double.NEGATIVE_INFINITY;
        for (SewnRun one : walk.runs(seam.join())) {
            for (SewnRun other : walk.runs(seam.to())) {
                double evidence = walk.evidence(seam, one, other);
                if (evidence > best) {
                    best = evidence;
                    join = one;
                    to = other;
                }
            }
        }
        return new Walked(seam, join.length(), to.length(), walk.notches(join, to), walk.ends(join, to));
    }

    /** The ways to run through one side of a seam, forwards as drawn first. */
    private List<SewnRun> runs(List<EdgeRef> side) {
        return SewnRun.through(draft, side, this::isSewn).stream()
                .sorted(Comparator.comparingInt(run -> isAtSide(run) ? 1 : 0))
                .toList();
    }

    /** A run of armholes that meets at the side seams would begin at the shoulders; sleeves are set the other way. */
    private static boolean isAtSide(SewnRun run) {
        return run.joints().stream().anyMatch(joint -> joint[0].edge().equals("side seam"));
    }

    private double evidence(Seam seam, SewnRun one, SewnRun other) {
        double evidence = 0;
        evidence += like(one.startNeighbour(), other.startNeighbour()) + like(one.endNeighbour(), other.endNeighbour());
        for (Walked.NotchGap notch : notches(one, other)) {
            double longer = Math.max(one.length(), other.length());
            evidence += 10 * (1 - 2 * Math.abs(notch.difference()) / longer);
        }
        boolean asDrawn = one.isAsDrawn() && other.isAsDrawn();
        boolean oneReversed = one.isAsDrawn() && !other.isAsDrawn();
        if (seam.reversed() ? oneReversed : asDrawn) {
            evidence += 0.1;
        }
        return one.isAsDrawn() ? evidence : evidence - 1e-3;
    }

    /** How strongly two neighbours say that their ends meet. */
    private double like(EdgeRef one, EdgeRef other) {
        if (one.equals(other)) {
            return 0;
        }
        double like = isSewn(one, other) ? 100 : 0;
        boolean toOneThird = seams.stream()
                .anyMatch(seam -> seam.join().contains(one) && seam.join().contains(other)
                        || seam.to().contains(one) && seam.to().contains(other));
        like += toOneThird ? 100 : 0;
        boolean bothHems = edge(one).kind() == Edge.Kind.HEM && edge(other).kind() == Edge.Kind.HEM;
        return like + (one.edge().equals(other.edge()) || bothHems ? 50 : 0);
    }

    private boolean isSewn(EdgeRef one, EdgeRef other) {
        return seams.stream()
                .anyMatch(seam -> seam.join().contains(one) && seam.to().contains(other)
                        || seam.join().contains(other) && seam.to().contains(one));
    }

    private Edge edge(EdgeRef ref) {
        return draft.piece(ref.piece()).edge(ref.edge());
    }

    private List<Walked.NotchGap> notches(SewnRun join, SewnRun to) {
        List<Walked.NotchGap> gaps = new ArrayList<>();
        join.notches().forEach((name, along) -> {
            if (to.notches().containsKey(name)) {
                gaps.add(new Walked.NotchGap(name, along, to.notches().get(name)));
            }
        });
        return gaps;
    }

    private List<Walked.RunOn> ends(SewnRun join, SewnRun to) {
        List<Walked.RunOn> ends = new ArrayList<>();
        addRunOn(ends, join.startNeighbour(), to.startNeighbour(), join.startAngle() + to.startAngle());
        addRunOn(ends, join.endNeighbour(), to.endNeighbour(), join.endAngle() + to.endAngle());
        return ends;
    }

    private void addRunOn(List<Walked.RunOn> ends, EdgeRef one, EdgeRef other, double angle) {
        if (isOpenEnd(one) && isOpenEnd(other) && !isSewn(one, other)) {
            ends.add(new Walked.RunOn(one.toString(), other.toString(), 180 - StrictMath.toDegrees(angle)));
        }
    }

    private boolean isOpenEnd(EdgeRef ref) {
        return edge(ref).kind() == Edge.Kind.HEM || OPEN_ENDS.contains(ref.edge());
    }
}
