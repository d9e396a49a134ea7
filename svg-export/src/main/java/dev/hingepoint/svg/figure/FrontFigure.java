package dev.hingepoint.svg.figure;

import static dev.hingepoint.svg.figure.Figure.point;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A figure from the front or the back: its right half as one looks at it, and the same mirrored. */
final class FrontFigure implements Figure {
    private final boolean isBack;
    private final Differences differences;
    private final Contour shoulder;
    private final Contour outerArm;
    private final Contour innerArm;
    private final Contour side;
    private final Path hem;
    private final List<Path> half = new ArrayList<>();
    private final List<Path> halfSeams = new ArrayList<>();
    private final List<Path> whole = new ArrayList<>();
    private final Path sleeveOuter;
    private final Path sleeveInner;

    FrontFigure(View view, Differences differences) {
        this.isBack = view == View.BACK;
        this.differences = differences;
        double rise = by(Part.SHOULDER_RISE);
        double broad = by(Part.SHOULDER_BREADTH);
        double arm = by(Part.UPPER_ARM);
        double waist = waist();
        double hip = by(Part.HIP);

        Point tip = point(0.76 + broad, 1.47 - rise);
        shoulder = Contour.through(
                point(0.2, 0.9), point(0.205, 1.13), point(0.31, 1.3), point(0.52 + broad / 2, 1.385 - rise / 2), tip);
        outerArm = new Contour(Smooth.through(
                shoulder.path().endTangent(),
                List.of(
                        tip,
                        point(0.91 + broad + arm / 3, 1.68 - rise),
                        point(0.985 + broad + arm, 2.12 - rise / 2),
                        point(1.03 + broad + arm / 3, 2.7),
                        point(1.095 + broad, 3.05),
                        point(1.125 + broad * 0.7, 3.58),
                        point(1.18 + broad * 0.7, 3.82),
                        point(1.165 + broad * 0.7, 4.08),
                        point(1.12 + broad * 0.7, 4.21)),
                new Vector(-0.8, 0.6)));
        Point armpit = point(0.67 + broad / 3, 1.99 - rise / 3);
        innerArm = new Contour(Smooth.through(List.of(
                armpit,
                point(0.735 + broad - arm / 2, 2.25),
                point(0.82 + broad, 2.7),
                point(0.87 + broad, 3.05),
                point(0.985 + broad * 0.7, 3.58),
                point(0.965 + broad * 0.7, 3.8),
                point(1.0 + broad * 0.7, 4.05),
                point(1.06 + broad * 0.7, 4.2))));
        Point underarm = point(armpit.x() - 0.005, 2.0 - rise / 3);
        side = new Contour(Smooth.through(hips(
                underarm,
                point(0.655 + by(Part.BUST) * 0.25, 2.22),
                point(0.545, 2.2 + 0.7 * (waist - 2.2)),
                point(0.505, waist),
                point(0.64 + hip * 0.6, 3.17 + by(Part.WAIST_DROP) / 2),
                point(0.735 + hip + by(Part.HIP_BULGE), 3.62),
                point(0.765 + hip * 0.8 + by(Part.SKIRT_LOOSE), 4.2),
                point(0.79 + hip * 0.6 + by(Part.SKIRT_WIDTH), KNEE + by(Part.SKIRT_LENGTH)))));
        Point corner = side.path().end();
        double up = by(isBack ? Part.HEM_UP_BACK : Part.HEM_UP_FRONT);
        hem = Smooth.through(mirror(corner), point(0, corner.y() + 0.06 - up), corner);

        double cuff = 2.5 + by(Part.SLEEVE_LENGTH);
        List<Point> outer = outerArm.clothed(1.6, cuff, 0.035 + by(Part.SLEEVE_HEM_WIDTH));
        outer.add(0, tip);
        sleeveOuter = Smooth.through(outer);
        sleeveInner = sleeveInner(cuff);
        body(cuff);
        dress(tip, armpit);
    }

    private double by(Part part) {
        return differences.at(part);
    }

    private double waist() {
        return WAIST + by(Part.WAIST_DROP);
    }

    /** What is let out at the hip alone comes back at once, above and below. */
    private List<Point> hips(Point... points) {
        List<Point> side = new ArrayList<>(List.of(points));
        if (by(Part.HIP_BULGE) > 0) {
            double hip = by(Part.HIP);
            side.add(6, point(0.745 + hip, 3.88));
            side.add(5, point(0.685 + hip * 0.8, 3.38));
        }
        return side;
    }

    private Path sleeveInner(double cuff) {
        double drop = by(Part.UNDERARM_DROP);
        if (drop > 0) {
            Point low = side.atDepth(2 + drop);
            Point end = innerArm.atDepth(cuff).plus(new Vector(-0.05, 0));
            return Smooth.through(low, low.midpoint(end).plus(new Vector(0.01, -0.03)), end);
        }
        return Smooth.through(innerArm.clothed(innerArm.path().start().y(), cuff, -0.03 - by(Part.SLEEVE_HEM_WIDTH)));
    }

