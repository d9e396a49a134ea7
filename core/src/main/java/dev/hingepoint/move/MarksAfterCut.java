package dev.hingepoint.move;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.MovedParts.MovedPart;
import dev.hingepoint.move.Runs.Run;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;

/** Where the marks of a piece lie after a cut: each is its image under the map of the paper. */
final class MarksAfterCut {
    private final Piece piece;
    private final Parts parts;
    private final MovedParts moved;
    private final Vector drawnDown;
    private final Grain grain;

    MarksAfterCut(Piece piece, Parts parts, MovedParts moved, Optional<MovedPart> grainPart) {
        this.piece = piece;
        this.parts = parts;
        this.moved = moved;
        Grain drawn = piece.grain();
        this.drawnDown = drawn.down();
        this.grain = drawn.moved(
                grainPart.orElseGet(() -> moved.at(drawn.line().at(0.5))).motion());
    }

    List<Mark> marks() {
        return piece.marks().stream().map(this::image).toList();
    }

    private Mark image(Mark mark) {
        if (mark instanceof Grain) {
            return grain;
        }
        if (mark instanceof MarkedPoint point) {
            return new MarkedPoint(point.name(), moved.of(point.at()), point.radius());
        }
        if (mark instanceof Notch notch) {
            return notch.moved(motionOnOutline(notch.at()));
        }
        if (mark instanceof Level level) {
            return new Level(level.name(), orCarried(level.path(), stepped(level.path())));
        }
        if (mark instanceof DrawnLine line) {
            return new DrawnLine(line.name(), orCarried(line.path(), image(line.path(), Path::then)));
        }
        return image((Dart) mark);
    }

    /** The motion of the part whose stretch of outline holds a point. A folded part carries marks without distorting them. */
    private Motion motionOnOutline(Point point) {
        MovedPart part = moved.of(parts.holding(piece.nearest(point)));
        return part.isFolded() ? Motion.shift(part.motion().of(point).minus(point)) : part.motion();
    }

    /** A line that lies in the folded paper as a whole has no image there: it is carried along as it is. */
    private Path orCarried(Path drawn, Path image) {
        return image == null ? drawn.moved(motionOnOutline(drawn.start())) : image;
    }

    private Path image(Path path, BinaryOperator<Path> fill) {
        Path image = null;
        MovedPart last = null;
        for (Run run : runs(path)) {
            if (run.image().isPresent()) {
                Path next = run.image().get();
                image = image == null
                        ? next
                        : moved.rejoin(
                                image, last, next, run.part(), run.drawn().start(), fill);
                last = run.part();
            }
        }
        return image;
    }

    /** A level across a cut: its width counts each gap, and each overlap, as it lies square to the grain. */
    private Path stepped(Path level) {
        Path image = null;
        for (Run run : runs(level)) {
            if (run.image().isPresent()) {
                image = image == null
                        ? run.image().get()
                        : stepped(image, run.image().get());
            }
        }
        return image;
    }

    /** From one run to the next square to the grain, then along it; an overlap is taken off the first run. */
    private Path stepped(Path one, Path other) {
        Vector gap = other.start().minus(one.end());
        if (gap.length() <= Tolerance.COINCIDENT) {
            return one.then(other);
        }
        Vector down = grain.down();
        Vector outwards = one.end().minus(one.start());
        Vector across = down.left().times(Math.signum(down.left().dot(outwards)));
        double opened = gap.dot(across);
        if (opened < -Tolerance.COINCIDENT) {
            List<Position> under = one.crossings(other.start(), down);
            return under.isEmpty()
                    ? one.then(other)
                    : one.part(one.startPosition(), under.get(under.size() - 1)).then(other);
        }
        Point corner = one.end().plus(across.times(opened));
        boolean isLevel = corner.isCloseTo(one.end(), Tolerance.COINCIDENT)
                || corner.isCloseTo(other.start(), Tolerance.COINCIDENT);
        return isLevel
                ? one.then(other)
                : one.then(Path.through(one.end(), corner, other.start())).then(other);
    }

    private List<Run> runs(Path path) {
        return Runs.of(path, moved);
    }

    private Dart image(Dart dart) {
        if (isSplitLengthwise(dart)) {
            // with both ends on slashes it hangs on its lower one, where the waist is
            Point end = ends(dart)
                    .filter(this::isOnSlash)
                    .max(Comparator.comparingDouble(
                            point -> point.minus(dart.legs().get(0).start()).dot(drawnDown)))
                    .orElseThrow();
            return (Dart) dart.moved(moved.at(end).motion());
        }
        List<Run> first = runs(dart.legs().get(0));
        List<Run> second = runs(dart.legs().get(1));
        boolean isFolded = isAcrossFold(first) && isAcrossFold(second);
        if (isFolded) {
            return FoldedDart.evened(dart, moved::of, rejoinedAcrossFold(first), rejoinedAcrossFold(second));
        }
        Path one = image(dart.legs().get(0), Path::then);
        Path other = image(dart.legs().get(1), Path::then).withStart(one.end());
        double more = difference(one, other)
                - difference(dart.legs().get(0), dart.legs().get(1));
        boolean areBothCrossed = first.size() > 1 && second.size() > 1;
        return areBothCrossed && Math.abs(more) > Tolerance.COINCIDENT
                ? FoldedDart.evened(dart, moved::of, one, other)
                : withLegs(dart, one, other);
    }

    private static double difference(Path one, Path other) {
        return one.length() - other.length();
    }

    static Dart withLegs(Dart dart, Path first, Path second) {
        return dart instanceof EdgeDart
                ? new EdgeDart(dart.name(), first, second)
                : new DoublePointedDart(dart.name(), first, second.withEnd(first.start()));
    }

    private static Stream<Point> ends(Dart dart) {
        return dart instanceof EdgeDart edge
                ? Stream.of(edge.tip(), edge.mouthMiddle())
                : Stream.of(((DoublePointedDart) dart).firstTip(), ((DoublePointedDart) dart).secondTip());
    }

    /** A slash that runs out at a dart's end, or through it, splits the dart along its middle. */
    private boolean isSplitLengthwise(Dart dart) {
        return ends(dart).anyMatch(this::isOnSlash)
                && dart.legs().stream()
                                .flatMap(leg -> runs(leg).stream())
                                .map(Run::part)
                                .distinct()
                                .count()
                        > 1;
    }

    private boolean isOnSlash(Point tip) {
        return moved.slashes().stream().anyMatch(slash -> slash.distanceTo(tip) <= Tolerance.JOINING);
    }

    private static boolean isAcrossFold(List<Run> runs) {
        return runs.size() == 3 && runs.get(1).part().isFolded();
    }

    private static Path rejoinedAcrossFold(List<Run> runs) {
        Path before = runs.get(0).image().orElseThrow();
        Run folded = runs.get(1);
        Path after = runs.get(2).image().orElseThrow();
        // a leg that bends in the wedge, at the dart's widest, is rejoined there; a straight one half way
        Point joint = folded.drawn().segments().size() == 2
                ? folded.part().motion().of(folded.drawn().segments().get(0).end())
                : before.end().midpoint(after.start());
        return before.withEnd(joint).then(after.withStart(joint));
    }
}
