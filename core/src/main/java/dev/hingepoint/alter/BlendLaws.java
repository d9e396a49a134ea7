package dev.hingepoint.alter;

import static dev.hingepoint.pattern.Names.SIDE_SEAM;

import dev.hingepoint.Message;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What must hold of every blend: widths from the named sizes, depths and all else as they were, no corner that the sizes did not have. */
final class BlendLaws {

    private static final double HEM_WIDTH = 0.1;

    /** Corners of two sizes at the same part of the side seam's length, within this, are the same corner. */
    private static final double SAME_PLACE = 0.02;

    private final Draft draft;
    private final Map<String, Wanted> wanted;
    private final Map<String, Double> longer;

    /** @param longer by how many mm each piece's side seam runs on past its line at the hem corner */
    BlendLaws(Draft draft, Map<String, Wanted> wanted, Map<String, Double> longer) {
        this.draft = draft;
        this.wanted = wanted;
        this.longer = longer;
    }

    List<Law> on(List<Piece> pieces, List<Seam> armholeSeams) {
        List<Law> laws = new ArrayList<>();
        armholeSeams.forEach(seam -> laws.add(UnderarmBlend.keepsEase(seam)));
        for (Piece piece : pieces) {
            Stream.of(Names.NECKLINE, Names.SHOULDER, Names.ARMHOLE, Names.CENTRE_FRONT, Names.CENTRE_BACK)
                    .filter(piece::hasEdge)
                    .filter(edge -> armholeSeams.isEmpty() || !edge.equals(Names.ARMHOLE))
                    .forEach(edge -> laws.add(Law.keepsPlace(piece.name(), edge)));
            HipBlend.LEVELS.stream()
                    .filter(piece::hasLevel)
                    .map(level -> takesWidth(piece, level))
                    .forEach(laws::add);
            piece.marks(Level.class).forEach(level -> laws.add(keepsDepth(piece, level.name())));
            if (piece.hasLevel(Names.HIP)) {
                laws.add(takesHemWidth(piece));
            }
            laws.add(noNewCorner(piece));
        }
        List<String> names = new ArrayList<>(pieces.stream().map(Piece::name).toList());
        armholeSeams.forEach(seam -> names.add(UnderarmBlend.cap(seam).piece()));
        HipBlend.pairs(draft, names)
                .forEach(pair -> laws.add(Law.keepsDifference(List.of(pair[0]), List.of(pair[1]), 0.5)));
        laws.addAll(Law.keepsOthers(draft, names));
        return laws;
    }

    private Wanted at(String level) {
        return wanted.getOrDefault(level, Wanted.AS_IT_IS);
    }

    private Law takesWidth(Piece piece, String level) {
        Wanted line = at(level);
        return line.size().isPresent()
                ? Law.takesWidth(
                        piece.name(),
                        level,
                        line.line(draft, piece).width(level) + line.beyond(draft, piece, level),
                        0.1)
                : Law.changesWidth(piece.name(), level, line.by(), 0.1);
    }

    /** A level stays where it is and as it runs; its end may slide along it. */
    private static Law keepsDepth(Piece piece, String level) {
        LevelFrame was = piece.levelFrame(level);
        return new Law(
                Message.of("alter.blend.law.keeps-depth", level),
                piece.where().mark(level),
                (before, after) -> 0,
                (before, after) -> {
                    LevelFrame is = after.piece(piece.name()).levelFrame(level);
                    return Math.max(
                            is.origin().distanceTo(was.origin()),
                            Math.abs(is.outerEnd().minus(was.outerEnd()).dot(was.downwards())));
                },
                Tolerance.JOINING);
    }

    /** From the hip down the seam is the hip size's line, run on along its slant by what is shared at the hem corner. */
    private Law takesHemWidth(Piece piece) {
        double runsOn = longer.getOrDefault(piece.name(), 0.0);
        double width =
                hemWidth(at(Names.HIP).line(draft, piece)) + at(Names.HIP).beyond(draft, piece, Names.HIP);
        return new Law(
                Message.of("alter.blend.law.hem-as-asked"),
                piece.where().edge(piece.below(SIDE_SEAM).name()),
                (before, after) -> width + runsOn * slant(after.piece(piece.name())),
                (before, after) -> hemWidth(after.piece(piece.name())),
                HEM_WIDTH);
    }

    /** How far in mm the hem's side corner lies outside the hip level's end, and that from the centre line, darts closed. */
    private static double hemWidth(Piece piece) {
        LevelFrame hip = piece.levelFrame(Names.HIP);
        return hip.width()
                + piece.downwards(SIDE_SEAM).end().minus(hip.outerEnd()).dot(hip.outwards());
    }

    /** How far out the side seam goes at the hem for each mm down. */
    private static double slant(Piece piece) {
        return piece.downwards(SIDE_SEAM)
                .endTangent()
                .dot(piece.levelFrame(Names.HIP).outwards());
    }

    private Law noNewCorner(Piece piece) {
        List<Piece> parents = Stream.concat(
                        Stream.of(piece), wanted.values().stream().map(line -> line.line(draft, piece)))
                .toList();
        return Law.ofAngles(
                Message.of("alter.blend.law.no-new-corner"),
                piece.where().edge(SIDE_SEAM),
                (before, after) -> 0,
                (before, after) -> Math.max(0, sharper(after.piece(piece.name()), parents)),
                Tolerance.CORNER);
    }

    /** By how many radians, at most, a corner of the side seam is sharper than its sizes' at the same place. */
    private static double sharper(Piece piece, List<Piece> parents) {
        Path side = piece.downwards(SIDE_SEAM);
        return side.corners(Tolerance.CORNER).stream()
                .mapToDouble(corner -> {
                    double part = side.distanceAlong(corner) / side.length();
                    return bend(side, corner)
                            - parents.stream()
                                    .mapToDouble(parent -> sharpest(parent.downwards(SIDE_SEAM), part))
                                    .max()
                                    .orElse(0);
                })
                .max()
                .orElse(0);
    }

    /** The sharpest corner of a path near a part of its length. */
    private static double sharpest(Path path, double part) {
        return path.corners(Tolerance.CORNER).stream()
                .filter(corner -> Math.abs(path.distanceAlong(corner) / path.length() - part) <= SAME_PLACE)
                .mapToDouble(corner -> bend(path, corner))
                .max()
                .orElse(0);
    }

    private static double bend(Path path, Position joint) {
        double along = path.distanceAlong(joint);
        Vector in = path.part(0, along).endTangent();
        Vector out = path.part(along, path.length()).startTangent();
        return Math.abs(in.angleTo(out));
    }
}
