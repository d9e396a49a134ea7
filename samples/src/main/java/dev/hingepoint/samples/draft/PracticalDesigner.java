package dev.hingepoint.samples.draft;

import static dev.hingepoint.samples.draft.Drawing.at;
import static dev.hingepoint.samples.draft.Drawing.curve;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A back block from the numbers of "The Practical Designer" (public domain), size 36, in inches: A(0,0) B(0,7) C(0,15 1/2) D(12,0) E(12,7)
 * F(12,15 1/2) H(7 1/2,7) I(7 1/2,0) J(3,0) K(3,-1); the shoulder runs from K through I and is 6 in long. A to C is the centre back, C to F the waist,
 * E the underarm. The curves between the book's points, the neck from A to K and the armhole through H's upright, are drawn by us.
 */
public final class PracticalDesigner {
    private static final double INCH = 25.4;

    private PracticalDesigner() {}

    private static Point inches(double x, double y) {
        return at(x * INCH, y * INCH);
    }

    /** The back block, in one size. */
    public static Pattern backBlock() {
        Point a = inches(0, 0);
        Point c = inches(0, 15.5);
        Point e = inches(12, 7);
        Point f = inches(12, 15.5);
        Point k = inches(3, -1);
        Vector shoulder = inches(7.5, 0).minus(k).unit();
        Point tip = k.plus(shoulder.times(6 * INCH));
        Piece back = new Drawing()
                .edge("neckline", Edge.Kind.SEAM, Path.of(curve(a, new Vector(1, 0), 40, k, shoulder.left(), 12)))
                .edge("shoulder", Edge.Kind.SEAM, Path.through(k, tip))
                .edge("armhole", Edge.Kind.SEAM, Path.of(curve(tip, shoulder.right(), 90, e, new Vector(1, 0), 90)))
                .edge("side seam", Edge.Kind.SEAM, Path.through(e, f))
                .edge("waist", Edge.Kind.SEAM, Path.through(f, c))
                .edge("centre back", Edge.Kind.SEAM, Path.through(c, a))
                .level("bust", 7 * INCH + 1)
                .grain(2 * INCH, 3 * INCH, 13 * INCH)
                .piece("back", "36", new Cutting(1, Cutting.How.PAIR, Optional.empty()));
        Card card = Card.of("Back block after a public-domain book", "36", List.of());
        return new Pattern(
                new Card(
                        card.name(),
                        card.baseSize(),
                        Optional.empty(),
                        0,
                        0,
                        card.bodyChart(),
                        List.of(),
                        new Allowances(Map.of("default", new Length(15))),
                        List.of(),
                        Map.of(),
                        card.lays(),
                        Optional.empty()),
                List.of(back));
    }
}
