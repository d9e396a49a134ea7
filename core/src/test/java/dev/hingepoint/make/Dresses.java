package dev.hingepoint.make;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import dev.hingepoint.pattern.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Random dresses to make up. */
final class Dresses {
    static final Shape SHAPE = new Shape(200, 250, 30, 95, 262, 6, false, true, true, true, 0);

    /** The same with a seam at centre back. */
    static final Shape SEAMED = new Shape(200, 250, 30, 95, 262, 6, false, false, true, true, 0);

    private Dresses() {}

    /** With sleeves, their shoulders sewn. */
    static Draft dress(Shape shape) {
        return TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
    }

    /** Without the sleeves' seams, its armholes round as a facing needs them. */
    static Draft sleeveless(Shape shape) {
        Draft draft = dress(shape);
        Draft open = draft.with(draft.construction()
                .withSeams(draft.seams().stream()
                        .filter(seam -> !seam.joins(new EdgeRef("sleeve", "cap")))
                        .toList()));
        return open.with(round(open.piece("front")), round(open.piece("back")));
    }

    /** With its sleeves, and round armholes. */
    static Draft sleeved(Shape shape) {
        Draft draft = dress(shape);
        return draft.with(round(draft.piece("front")), round(draft.piece("back")));
    }

    /** A knit one that counts on a stretch, for a body. */
    static Draft knit(Shape shape, double stretch, double fullBust, double hip) {
        Draft draft = sleeved(shape);
        Card card = draft.pattern().card();
        BodyChart chart = new BodyChart(
                Unit.MILLIMETRE, Map.of("40", Map.of("full bust", new Length(fullBust), "hip", new Length(hip))));
        Card knit = new Card(
                card.name(),
                card.baseSize(),
                card.cupDifference(),
                stretch,
                0,
                chart,
                card.seams(),
                card.allowances(),
                card.openings(),
                card.fronts(),
                card.lays(),
                Optional.empty());
        return draft.pattern().with(knit).in("40");
    }

    private static Piece round(Piece piece) {
        Path armhole = piece.from("armhole", "shoulder");
        Vector shoulder = piece.from("shoulder", "armhole").startTangent();
        Vector side = piece.from("side seam", "armhole").startTangent();
        Point tip = armhole.start();
        Point underarm = armhole.end();
        Cubic round = new Cubic(
                tip,
                tip.plus(square(shoulder, underarm.minus(tip)).times(80)),
                underarm.plus(square(side, shoulder).times(50)),
                underarm);
        boolean asDrawn = piece.edge("armhole").path().start().equals(tip);
        List<Edge> edges = piece.edges().stream()
                .map(edge -> edge.name().equals("armhole")
                        ? edge.with(asDrawn ? Path.of(round) : Path.of(round).reversed())
                        : edge)
                .toList();
        return piece.with(edges, piece.marks());
    }

    private static Vector square(Vector to, Vector side) {
        return to.left().dot(side) > 0 ? to.left() : to.right();
    }

    /** By JTS, on the flattened line. */
    static double length(Path path) {
        return JtsBridge.lineString(path).getLength();
    }

    static double length(Draft draft, String piece, String edge) {
        return length(draft.piece(piece).edge(edge).path());
    }
}
