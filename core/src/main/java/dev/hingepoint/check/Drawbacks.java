package dev.hingepoint.check;

import dev.hingepoint.Reason;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is worse after an alteration than it was before, and has to be lived with: paper that is off grain, a centre line that is no longer straight, seams that are joined and no
 * longer of one shape, a seam that eases otherwise than it should, a dart so deep that it points.
 */
public final class Drawbacks {
    /** Off grain by less than so many mm over {@link #OVER} is not seen in cloth (common practice, no source: 1 in 100). */
    private static final double OFF_GRAIN = 5;

    private static final double OVER = 500;

    /** A dart that takes up more in mm makes a point (common practice, no source). */
    private static final double DEEP_DART = 60;

    /** An edge lies on the outline of a part that it is not farther from in mm. */
    private static final double ON = 0.1;

    /** Into so many parts of equal length a line is divided to be measured. */
    private static final int PLACES = 40;

    /** What a part is called by: the first of these that lies on it. */
    private static final List<String> LANDMARKS =
            List.of(Names.NECKLINE, Names.CAP, Names.ARMHOLE, Names.SHOULDER, Names.HEM, Names.SIDE_SEAM);

    private final Draft before;
    private final Draft after;

    private Drawbacks(Draft before, Draft after) {
        this.before = before;
        this.after = after;
    }

    /**
     * Each in one sentence.
     *
     * @param steps that led from the one to the other
     */
    public static List<String> of(Draft before, Draft after, List<Step> steps) {
        Drawbacks drawbacks = new Drawbacks(before, after);
        List<String> told = new ArrayList<>();
        steps.stream().filter(Step::isCut).forEach(step -> told.addAll(offGrain(step)));
        for (Piece piece : after.pieces()) {
            before.find(piece.name()).filter(old -> !old.equals(piece)).ifPresent(old -> {
                told.addAll(bentCentre(old, piece));
                told.addAll(deepDarts(old, piece));
            });
        }
        told.addAll(drawbacks.unlikeSeams());
        return told;
    }

    /** The parts that turned against the one that the grain went with. */
    private static List<String> offGrain(Step step) {
        double turned =
                step.before().grain().down().angleTo(step.after().grain().down());
        List<String> told = new ArrayList<>();
        for (Step.Part part : step.parts()) {
            double off = OVER * Math.abs(StrictMath.tan(part.motion().angle() - turned));
            if (!part.isFolded() && off > OFF_GRAIN) {
                told.add("the part of the " + step.after().name() + " " + named(step.before(), part)
                        + " is off grain now, by " + Reason.millimetres(Math.rint(off)) + " over "
                        + Reason.millimetres(OVER));
            }
        }
        return told;
    }

    /** By what lies whole on it. */
    private static String named(Piece piece, Step.Part part) {
        return LANDMARKS.stream()
                .filter(piece::hasEdge)
                .filter(edge -> IntStream.rangeClosed(1, 3).allMatch(quarter -> {
                    Path path = piece.edge(edge).path();
                    return part.outline().distanceTo(path.at(path.length() * quarter / 4)) < ON;
                }))
                .findFirst()
                .map(edge -> "with the " + edge)
                .orElse("between the cuts");
    }

    private static List<String> bentCentre(Piece old, Piece piece) {
        List<String> told = new ArrayList<>();
        for (String centre : List.of(Names.CENTRE_FRONT, Names.CENTRE_BACK)) {
            if (piece.hasEdge(centre) && old.hasEdge(centre)) {
                double now = offStraight(piece.edge(centre).path());
                if (now > Tolerance.SEAM_MATCH
                        && now > offStraight(old.edge(centre).path()) + Tolerance.SEAM_MATCH) {
                    told.add(centre + " is no longer straight: " + new Length(now).tenths()
                            + " from a straight line, so it cannot lie on a fold, and stripes show it");
                }
            }
        }
        return told;
    }

    private static double offStraight(Path path) {
        Vector along = path.end().minus(path.start()).unit();
        return places(path)
                .mapToDouble(at -> Math.abs(at.minus(path.start()).cross(along)))
                .max()
                .orElse(0);
    }

