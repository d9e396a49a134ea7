package dev.hingepoint.move;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.MovedParts.MovedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A line drawn on the paper, parted where slashes cross it: a run for each stretch that lies on one part. */
final class Runs {
    /**
     * A run of a line.
     *
     * @param image where it lies after its part moved; empty where folding left nothing of it
     */
    record Run(Path drawn, MovedPart part, Optional<Path> image) {}

    private Runs() {}

    /** The runs in order, neighbouring runs on one part made one. */
    static List<Run> of(Path path, MovedParts parts) {
        List<Run> runs = new ArrayList<>();
        Position from = path.startPosition();
        Position runStart = from;
        MovedPart last = null;
        for (Position to : crossings(path, parts)) {
            Path stretch = path.part(from, to);
            MovedPart part = parts.at(stretch.at(stretch.length() / 2));
            if (last != null && part != last) {
                runs.add(run(path.part(runStart, from), last));
                runStart = from;
            }
            last = part;
            from = to;
        }
        runs.add(run(path.part(runStart, path.endPosition()), last));
        return runs;
    }

    private static Run run(Path drawn, MovedPart part) {
        List<Segment> images = new ArrayList<>();
        for (Segment segment : drawn.segments()) {
            // folding can leave nothing of a segment
            Point start = part.motion().of(segment.start());
            Point end = part.motion().of(segment.end());
            if (!part.isFolded() || !start.isCloseTo(end, Tolerance.COINCIDENT)) {
                images.add(segment.moved(part.motion()));
            }
        }
        return new Run(drawn, part, images.isEmpty() ? Optional.empty() : Optional.of(Path.of(images)));
    }

    /** Where slashes cross a path, in order, ending with the path's end. */
    private static List<Position> crossings(Path path, MovedParts parts) {
        List<Position> found = new ArrayList<>();
        for (Path slash : parts.slashes()) {
            for (Segment segment : slash.segments()) {
                for (Line line : lines(segment)) {
                    found.addAll(path.crossings(line));
                }
            }
        }
        List<Position> distinct = new ArrayList<>();
        double last = 0;
        for (Position position : found.stream().sorted().toList()) {
            double along = path.distanceAlong(position);
            if (along - last > Tolerance.COINCIDENT && path.length() - along > Tolerance.COINCIDENT) {
                distinct.add(position);
                last = along;
            }
        }
        distinct.add(path.endPosition());
        return distinct;
    }

    private static List<Line> lines(Segment segment) {
        return segment instanceof Line line
                ? List.of(line)
                : Path.through(Path.of(segment).flatten(Tolerance.FLATTENING)).segments().stream()
                        .map(Line.class::cast)
                        .toList();
    }
}
