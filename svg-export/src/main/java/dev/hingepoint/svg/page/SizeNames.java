package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The names of sizes that lie in one another, each a few times inside the line that it is cut along. The sizes' names stand one after the other along the line, so that they
 * keep clear of each other; none stands where several sizes share a line.
 */
final class SizeNames {
    /** How often a name is set round a piece. */
    private static final int TIMES = 4;

    /** How many places are tried for each. */
    private static final int TRIES = 12;

    /** Lines nearer to each other than this, in mm, are taken for one. */
    private static final double SHARED = 1;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final List<LaidSize> sizes;
    private final STRtree parts = new STRtree();

    /** A straight part of a size's line. */
    private record Part(LaidSize size, Geometry line) {}

    SizeNames(List<LaidSize> sizes) {
        this.sizes = sizes;
        for (LaidSize size : sizes) {
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

    /** @param names what each size's line is called */
    void set(Lettering lettering, List<String> names) {
        for (int i = 0; i < sizes.size(); i++) {
            LaidSize size = sizes.get(i);
            Path ring = Path.through(size.cutting().get(0));
            int set = 0;
            List<Double> all = new ArrayList<>();
            for (int time = 0; time < TIMES; time++) {
                List<Double> places = places(size, ring, time, (i + 0.5) / sizes.size());
                all.addAll(places);
                set += lettering.sizeName(names.get(i), size.cutting(), ring, places) ? 1 : 0;
            }
            if (set == 0) {
                List<Double> led = all.isEmpty() ? List.of(ring.length() / 2) : all;
                lettering.beside(
                        "size " + names.get(i), led.stream().map(ring::at).toList());
            }
        }
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
