package dev.hingepoint.alter;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A dart about to be moved.
 *
 * @param lifted the paper with the dart and its notches rubbed out, its mouth still there
 * @param edge the edge that the dart opens on
 * @param one the end of its one leg
 * @param other the end of the other
 * @param apex what the dart points at: the bust apex, or its own tip
 * @param tip how far in mm the tip stops short of the apex, where it is not left to the rule
 */
record DartIntake(Piece lifted, String name, String edge, Point one, Point other, Point apex, OptionalDouble tip) {
    /** A dart belongs to the apex where it points past it by less, and stops short of it by less, in mm. */
    private static final double ASIDE = 15;

    private static final double SHORT = 90;

    static DartIntake of(Piece piece, EdgeDart dart, OptionalDouble tip) {
        Piece lifted = DartTarget.withoutDart(piece, dart);
        String edge = DartTarget.edgeOf(piece, dart).name();
        Optional<Point> bust = piece.find(MarkedPoint.class, Names.BUST_APEX)
                .map(MarkedPoint::at)
                .filter(apex -> apex.distanceTo(dart.tip()) <= SHORT
                        && apex.distanceTo(onBisector(dart.mouthStart(), dart.mouthEnd(), apex)) <= ASIDE);
        return new DartIntake(
                lifted,
                dart.name(),
                edge,
                dart.mouthStart(),
                dart.mouthEnd(),
                bust.orElse(dart.tip()),
                bust.isPresent() || tip.isPresent() ? tip : OptionalDouble.of(0));
    }

    /** The point nearest to the apex that is equally far from both leg ends. */
    Point pivot() {
        return onBisector(one, other, apex);
    }

    /** What the dart takes out about the pivot, in radians. */
    double angle() {
        return Math.abs(one.minus(pivot()).angleTo(other.minus(pivot())));
    }

    /** How far in mm the dart points past the apex. */
    double aside() {
        return apex.distanceTo(pivot());
    }

    private static Point onBisector(Point one, Point other, Point apex) {
        Point middle = one.midpoint(other);
        Vector bisector = other.minus(one).unit().left();
        return middle.plus(bisector.times(apex.minus(middle).dot(bisector)));
    }

    /** The dart with so large a part of its mouth, about the same middle. */
    BustDart narrowed(double part) {
        Point middle = one.midpoint(other);
        return new BustDart(name, edge, middle.towards(one, part), middle.towards(other, part), apex, tip);
    }
}
