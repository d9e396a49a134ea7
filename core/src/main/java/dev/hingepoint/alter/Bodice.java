package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** What front and back have in common round the arm: shoulder, armhole and side seam, for recipes that move them together. */
final class Bodice {

    /** A side seam gives way to a moved underarm over so many mm, or down to the bust level. */
    private static final double GIVES_WAY_OVER = 60;

    /** Over less than this a side seam cannot give way without a bump. */
    private static final double LEAST_WAY = 30;

    /** Where the shoulder turned, an armhole may leave its old course by so many mm, and a neckline, which is to stay, by less. */
    private static final double ARMHOLE_WITHIN = 0.4;

    private static final double NECKLINE_WITHIN = 0.25;

    private Bodice() {}

    /**
     * The pieces with shoulder, armhole and side seam.
     *
     * @throws Refusal where there are none, or other pieces have a part of the armhole
     */
    static List<Piece> pieces(Draft draft, String alteration) {
        List<Piece> pieces = draft.piecesWithEdges(Names.SHOULDER, Names.ARMHOLE, Names.SIDE_SEAM);
        if (pieces.isEmpty()) {
            throw new Refusal(new Reason.Missing(
                    Message.of("alter.bodice.needs-edges", alteration), Where.UNKNOWN.size(draft.size())));
        }
        draft.piecesWithEdges(Names.ARMHOLE).stream()
                .filter(piece -> !pieces.contains(piece))
                .findFirst()
                .ifPresent(piece -> {
                    throw new Refusal(new Reason.Missing(
                            Message.of("alter.bodice.armhole-divided", alteration),
                            piece.where().edge(Names.ARMHOLE)));
                });
        return pieces;
    }

    /** Across the grain, from the neck to the arm. */
    static Vector outwards(Piece piece) {
        Vector across = piece.grain().down().left();
        Vector toUnderarm = piece.from(Names.ARMHOLE, Names.SIDE_SEAM)
                .start()
                .minus(piece.from(Names.SHOULDER, Names.NECKLINE).start());
        return toUnderarm.dot(across) > 0 ? across : across.negated();
    }

    /** Where in mm down the side seam from the underarm the first dart opens; empty where none does. */
    static OptionalDouble toFirstDart(Piece piece) {
        Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
        return piece.marks(EdgeDart.class)
                .filter(dart -> SewnEdge.isOn(side, dart))
                .flatMap(dart -> Stream.of(dart.mouthStart(), dart.mouthEnd()))
                .mapToDouble(end -> side.distanceAlong(side.nearest(end)))
                .min();
    }

    /** Where in mm down the side seam from the underarm the first level ends; empty where none does. */
    static OptionalDouble toFirstLevel(Piece piece) {
        Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
        return piece.marks(Level.class)
                .flatMap(level -> Stream.of(level.path().start(), level.path().end()))
                .filter(end -> side.distanceTo(end) <= Tolerance.JOINING)
                .mapToDouble(end -> side.distanceAlong(side.nearest(end)))
                .min();
    }

    /** The levels that end on the side seam. */
    static List<String> levelsOnSideSeam(Piece piece) {
        Path side = piece.edge(Names.SIDE_SEAM).path();
        return piece.marks(Level.class)
                .map(Level::name)
                .filter(level -> side.distanceTo(piece.levelFrame(level).outerEnd()) <= Tolerance.JOINING)
                .toList();
    }

    /** Over how many mm a side seam gives way to a moved underarm: down to the bust level, so that the girth there stays; above any dart. */
    static double wayOfSideSeam(Piece piece) {
        double level = toFirstLevel(piece).orElse(GIVES_WAY_OVER);
        double wanted = level >= LEAST_WAY ? level : GIVES_WAY_OVER;
        double room = toFirstDart(piece)
                .orElse(piece.from(Names.SIDE_SEAM, Names.ARMHOLE).length() / 2);
        return Math.min(wanted, room);
    }