    private void body(double cuff) {
        half.add(HeadAndLegs.halfHead());
        half.add(shoulder.path());
        half.add(sleeveOuter);
        half.add(sleeveInner);
        half.add(outerArm.below(cuff)
                .then(Figure.tip(outerArm.path(), innerArm.path()))
                .then(innerArm.below(cuff).reversed()));
        half.add(side.path());
        double hemY = new Contour(hem).atBreadth(0.35).y();
        half.add(HeadAndLegs.OUTER_LEG.below(hemY));
        half.add(HeadAndLegs.INNER_LEG.below(hemY));
    }

    private void dress(Point tip, Point armpit) {
        Contour top = new Contour(shoulder.path().then(sleeveOuter));
        double wide = by(Part.NECK_WIDE);
        Point neck = shoulder.atBreadth(0.345 + wide);
        double deep = (isBack ? 1.42 : 1.66) + by(Part.NECK_LOW);
        whole.add(Smooth.through(mirror(neck), point(0, deep), neck));
        double out = by(Part.ARMHOLE_OUT);
        Point from = top.atBreadth(Math.min(tip.x() + out, 0.9 + by(Part.SHOULDER_BREADTH)));
        Point to = side.atDepth(Math.max(side.path().start().y(), armpit.y() + by(Part.UNDERARM_DROP)));
        halfSeams.add(Smooth.through(
                from,
                point(0.645 + by(Part.SHOULDER_BREADTH) * 0.55 + out * 0.8, from.y() + 0.55 * (to.y() - from.y())),
                to));
        Point outer = sleeveOuter.end();
        Point inner = sleeveInner.end();
        halfSeams.add(Smooth.through(outer, outer.midpoint(inner).plus(new Vector(0, 0.035)), inner));
        double seam = waist() + by(Part.WAIST_SEAM_DROP);
        Point waist = side.atDepth(seam);
        whole.add(Smooth.through(mirror(waist), point(0, seam + 0.045), waist));
        whole.add(hem);
        if (isBack) {
            whole.add(Path.through(
                    point(0, deep), point(0, hem.at(hem.length() / 2).y())));
        } else if (by(Part.DART_LEFT_OUT) == 0) {
            sideDart();
        }
        if (by(Part.SHOULDER_DART) > 0) {
            shoulderDart();
        }
    }

    private Point apex() {
        return point(0.32, 2.1 + by(Part.BUST_DROP));
    }

    private void sideDart() {
        double y = 2.33 + by(Part.DART_DROP);
        Point tip = point(0.42 - by(Part.DART_REACH), y - 0.18);
        halfSeams.add(Path.through(side.atDepth(y - 0.035), tip));
        halfSeams.add(Path.through(side.atDepth(y + 0.035), tip));
    }

    private void shoulderDart() {
        double half = by(Part.SHOULDER_DART) / 2;
        Point tip = point(0.33, 2.0);
        halfSeams.add(Path.through(shoulder.atBreadth(0.53 - half), tip));
        halfSeams.add(Path.through(shoulder.atBreadth(0.53 + half), tip));
    }

    private static Point mirror(Point point) {
        return point(-point.x(), point.y());
    }

    @Override
    public List<Path> outline() {
        return both(half);
    }

    @Override
    public List<Path> seams() {
        List<Path> seams = both(halfSeams);
        seams.addAll(whole);
        return seams;
    }

    @Override
    public Optional<Arm> arm() {
        return Optional.empty();
    }

    @Override
    public Optional<Path> cloth() {
        return Optional.empty();
    }

    @Override
    public Point at(Place place) {
        double rise = by(Part.SHOULDER_RISE);
        double broad = by(Part.SHOULDER_BREADTH);
        return switch (place) {
            case NECK -> isBack ? point(0.24, 1.52) : point(0.12, 1.63 + by(Part.NECK_LOW));
            case SHOULDER -> point(0.5, 1.42 - rise / 2);
            case SHOULDER_TIP -> point(0.74 + broad, 1.5 - rise);
            case CAP -> point(0.8 + broad, 1.7 - rise);
            case ARMHOLE -> point(0.64 + by(Part.ARMHOLE_OUT), 1.75);
            case UNDERARM -> side.atDepth(2.05 + by(Part.UNDERARM_DROP));
            case UPPER_ARM -> point(0.86, 2.1);
            case ELBOW -> point(0.94, 2.68);
            case WRIST -> point(1.05, 3.5);
            case CHEST -> point(0.4, 1.74);
            case DART_TIP -> point(0.36, 2.15 + by(Part.DART_DROP));
            case BUST -> apex();
            case SIDE -> point(0.53, 2.45);
            case WAIST -> point(0.42, waist());
            case BACK_WAIST -> point(0.25, 2.58);
            case HIP -> point(0.66, 3.6);
            case KNEE -> point(0.5, 5.3);
            case HEM -> point(0.45, new Contour(hem).atBreadth(0.45).y());
            case FRONT_HEM, BACK_HEM ->
                point(0.1, new Contour(hem).atBreadth(0.1).y());
            default -> throw new IllegalArgumentException(place + " does not show from the front");
        };
    }

    private static List<Path> both(List<Path> half) {
        List<Path> both = new ArrayList<>(half);
        half.forEach(path -> both.add(Figure.mirrored(path)));
        return both;
    }
}
