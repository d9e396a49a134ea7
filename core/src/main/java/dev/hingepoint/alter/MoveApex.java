package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Moves the bust apex, and the darts that point at it: {@code move apex: {raise: 20 mm, out: 8 mm}}; {@code lower} and {@code in} go the
 * other way.
 *
 * <p>What goes along, as a fitter does it: in and out, the tip of an edge's dart follows and its leg ends stay on the seam. Up and down, the side
 * seam's dart goes as a whole, its mouth as far along the seam as the apex along the grain, so that it keeps its slant; {@code legs:
 * kept} leaves its ends where they are. The tip stops as short of the apex as it did. The legs are made equal again, the seam following
 * ({@link PointedDart}). A waist dart under the apex goes in or out with it; up and down its upper tip follows, and all from its widest
 * place down stays.
 *
 * <p>Kept: the sewn length of every edge (0.3 mm where a dart opens), the width at waist and hip where no edge's dart crosses them, the depth of the waist darts' intake, every
 * other piece. The bust level stays: it is where the body is measured.
 */
final class MoveApex implements Alteration {
    private static final double LARGE = 40;

    /** A waist dart's upper tip stays so many mm above its widest place. */
    private static final double SHORTEST = 20;

    private static final double FAIR_OVER = 60;

    /** The bust level runs through the apex, give or take so many mm. */
    private static final double AT_APEX = 15;

