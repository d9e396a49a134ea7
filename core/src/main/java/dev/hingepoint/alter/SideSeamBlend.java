package dev.hingepoint.alter;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Refit;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * Blends the side seam of one piece from line to line. At each joint, a level, a line is given: the piece's own, or another size's, or
 * one of these moved out. Between two joints, with both lines' stretches as single cubics A and B, the seam is the cubic A0 A1 B2 B3: it
 * leaves the one line and meets the other smoothly and lies between them; for a constant gap it is A + gap smoothstep. Derived.
 */
final class SideSeamBlend {

    /** A hem runs square to the centre for this many mm. */
    private static final double SQUARE = 20;

    /**
     * A level where the seam is to lie on a line.
     *
     * @param line the piece that draws the line
     * @param by how many mm farther out than the line
     */
    record Joint(String level, Piece line, double by) {}

    private final Piece piece;
    private final List<Joint> joints;

    /** @param joints from the one where the blend starts down; the first one's line is the piece's own, moved out where all above goes with it, the last one's runs to the hem */
    SideSeamBlend(Piece piece, List<Joint> joints) {
        this.piece = piece;
        this.joints = List.copyOf(joints);
    }

    /** How far out, in mm, the seam's upper end goes, and all above the first joint with it. */
    double movedAbove() {
        return moved(0);
    }

    /** Away from the centre line at the first joint. */
    Vector outwards() {
        return frame(piece, 0).outwards();
    }

    /** The new courses, downwards: from joint to joint, and along the last one's line to the hem. */
    private List<Path> courses() {
        List<Path> courses = new ArrayList<>();
        courses.add(toHem());
        for (int i = joints.size() - 2; i >= 0; i--) {
            courses.add(0, Path.of(blend(i, courses.get(0).startTangent())));
        }
        return courses;
    }

    private Cubic blend(int i, Vector tangentBelow) {
        Cubic a = Refit.cubic(stretch(joints.get(i).line(), i)).moved(placed(i, i));
        Cubic b = Refit.cubic(stretch(joints.get(i + 1).line(), i)).moved(placed(i + 1, i));
        Piece lower = joints.get(i + 1).line();
        double ownBend = stretch(lower, i).endTangent().angleTo(ownTangentBelow(lower, i + 1));
        Vector meeting = Math.abs(ownBend) <= Tolerance.CORNER ? tangentBelow : tangentBelow.turned(-ownBend);
        double handle = b.endHandle().distanceTo(b.end());
        return new Cubic(a.start(), a.startHandle(), b.end().minus(meeting.times(handle)), b.end());
    }

    /** The line's own direction just below a joint. */
    private Vector ownTangentBelow(Piece line, int joint) {
        Path down = line.downwards(Names.SIDE_SEAM);
        double at = along(line, joint);
        return down.part(at, Math.min(down.length(), at + 1)).startTangent();
    }

    /** The line's stretch from joint i to the next. */
    private Path stretch(Piece line, int i) {
        return line.downwards(Names.SIDE_SEAM).part(along(line, i), along(line, i + 1));
    }

    /** How far down the line's side seam a joint lies, in mm; the first one below any dart's mouth that reaches past it. */
    private double along(Piece line, int joint) {
        Path down = line.downwards(Names.SIDE_SEAM);
        double level = down.distanceAlong(
                down.nearest(line.levelFrame(joints.get(joint).level()).outerEnd()));
        if (joint > 0) {
            return level;
        }
        double next = down.distanceAlong(
                down.nearest(line.levelFrame(joints.get(1).level()).outerEnd()));
        return line.marks(EdgeDart.class)
                .filter(dart -> line.nearest(dart.mouthMiddle()).edge().equals(Names.SIDE_SEAM))
                .mapToDouble(dart -> Math.max(
                        down.distanceAlong(down.nearest(dart.mouthStart())),
                        down.distanceAlong(down.nearest(dart.mouthEnd()))))
                .filter(leg -> leg > level && leg < next)
                .max()
                .orElse(level);
    }

    private Point at(Piece line, int joint) {
        return line.downwards(Names.SIDE_SEAM).at(along(line, joint));
    }

    /** Where the seam is to lie at a joint. */
    private Point target(int joint) {
        return at(piece, joint).plus(frame(piece, joint).outwards().times(moved(joint)));
    }

    /** How far out, in mm, the seam moves at a joint. Widths are read along the level, darts closed. */
    double moved(int joint) {
        Joint wanted = joints.get(joint);
        double other = wanted.line() == piece
                ? 0
                : frame(wanted.line(), joint).width() - frame(piece, joint).width();
        return other + wanted.by();
    }

