package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.StretchedDarts;
import dev.hingepoint.pattern.Across;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * One piece lengthened or shortened: slashed straight across, all below the line moved down or up, and what the line crossed drawn fair.
 *
 * <p>Where the place is a level or a drawn line, that goes with the paper below it, and paper is let in or taken out right above it: the length down to
 * a waist changes, and the skirt from the waist down is as it was. Lengthened and shortened again by as much at one place, the paper is as it was (1e-9 mm, before the seams are drawn fair).
 *
 * @param line the upper edge of all that moves
 * @param by how many mm longer; negative for shorter
 * @param reachAbove how far in mm from the line a seam is drawn anew
 * @param told the place, in a fitter's words
 */
record LengthChange(LengthLine line, double by, double reachAbove, double reachBelow, String told) {
    private double removed() {
        return Math.max(0, -by);
    }

    private Piece piece() {
        return line.piece();
    }

    private Across upper() {
        return line.across(removed());
    }

    private Across lower() {
        return line.across(0);
    }

    /** The names of the edges that get longer or shorter. */
    List<String> edges() {
        return lower().edges();
    }

    private Motion shift() {
        return Motion.shift(line.down().times(by));
    }

    Paper paper() {
        Paper cut = Paper.of(piece()).then(cut());
        if (line.rides().isPresent()) {
            cut = cut.marked(cut.piece()
                    .withMarksChanged(now -> isRiding(now) ? line.rides().get().moved(shift()) : now));
        }
        cut = cut.marked(cut.piece()
                .withMarksChanged(now -> now instanceof Notch notch && isOnSlash(notch) ? now.moved(shift()) : now));
        Paper paper = StretchedDarts.on(cut, line.down());
        Optional<Redraw> fair = edges().stream()
                .filter(edge -> !runsStraightDown(edge))
                .map(edge -> rejoined(paper.piece(), edge))
                .reduce(Redraw::and);
        return fair.map(paper::then).orElse(paper);
    }

    /** A notch that a hair has left above the slash was drawn on the line, and goes with the paper below as the line does. */
    private boolean isOnSlash(Notch notch) {
        return by > 0
                && edges().stream().anyMatch(edge -> lower().on(edge).point().isCloseTo(notch.at(), Tolerance.JOINING));
    }

    private boolean isRiding(Mark mark) {
        Mark rides = line.rides().orElseThrow();
        return mark.getClass() == rides.getClass() && mark.name().equals(rides.name());
    }

    private Cut cut() {
        String amount = Reason.millimetres(Math.abs(by));
        if (by > 0) {
            return Cut.along("Slash " + told + " and let in " + amount, Path.of(lower().line()))
                    .moving(below(), shift());
        }
        String edge = edges().get(0);
        Place strip = Place.near(
                edge, upper().on(edge).point().midpoint(lower().on(edge).point()));
        Motion flat = Motion.between(
                upper().start().point(),
                line.along(),
                line.down(),
                upper().start().point(),
                line.along(),
                Vector.ZERO);
        Cut tuck = Cut.along(
                        "Fold out " + amount + " " + told + ": a tuck " + Reason.millimetres(removed() / 2) + " deep",
                        Path.of(upper().line()),
                        Path.of(lower().line()))
                .folding(strip, flat)
                .moving(below(), shift());
        // a grainline that is drawn about the tuck's middle goes with the paper below
        boolean isGrainAbove = line.above(piece().grain().line().at(0.5)) > removed();
        return isGrainAbove ? tuck : tuck.withGrainOn(below());
    }

    private Place below() {
        String edge = edges().get(0);
        return Place.corner(edge, piece().below(edge).name());
    }

    /** Nothing is to be faired where an edge crosses the line square and straight: a fold, a centre back. */
    private boolean runsStraightDown(String edge) {
        Vector chord = stretchEnd(edge).minus(stretchStart(edge)).unit();
        return List.of(chord, leaving(edge), arriving(edge)).stream()
                .allMatch(direction -> Math.abs(direction.cross(line.down())) < Tolerance.COINCIDENT);
    }

    /** By how many radians, at most, a seam that is drawn anew bends more at an end than it did. */
    double jog() {
        return edges().stream()
                .filter(edge -> !runsStraightDown(edge))
                .mapToDouble(edge -> {
                    Vector was = stretchEnd(edge).minus(stretchStart(edge));
                    Vector is = was.plus(line.down().times(by));
                    return Math.max(
                            Math.abs(leaving(edge).angleTo(is))
                                    - Math.abs(leaving(edge).angleTo(was)),
                            Math.abs(is.angleTo(arriving(edge))) - Math.abs(was.angleTo(arriving(edge))));
                })
                .max()
                .orElse(0);
    }

    private Point stretchStart(String edge) {
        return piece().downwards(edge).at(from(edge));
    }

    private Point stretchEnd(String edge) {
        return piece().downwards(edge).at(to(edge));
    }

    /** How far down the edge in mm it begins to be drawn anew. */
    private double from(String edge) {
        Path path = piece().downwards(edge);
        double from = path.distanceAlong(path.nearest(upper().on(edge).point())) - reachAbove;
        return joints(path)
                .filter(joint -> joint <= from && from - joint < Tolerance.JOINING)
                .max()
                .orElse(from);
    }

    private double to(String edge) {
        Path path = piece().downwards(edge);
        double to = path.distanceAlong(path.nearest(lower().on(edge).point())) + reachBelow;
        return joints(path)
                .filter(joint -> joint >= to && joint - to < Tolerance.JOINING)
                .min()
                .orElse(to);
    }