    @Override
    public String name() {
        return "move apex";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("lower", "15 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("raise", "lower", "out", "in", "legs");
        double down = amount(options, "lower", "raise");
        double out = amount(options, "out", "in");
        if (down == 0 && out == 0) {
            throw options.refuse("alter.move-apex.needs-amount");
        }
        boolean legsStay =
                options.choice("legs", "moved", "kept").orElse("moved").equals("kept");
        Piece piece = piece(draft);
        double whole = StrictMath.hypot(down, out);
        Altered altered = LargestAmount.orRefusal(
                draft, whole, mm -> altered(draft, piece, down * mm / whole, out * mm / whole, legsStay));
        return whole > LARGE
                ? altered.withNote("the apex moves by " + Reason.millimetres(whole)
                        + ": so far from the draft, sew a toile before cutting good cloth")
                : altered;
    }

    private static double amount(Options options, String towards, String against) {
        if (options.has(towards) && options.has(against)) {
            throw options.refuse("alter.move-apex.not-both", towards, against);
        }
        String given = options.has(against) ? against : towards;
        double amount = options.amount(given).map(length -> length.mm()).orElse(0.0);
        if (amount < 0) {
            throw options.refuse("alter.move-apex.not-negative", given, given.equals(towards) ? against : towards);
        }
        return given.equals(against) ? -amount : amount;
    }

    private static Piece piece(Draft draft) {
        return draft.pieces().stream()
                .filter(piece -> piece.find(MarkedPoint.class, Names.BUST_APEX).isPresent())
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.move-apex.needs-apex"), Where.UNKNOWN.size(draft.size()))));
    }

    private static Altered altered(Draft draft, Piece piece, double down, double out, boolean legsStay) {
        Vector shift = piece.grain().down().times(down).plus(outwards(piece).times(out));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("lower", down);
        amounts.put("out", out);
        List<DartIntake> darts = piece.marks(EdgeDart.class)
                .map(dart -> DartIntake.of(piece, dart, OptionalDouble.empty()))
                .filter(dart -> dart.apex().equals(piece.point(Names.BUST_APEX)))
                .toList();
        return Faired.untilLawsHold(draft, FAIR_OVER, reach -> {
            Piece marks = withApex(piece, shift, down, out);
            boolean dartsFollow = !marks.marks(DoublePointedDart.class)
                    .toList()
                    .equals(piece.marks(DoublePointedDart.class).toList());
            Paper paper = Paper.of(piece).marked(caption(down, out, dartsFollow), marks);
            for (DartIntake dart : darts) {
                boolean slides = down != 0 && !legsStay && dart.edge().equals(Names.SIDE_SEAM);
                paper = follow(paper, dart, shift, slides ? down : 0, reach);
            }
            Piece marked = withBustLevel(notched(piece, paper.piece(), darts), piece.point(Names.BUST_APEX), down);
            boolean hasNewLevel = !marked.marks(Level.class)
                    .toList()
                    .equals(paper.piece().marks(Level.class).toList());
            Paper done = hasNewLevel
                    ? paper.marked("Draw the bust level through the new apex", marked)
                    : paper.marked(marked);
            return Altered.of(draft, done, amounts).withLaws(laws(draft, piece, shift, darts));
        });
    }

    private static String caption(double down, double out, boolean dartsFollow) {
        List<String> ways = new ArrayList<>();
        if (down != 0) {
            ways.add(Reason.millimetres(Math.abs(down)) + (down > 0 ? " lower" : " higher"));
        }
        if (out != 0) {
            ways.add(Reason.millimetres(Math.abs(out)) + " farther " + (out > 0 ? "out" : "in"));
        }
        return "Mark the bust apex " + String.join(" and ", ways)
                + (dartsFollow ? "; the waist dart under it follows" : "");
    }

    /** The bust level drawn through the new apex, where it ran through the old one. */
    private static Piece withBustLevel(Piece piece, Point apex, double down) {
        boolean ranThrough = piece.find(Level.class, Names.BUST)
                .filter(level -> level.path().distanceTo(apex) <= AT_APEX)
                .isPresent();
        if (down == 0 || !ranThrough || !piece.hasEdge(Names.SIDE_SEAM)) {
            return piece;
        }
        String centre = piece.centre().orElseThrow().name();
        Line level = piece.levelFrame(Names.BUST).across(centre, Names.SIDE_SEAM, -down);
        return piece.withMark(new Level(Names.BUST, Path.of(level)));
    }

    /** Every notch but those of the darts themselves as far along its seam, as sewn, as it was. */
    private static Piece notched(Piece before, Piece after, List<DartIntake> darts) {
        Piece notched = after;
        for (DartIntake dart : darts) {
            Piece own = before.withMarks(before.marks().stream()
                    .filter(mark -> !mark.name().startsWith(dart.name() + ", "))
                    .toList());
            notched = PairedNotches.whereTheyWere(own, notched, dart.edge());
        }
        return notched;
    }

    /** Across the grain, away from the centre line. */
    private static Vector outwards(Piece piece) {
        Vector square = piece.grain().down().left();
        Point apex = piece.point(Names.BUST_APEX);
        Path centre = piece.centre()
                .orElseThrow(() ->
                        new Refusal(new Reason.Missing(Message.of("alter.move-apex.needs-centre-line"), piece.where())))
                .path();
        return apex.minus(centre.at(centre.nearest(apex))).dot(square) > 0 ? square : square.negated();
    }

    /** The apex mark moved, and the waist darts under it. */
    private static Piece withApex(Piece piece, Vector shift, double down, double out) {
        Point apex = piece.point(Names.BUST_APEX);
        Vector outwards = outwards(piece);
        Piece moved = piece.withMarksChanged(
                mark -> mark instanceof MarkedPoint point && point.name().equals(Names.BUST_APEX)
                        ? mark.moved(Motion.shift(shift))
                        : mark);
        for (DoublePointedDart dart : piece.marks(DoublePointedDart.class).toList()) {
            if (liesUnder(dart, apex, piece.grain().down(), outwards)) {
                DoublePointedDart across = dart.moved(Motion.shift(outwards.times(out)));
                moved = moved.withMark(withUpperTip(piece, across, piece.grain().down(), down));
            }
        }
        return moved;
    }

    private static boolean liesUnder(DoublePointedDart dart, Point apex, Vector down, Vector across) {
        List<Vector> from =
                dart.closed().controlPoints().map(point -> point.minus(apex)).toList();
        double least = from.stream().mapToDouble(step -> step.dot(across)).min().orElseThrow();
        double most = from.stream().mapToDouble(step -> step.dot(across)).max().orElseThrow();
        boolean isBelow =
                from.stream().mapToDouble(step -> step.dot(down)).max().orElseThrow() > 0;
        return isBelow && least <= 0 && most >= 0;
    }

    private static DoublePointedDart withUpperTip(Piece piece, DoublePointedDart dart, Vector down, double by) {
        boolean firstIsUpper = dart.secondTip().minus(dart.firstTip()).dot(down) > 0;
        Point upper = firstIsUpper ? dart.firstTip() : dart.secondTip();
        Point tip = upper.plus(down.times(by));
        double widest = dart.first().segments().stream()
                .skip(1)
                .mapToDouble(segment -> segment.start().minus(tip).dot(down))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        if (widest < SHORTEST) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "alter.move-apex.dart-ends-above-widest",
                            dart.name(),
                            Quantity.millimetres(Math.max(0, widest))),
                    piece.where().mark(dart.name())));
        }
        return firstIsUpper
                ? new DoublePointedDart(
                        dart.name(), dart.first().withStart(tip), dart.second().withEnd(tip))
                : new DoublePointedDart(
                        dart.name(), dart.first().withEnd(tip), dart.second().withStart(tip));
    }

    /** One dart drawn to the new apex; its mouth first slid along its edge by {@code slide} mm, down where that is more than 0. */
    private static Paper follow(Paper paper, DartIntake dart, Vector shift, double slide, double reach) {
        EdgeDart drawn = paper.piece().find(EdgeDart.class, dart.name()).orElseThrow();
        Point apex = dart.apex().plus(shift);
        double tipDistance = drawn.tip().distanceTo(dart.apex());
        Paper lifted = paper.marked(DartTarget.withoutDart(paper.piece(), drawn));
        if (slide == 0) {
            return new PointedDart(
                            lifted.piece(), dart.name(), dart.edge(), dart.one(), dart.other(), apex, tipDistance)
                    .drawnOn(lifted);
        }
        SlidMouth slid = SlidMouth.of(lifted.piece(), dart, slide);
        Paper moved = lifted.then(slid.redraw());
        Spot old = moved.piece().nearest(moved.piece().edge(dart.edge()), slid.closedAt());
        double rule = Math.min(reach, Redraw.reach(moved.piece(), old));
        Paper fair =
                moved.then(Redraw.faired("Fair the " + dart.edge() + " where the dart was", moved.piece(), old, rule));
        return new PointedDart(fair.piece(), dart.name(), dart.edge(), slid.one(), slid.other(), apex, tipDistance)
                .drawnOn(fair);
    }

    private static List<Law> laws(Draft draft, Piece piece, Vector shift, List<DartIntake> darts) {
        List<Law> laws = new ArrayList<>();
        String name = piece.name();
        piece.edges().stream().map(Edge::name).forEach(edge -> {
            boolean hasDart = darts.stream().anyMatch(dart -> dart.edge().equals(edge));
            laws.add(hasDart ? Law.keepsLength(name, edge, 0.3) : Law.keepsPlace(name, edge));
        });
        Point apex = piece.point(Names.BUST_APEX).plus(shift);
        laws.add(new Law(
                Message.of("alter.move-apex.law.moves-apex"),
                piece.where().mark(Names.BUST_APEX),
                (before, after) -> 0,
                (before, after) -> after.piece(name).point(Names.BUST_APEX).distanceTo(apex),
                0.001));
        // a dart that a level crosses takes out there what its tip's place asks for
        Stream.of(Names.WAIST, Names.HIP)
                .filter(piece::hasLevel)
                .filter(level -> piece.marks(EdgeDart.class)
                        .allMatch(dart -> piece.levelFrame(level).intakeOf(dart) == 0))
                .forEach(level -> laws.add(Law.keepsWidth(name, level, 0.1)));
        darts.forEach(dart -> laws.add(Law.equalLegs(name, dart.name(), 0.01)));
        piece.marks(DoublePointedDart.class).forEach(dart -> laws.add(Law.keepsLegsEqual(name, dart.name(), 0.01)));
        laws.addAll(Law.keepsOthers(draft, List.of(name)));
        return laws;
    }
}
