package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How a piece that is cut on the fold is laid open: mirrored about its fold; where a second fold is square to the first, about that as well. */
final class Unfolding {
    /** The piece as its paper is. */
    static final Unfolding NONE = new Unfolding(List.of());

    /** Two folds are square to each other within the sine of this bend. */
    private static final double SQUARE = StrictMath.sin(Tolerance.CORNER);

    private final List<Mirror> mirrors;

    private Unfolding(List<Mirror> mirrors) {
        this.mirrors = List.copyOf(mirrors);
    }

    /** @throws Refusal where a fold is not straight */
    static Unfolding of(Piece piece) {
        List<Mirror> mirrors = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (edge.kind() == Edge.Kind.FOLD
                    && mirrors.stream().noneMatch(mirror -> mirror.holds(edge.path()))
                    && mirrors.stream().allMatch(mirror -> mirror.isSquareTo(edge.path()))) {
                mirrors.add(Mirror.along(piece, edge));
            }
        }
        return new Unfolding(mirrors);
    }

    /** Where the paper lies, once for each of its images: as it is, then mirrored. */
    List<Motion> images() {
        List<Motion> images = new ArrayList<>(List.of(Motion.STAY));
        for (Mirror mirror : mirrors) {
            List.copyOf(images).forEach(image -> images.add(image.then(mirror.motion())));
        }
        return images;
    }

    /** Whether the piece is laid open along an edge, so that it is no edge any more. */
    boolean opens(Edge edge) {
        return edge.kind() == Edge.Kind.FOLD && mirrors.stream().anyMatch(mirror -> mirror.holds(edge.path()));
    }

    /** A closed line round the paper, laid open: without its stretches along the folds. A hole in the fold makes a ring of its own. */
    List<List<Point>> rings(List<Point> ring) {
        List<List<Point>> rings = List.of(ring);
        for (Mirror mirror : mirrors) {
            rings = rings.stream().flatMap(mirror::whole).toList();
        }
        return rings;
    }

    /** @param inwards unit vector square to the fold, into the paper */
    private record Mirror(Point on, Vector inwards) {
        static Mirror along(Piece piece, Edge fold) {
            Path path = fold.path();
            Vector along = path.end().minus(path.start()).unit();
            Mirror mirror = new Mirror(path.start(), piece.inwards(along));
            if (!mirror.holds(path)) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("print.unfold-straight-only"), piece.where().edge(fold.name())));
            }
            return mirror;
        }

        Motion motion() {
            return Motion.stretch(on, inwards, -1);
        }

        private double depth(Point point) {
            return point.minus(on).dot(inwards);
        }

        boolean holds(Path path) {
            return path.controlPoints().allMatch(point -> Math.abs(depth(point)) <= Tolerance.JOINING);
        }

        boolean isSquareTo(Path path) {
            Vector along = path.end().minus(path.start()).unit();
            return Math.abs(along.dot(inwards.left())) <= SQUARE;
        }

        /** Each stretch off the fold with its image; a hem's allowance that reaches over the fold by a hair ends on it. */
        Stream<List<Point>> whole(List<Point> ring) {
            List<Point> open = ring.subList(0, ring.size() - 1);
            int first = 0;
            while (first < open.size() && !isOn(open.get(first))) {
                first++;
            }
            if (first == open.size()) {
                return Stream.of(ring, motion().of(ring));
            }
            List<List<Point>> rings = new ArrayList<>();
            List<Point> run = new ArrayList<>(List.of(ontoFold(open.get(first))));
            for (int i = 1; i <= open.size(); i++) {
                Point point = open.get((first + i) % open.size());
                if (!isOn(point)) {
                    run.add(point);
                    continue;
                }
                if (run.size() > 1) {
                    run.add(ontoFold(point));
                    rings.add(withImage(run));
                }
                run = new ArrayList<>(List.of(ontoFold(point)));
            }
            return rings.stream();
        }

        private boolean isOn(Point point) {
            return depth(point) <= Tolerance.JOINING;
        }

        private Point ontoFold(Point point) {
            return point.minus(inwards.times(depth(point)));
        }

        /** @param run from the fold to the fold */
        private List<Point> withImage(List<Point> run) {
            List<Point> ring = new ArrayList<>(run);
            for (int i = run.size() - 2; i > 0; i--) {
                ring.add(motion().of(run.get(i)));
            }
            ring.add(run.get(0));
            return ring;
        }
    }
}