    private static Stream<Point> places(Path path) {
        return IntStream.rangeClosed(0, PLACES).mapToObj(i -> path.at(path.length() * i / PLACES));
    }

    private static List<String> deepDarts(Piece old, Piece piece) {
        return piece.marks(EdgeDart.class)
                .filter(dart -> dart.intake() > DEEP_DART)
                .filter(dart -> old.find(EdgeDart.class, dart.name())
                        .map(was -> dart.intake() > was.intake() + Tolerance.SEAM_MATCH)
                        .orElse(true))
                .map(dart -> "the " + dart.name() + " takes up " + new Length(dart.intake()).tenths()
                        + ": so deep a dart points; part of it could be moved elsewhere")
                .toList();
    }

    private static String unmatched(Walked walked) {
        Seam seam = walked.seam();
        String meant = seam.easeFrom() == 0 && seam.easeTo() == 0
                ? ""
                : "; " + new Length(seam.easeFrom()).tenths() + " to " + new Length(seam.easeTo()).tenths()
                        + " longer is meant, to be eased in";
        return named(seam) + " no longer match: " + Seam.nameOf(seam.join()) + " is "
                + new Length(Math.abs(walked.difference())).tenths()
                + (walked.difference() < 0 ? " shorter" : " longer") + " than " + Seam.nameOf(seam.to()) + meant;
    }

    /** "the side seams of front and back"; of more edges than two, all by name. */
    private static String named(Seam seam) {
        EdgeRef one = seam.join().get(0);
        EdgeRef other = seam.to().get(0);
        boolean areAlike =
                seam.join().size() == 1 && seam.to().size() == 1 && one.edge().equals(other.edge());
        return areAlike ? "the " + one.edge() + "s of " + one.piece() + " and " + other.piece() : seam.toString();
    }

    private List<String> unlikeSeams() {
        List<String> told = new ArrayList<>();
        List<Walked> all = SeamWalk.all(after).stream()
                .filter(walked -> before.seams().contains(walked.seam()))
                .toList();
        for (Walked walked : all) {
            if (SeamWalk.of(before, walked.seam()).lengthMatches() && !walked.lengthMatches()) {
                told.add(unmatched(walked));
            }
            List<EdgeRef> join = walked.seam().join();
            List<EdgeRef> to = walked.seam().to();
            if (join.size() == 1 && to.size() == 1) {
                double now = apart(after, join.get(0), to.get(0));
                double then = apart(before, join.get(0), to.get(0));
                if (now > then + Tolerance.SEAM_MATCH) {
                    told.add(named(walked.seam()) + " are of unlike shape now: laid on each other they part by "
                            + new Length(now).tenths() + ", before by " + new Length(then).tenths());
                }
            }
        }
        return told;
    }

    /** How far in mm two edges part where they are laid on each other, end on end, the way that they come closest. */
    private static double apart(Draft draft, EdgeRef one, EdgeRef other) {
        Path first = path(draft, one);
        Path second = path(draft, other);
        return List.of(second, second.reversed()).stream()
                .flatMap(turned -> List.of(turned, mirrored(turned)).stream())
                .mapToDouble(laid -> gap(first, onto(first, laid)))
                .min()
                .orElseThrow();
    }

    private static Path path(Draft draft, EdgeRef edge) {
        return draft.piece(edge.piece()).sewn(edge.edge()).closed();
    }

    private static Path mirrored(Path path) {
        return path.moved(
                Motion.stretch(path.start(), path.end().minus(path.start()).left(), -1));
    }

    private static Path onto(Path first, Path laid) {
        Motion turn = Motion.turn(
                laid.start(), laid.end().minus(laid.start()), first.end().minus(first.start()));
        Path turned = laid.moved(turn);
        Point middle = first.start().midpoint(first.end());
        return turned.moved(Motion.shift(middle.minus(turned.start().midpoint(turned.end()))));
    }

    private static double gap(Path first, Path laid) {
        return IntStream.rangeClosed(0, PLACES)
                .mapToDouble(i -> first.at(first.length() * i / PLACES).distanceTo(laid.at(laid.length() * i / PLACES)))
                .max()
                .orElse(0);
    }
}