    private LevelFrame frame(Piece line, int joint) {
        return line.levelFrame(joints.get(joint).level());
    }

    /** Lays the line of joint {@code joint} onto the piece, frame to frame, the depth of stretch {@code i} set to the piece's own. */
    private Motion placed(int joint, int i) {
        Piece line = joints.get(joint).line();
        return placed(
                joint,
                depth(piece, joint, at(piece, i), at(piece, i + 1)) / depth(line, joint, at(line, i), at(line, i + 1)));
    }

    private Motion placed(int joint, double depthScale) {
        Piece line = joints.get(joint).line();
        LevelFrame from = frame(line, joint);
        LevelFrame to = frame(piece, joint);
        return Motion.between(
                at(line, joint),
                from.outwards(),
                from.downwards(),
                target(joint),
                to.outwards(),
                to.downwards().times(depthScale));
    }

    private double depth(Piece line, int joint, Point from, Point to) {
        return to.minus(from).dot(frame(line, joint).downwards());
    }

    /** The last joint's line from there to the hem, its depth set to the piece's own. */
    private Path toHem() {
        int last = joints.size() - 1;
        Piece line = joints.get(last).line();
        Path own = piece.downwards(Names.SIDE_SEAM);
        Path down = line.downwards(Names.SIDE_SEAM);
        double scale = depth(piece, last, at(piece, last), own.end()) / depth(line, last, at(line, last), down.end());
        return down.part(along(line, last), down.length()).moved(placed(last, scale));
    }

    /**
     * The side seam on its new courses, the last one run on or drawn back by {@code longer} mm, and the hem from its unchanged centre
     * end to the new corner.
     */
    Redraw redraw(String caption, double longer) {
        List<Path> courses = new ArrayList<>(courses());
        int last = courses.size() - 1;
        courses.set(last, courses.get(last).withLength(courses.get(last).length() + longer));
        List<Redraw.Stretch> stretches = new ArrayList<>();
        Path own = piece.downwards(Names.SIDE_SEAM);
        if (movedAbove() != 0) {
            Path above =
                    own.part(0, along(piece, 0)).moved(Motion.shift(outwards().times(movedAbove())));
            stretches.add(stretch(0, along(piece, 0), above));
        }
        for (int i = 0; i < courses.size(); i++) {
            double to = i + 1 < joints.size() ? along(piece, i + 1) : own.length();
            stretches.add(stretch(along(piece, i), to, courses.get(i)));
        }
        return new Redraw(caption, stretches).and(hem(caption, courses.get(last).end()));
    }

    private Redraw.Stretch stretch(double from, double to, Path downwards) {
        Path drawn = piece.edge(Names.SIDE_SEAM).path();
        if (piece.downwards(Names.SIDE_SEAM) == drawn) {
            return new Redraw.Stretch(Names.SIDE_SEAM, drawn.positionAt(from), drawn.positionAt(to), downwards);
        }
        double length = drawn.length();
        return new Redraw.Stretch(
                Names.SIDE_SEAM, drawn.positionAt(length - to), drawn.positionAt(length - from), downwards.reversed());
    }

    private Redraw hem(String caption, Point corner) {
        String hem = piece.below(Names.SIDE_SEAM).name();
        Path old = piece.from(hem, Names.SIDE_SEAM).reversed();
        Vector across = frame(piece, joints.size() - 1).outwards();
        double scale = corner.minus(old.start()).dot(across)
                / old.end().minus(old.start()).dot(across);
        Path scaled = old.moved(Motion.stretch(old.start(), across, scale));
        if (!scaled.end().isCloseTo(corner, Tolerance.COINCIDENT)) {
            scaled = withCurvedEnd(scaled);
        }
        return Redraw.whole(
                caption, piece, hem, Names.SIDE_SEAM, scaled.withEnd(corner).reversed());
    }

    /** The last part of a hem bends up or down to its corner; what lies within {@link #SQUARE} of the centre stays as it runs. */
    private static Path withCurvedEnd(Path path) {
        boolean isOnePart = path.segments().size() == 1 && path.length() > 2 * SQUARE;
        Path parted = isOnePart ? path.part(0, SQUARE).then(path.part(SQUARE, path.length())) : path;
        int last = parted.segments().size() - 1;
        List<Segment> segments = new ArrayList<>(parted.segments());
        segments.set(last, Refit.asCubic(segments.get(last)));
        return Path.of(segments);
    }

    /** How much longer, in mm, the side seam gets. */
    double growth() {
        double before = piece.downwards(Names.SIDE_SEAM).length() - along(piece, 0);
        return courses().stream().mapToDouble(Path::length).sum() - before;
    }
}
