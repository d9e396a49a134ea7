package dev.hingepoint.curve;

import java.util.List;

/**
 * How a part of the paper moves: an affine map of the plane, in mm.
 *
 * <pre>
 *   x' = xx x + xy y + dx
 *   y' = yx x + yy y + dy
 * </pre>
 *
 * Rigid motions (shift, turn) keep every length. Three others serve a fitter's special cases: a shear, which keeps every
 * length along its own direction, a stretch, which scales along one direction, and a fold, which lays a wedge flat onto one line. An enlargement serves drawings at a scale. All are
 * exact on control points.
 */
public record Motion(double xx, double xy, double yx, double yy, double dx, double dy) {
    public static final Motion STAY = new Motion(1, 0, 0, 1, 0, 0);

    /** Rounding of a rigid motion's factors; an angle so small moves a metre by less than a millionth of a mm. */
    private static final double RIGID = 1e-9;

    public static Motion shift(Vector step) {
        return new Motion(1, 0, 0, 1, step.x(), step.y());
    }

    /** A turn about {@code hinge} by {@code angle} radians, clockwise as one looks at the paper. */
    public static Motion turn(Point hinge, double angle) {
        return about(hinge, StrictMath.cos(angle), StrictMath.sin(angle));
    }

    /** The turn about {@code hinge} that brings the direction {@code from} onto the direction {@code onto}. */
    public static Motion turn(Point hinge, Vector from, Vector onto) {
        Vector a = from.unit();
        Vector b = onto.unit();
        Vector turn = new Vector(a.dot(b), a.cross(b)).unit();
        return about(hinge, turn.x(), turn.y());
    }

    private static Motion about(Point hinge, double cos, double sin) {
        return fixing(hinge, cos, -sin, sin, cos);
    }

    /**
     * A shear along a line: every point moves parallel to {@code along} by {@code factor} times its distance to the right of
     * the line through {@code origin}.
     */
    public static Motion shear(Point origin, Vector along, double factor) {
        Vector a = along.unit();
        Vector normal = a.right();
        double xx = 1 + factor * a.x() * normal.x();
        double xy = factor * a.x() * normal.y();
        double yx = factor * a.y() * normal.x();
        double yy = 1 + factor * a.y() * normal.y();
        return fixing(origin, xx, xy, yx, yy);
    }

    /** A scaling by {@code factor} along one direction; the line through {@code origin} square to it stays. */
    public static Motion stretch(Point origin, Vector direction, double factor) {
        Vector a = direction.unit();
        double more = factor - 1;
        return fixing(
                origin, 1 + more * a.x() * a.x(), more * a.x() * a.y(), more * a.x() * a.y(), 1 + more * a.y() * a.y());
    }

    /** Everything {@code factor} times as large, as a drawing at a scale is; the origin stays. */
    public static Motion enlargement(double factor) {
        return new Motion(factor, 0, 0, factor, 0, 0);
    }

    /**
     * From one frame to another: {@code from + a fromX + b fromY} goes to {@code to + a toX + b toY}.
     *
     * @throws IllegalArgumentException where {@code fromX} and {@code fromY} are parallel
     */
    public static Motion between(Point from, Vector fromX, Vector fromY, Point to, Vector toX, Vector toY) {
        double area = fromX.cross(fromY);
        if (area == 0) {
            throw new IllegalArgumentException("a frame needs two directions");
        }
        double xx = (toX.x() * fromY.y() - toY.x() * fromX.y()) / area;
        double xy = (toY.x() * fromX.x() - toX.x() * fromY.x()) / area;
        double yx = (toX.y() * fromY.y() - toY.y() * fromX.y()) / area;
        double yy = (toY.y() * fromX.x() - toX.y() * fromY.x()) / area;
        return new Motion(
                xx, xy, yx, yy, to.x() - xx * from.x() - xy * from.y(), to.y() - yx * from.x() - yy * from.y());
    }

    /** The turn and scaling about {@code fixed} that takes one point to another. */
    public static Motion reaching(Point fixed, Point end, Point newEnd) {
        Vector was = end.minus(fixed);
        Vector is = newEnd.minus(fixed);
        return between(fixed, was, was.left(), fixed, is, is.left());
    }

