package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One piece's share of the neckline: cut off, or run on, along the centre line and the shoulder, and drawn anew between the two.
 *
 * @param lower how many mm down the centre line; negative for up
 * @param widen how many mm along the shoulder; negative towards the neck
 * @param drawn the course that was drawn for it, from the centre line; empty for its old self, scaled
 */
record NeckEdge(Piece piece, double lower, double widen, Optional<Path> drawn) {

    /** A curve that is flatter in mm has no shape left. */
    private static final double FLATTEST = 5;

    /** So much of centre line and shoulder must be left. */
    private static final double LEAST_LEFT = 20;

    boolean isChanged() {
        return lower != 0 || widen != 0 || drawn.isPresent();
    }

    String centre() {
        return piece.centre().map(Edge::name).orElseThrow();
    }

    private Path old() {
        return piece.from(Names.NECKLINE, centre());
    }

    private Path along(String edge) {
        return piece.from(edge, Names.NECKLINE);
    }

    /** Where a neighbour of the neckline begins, once it is so many mm shorter. */
    private Point start(String edge, double shorter) {
        Path path = along(edge);
        return shorter < 0 ? path.start().plus(path.startTangent().times(shorter)) : path.at(shorter);
    }

    /** How far in mm the neckline's shoulder end lies above its centre end, along the centre line. */
    private double depth(double toLower, double toWiden) {
        return start(centre(), toLower)
                .minus(start(Names.SHOULDER, toWiden))
                .dot(along(centre()).startTangent());
    }

    /** How far down the centre line in mm the neckline may go: not past a level that ends there. */
    private double centreRoom() {
        Path path = along(centre());
        return piece.marks(Level.class)
                        .flatMap(level ->
                                Stream.of(level.path().start(), level.path().end()))
                        .filter(end -> path.distanceTo(end) <= Tolerance.JOINING)
                        .mapToDouble(end -> path.distanceAlong(path.nearest(end)))
                        .min()
                        .orElse(path.length())
                - LEAST_LEFT;
    }

    /** How far along the shoulder in mm it may go: not so far that no curve is left. */
    private double shoulderRoom() {
        double room = toDart();
        return isFlat(lower, room) ? Bisection.largest(0, room, wide -> !isFlat(lower, wide)) : room;
    }

    /** How much of the shoulder in mm is there to be cut off: not past a dart. */
    private double toDart() {
        Path path = along(Names.SHOULDER);
        double toDart = piece.marks(EdgeDart.class)
                .filter(dart -> SewnEdge.isOn(path, dart))
                .flatMap(dart -> Stream.of(dart.mouthStart(), dart.mouthEnd()))
                .mapToDouble(leg -> path.distanceAlong(path.nearest(leg)))
                .min()
                .orElse(path.length());
        return toDart - LEAST_LEFT;
    }

    /** Whether no curve would be left; what was drawn flat may stay so. */
    private boolean isFlat(double toLower, double toWiden) {
        return drawn.isEmpty() && depth(toLower, toWiden) < Math.min(FLATTEST, depth(0, 0));
    }

    /** Why it cannot be, with the largest amount that can; empty where it can. */
    Optional<Refusal> problem() {
        if (lower > centreRoom()) {
            return Optional.of(beyond(Message.of("alter.neckline.too-low"), centre(), lower, centreRoom()));
        }
        if (isFlat(lower, 0)) {
            double most = Bisection.largest(0, -lower, up -> !isFlat(-up, 0));
            return Optional.of(beyond(Message.of("alter.neckline.too-high"), centre(), -lower, most));
        }
        if (widen > shoulderRoom()) {
            boolean isFlat = shoulderRoom() < toDart();
            return Optional.of(beyond(
                    isFlat ? Message.of("alter.neckline.too-flat", centre()) : Message.of("alter.neckline.too-wide"),
                    Names.SHOULDER,
                    widen,
                    shoulderRoom()));
        }
        return Optional.empty();
    }

    private Refusal beyond(Message why, String edge, double amount, double most) {
        return new Refusal(Reason.BeyondLimit.of(why, piece.where().edge(edge), amount, Math.max(0, most)));
    }

