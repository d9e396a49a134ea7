package dev.hingepoint.move;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.MovedParts.MovedPart;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cut and move: slash along lines, move the parts, rejoin. A gap is filled straight across; an overlap is removed, the part named
 * earlier lying on top; a wedge may be folded away. Parts that are not named stay, under all others.
 *
 * <p>A slash "up to, not through" a hinge is written as a line to the hinge: the parts on its two sides turn about it, so that the
 * stitching line stays joined there.
 *
 * <p><img src="doc-files/cut.svg" alt="the back of a dress, slashed at the hip up to the side seam; the part below has turned about its hinge, and the gap at centre back is filled" style="max-height: 32em">
 *
 * <p>Kept: the length of every line drawn on a part that moves rigidly, to the last bits; edge names and order; the way round that
 * the piece was drawn. Marks go with their part; a dart that a slash splits lengthwise goes whole with the part on top.
 *
 * @param lines the slashes, from outline to outline or to a point shared with other slashes
 * @param motions the parts that move, the one on top first
 * @param grain a place on the part that the grain follows; empty for the part it lies on
 */
public record Cut(String caption, List<Path> lines, List<PartMotion> motions, Optional<Place> grain) implements Move {
    /** A gap is measured between points so many mm on either side of the slash. */
    private static final double BESIDE = Tolerance.LAST_DECIMAL;

    /** Slashes that meet cross a line within so many mm. */
    private static final double ONE_PLACE = Tolerance.FLATTENING;

    /**
     * How the part that holds a place of the outline moves.
     *
     * @param isFolded the part is a wedge that is folded away
     */
    public record PartMotion(Place holding, Motion motion, boolean isFolded) {}

    public Cut {
        lines = List.copyOf(lines);
        motions = List.copyOf(motions);
    }

    public static Cut along(String caption, Path... lines) {
        return new Cut(caption, List.of(lines), List.of(), Optional.empty());
    }

    /** The same cut, with the part that holds {@code holding} moved. */
    public Cut moving(Place holding, Motion motion) {
        return with(new PartMotion(holding, motion, false));
    }

    /** The same cut, with the wedge that holds {@code holding} folded flat; see {@link Motion#fold}. */
    public Cut folding(Place holding, Motion fold) {
        return with(new PartMotion(holding, fold, true));
    }

    private Cut with(PartMotion motion) {
        List<PartMotion> all = new ArrayList<>(motions);
        all.add(motion);
        return new Cut(caption, lines, all, grain);
    }

    /** The same cut, with the grain following the part that holds {@code holding}. */
    public Cut withGrainOn(Place holding) {
        return new Cut(caption, lines, motions, Optional.of(holding));
    }

    /**
     * How far in mm the cut opens a line on the piece, measured along {@code across}: the gaps at the slashes that the line crosses, overlaps
     * negative. The stretches between, which move rigidly, keep their lengths.
     *
     * @param map of the paper, as this cut has moved it
     */
    public double opens(PaperMap map, Path line, Vector across) {
        List<Double> crossings = crossings(line);
        double opened = 0;
        for (int i = 0; i < crossings.size(); i++) {
            double from = crossings.get(i) - BESIDE;
            while (i + 1 < crossings.size() && crossings.get(i + 1) - crossings.get(i) <= ONE_PLACE) {
                i++;
            }
            double to = crossings.get(i) + BESIDE;
            if (from > 0 && to < line.length()) {
                Point before = line.at(from);
                Point after = line.at(to);
                opened += map.of(after)
                        .minus(map.of(before))
                        .minus(after.minus(before))
                        .dot(across);
            }
        }
        return opened;
    }

    private List<Double> crossings(Path line) {
        return lines.stream()
                .flatMap(slash -> slash.segments().stream())
                .flatMap(part -> line.crossings((Line) part).stream())
                .map(line::distanceAlong)
                .sorted()
                .toList();
    }

    @Override
    public Moved on(Piece piece) {
        Parts parts = Parts.of(piece, lines);
        MovedParts moved = moved(piece, parts);
        List<Path> fills = new ArrayList<>();
        List<Edge> clockwise = edges(parts, moved, fills);
        List<Edge> edges = piece.isClockwise() ? clockwise : Parts.reversed(clockwise);
        Optional<MovedPart> grainPart = grain.map(place -> moved.of(parts.holding(place.on(piece))));
        Piece result = piece.with(edges, new MarksAfterCut(piece, parts, moved, grainPart).marks());
        return new Moved(result, moved, step(piece, result, moved, fills));
    }

