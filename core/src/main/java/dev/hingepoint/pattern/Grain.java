package dev.hingepoint.pattern;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The grainline: one straight line, never bent. */
public record Grain(Line line) implements Mark {
    /** What common practice takes for the grain where none is drawn. */
    private static final Grain UPRIGHT = new Grain(new Line(new Point(0, 0), new Point(0, 1)));

    /** What the grain of a piece is called that lies slantwise on the cloth: a line like any other, since the piece is drawn and printed along its edge. */
    public static final String SLANTING = "grain";

    /** Edges and levels by how far down the body they lie. */
    private static final Map<String, Integer> EDGES = Map.of("neckline", 0, "shoulder", 0, "cap", 0, "waist", 2);

    private static final Map<String, Integer> LEVELS = Map.of("bust", 1, "waist", 2, "high hip", 3, "hip", 4);
    private static final int HEM = 5;

    /** A grain that runs along the way from top to bottom by less than this part of it runs across, and does not tell which way is down. */
    private static final double ACROSS = 0.1;

    /**
     * The grain of a piece, from its upper end to its lower, however the piece lies on the drawing and whichever way the line was drawn: neckline, shoulder, cap and
     * waist lie above the hem, and the levels in their order. A piece without two of these, or cut across the grain, lies as it is drawn, its upper end up.
     */
    static Grain of(Piece piece) {
        Grain drawn = piece.marks(Grain.class).findFirst().orElse(UPRIGHT);
        Vector along = drawn.line.tangent(0);
        TreeMap<Integer, Point> places = new TreeMap<>();
        piece.edges().forEach(edge -> {
            Integer depth = edge.kind() == Edge.Kind.HEM ? Integer.valueOf(HEM) : EDGES.get(edge.name());
            if (depth != null) {
                places.putIfAbsent(depth, middle(edge.path()));
            }
        });
        piece.marks(Level.class)
                .filter(level -> LEVELS.containsKey(level.name()))
                .forEach(level -> places.putIfAbsent(LEVELS.get(level.name()), middle(level.path())));
        if (places.size() > 1) {
            Vector down =
                    places.lastEntry().getValue().minus(places.firstEntry().getValue());
            double part = down.dot(along);
            if (Math.abs(part) > ACROSS * down.length()) {
                return part > 0 ? drawn : drawn.reversed();
            }
        }
        boolean isDrawnUp = along.y() < 0 || along.y() == 0 && along.x() < 0;
        return isDrawnUp ? drawn.reversed() : drawn;
    }

    /** The line of the cloth's grain on a piece that lies slantwise on it; empty for one that lies along it. */
    public static Optional<Line> slanting(Piece piece) {
        return piece.find(DrawnLine.class, SLANTING)
                .map(line -> new Line(line.path().start(), line.path().end()));
    }

    private static Point middle(Path path) {
        return path.start().midpoint(path.end());
    }

    private Grain reversed() {
        return new Grain(line.reversed());
    }

    @Override
    public String name() {
        return "grain";
    }

    /** Unit direction of the line: down the body, for the one that {@link Piece#grain} gives. */
    public Vector down() {
        return line.tangent(0);
    }

    @Override
    public Grain moved(Motion motion) {
        return new Grain(line.moved(motion));
    }
}