    /**
     * An armhole, given from one of its ends, the underarm or the tip of the shoulder, which goes by a step: up to its innermost point it gives
     * way, the rest stays.
     */
    static Path withEndMoved(Path armhole, Vector outwards, Vector step) {
        Position innermost = armhole.farthest(outwards.negated());
        double along = armhole.distanceAlong(innermost);
        if (along <= Tolerance.JOINING || along >= armhole.length() - Tolerance.JOINING) {
            return armhole.givingWay(step);
        }
        return armhole.part(armhole.startPosition(), innermost)
                .givingWay(step)
                .then(armhole.part(innermost, armhole.endPosition()));
    }

    /** An armhole that runs up to the shoulder in another direction, or a neckline: it leaves its old course by less than one sees. */
    static Path turnedAtShoulder(String edge, Path upToShoulder, Vector direction) {
        return Fairing.turnedAtEnd(
                upToShoulder, direction, edge.equals(Names.ARMHOLE) ? ARMHOLE_WITHIN : NECKLINE_WITHIN);
    }

    /**
     * The darts of an edge that was redrawn, each as wide at its mouth as it was: the mouth stays about its middle, and the tip slides
     * along the mouth's direction until the legs are equal.
     */
    static Piece withDarts(Piece before, Piece after, String edge) {
        Path path = after.edge(edge).path();
        return after.withMarksChanged(mark -> mark instanceof EdgeDart dart && SewnEdge.isOn(path, dart)
                ? asWide(
                        dart,
                        path,
                        before.find(EdgeDart.class, dart.name()).orElseThrow().intake())
                : mark);
    }

    private static EdgeDart asWide(EdgeDart dart, Path path, double intake) {
        double start = path.distanceAlong(path.nearest(dart.mouthStart()));
        double end = path.distanceAlong(path.nearest(dart.mouthEnd()));
        double half = Math.copySign(intake / 2, end - start);
        Point one = path.at((start + end) / 2 - half);
        Point other = path.at((start + end) / 2 + half);
        Vector mouth = other.minus(one).unit();
        Point tip = dart.tip()
                .plus(mouth.times(one.midpoint(other).minus(dart.tip()).dot(mouth)));
        return new EdgeDart(
                dart.name(),
                dart.first().withStart(one).withEnd(tip),
                dart.second().withStart(tip).withEnd(other));
    }

    /** The side seams among these pieces that are sewn to each other. */
    static List<Seam> sideSeams(Draft draft, List<Piece> pieces) {
        return seams(draft, pieces, Names.SIDE_SEAM);
    }

    /** The shoulder seams among these pieces. */
    static List<Seam> shoulderSeams(Draft draft, List<Piece> pieces) {
        return seams(draft, pieces, Names.SHOULDER);
    }

    private static List<Seam> seams(Draft draft, List<Piece> pieces, String edge) {
        return draft.seams().stream()
                .filter(seam -> seam.join().size() == 1 && seam.to().size() == 1)
                .filter(seam -> Stream.of(seam.join().get(0), seam.to().get(0))
                        .allMatch(ref -> ref.edge().equals(edge)
                                && pieces.stream()
                                        .anyMatch(piece -> piece.name().equals(ref.piece()))))
                .toList();
    }

    /** Leaves an edge in its shape, moved: nowhere farther from its old course than {@code tolerance} mm. */
    static Law keepsShape(String piece, String edge, Motion motion, double tolerance) {
        return new Law(
                motion.equals(Motion.STAY)
                        ? Message.of("alter.law.keeps-shape", edge)
                        : Message.of("alter.law.keeps-shape-moved", edge),
                Where.inPiece(piece).edge(edge),
                (before, after) -> 0,
                (before, after) -> after.piece(piece)
                        .edge(edge)
                        .path()
                        .apart(before.piece(piece).edge(edge).path().moved(motion)),
                tolerance);
    }

    /** Leaves every other piece, every level's width and the edges named as they are. */
    static List<Law> staying(Draft draft, List<Piece> altered, String... edges) {
        List<Law> laws = new ArrayList<>();
        for (Piece piece : altered) {
            Stream.of(edges).filter(piece::hasEdge).forEach(edge -> laws.add(Law.keepsPlace(piece.name(), edge)));
        }
        laws.addAll(Law.keepsOthers(draft, altered.stream().map(Piece::name).toList()));
        return laws;
    }
}
