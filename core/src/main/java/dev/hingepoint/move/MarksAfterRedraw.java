package dev.hingepoint.move;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Redraw.Stretch;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Where the marks of a piece lie after stretches of its edges were redrawn: what stands on a stretch goes with it, all else stays. */
final class MarksAfterRedraw {
    /** Of two crossings, the one that a line's end reaches first; a line that would have to grow by more is drawn elsewhere. */
    private static final double FARTHEST = 400;

    private final Piece piece;
    private final List<Stretch> stretches;
    private final UnaryOperator<Edge> redrawn;

    /** @param redrawn an edge of the piece on its new course */
    MarksAfterRedraw(Piece piece, List<Stretch> stretches, UnaryOperator<Edge> redrawn) {
        this.piece = piece;
        this.stretches = stretches;
        this.redrawn = redrawn;
    }

    List<Mark> marks() {
        return piece.marks().stream()
                .filter(mark -> !(mark instanceof Notch notch && isCutOff(notch.at())))
                .map(this::onNewCourse)
                .toList();
    }

    private Mark onNewCourse(Mark mark) {
        if (mark instanceof Notch notch) {
            Vector shift = onNewCourse(notch.at()).minus(notch.at());
            return new Notch(
                    notch.name(),
                    notch.count(),
                    new Line(
                            notch.line().start().plus(shift), notch.line().end().plus(shift)));
        }
        if (mark instanceof EdgeDart dart) {
            return new EdgeDart(
                    dart.name(),
                    dart.first().withStart(onNewCourse(dart.mouthStart())),
                    dart.second().withEnd(onNewCourse(dart.mouthEnd())));
        }
        if (mark instanceof Level level) {
            return new Level(level.name(), endsOnNewCourse(mark, level.path()));
        }
        if (mark instanceof DrawnLine line) {
            return new DrawnLine(line.name(), endsOnNewCourse(mark, line.path()));
        }
        return mark;
    }

    /** The new place of a point that stood on the outline: the same fraction of a redrawn stretch. */
    private Point onNewCourse(Point point) {
        return stretches.stream()
                .filter(stretch -> stretch.newCourse().isPresent() && isOn(stretch, point))
                .findFirst()
                .filter(stretch -> stretch.course().distanceTo(point) > 2 * Tolerance.LAST_DECIMAL)
                .map(stretch -> {
                    Path old = piece.edge(stretch.edge()).path();
                    double from = old.distanceAlong(stretch.from());
                    double to = old.distanceAlong(stretch.to());
                    double along = old.distanceAlong(old.nearest(point));
                    double fraction = Math.min(1, Math.max(0, (along - from) / (to - from)));
                    return stretch.course().at(fraction * stretch.course().length());
                })
                .orElse(point);
    }

    private boolean isCutOff(Point point) {
        return stretches.stream().anyMatch(stretch -> stretch.newCourse().isEmpty() && isOn(stretch, point));
    }

    private boolean isOn(Stretch stretch, Point point) {
        if (stretch.isRunOn()) {
            return false;
        }
        Path old = piece.edge(stretch.edge()).path();
        if (old.hull().distanceTo(point) > Tolerance.JOINING) {
            return false;
        }
        Position at = old.nearest(point);
        return old.at(at).isCloseTo(point, Tolerance.JOINING)
                && old.distanceAlong(at) >= old.distanceAlong(stretch.from()) - Tolerance.COINCIDENT
                && old.distanceAlong(at) <= old.distanceAlong(stretch.to()) + Tolerance.COINCIDENT;
    }

    private Path endsOnNewCourse(Mark mark, Path path) {
        Path end = endOnNewCourse(mark, path);
        return endOnNewCourse(mark, end.reversed()).reversed();
    }

    /** The path drawn out, or cut off, where it meets the new course of the stretch it ended on. */
    private Path endOnNewCourse(Mark mark, Path path) {
        Point end = path.end();
        Optional<Stretch> stretch = stretches.stream()
                .filter(s -> s.newCourse().isPresent() && isOn(s, end))
                .findFirst();
        boolean isStraight = path.segments().get(path.segments().size() - 1) instanceof Line;
        if (stretch.isEmpty() || !isStraight) {
            return path;
        }
        Path course = redrawn.apply(piece.edge(stretch.get().edge())).path();
        return IntStream.range(0, path.segments().size())
                .boxed()
                .flatMap(i -> endingInPart(path, i, course).stream())
                .min(Comparator.comparingDouble(ended -> ended.end().distanceTo(end)))
                .filter(ended -> ended.end().isCloseTo(end, FARTHEST))
                .orElseThrow(() -> new Refusal(new Reason.Unsound(
                        Message.of(
                                "move.redraw.line-no-longer-meets",
                                stretch.get().edge()),
                        piece.where().mark(mark.name()))));
    }

    /** The path cut off where one of its straight parts meets a course; only the last part may be drawn out to meet it. */
    private static Optional<Path> endingInPart(Path path, int part, Path course) {
        List<Segment> parts = path.segments();
        if (!(parts.get(part) instanceof Line line)) {
            return Optional.empty();
        }
        boolean isLast = part == parts.size() - 1;
        double length = line.length();
        return course.crossings(line.end(), line.step()).stream()
                .map(course::at)
                .filter(point -> along(line, point) > Tolerance.COINCIDENT && (isLast || along(line, point) <= length))
                .min(Comparator.comparingDouble(point -> point.distanceTo(path.end())))
                .map(meets -> {
                    List<Segment> ended = new ArrayList<>(parts.subList(0, part));
                    ended.add(new Line(line.start(), meets));
                    return Path.of(ended);
                });
    }

    private static double along(Line line, Point point) {
        return point.minus(line.start()).dot(line.tangent(0));
    }
}
