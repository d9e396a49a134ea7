package dev.hingepoint.svg.figure;

import static dev.hingepoint.svg.figure.Figure.point;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A figure from its left side, so that it looks to the left. */
final class SideFigure implements Figure {
    private final Differences differences;
    private final List<Path> outline = new ArrayList<>();
    private final List<Path> seams = new ArrayList<>();
    private final Contour back;
    private final Contour front;
    private final Arm arm;

    SideFigure(Differences differences, double swing) {
        this.differences = differences;
        double round = by(Part.UPPER_BACK);
        // the head goes forward with a round back
        Vector poke = new Vector(-round * 0.7, round * 0.15);
        double hollow = by(Part.BACK_HOLLOW);
        double seat = by(Part.SEAT);
        double hemY = KNEE + by(Part.SKIRT_LENGTH);
        back = new Contour(Smooth.through(rolled(
                point(0.215, 0.78).plus(poke),
                point(0.185, 1.05).plus(poke),
                point(0.25, 1.32).plus(poke.times(0.45)),
                point(0.405 + round * 0.6, 1.72),
                point(0.42 + round * 0.5, 2.05),
                point(0.35 - hollow * 0.45, 2.5),
                point(0.29 - hollow, waist()),
                point(0.39 + seat * 0.35 - hollow * 0.1, 3.12),
                point(0.53 + seat, 3.58),
                point(0.49 + seat * 0.8 + by(Part.SKIRT_LOOSE), 4.15),
                point(0.45 + seat * 0.5 + by(Part.SKIRT_WIDTH), hemY - by(Part.HEM_UP_BACK)))));
        double bust = by(Part.BUST);
        double abdomen = by(Part.ABDOMEN);
        front = Contour.through(
                point(-0.16, 0.98).plus(poke),
                point(-0.13, 1.2).plus(poke.times(0.8)),
                point(-0.19, 1.45).plus(poke.times(0.3)),
                point(-0.4 - bust * 0.3, 1.8),
                point(-0.565 - bust, 2.1 + by(Part.BUST_DROP)),
                point(-0.46 - bust * 0.35, 2.4 + by(Part.BUST_DROP) * 0.6),
                point(-0.41 - abdomen * 0.3, waist()),
                point(-0.47 - abdomen, 3.22),
                point(-0.46 - abdomen * 0.8, 3.6),
                point(-0.465 - abdomen * 0.5, 4.2),
                point(-0.5 - abdomen * 0.3, hemY - by(Part.HEM_UP_FRONT)));
        outline.add(HeadAndLegs.head(poke));
        outline.add(back.below(0.82 + poke.y()));
        outline.add(front.below(0.985 + poke.y()));
        legs();
        arm = new SideArm(differences, swing).arm();
        dress(poke);
    }

    private double by(Part part) {
        return differences.at(part);
    }

    private double waist() {
        return WAIST + by(Part.WAIST_DROP);
    }

    /** What pools at the waist stands off the back in rolls. */
    private List<Point> rolled(Point... points) {
        List<Point> back = new ArrayList<>(List.of(points));
        double off = by(Part.BACK_ROLLS);
        if (off > 0) {
            Point above = back.get(4);
            Point waist = back.get(6);
            back.set(5, above.towards(waist, 0.5).plus(new Vector(-0.02, 0)));
            back.add(6, above.towards(waist, 0.7).plus(new Vector(off, 0)));
            back.add(7, above.towards(waist, 0.83));
            back.add(8, above.towards(waist, 0.93).plus(new Vector(off, 0.02)));
            back.set(9, waist.plus(new Vector(0, 0.04)));
        }
        return back;
    }

    private void legs() {
        outline.add(HeadAndLegs.SHIN.below(hemDepth(-0.2)));
        outline.add(HeadAndLegs.CALF.below(hemDepth(0.16)));
    }

    private Path hem() {
        return bowed(front.path().end(), back.path().end(), 0.05);
    }

    /** A line that bows down by so much between two places. */
    static Path bowed(Point from, Point to, double down) {
        return Smooth.through(from, from.midpoint(to).plus(new Vector(0, down)), to);
    }

    private Point nape() {
        return back.atDepth(1.29 + by(Part.NECK_SLIPPED));
    }

    private Point throat() {
        return front.atDepth(1.6);
    }

    private double hemDepth(double x) {
        return new Contour(hem()).atBreadth(x).y();
    }

    private void dress(Vector poke) {
        Point neck = point(0.05, 1.36).plus(poke.times(0.4));
        seams.add(Smooth.through(nape(), neck.plus(new Vector(0.02, 0)), throat()));
        seams.add(Path.through(neck, at(Place.SHOULDER_TIP)));
        double seam = waist() + by(Part.WAIST_SEAM_DROP);
        Point waistFront = front.atDepth(seam);
        Point waistBack = back.atDepth(seam);
        seams.add(bowed(waistFront, waistBack, 0.03));
        seams.add(hem());
        double swing = by(Part.SIDE_SEAM_BACK) - 0.02;
        seams.add(Smooth.through(point(0, 2.9), point(0.01 + swing * 0.5, 4.25), point(swing, hemDepth(swing))));
    }

    @Override
    public List<Path> outline() {
        return outline;
    }

    @Override
    public List<Path> seams() {
        return seams;
    }

    @Override
    public Optional<Arm> arm() {
        return Optional.of(arm);
    }

    @Override
    public Optional<Path> cloth() {
        Path down = back.below(nape().y());
        Path up = front.below(throat().y()).reversed();
        return Optional.of(down.then(hem().reversed()).then(up).then(Path.through(up.end(), down.start())));
    }

    @Override
    public Point at(Place place) {
        return switch (place) {
            case SHOULDER_TIP -> point(0.05 - by(Part.SHOULDER_FORWARD) + by(Part.SHOULDER_SEAM_BACK), 1.46);
            case ARMHOLE -> point(-0.24, 1.75);
            case UPPER_BACK -> inward(back.atDepth(1.85));
            case BACK_WAIST -> inward(back.atDepth(waist() - 0.15));
            case CHEST -> point(-0.26, 1.78);
            case BUST -> inward(front.atDepth(2.1));
            case ABDOMEN -> inward(front.atDepth(3.3));
            case SEAT -> inward(back.atDepth(3.6));
            case UNDER_SEAT -> inward(back.atDepth(4.15));
            case SIDE_SEAM -> point(by(Part.SIDE_SEAM_BACK) * 0.55, 4.6);
            case FRONT_HEM -> inward(front.path().end());
            case BACK_HEM -> inward(back.path().end());
            default -> throw new IllegalArgumentException(place + " does not show from the side");
        };
    }

    /** A little within the outline, so that a leader ends on the cloth. */
    private static Point inward(Point point) {
        return point.towards(point(0, point.y()), 0.2);
    }
}