    /** A joint that lies near is meant: no sliver is left beside it. */
    private static DoubleStream joints(Path path) {
        return DoubleStream.concat(
                DoubleStream.of(0),
                IntStream.range(0, path.segments().size()).mapToDouble(i -> path.distanceAlong(new Position(i, 1))));
    }

    private Vector leaving(String edge) {
        Path path = piece().downwards(edge);
        return path.part(from(edge), path.length()).startTangent();
    }

    /** As the edge comes from above: at a corner that was drawn there the corner stays. */
    private Vector arriving(String edge) {
        return piece().downwards(edge).part(0, to(edge)).endTangent();
    }

    private Redraw rejoined(Piece cut, String edge) {
        String lowerNeighbour = piece().below(edge).name();
        Edge after = piece().after(edge);
        String upperNeighbour = (after.name().equals(lowerNeighbour) ? piece().before(edge) : after).name();
        Spot from = Place.along(edge, upperNeighbour, from(edge)).on(cut);
        double fromBelow = piece().edge(edge).path().length() - to(edge);
        Spot to = Place.along(edge, lowerNeighbour, fromBelow).on(cut);
        return Redraw.bridged("Draw the " + edge + " fair", from, leaving(edge), to, arriving(edge));
    }

    /** An opening that the line crosses, as long as it is now; any other as it was. */
    Opening opening(Opening opening) {
        String edge = opening.edge().edge();
        if (!opening.edge().piece().equals(piece().name()) || !edges().contains(edge)) {
            return opening;
        }
        Path path = piece().from(edge, opening.from());
        double toLine = path.distanceAlong(path.nearest(lower().on(edge).point()));
        return toLine < opening.length().mm()
                ? opening.withLength(opening.length().mm() + by)
                : opening;
    }

    List<Law> laws() {
        List<Law> laws = new ArrayList<>();
        String name = piece().name();
        for (Edge edge : piece().edges()) {
            if (edges().contains(edge.name())) {
                laws.add(changesDepth(edge.name()));
                laws.add(addsNoCorner(edge.name()));
            } else {
                laws.add(isBelow(edge) ? movesWhole(edge) : Law.keepsPlace(name, edge.name()));
            }
        }
        piece().marks(Level.class).forEach(level -> laws.add(keepsPaperWidth(level.name())));
        piece().marks(DoublePointedDart.class).forEach(dart -> laws.add(keepsIntake(dart.name())));
        return laws;
    }

    private boolean isBelow(Edge edge) {
        return line.above(edge.path().at(edge.path().length() / 2)) < 0;
    }

    private Law changesDepth(String edge) {
        return new Law(
                Message.of("alter.length.law.changes-depth", edge, Quantity.millimetres(by)),
                piece().where().edge(edge),
                (before, after) -> depth(before.piece(piece().name()), edge) + by,
                (before, after) -> depth(after.piece(piece().name()), edge),
                Tolerance.COINCIDENT);
    }

    private double depth(Piece drawn, String edge) {
        Path path = drawn.downwards(edge);
        return path.end().minus(path.start()).dot(line.down());
    }

    private Law addsNoCorner(String edge) {
        return Law.ofAngles(
                Message.of("alter.length.law.no-new-corner", edge),
                piece().where().edge(edge),
                (before, after) -> 0,
                (before, after) -> Math.max(
                        0, sharpest(after.piece(piece().name()), edge) - sharpest(before.piece(piece().name()), edge)),
                Tolerance.CORNER);
    }

    private static double sharpest(Piece drawn, String edge) {
        Path path = drawn.edge(edge).path();
        return path.corners(0).stream()
                .mapToDouble(corner -> Math.abs(Fairing.halfBend(
                        path.part(path.startPosition(), corner), path.part(corner, path.endPosition()))))
                .map(half -> 2 * half)
                .max()
                .orElse(0);
    }

    private Law movesWhole(Edge edge) {
        return new Law(
                Message.of("alter.length.law.keeps-shape", edge.name()),
                piece().where().edge(edge.name()),
                (before, after) -> 0,
                (before, after) -> after.piece(piece().name())
                                .edge(edge.name())
                                .path()
                                .isCloseTo(edge.path().moved(shift()), Tolerance.COINCIDENT)
                        ? 0
                        : 1,
                0);
    }

    private Law keepsPaperWidth(String level) {
        return new Law(
                Message.of("alter.length.law.keeps-paper-width", level),
                piece().where().mark(level),
                (before, after) ->
                        before.piece(piece().name()).levelFrame(level).paperWidth(),
                (before, after) -> after.piece(piece().name()).levelFrame(level).paperWidth(),
                Tolerance.LAST_DECIMAL);
    }

    private Law keepsIntake(String dart) {
        return new Law(
                Message.of("alter.length.law.keeps-intake", dart),
                piece().where().mark(dart),
                (before, after) -> widest(before.piece(piece().name()), dart),
                (before, after) -> widest(after.piece(piece().name()), dart),
                Tolerance.COINCIDENT);
    }

    /** How wide a dart is in mm, square to the way that the paper moves. */
    private double widest(Piece drawn, String dart) {
        Path closed = drawn.find(DoublePointedDart.class, dart).orElseThrow().closed();
        Vector across = line.down().left();
        return closed.at(closed.farthest(across))
                .minus(closed.at(closed.farthest(across.negated())))
                .dot(across);
    }
}