    private MovedParts moved(Piece piece, Parts parts) {
        List<MovedPart> topFirst = new ArrayList<>();
        List<Parts.Face> left = new ArrayList<>(parts.faces());
        for (PartMotion motion : motions) {
            Parts.Face face = parts.holding(motion.holding().on(piece));
            if (!left.remove(face)) {
                throw new IllegalArgumentException("a part is moved twice: the one with " + motion.holding());
            }
            topFirst.add(MovedPart.of(face, motion.motion(), motion.isFolded()));
        }
        left.forEach(face -> topFirst.add(MovedPart.of(face, Motion.STAY, false)));
        return new MovedParts(parts.slashes(), topFirst);
    }

    /** A run of the new outline: whole edges and stretches of edges in order, each with the part it lies on. */
    private record Run(String edge, Path path, MovedPart part, Point cutPointBefore) {}

    private static List<Edge> edges(Parts parts, MovedParts moved, List<Path> fills) {
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < parts.arcs().size(); i++) {
            MovedPart part = moved.of(parts.faceOfArc(i));
            if (!part.isFolded()) {
                for (Parts.Stretch stretch : parts.arcs().get(i).stretches()) {
                    runs.add(new Run(
                            stretch.edge(),
                            stretch.path().moved(part.motion()),
                            part,
                            parts.arcs().get(i).from()));
                }
            }
        }
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : parts.clockwiseEdges()) {
            // an edge that the arcs' start falls into has its first run last
            List<Run> own = new ArrayList<>(
                    runs.stream().filter(run -> run.edge().equals(edge.name())).toList());
            if (own.isEmpty()) {
                throw new IllegalArgumentException("the edge " + edge.name() + " is cut away whole");
            }
            if (own.size() > 1 && startsWithTheArcs(edge, parts)) {
                own.add(0, own.remove(own.size() - 1));
            }
            Path path = own.get(0).path();
            for (int i = 1; i < own.size(); i++) {
                Run run = own.get(i);
                MovedPart last = own.get(i - 1).part();
                path = moved.rejoin(path, last, run.path(), run.part(), run.cutPointBefore(), (one, other) -> {
                    fills.add(Path.through(one.end(), other.start()));
                    return one.then(other);
                });
            }
            edges.add(edge.with(path));
        }
        return joinedAtCorners(edges);
    }

    /** Whether the first arc begins inside this edge, so that the edge's beginning stands in the last arc. */
    private static boolean startsWithTheArcs(Edge edge, Parts parts) {
        Parts.Stretch first = parts.arcs().get(0).stretches().get(0);
        return first.edge().equals(edge.name())
                && !first.path().start().isCloseTo(edge.path().start(), Tolerance.COINCIDENT);
    }

    /** A cut that ended on a corner opened it: the gap is filled at the end of the edge before. */
    private static List<Edge> joinedAtCorners(List<Edge> edges) {
        List<Edge> joined = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            Point next = edges.get((i + 1) % edges.size()).path().start();
            double gap = edge.path().end().distanceTo(next);
            joined.add(
                    gap > Tolerance.COINCIDENT
                            ? edge.with(
                                    edge.path().then(Path.through(edge.path().end(), next)))
                            : edge);
        }
        return joined;
    }

    private Step step(Piece piece, Piece result, MovedParts moved, List<Path> fills) {
        List<Point> hinges = lines.stream()
                .flatMap(line -> List.of(line.start(), line.end()).stream())
                .distinct()
                .filter(point -> isHinge(point, moved))
                .toList();
        List<Step.Part> parts = moved.topFirst().stream()
                .map(part -> new Step.Part(part.face().boundary(), part.motion(), part.isFolded()))
                .toList();
        return new Step(caption, piece, result, moved.slashes(), hinges, parts, fills);
    }

    /** A hinge is an end of a slash that two parts which move otherwise leave in one place; where a wedge is folded away on one side, nothing turns. */
    private static boolean isHinge(Point point, MovedParts moved) {
        List<MovedPart> there = moved.topFirst().stream()
                .filter(part -> !part.isFolded() && part.face().boundary().distanceTo(point) <= Tolerance.COINCIDENT)
                .toList();
        return there.stream()
                .anyMatch(one -> there.stream()
                        .anyMatch(other -> !one.motion().equals(other.motion())
                                && one.motion()
                                        .of(point)
                                        .isCloseTo(other.motion().of(point), Tolerance.COINCIDENT)));
    }
}
