package dev.hingepoint.move;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.MovedParts.MovedPart;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * Divide: part a piece for good along a style line into two pieces that are sewn together again. No paper moves; each piece has its part of every edge,
 * level and line, and a new edge, of the same length on both, along the style line.
 *
 * <p><img src="doc-files/divide.svg" alt="the back of a dress with a yoke line, and the two pieces that it is divided into" style="max-height: 26em">
 *
 * <p>Kept: the place of everything that is drawn on the paper; the names of edges; and their lengths, that of a parted edge as the sum of its two parts.
 *
 * @param styleLine from outline to outline
 * @param holding a place on the part that becomes the first piece
 * @param first the first piece's name
 * @param second the other piece's name
 * @param seam the name of the new edge on both
 */
public record Divide(String caption, Path styleLine, Place holding, String first, String second, String seam) {
    private static final double GRAIN = 60;

    /** What came of dividing: two pieces, the seam that joins them, and the step. */
    public record Divided(Piece first, Piece second, Seam seam, Step step) {}

    /**
     * Does it.
     *
     * @throws Refusal where a dart lies across the style line, or a part would be no sound piece
     */
    public Divided on(Piece piece) {
        Parts parts = Parts.of(piece, List.of(styleLine));
        if (parts.faces().size() != 2) {
            throw new IllegalArgumentException(
                    "a style line parts a piece into two, not " + parts.faces().size());
        }
        Parts.Face face = parts.holding(holding.on(piece));
        Parts.Face other = parts.faces().get(parts.faces().get(0) == face ? 1 : 0);
        MovedParts places = new MovedParts(
                parts.slashes(),
                List.of(MovedPart.of(face, Motion.STAY, false), MovedPart.of(other, Motion.STAY, false)));
        Piece one = part(piece, parts, places, face, first);
        Piece two = part(piece, parts, places, other, second);
        Seam joined = Seam.of(new EdgeRef(first, seam), new EdgeRef(second, seam));
        Step step = new Step(caption, piece, one, parts.slashes(), List.of(), List.of(), List.of());
        return new Divided(one, two, joined, step);
    }

    private Piece part(Piece piece, Parts parts, MovedParts places, Parts.Face face, String name) {
        List<Edge> edges = new ArrayList<>();
        int arc = face.arcs().iterator().next();
        for (Parts.Stretch stretch : parts.arcs().get(arc).stretches()) {
            edges.add(piece.edge(stretch.edge()).with(stretch.path()));
        }
        Path line = parts.slashes().get(0);
        boolean isForward = line.start().equals(parts.arcs().get(arc).to());
        edges.add(new Edge(seam, Edge.Kind.SEAM, isForward ? line : line.reversed()));
        List<Edge> drawn = piece.isClockwise() ? edges : Parts.reversed(edges);
        MovedPart own = places.of(face);
        List<Mark> marks = new ArrayList<>();
        piece.marks().forEach(mark -> share(piece, mark, parts, places, own).ifPresent(marks::add));
        if (marks.stream().noneMatch(Grain.class::isInstance)) {
            marks.add(grainIn(face, piece.grain().down()));
        }
        return Piece.of(name, piece.size(), piece.front(), cuttings(piece, drawn), drawn, marks);
    }

    /** A part that no longer reaches the fold is cut as a pair. */
    private static List<Cutting> cuttings(Piece piece, List<Edge> edges) {
        boolean onFold = edges.stream().anyMatch(edge -> edge.kind() == Edge.Kind.FOLD);
        return piece.cuttings().stream()
                .map(cutting -> cutting.how() == Cutting.How.ON_FOLD && !onFold
                        ? new Cutting(cutting.count(), Cutting.How.PAIR, cutting.cloth())
                        : cutting)
                .toList();
    }

    /** The part of a mark that lies on one part of the paper. */
    private static Optional<Mark> share(Piece piece, Mark mark, Parts parts, MovedParts places, MovedPart own) {
        if (mark instanceof Notch notch) {
            return parts.holding(piece.nearest(notch.at())) == own.face() ? Optional.of(mark) : Optional.empty();
        }
        if (mark instanceof MarkedPoint point) {
            return places.at(point.at()) == own ? Optional.of(mark) : Optional.empty();
        }
        if (mark instanceof Dart dart) {
            List<MovedPart> on = dart.legs().stream()
                    .flatMap(leg -> Runs.of(leg, places).stream())
                    .map(Runs.Run::part)
                    .distinct()
                    .toList();
            if (on.size() > 1) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("move.divide.through-dart"), piece.where().mark(dart.name())));
            }
            return on.get(0) == own ? Optional.of(mark) : Optional.empty();
        }
        Path drawn = mark instanceof Level level
                ? level.path()
                : mark instanceof DrawnLine line ? line.path() : Path.of(((Grain) mark).line());
        return Runs.of(drawn, places).stream()
                .filter(run -> run.part() == own)
                .findFirst()
                .map(run -> with(mark, run.drawn()));
    }

    private static Mark with(Mark mark, Path path) {
        if (mark instanceof Level level) {
            return new Level(level.name(), path);
        }
        if (mark instanceof DrawnLine line) {
            return new DrawnLine(line.name(), path);
        }
        return new Grain(new Line(path.start(), path.end()));
    }

    private static Grain grainIn(Parts.Face face, Vector down) {
        Coordinate inside = JtsBridge.polygon(face.boundary().flatten(0.1))
                .getInteriorPoint()
                .getCoordinate();
        Point middle = new Point(inside.x, inside.y);
        Vector half = down.times(GRAIN / 2);
        return new Grain(new Line(middle.minus(half), middle.plus(half)));
    }
}
