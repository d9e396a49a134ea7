package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Rotation;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A dart's intake, or a share of it, on its way to another place of the outline: turned, trued, and what must hold. */
final class DartRotation {
    private static final double ANGLE = StrictMath.toRadians(0.01);

    /** Darts deeper than so many mm are seldom sewn (common practice, no source). */
    private static final double DEEP = 70;

    private final DartIntake intake;
    private final DartTarget target;
    private final double share;
    private final Optional<Fullness> fullness;
    private final Rotation rotation;

    /** @param fullness what is left where the paper opens instead of a dart */
    DartRotation(DartIntake intake, DartTarget target, double share, Optional<Fullness> fullness) {
        this.intake = intake;
        this.target = target;
        this.share = share;
        this.fullness = fullness;
        String caption = (isWhole() ? "Close the " : "Close part of the ") + intake.name() + " about "
                + (intake.tip().isPresent() && intake.tip().getAsDouble() == 0 ? "its tip" : "the bust apex")
                + ", and open the " + target.edge() + " instead";
        Piece paper = target.into()
                .map(dart -> DartTarget.withoutDart(intake.lifted(), dart))
                .orElse(intake.lifted());
        this.rotation =
                Rotation.of(caption, paper, intake.pivot(), intake.one(), intake.other(), target.place(), share);
    }

    DartIntake intake() {
        return intake;
    }

    DartTarget target() {
        return target;
    }

    boolean leavesFullness() {
        return fullness.isPresent();
    }

    private boolean isWhole() {
        return share == 1;
    }

    /** How wide in mm the target's edge opens. */
    double opening() {
        return rotation.gap().get(0).distanceTo(rotation.gap().get(1));
    }

    /** @param lifted with the dart rubbed out */
    Paper turned(Paper lifted) {
        Paper paper = target.into()
                .map(dart -> lifted.marked(DartTarget.withoutDart(lifted.piece(), dart)))
                .orElse(lifted);
        return paper.then(rotation.cut());
    }

    /** Over how many mm to draw fair at first: the whole of an edge that fullness stays in, else the rule's reach where the dart was closed. */
    double reach(Paper turned) {
        return fullness.isPresent()
                ? turned.piece().edge(target.edge()).path().length()
                : isWhole() ? ruleReach(turned.piece()) : 0;
    }

    private double ruleReach(Piece turned) {
        return Redraw.reach(turned, closedAt(turned));
    }

    private Spot closedAt(Piece piece) {
        return piece.nearest(piece.edge(intake.edge()), rotation.kept());
    }

    /** The remainder and the new dart drawn, or the fullness drawn fair; the seam fair where the dart was closed, over {@code reach} mm. */
    Paper trued(Paper turned, double reach) {
        Point apex = turned.map().of(intake.apex());
        Paper closed = isWhole()
                ? turned.then(Redraw.faired(
                        "Fair the " + intake.edge() + " where the dart was",
                        turned.piece(),
                        closedAt(turned.piece()),
                        Math.min(reach, ruleReach(turned.piece()))))
                : drawn(turned, intake.name(), intake.edge(), rotation.turnedOnto(), rotation.kept(), apex);
        if (fullness.isPresent()) {
            return closed.then(filled(closed.piece(), reach));
        }
        List<Point> legs = target.into()
                .map(dart ->
                        List.of(turned.map().of(dart.mouthStart()), turned.map().of(dart.mouthEnd())))
                .orElse(rotation.gap());
        return drawn(closed, target.name(), target.edge(), legs.get(0), legs.get(1), apex);
    }

    private Redraw filled(Piece piece, double reach) {
        Edge edge = piece.edge(target.edge());
        Spot one = piece.nearest(edge, rotation.gap().get(0));
        Spot other = piece.nearest(edge, rotation.gap().get(1));
        Optional<String> centre = piece.centre().map(Edge::name);
        if (fullness.get() == Fullness.FLARE && centre.isPresent()) {
            return HemTruing.healed(piece, target.edge(), centre.get(), one, other);
        }
        String caption = "Fill the gap, and draw the " + target.edge() + " fair: the fullness stays as "
                + fullness.get().word();
        return Redraw.bridged(caption, piece, one, other, reach);
    }

    private Paper drawn(Paper paper, String name, String edge, Point one, Point other, Point apex) {
        Vector down = paper.piece().grain().down();
        boolean oneIsUpper = other.minus(one).dot(down) >= 0;
        return new BustDart(name, edge, oneIsUpper ? one : other, oneIsUpper ? other : one, apex, intake.tip())
                .drawnOn(paper);
    }

    /** The draft with what is not sewn as a dart marked on both sides of its seam. */
    Draft marked(Draft draft) {
        if (fullness.isEmpty()) {
            return draft;
        }
        EdgeRef edge = new EdgeRef(intake.lifted().name(), target.edge());
        double grown = draft.sewnLength(edge) - intake.lifted().sewnLength(target.edge());
        return fullness.get()
                .inSeam(draft, edge, rotation.gap().get(0), rotation.gap().get(1), grown);
    }

    List<Law> laws(Piece before) {
        List<Law> laws = new ArrayList<>();
        before.edges().stream()
                .map(Edge::name)
                .forEach(edge -> laws.add(
                        fullness.isPresent() && edge.equals(target.edge())
                                ? Law.changesLength(before.name(), edge, opening(), Tolerance.SEAM_MATCH)
                                : Law.keepsLength(before.name(), edge, 0.1)));
        if (fullness.isEmpty()) {
            laws.add(Law.equalLegs(before.name(), target.name(), 0.01));
            laws.add(keepsAngles(before));
        }
        if (!isWhole()) {
            laws.add(Law.equalLegs(before.name(), intake.name(), 0.01));
        }
        return laws;
    }

    private Law keepsAngles(Piece before) {
        return Law.ofAngles(
                Message.of("alter.dart-rotation.law.keeps-angles"),
                before.where(),
                (was, is) -> angles(was.piece(before.name())),
                (was, is) -> angles(is.piece(before.name())),
                ANGLE);
    }

    /** The sum in radians of what the dart and the one it goes to take out about the pivot. */
    private double angles(Piece piece) {
        return Stream.of(intake.name(), target.name())
                .distinct()
                .flatMap(name -> piece.find(EdgeDart.class, name).stream())
                .mapToDouble(dart -> Math.abs(dart.mouthStart()
                        .minus(intake.pivot())
                        .angleTo(dart.mouthEnd().minus(intake.pivot()))))
                .sum();
    }

    String told() {
        String taken = Reason.millimetres(opening()) + " in the " + target.edge();
        String left = isWhole()
                ? "the " + intake.name() + " is closed"
                : "the " + intake.name() + " keeps "
                        + Reason.millimetres(rotation.turnedOnto().distanceTo(rotation.kept()));
        return left + ", and what it took up is "
                + fullness.map(kind ->
                                taken + " as " + kind.word() + (kind == Fullness.FLARE ? "" : ", between the notches"))
                        .orElse("the " + target.name() + ": " + (target.into().isPresent() ? taken + " more" : taken))
                + (fullness.isEmpty() && opening() > DEEP
                        ? "; so deep a dart is seldom sewn, at a hem it may be left: as: flare"
                        : "");
    }
}
