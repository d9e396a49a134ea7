package dev.hingepoint.check;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.Collection;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * What must hold of an alteration's result: a sentence, and two numbers that agree within a tolerance.
 *
 * @param message what the alteration does, with the alteration as its subject: "keeps the length of the side seam"
 * @param where the piece and edge or level it speaks of
 * @param expected what should be, from the draft before and after
 * @param actual what is, from the draft before and after
 * @param tolerance in the unit of the numbers
 * @param isAngle whether the numbers are radians, not mm
 */
public record Law(
        Message message,
        Where where,
        ToDoubleBiFunction<Draft, Draft> expected,
        ToDoubleBiFunction<Draft, Draft> actual,
        double tolerance,
        boolean isAngle) {
    /** A computed place compared with itself: far above rounding, far below a drawing's last decimal. */
    private static final double UNTOUCHED = Tolerance.COINCIDENT;

    /** A law of lengths, in mm. */
    public Law(
            Message message,
            Where where,
            ToDoubleBiFunction<Draft, Draft> expected,
            ToDoubleBiFunction<Draft, Draft> actual,
            double tolerance) {
        this(message, where, expected, actual, tolerance, false);
    }

    /** A law of angles, in radians. */
    public static Law ofAngles(
            Message message,
            Where where,
            ToDoubleBiFunction<Draft, Draft> expected,
            ToDoubleBiFunction<Draft, Draft> actual,
            double tolerance) {
        return new Law(message, where, expected, actual, tolerance, true);
    }

    /** What the alteration does, in English. */
    public String sentence() {
        return message.text();
    }

    /** A number of the law, of its kind. */
    Quantity told(double value) {
        return isAngle ? Quantity.radians(value) : Quantity.millimetres(value);
    }

    /** The same law of a step that began at a draft, and not where the whole did. */
    public Law from(Draft start) {
        return new Law(
                message,
                where,
                (before, after) -> expected.applyAsDouble(start, after),
                (before, after) -> actual.applyAsDouble(start, after),
                tolerance,
                isAngle);
    }

    /** The same law of a step that ended at a draft, and not where the whole did. */
    public Law upTo(Draft end) {
        return new Law(
                message,
                where,
                (before, after) -> expected.applyAsDouble(before, end),
                (before, after) -> actual.applyAsDouble(before, end),
                tolerance,
                isAngle);
    }

    public Finding on(Draft before, Draft after) {
        return new Finding(this, expected.applyAsDouble(before, after), actual.applyAsDouble(before, after));
    }

    /** Keeps the sewn length of an edge. */
    public static Law keepsLength(String piece, String edge, double tolerance) {
        return changesLength(piece, edge, 0, tolerance);
    }

    /** Makes the sewn length of an edge longer by so many mm. */
    public static Law changesLength(String piece, String edge, double by, double tolerance) {
        return new Law(
                by == 0
                        ? Message.of("check.law.keeps-length", edge)
                        : Message.of("check.law.changes-length", edge, Quantity.change(by)),
                Where.inPiece(piece).edge(edge),
                (before, after) -> before.piece(piece).sewnLength(edge) + by,
                (before, after) -> after.piece(piece).sewnLength(edge),
                tolerance);
    }

    /** Keeps the width of a piece at a level, and so its share of the girth. */
    public static Law keepsWidth(String piece, String level, double tolerance) {
        return changesWidth(piece, level, 0, tolerance);
    }

    /** Makes the width of a piece at a level larger by so many mm. */
    public static Law changesWidth(String piece, String level, double by, double tolerance) {
        return new Law(
                by == 0
                        ? Message.of("check.law.keeps-width", level)
                        : Message.of("check.law.changes-width", level, Quantity.change(by)),
                Where.inPiece(piece).mark(level),
                (before, after) -> before.piece(piece).width(level) + by,
                (before, after) -> after.piece(piece).width(level),
                tolerance);
    }

    /** Makes the paper of a piece at a level wider by so many mm, darts open. */
    public static Law changesPaperWidth(String piece, String level, double by, double tolerance) {
        return new Law(
                Message.of("check.law.changes-paper-width", level, Quantity.change(by)),
                Where.inPiece(piece).mark(level),
                (before, after) -> before.piece(piece).levelFrame(level).paperWidth() + by,
                (before, after) -> after.piece(piece).levelFrame(level).paperWidth(),
                tolerance);
    }

    /** Gives a piece at a level the width that another drawing has there. */
    public static Law takesWidth(String piece, String level, double width, double tolerance) {
        return new Law(
                Message.of("check.law.takes-width", level, Quantity.millimetres(width)),
                Where.inPiece(piece).mark(level),
                (before, after) -> width,
                (before, after) -> after.piece(piece).width(level),
                tolerance);
    }

    /** Leaves an edge where it was, to the last control point. */
    public static Law keepsPlace(String piece, String edge) {
        return new Law(
                Message.of("check.law.keeps-place", edge),
                Where.inPiece(piece).edge(edge),
                (before, after) -> 0,
                (before, after) -> before.piece(piece)
                        .edge(edge)
                        .path()
                        .apart(after.piece(piece).edge(edge).path()),
                UNTOUCHED);
    }

    /** Leaves a piece as it was, edges and marks. */
    public static Law keepsPiece(Piece piece) {
        return new Law(
                Message.of("check.law.keeps-piece", piece.name()),
                piece.where(),
                (before, after) -> 0,
                (before, after) -> after.piece(piece.name()).equals(before.piece(piece.name())) ? 0 : 1,
                0);
    }

    /** Leaves every piece but those named as it was. */
    public static List<Law> keepsOthers(Draft draft, Collection<String> altered) {
        return draft.pieces().stream()
                .filter(piece -> !altered.contains(piece.name()))
                .map(Law::keepsPiece)
                .toList();
    }

    /** Keeps how much longer one side of a seam is, as sewn, than the other. */
    public static Law keepsDifference(List<EdgeRef> one, List<EdgeRef> other, double tolerance) {
        return new Law(
                Message.of("check.law.keeps-difference", Seam.nameOf(one), Seam.nameOf(other)),
                Where.inPiece(one.get(0).piece()).edge(one.get(0).edge()),
                (before, after) -> before.sewnLength(one) - before.sewnLength(other),
                (before, after) -> after.sewnLength(one) - after.sewnLength(other),
                tolerance);
    }

    /** Makes a dart's legs equal in length. */
    public static Law equalLegs(String piece, String dart, double tolerance) {
        return new Law(
                Message.of("check.law.equal-legs", dart),
                Where.inPiece(piece).mark(dart),
                (before, after) -> 0,
                (before, after) -> unequal(after.piece(piece), dart),
                tolerance);
    }

    /** Leaves a dart's legs no more unequal in length than they were. */
    public static Law keepsLegsEqual(String piece, String dart, double tolerance) {
        return new Law(
                Message.of("check.law.keeps-legs-equal", dart),
                Where.inPiece(piece).mark(dart),
                (before, after) -> 0,
                (before, after) -> Math.max(0, unequal(after.piece(piece), dart) - unequal(before.piece(piece), dart)),
                tolerance);
    }

    private static double unequal(Piece piece, String dart) {
        List<Path> legs = piece.find(Dart.class, dart)
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("check.law.no-such-dart", dart),
                        piece.where().mark(dart))))
                .legs();
        return Math.abs(legs.get(0).length() - legs.get(1).length());
    }
}
