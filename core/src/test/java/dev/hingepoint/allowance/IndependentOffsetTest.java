package dev.hingepoint.allowance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Against fixtures of an independent polygon-offset library, npm clipper2-ts 2.0.1; the script that made them is beside them. */
class IndependentOffsetTest {
    private static final Pattern PAIR = Pattern.compile("\\[(-?[0-9.e-]+),(-?[0-9.e-]+)\\]");
    private static final Pattern WIDTH = Pattern.compile("\"width\":([0-9.]+)");

    record Fixture(String line) {
        double width() {
            Matcher width = WIDTH.matcher(line);
            width.find();
            return Double.parseDouble(width.group(1));
        }

        List<Point> outline() {
            return points(line.substring(line.indexOf("\"outline\""), line.indexOf("\"offset\"")));
        }

        List<Point> offset() {
            return points(line.substring(line.indexOf("\"offset\"")));
        }

        private static List<Point> points(String text) {
            List<Point> points = new ArrayList<>();
            Matcher pair = PAIR.matcher(text);
            while (pair.find()) {
                points.add(new Point(Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2))));
            }
            return points;
        }
    }

    static Stream<Fixture> fixtures() {
        try {
            return Files.readAllLines(java.nio.file.Path.of("src/test/resources/cases/allowance/fixtures.json"))
                    .stream()
                    .filter(line -> line.startsWith("{"))
                    .map(Fixture::new);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void theCuttingLineIsTheOtherLibrarys(Fixture fixture) {
        List<Point> corners = fixture.outline();
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            edges.add(new Edge(
                    "edge " + i, Edge.Kind.SEAM, Path.through(corners.get(i), corners.get((i + 1) % corners.size()))));
        }
        Piece piece = Piece.of(
                "patch",
                "1",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.SINGLE, Optional.empty())),
                edges,
                List.of());
        Polygon ours = JtsBridge.polygon(CuttingLine.of(piece, AllowancePlan.even(piece, fixture.width()))
                .outline());
        List<Point> closed = new ArrayList<>(fixture.offset());
        closed.add(closed.get(0));
        Polygon other = JtsBridge.polygon(closed);
        assertEquals(other.getArea(), ours.getArea(), 0.01);
        // the other library rounds to a millionth
        double apart =
                OverlayNGRobust.overlay(ours, other, OverlayNG.SYMDIFFERENCE).getArea();
        assertEquals(0, apart, 1e-5 * ours.getLength());
    }
}