    private static Motion fixing(Point origin, double xx, double xy, double yx, double yy) {
        return new Motion(
                xx,
                xy,
                yx,
                yy,
                origin.x() - xx * origin.x() - xy * origin.y(),
                origin.y() - yx * origin.x() - yy * origin.y());
    }

    /**
     * Folds the wedge between {@code kept} and {@code closed}, with its point at {@code hinge}, flat onto the line from
     * {@code kept} to the hinge. It stays on that line and agrees on the other with the turn that closes the wedge (exactly
     * where both sides are equally long).
     */
    public static Motion fold(Point hinge, Point kept, Point closed) {
        Vector k = kept.minus(hinge);
        Vector c = closed.minus(hinge);
        double area = k.cross(c);
        if (area == 0) {
            throw new IllegalArgumentException("a wedge needs an opening at its wide end");
        }
        // point - hinge = alpha k + beta c, and both k and c go to k
        double rowX = (c.y() - k.y()) / area;
        double rowY = (k.x() - c.x()) / area;
        return fixing(hinge, k.x() * rowX, k.x() * rowY, k.y() * rowX, k.y() * rowY);
    }

    public Point of(Point point) {
        if (this.equals(STAY)) {
            return point;
        }
        return new Point(xx * point.x() + xy * point.y() + dx, yx * point.x() + yy * point.y() + dy);
    }

    /** Point by point. */
    public List<Point> of(List<Point> points) {
        return points.stream().map(this::of).toList();
    }

    public Vector of(Vector step) {
        return new Vector(xx * step.x() + xy * step.y(), yx * step.x() + yy * step.y());
    }

    /** This motion followed by {@code next}. */
    public Motion then(Motion next) {
        Point origin = next.of(new Point(dx, dy));
        return new Motion(
                next.xx * xx + next.xy * yx,
                next.xx * xy + next.xy * yy,
                next.yx * xx + next.yy * yx,
                next.yx * xy + next.yy * yy,
                origin.x(),
                origin.y());
    }

    /**
     * The motion that undoes this one.
     *
     * @throws IllegalArgumentException for a fold, which cannot be undone
     */
    public Motion inverse() {
        double det = xx * yy - xy * yx;
        if (Math.abs(det) < 1e-9) {
            throw new IllegalArgumentException("paper that was folded flat cannot be unfolded by a motion");
        }
        double a = yy / det;
        double b = -xy / det;
        double c = -yx / det;
        double d = xx / det;
        return new Motion(a, b, c, d, -a * dx - b * dy, -c * dx - d * dy);
    }

    /**
     * So much of the way: a turn turns by that part of its angle, a shift goes that part of its length. Any other motion takes every point straight, by that part of its way.
     *
     * @param fraction from 0, which leaves all as it is, to 1
     */
    public Motion part(double fraction) {
        boolean isRigid = Math.abs(xx - yy) + Math.abs(xy + yx) <= RIGID && Math.abs(scale() - 1) <= RIGID;
        if (!isRigid || Math.abs(angle()) <= RIGID) {
            return new Motion(
                    1 + fraction * (xx - 1),
                    fraction * xy,
                    fraction * yx,
                    1 + fraction * (yy - 1),
                    fraction * dx,
                    fraction * dy);
        }
        // the point that stays, from x = R x + d: (1 - R) x = d
        double det = (1 - xx) * (1 - yy) - xy * yx;
        Point staying = new Point(((1 - yy) * dx + xy * dy) / det, (yx * dx + (1 - xx) * dy) / det);
        return turn(staying, fraction * angle());
    }

    /** How many times as long a length becomes, in the mean over all directions: the square root of the factor of areas. 1 for a rigid motion. */
    public double scale() {
        return Math.sqrt(Math.abs(xx * yy - xy * yx));
    }

    /** How far the motion turns, in radians; clockwise is positive. */
    public double angle() {
        return StrictMath.atan2(yx, xx);
    }
}
