package dev.hingepoint.samples.draft;

import static dev.hingepoint.samples.draft.Drawing.at;
import static dev.hingepoint.samples.draft.Drawing.curve;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import java.util.Optional;

/**
 * A set-in sleeve whose cap is as long as the armhole and its ease: the cap height is solved for. The width at the upper arm is given (arm + at least 2
 * in: Threads, 2021, "Set-in Sleeve Solutions").
 */
final class Sleeve {
    private static final int HALVINGS = 60;

    private Sleeve() {}

    /**
     * @param capLength in mm
     * @param width at the upper arm, in mm
     * @param hemWidth in mm
     * @param length from the underarm to the hem, in mm
     * @param notch how far from the underarm the notches lie, in mm
     */
    static Piece draft(String size, double capLength, double width, double hemWidth, double length, double notch) {
        double low = 20;
        double high = width;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (cap(width, middle).length() < capLength) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double height = (low + high) / 2;
        Path cap = cap(width, height);
        Point frontHem = at(-hemWidth / 2, height + length);
        Point backHem = at(hemWidth / 2, height + length);
        Path back = Path.through(cap.end(), backHem);
        Path front = Path.through(frontHem, cap.start());
        // the hem leaves both seams squarely, so that it runs on when the sleeve is closed
        Path hem = Path.of(curve(
                backHem,
                back.endTangent().right(),
                hemWidth / 3,
                frontHem,
                front.startTangent().left(),
                hemWidth / 3));
        return new Drawing()
                .edge("cap", Edge.Kind.SEAM, cap)
                .edge("back underarm seam", Edge.Kind.SEAM, back)
                .edge("hem", Edge.Kind.HEM, hem)
                .edge("front underarm seam", Edge.Kind.SEAM, front)
                .grain(0, height * 0.5, height + length * 0.8)
                .notch("front armhole", 1, "cap", notch)
                .notch("back armhole", 2, "cap", cap.length() - notch)
                .notch("shoulder", 1, "cap", cap.length() / 2)
                .piece("sleeve", size, new Cutting(1, Cutting.How.PAIR, Optional.empty()));
    }

    /** From the front underarm over the top to the back underarm. */
    private static Path cap(double width, double height) {
        Point front = at(-width / 2, height);
        Point top = at(0, 0);
        Point back = at(width / 2, height);
        Vector across = new Vector(1, 0);
        return Path.of(
                curve(front, across, 0.2 * width, top, across, 0.22 * width),
                curve(top, across, 0.24 * width, back, across, 0.2 * width));
    }
}
