package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.PaperMap;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The four lines that a full bust is slashed along, and how the parts move for a spread of s.
 *
 * <p>In the frame of the apex P (across towards the side, up along the grain) the hinge on the armhole is H = P + (a, b). The upper side
 * part turns about H by &theta; until P has gone s sideways: s = a(1 - cos &theta;) + b sin &theta;, and then P has dropped by v = a sin
 * &theta; - b(1 - cos &theta;). The other side part shifts by (s, v) without turning, the centre strip below drops by v. Derived.
 */
final class BustLines {

    /** A waist dart's tip that lies less than so many mm below the apex is passed by: the line goes straight to the dart's other end. */
    private static final double BESIDE_APEX = 15;

    private final Piece front;
    private final String hem;
    private final Point apex;
    private final Point hinge;
    private final Vector down;
    private final Vector outwards;
    private final Optional<EdgeDart> dart;

    BustLines(Piece front) {
        this.front = front;
        this.hem = front.below(Names.SIDE_SEAM).name();
        this.apex = front.point(Names.BUST_APEX);
        this.hinge = Place.fraction(Names.ARMHOLE, Names.SIDE_SEAM, 1 / 3.0)
                .on(front)
                .point();
        this.down = front.grain().down();
        Vector square = down.left();
        this.outwards =
                hinge().minus(apex).dot(square) + underarm().minus(apex).dot(square) > 0 ? square : square.negated();
        this.dart = front.marks(EdgeDart.class)
                .filter(drawn -> front.nearest(drawn.mouthMiddle()).edge().equals(Names.SIDE_SEAM))
                .min(Comparator.comparingDouble(drawn -> drawn.tip().distanceTo(apex)));
    }

    Piece front() {
        return front;
    }

    String hem() {
        return hem;
    }

    Point apex() {
        return apex;
    }

    Point hinge() {
        return hinge;
    }

    Vector outwards() {
        return outwards;
    }

    Vector down() {
        return down;
    }

    /** The bust dart drawn from the side seam. */
    Optional<EdgeDart> dart() {
        return dart;
    }

    /** The front with the drawn dart lifted off. */
    Piece withoutDart() {
        return dart.map(front::withoutMark).orElse(front);
    }

    private Point underarm() {
        return Place.corner(Names.ARMHOLE, Names.SIDE_SEAM).on(front).point();
    }

