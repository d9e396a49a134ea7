package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The names of sizes that lie in one another, each a few times inside the line that it is cut along. The sizes' names stand one after the other along the line, so that they
 * keep clear of each other; none stands where sizes share a line. Sizes
 * that share all of it are named together.
 */
final class SizeNames {
    /** How often a name is set round a piece. */
    private static final int TIMES = 4;

    /** How many places are tried for each. */
    private static final int TRIES = 30;

    /** Lines nearer to each other than this, in mm, are taken for one. */
    private static final double SHARED = 1;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Map<LaidSize, String> names = new LinkedHashMap<>();
    private final STRtree parts = new STRtree();

    /** A straight part of a size's line. */
    private record Part(LaidSize size, Geometry line) {}

    SizeNames(List<LaidSize> sizes) {
        for (LaidSize size : sizes) {
            LaidSize line =
                    names.keySet().stream().filter(size::isCutLike).findFirst().orElse(size);
            names.merge(line, size.draft().size(), (before, more) -> before + ", " + more);
        }
        for (LaidSize size : names.keySet()) {
            for (List<Point> ring : size.cutting()) {
                for (int i = 1; i < ring.size(); i++) {
                    Geometry line = FACTORY.createLineString(
                            new Coordinate[] {coordinate(ring.get(i - 1)), coordinate(ring.get(i))});
                    parts.insert(line.getEnvelopeInternal(), new Part(size, line));
                }
            }
        }
    }

    private static Coordinate coordinate(Point point) {
        return new Coordinate(point.x(), point.y());
    }

    /** The sizes whose lines are drawn: one of those that are cut along one line. */
    Set<LaidSize> lines() {
        return names.keySet();
    }

    void set(Lettering lettering) {
        int number = 0;
        for (LaidSize size : lines()) {
            set(lettering, size, (number + 0.5) / names.size());
            number++;
        }
    }

    /** @param turn of the size along each part of its line: from 0 to 1 */
    private void set(Lettering lettering, LaidSize size, double turn) {
        Path ring = Path.through(size.cutting().get(0));
        List<List<Double>> stretches = IntStream.range(0, TIMES)
                .mapToObj(time -> places(size, ring, time, turn))
                .toList();
        lettering.sizeName(names.get(size), size.cutting(), ring, stretches);
    }

    /** Distances along a part of a ring, from where a size's turn is, where its line is its own. */
    private List<Double> places(LaidSize size, Path ring, int time, double turn) {
        double part = ring.length() / TIMES;
        return IntStream.range(0, TRIES)
                .mapToObj(k -> part * (time + (turn + (double) k / TRIES) % 1))
                .filter(distance -> !isShared(size, ring.at(distance)))
                .toList();
    }

    private boolean isShared(LaidSize size, Point at) {
        Geometry place = FACTORY.createPoint(coordinate(at));
        Envelope near = new Envelope(coordinate(at));
        near.expandBy(SHARED);
        for (Object found : parts.query(near)) {
            Part part = (Part) found;
            if (part.size() != size && part.line().isWithinDistance(place, SHARED)) {
                return true;
            }
        }
        return false;
    }
}
