package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.stream.IntStream;

/**
 * A dart in the middle of a back's neckline that takes in what the neckline gained: its sewn length stays. It runs square to its mouth
 * towards the shoulder blade, {@value #LONGEST} mm long at most and {@value #SHORT_OF} mm short of the blade's level (common practice, no
 * source).
 *
 * @param intake in mm along the neckline
 * @param blade a point on the level that it stops short of
 */
record NeckDart(double intake, Point blade) {
    private static final double LONGEST = 70;
    private static final double SHORT_OF = 20;
    private static final double SHORTEST = 25;
    private static final double NOTCH = 6;

    Paper drawnOn(Paper paper) {
        if (intake <= Tolerance.JOINING) {
            return paper;
        }
        Piece piece = paper.piece();
        Path neckline = piece.edge(Names.NECKLINE).path();
        double from = (neckline.length() - intake) / 2;
        Spot one = spot(neckline, from);
        Spot other = spot(neckline, from + intake);
        Paper straight = paper.then(Redraw.straight(
                "Draw the neckline straight across the mouth of a neck dart of " + Reason.millimetres(intake),
                one,
                other));
        Point middle = one.point().midpoint(other.point());
        Vector square = other.point().minus(one.point()).unit().left();
        Vector inwards = square.dot(piece.grain().down()) > 0 ? square : square.negated();
        double length = Math.min(LONGEST, blade.minus(middle).dot(inwards) - SHORT_OF);
        if (length < SHORTEST) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.neck-dart.no-room"), piece.where().edge(Names.NECKLINE)));
        }
        Point tip = middle.plus(inwards.times(length));
        String name = IntStream.iterate(1, number -> number + 1)
                .mapToObj(number -> number == 1 ? "neck dart" : "neck dart " + number)
                .filter(free -> piece.find(EdgeDart.class, free).isEmpty())
                .findFirst()
                .orElseThrow();
        return straight.marked(straight.piece()
                .withMark(EdgeDart.of(name, one.point(), tip, other.point()))
                .withMark(notch(name + ", one leg", one.point(), tip))
                .withMark(notch(name + ", other leg", other.point(), tip)));
    }

    private static Spot spot(Path neckline, double along) {
        var position = neckline.positionAt(along);
        return new Spot(Names.NECKLINE, position, neckline.at(position));
    }

    private static Notch notch(String name, Point at, Point towards) {
        return new Notch(name, 1, new Line(at, at.plus(towards.minus(at).unit().times(NOTCH))));
    }
}