    /** The angle in radians, negative where the paper is closed, by which the upper side part turns for a spread of s mm. */
    double turn(double spread) {
        double a = hinge.minus(apex).dot(outwards);
        double b = -hinge.minus(apex).dot(down);
        double radius = StrictMath.hypot(a, b);
        double cosine = (a - spread) / radius;
        if (Math.abs(cosine) > 1) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.full-bust.cannot-spread", Quantity.millimetres(spread)), front.where()));
        }
        return StrictMath.acos(cosine) - StrictMath.atan2(b, a);
    }

    /** How far in mm the apex drops for a spread of s mm. */
    double drop(double spread) {
        double a = hinge.minus(apex).dot(outwards);
        double b = -hinge.minus(apex).dot(down);
        double turn = turn(spread);
        return a * StrictMath.sin(turn) - b * (1 - StrictMath.cos(turn));
    }

    /** How the apex, and with it the lower side part, shifts. */
    Vector shift(double spread) {
        return outwards.times(spread).plus(down.times(drop(spread)));
    }

    Motion upperSide(double spread) {
        Point moved = apex.plus(shift(spread));
        return Motion.turn(hinge, apex.minus(hinge), moved.minus(hinge));
    }

    Motion lowerSide(double spread) {
        return Motion.shift(shift(spread));
    }

    /** Slash, turn and shift; the dart that is drawn on the side seam has been lifted off. */
    Cut cut(double spread) {
        Motion strip = Motion.shift(down.times(drop(spread)));
        Place lower = Place.corner(Names.SIDE_SEAM, hem);
        Place upper = Place.corner(Names.ARMHOLE, Names.SIDE_SEAM);
        Cut slashed = Cut.along(
                (spread > 0 ? "Spread " : "Close ") + Reason.millimetres(Math.abs(spread))
                        + " at the bust, running to nothing at the armhole; "
                        + (spread > 0 ? "drop" : "raise") + " the centre strip until the hem is level",
                apexToHem(),
                Path.through(apex, hinge),
                sideToApex(spread),
                levelToCentre());
        // closing, the upper part lies on top so that the upper leg of the dart stays in sight
        Cut sides = spread > 0
                ? slashed.moving(lower, lowerSide(spread)).moving(upper, upperSide(spread))
                : slashed.moving(upper, upperSide(spread)).moving(lower, lowerSide(spread));
        return sides.moving(Place.corner(hem, Names.CENTRE_FRONT), strip);
    }

    /** How far in mm the paper opens at each level, across the grain. */
    Map<String, Double> opened(Cut cut, PaperMap map) {
        return front.marks(Level.class)
                .collect(Collectors.toMap(
                        Level::name,
                        level -> cut.opens(map, front.levelFrame(level.name()).path(), outwards)));
    }

    /** Line a: from the apex to the hem, parallel to the grain; along the middle of a dart that lies on it. */
    Path apexToHem() {
        List<Point> points = new ArrayList<>(List.of(apex));
        dartBelow().ifPresent(below -> points.addAll(middleOf(below)));
        Point last = points.get(points.size() - 1);
        if (front.nearest(front.edge(hem), last).point().distanceTo(last) > 1e-6) {
            points.add(below(last));
        }
        return Path.through(points);
    }

    /** Where the grain from a point down meets the hem. */
    private Point below(Point from) {
        Path path = front.edge(hem).path();
        return path.crossings(from, down).stream()
                .map(path::at)
                .filter(point -> point.minus(from).dot(down) > 0)
                .min(Comparator.comparingDouble(point -> point.distanceTo(from)))
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.full-bust.grain-misses-hem", hem),
                        front.where().edge(hem))));
    }

    private Optional<Dart> dartBelow() {
        return front.marks(Dart.class)
                .filter(mark -> dart.isEmpty() || !mark.equals(dart.get()))
                .filter(mark -> liesOnGrainBelowApex(mark))
                .findFirst();
    }

    /** Whether the grain from the apex down runs through a dart: one whose middle lies below the apex. */
    private boolean liesOnGrainBelowApex(Dart mark) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Path leg : mark.legs()) {
            for (Point point : leg.controlPoints().toList()) {
                least = Math.min(least, point.minus(apex).dot(outwards));
                most = Math.max(most, point.minus(apex).dot(outwards));
            }
        }
        List<Point> ends = ends(mark);
        return least <= 0 && most >= 0 && depth(ends.get(0)) + depth(ends.get(1)) > 0;
    }

    private double depth(Point point) {
        return point.minus(apex).dot(down);
    }

    /** A dart's two ends, the upper one first. */
    private List<Point> ends(Dart mark) {
        List<Point> ends = mark instanceof EdgeDart edge
                ? List.of(edge.tip(), front.nearest(edge.mouthMiddle()).point())
                : List.of(mark.legs().get(0).start(), mark.legs().get(0).end());
        return ends.stream().sorted(Comparator.comparingDouble(this::depth)).toList();
    }

    /** The ends of a dart that line a goes through: its tip too, unless that lies beside the apex or above it. */
    private List<Point> middleOf(Dart mark) {
        return ends(mark).stream().filter(end -> depth(end) > BESIDE_APEX).toList();
    }

    /** Line c: from the side seam to the apex, through the dart's middle; closing, along its upper leg. */
    private Path sideToApex(double spread) {
        Point onSide;
        if (dart.isEmpty()) {
            onSide = onSideHalfWayToUnderarm();
        } else if (spread > 0) {
            onSide = front.nearest(front.edge(Names.SIDE_SEAM), dart.get().mouthMiddle())
                    .point();
        } else {
            onSide = front.nearest(front.edge(Names.SIDE_SEAM), upperLegEnd()).point();
        }
        return Path.through(onSide, apex);
    }

    private Point onSideHalfWayToUnderarm() {
        Path side = front.edge(Names.SIDE_SEAM).path();
        Point level = apex.midpoint(underarm());
        return side.crossings(level, outwards).stream()
                .map(side::at)
                .min(Comparator.comparingDouble(point -> point.distanceTo(level)))
                .orElseGet(this::underarmSideRefused);
    }

    private Point underarmSideRefused() {
        throw new Refusal(new Reason.Missing(
                Message.of("alter.full-bust.apex-not-beside-side-seam"),
                front.where().mark(Names.BUST_APEX)));
    }

    /** The ends of the drawn dart's legs, or the point where the seam is slashed: as they were. */
    Point upperLegEnd() {
        return dart.map(drawn -> drawn.upperLegEnd(down)).orElseGet(this::onSideHalfWayToUnderarm);
    }

    Point lowerLegEnd() {
        return dart.map(drawn -> drawn.lowerLegEnd(down)).orElseGet(this::onSideHalfWayToUnderarm);
    }

    /** Whether a level ends in the drawn dart's mouth. */
    boolean endsInMouth(String level) {
        return dart.isPresent() && front.levelFrame(level).endsInMouthOf(dart.get());
    }

    /** The new width in mm of the mouth at the side seam for a spread; negative where the paper would close past the dart. */
    double intake(double spread) {
        Point upper = upperSide(spread).of(upperLegEnd());
        Point lower = lowerSide(spread).of(lowerLegEnd());
        return lower.distanceTo(upper) * (lower.minus(upper).dot(down) < 0 ? -1 : 1);
    }

    /** Line d: level from line a to centre front, half way between the apex and the next level below, other than the bust's own. */
    private Path levelToCentre() {
        double next = front.marks(Level.class)
                .filter(level -> !level.name().equals("bust"))
                .flatMap(level -> level.path().crossings(apex, down).stream()
                        .map(position -> level.path().at(position).minus(apex).dot(down)))
                .filter(depth -> depth > 0)
                .min(Comparator.naturalOrder())
                .orElseThrow(() -> new Refusal(
                        new Reason.Missing(Message.of("alter.full-bust.needs-level-below"), front.where())));
        Path a = apexToHem();
        Point level = apex.plus(down.times(next / 2));
        Point onA = a.at(a.crossings(level, outwards).get(0));
        Path centre = front.edge(Names.CENTRE_FRONT).path();
        Point onCentre = centre.crossings(level, outwards).stream()
                .map(centre::at)
                .min(Comparator.comparingDouble(point -> point.distanceTo(level)))
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.full-bust.centre-ends-above-apex"),
                        front.where().edge(Names.CENTRE_FRONT))));
        return Path.through(onA, onCentre);
    }
}