    Paper paper() {
        String caption = drawn.isPresent()
                ? "Cut the neckline along the line drawn for it"
                : "Redraw the neckline "
                        + Stream.of(
                                        told(lower, "lower", "higher", centre()),
                                        told(widen, "wider", "narrower", Names.SHOULDER))
                                .flatMap(Optional::stream)
                                .collect(Collectors.joining(" and "));
        Redraw redraw = Redraw.whole(caption, piece, Names.NECKLINE, centre(), course());
        if (lower != 0) {
            redraw = redraw.and(Redraw.runOn(caption, piece, centre(), Names.NECKLINE, -lower));
        }
        if (widen != 0) {
            redraw = redraw.and(Redraw.runOn(caption, piece, Names.SHOULDER, Names.NECKLINE, -widen));
        }
        Paper paper = Paper.of(piece).then(redraw);
        return paper.marked(paper.piece().withMarks(onPaper(paper.piece())));
    }

    private static Optional<String> told(double mm, String more, String less, String edge) {
        return mm == 0
                ? Optional.empty()
                : Optional.of(Reason.millimetres(Math.abs(mm)) + " " + (mm < 0 ? less : more) + " at the " + edge);
    }

    /** A line that lies where paper was cut off falls off with it. */
    private List<Mark> onPaper(Piece cut) {
        return cut.marks().stream()
                .filter(mark -> !(mark instanceof DrawnLine line
                        && !cut.holds(line.path().at(line.path().length() / 2))))
                .toList();
    }

    private Path course() {
        Point from = start(centre(), lower);
        Point to = start(Names.SHOULDER, widen);
        return drawn.map(path -> path.withStart(from).withEnd(to)).orElseGet(() -> scaled(from, to));
    }

    /** Scaled across and along the centre line, so that it meets that as it did; a curve's angle to the shoulder stays, too. */
    private Path scaled(Point from, Point to) {
        Vector down = along(centre()).startTangent();
        Vector across = down.left();
        Vector was = old().end().minus(old().start());
        Vector is = to.minus(from);
        boolean isLevel = Math.abs(was.dot(down)) <= Tolerance.JOINING;
        Motion motion = Motion.between(
                old().start(),
                across.times(was.dot(across)),
                isLevel ? down : down.times(was.dot(down)),
                from,
                across.times(is.dot(across)),
                isLevel ? down : down.times(is.dot(down)));
        Path scaled = old().moved(motion).withStart(from).withEnd(to);
        if (!(old().segments().get(old().segments().size() - 1) instanceof Cubic last)) {
            return scaled;
        }
        // the last handle is scaled by the depth, so that the curve stays as hollow as it was
        double turn = along(Names.SHOULDER).startTangent().angleTo(shoulder().startTangent());
        double deeper = isLevel ? 1 : is.dot(down) / was.dot(down);
        return scaled.withEndHandle(
                last.end().minus(last.endHandle()).turned(turn).times(deeper));
    }

    /** Whether it meets the shoulder as a curve, not as a straight line. */
    private boolean isCurve() {
        return old().segments().get(old().segments().size() - 1) instanceof Cubic;
    }

    private Path shoulder() {
        return widen > 0
                ? along(Names.SHOULDER).part(widen, along(Names.SHOULDER).length())
                : along(Names.SHOULDER);
    }

    List<Law> laws() {
        List<Law> laws = new ArrayList<>();
        String name = piece.name();
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(centre())) {
                laws.add(Law.changesLength(name, edge.name(), -lower, Tolerance.COINCIDENT));
            } else if (edge.name().equals(Names.SHOULDER)) {
                laws.add(Law.changesLength(name, edge.name(), -widen, Tolerance.COINCIDENT));
            } else if (!edge.name().equals(Names.NECKLINE)) {
                laws.add(Law.keepsPlace(name, edge.name()));
            }
        }
        piece.marks(Level.class).forEach(level -> laws.add(Law.keepsWidth(name, level.name(), Tolerance.COINCIDENT)));
        if (drawn.isEmpty()) {
            laws.add(KeptAngle.of(piece, Names.NECKLINE, centre()));
            if (isCurve()) {
                laws.add(KeptAngle.of(piece, Names.NECKLINE, Names.SHOULDER));
            }
        }
        return laws;
    }
}
