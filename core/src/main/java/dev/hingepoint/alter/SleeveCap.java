package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Piece;
import java.util.function.ToDoubleFunction;

/**
 * The upper end of a sleeve drawn anew between other ends of its cap: the top and the hem stay, each half of the cap is stretched across and
 * down about the top, and the underarm seams lean from the hem to the new ends and change alike. A cap of straight sides keeps them
 * straight, so that for a side s and half a width w its height is the root of s&sup2; - w&sup2; (derived).
 */
final class SleeveCap {
    /** The height of a cap changes by less than this share of it, or there is no such cap. */
    private static final double MOST_OF_CAP = 0.9;

    /** The lengths of the two underarm seams settle to the last bits in fewer. */
    private static final int ROUNDS = 12;

    /** A hem leaves its old course by no more than this where its seam leans otherwise. */
    private static final double HEM_WITHIN = 0.4;

    private final Piece sleeve;
    private final String cap;
    private final String first;
    private final String last;
    private final UnderarmBlend.Cap own;
    private final Vector down;

    /** Where the cap ends: at its first neighbour, and at its last. */
    record Ends(Point first, Point last) {}

    SleeveCap(Piece sleeve, String cap) {
        this.sleeve = sleeve;
        this.cap = cap;
        this.first = sleeve.before(cap).name();
        this.last = sleeve.after(cap).name();
        this.own = UnderarmBlend.Cap.of(sleeve, cap, first);
        this.down = sleeve.grain().down();
    }

    /** The way from a first to a last end, square to the grain. */
    private Vector across() {
        Vector across = down.left();
        return own.path().end().minus(own.path().start()).dot(across) > 0 ? across : across.negated();
    }

    /** The ends so much wider apart in all, and so much lower in mm; the underarm seams change alike. */
    Ends ends(double wider, double lower) {
        Vector out = across().times(wider / 2);
        Point one = own.path().start().minus(out).plus(down.times(lower));
        Point other = own.path().end().plus(out).plus(down.times(lower));
        for (int round = 0; round < ROUNDS; round++) {
            double more = growth(last, other) - growth(first, one);
            other = other.plus(down.times(more));
        }
        return new Ends(one, other);
    }

    /** The ends so much wider apart in all, as low as makes the cap so many mm longer: the deeper a cap, the longer. */
    Ends ends(double wider, ToDoubleFunction<Path> measure, double wanted) {
        double most = MOST_OF_CAP * own.height();
        double lower =
                Bisection.largest(-most, most, deeper -> measure.applyAsDouble(path(ends(wider, deeper))) <= wanted);
        return ends(wider, lower);
    }

    /** The cap's height in mm over the lower of two ends. */
    double height(Ends ends) {
        return own.reaching(ends.first(), ends.last()).height();
    }

    double height() {
        return own.height();
    }

    Path path(Ends ends) {
        return own.reaching(ends.first(), ends.last()).path();
    }

    private double growth(String underarm, Point end) {
        return leaning(underarm, end).length() - sleeve.edge(underarm).path().length();
    }

    /** An underarm seam from its new end at the cap to its old one at the hem. */
    private Path leaning(String underarm, Point end) {
        Path seam = sleeve.from(underarm, cap);
        Vector across = across();
        Vector rise = seam.start().minus(seam.end());
        if (Math.abs(rise.cross(across)) <= Tolerance.JOINING) {
            throw new Refusal(new Reason.Unsound(
                    Message.of("alter.sleeve.edge-not-down"), sleeve.where().edge(underarm)));
        }
        Motion lean = Motion.between(seam.end(), across, rise, seam.end(), across, end.minus(seam.end()));
        return seam.moved(lean).withStart(end).withEnd(seam.end());
    }

    /** The sleeve's cap, underarm seams and hem on their new courses; the hem keeps its angle to the seams. */
    Redraw redraw(String caption, Ends ends) {
        Path firstSeam = leaning(first, ends.first());
        Path lastSeam = leaning(last, ends.last());
        Redraw redraw = Redraw.whole(caption, sleeve, cap, first, path(ends))
                .and(Redraw.whole(caption, sleeve, first, cap, firstSeam))
                .and(Redraw.whole(caption, sleeve, last, cap, lastSeam));
        String hem = sleeve.after(last).name();
        if (!sleeve.before(first).name().equals(hem)) {
            return redraw;
        }
        Path turned = turned(sleeve.from(hem, first), sleeve.from(last, cap), lastSeam);
        Path both =
                turned(turned.reversed(), sleeve.from(first, cap), firstSeam).reversed();
        return redraw.and(Redraw.whole(caption, sleeve, hem, first, both));
    }

    private static Path turned(Path hem, Path seam, Path newSeam) {
        double turn = seam.endTangent().angleTo(newSeam.endTangent());
        return Fairing.turnedAtEnd(hem, hem.endTangent().turned(turn), HEM_WITHIN);
    }
}
