package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Gives a front the room, and the length, that a fuller bust needs: {@code full bust: {spread: 20 mm}}; a negative spread takes them away
 * for a small bust.
 *
 * <p>Kept: neckline and shoulder in their places, the armhole's length, the side seam's length with its dart closed. The front is wider by
 * the spread from the bust down and longer at centre front; the side bust dart takes in more. With {@code dart: ease}, for knits, the
 * intake stays as fullness in the side seam; with {@code dart: armhole}, {@code hem} or {@code waist}, what the spread added is rotated there
 * ({@link MoveDart}; {@code at} and {@code from} say where), and a drawn side dart stays as deep as it was. With {@code keep: waist} or {@code keep: hip} the growth there is taken back.
 *
 * <p>The spread is per half front: half of (body full bust - the full bust that the chosen size is drafted for). Sources: a
 * sewing-school article on the small bust names the four lines; the amounts are derived in {@link BustLines}.
 */
final class FullBust implements Alteration {
    private static final double LARGE_SPREAD = 35;

    /** Less of the spread in mm at the bust level is worth telling. */
    private static final double TOLD = 0.5;

    @Override
    public String name() {
        return "full bust";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("spread", "20 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("spread", "girth", "dart", "keep", "tip", "at", "from");
        double spread = spread(options);
        String dart = options.choice("dart", "side", "ease", "hem", "waist", "armhole")
                .orElse("side");
        boolean isMoved = !dart.equals("side") && !dart.equals("ease");
        if (options.has("at") && !isMoved) {
            throw options.refuse("alter.full-bust.at-goes-with-dart");
        }
        if (isMoved && spread < 0) {
            throw options.refuse("alter.full-bust.small-closes-side-dart");
        }
        Altered spreadOut =
                LargestAmount.orRefusal(draft, spread, amount -> spread(draft, options, amount, dart.equals("ease")));
        return isMoved ? spreadOut.then(moved(draft, spreadOut.draft(), dart, options)) : spreadOut;
    }

    /** What the spread added to the side bust dart rotated into another edge: the dart that was drawn stays as it was. */
    private static Altered moved(Draft before, Draft spread, String edge, Options options) {
        BustLines lines = new BustLines(front(before));
        Piece front = spread.piece(lines.front().name());
        EdgeDart dart = new BustLines(front).dart().orElseThrow();
        DartIntake intake = DartIntake.of(front, dart, tipDistance(options));
        double drawn = lines.dart()
                .map(old -> DartIntake.of(lines.front(), old, OptionalDouble.empty())
                        .angle())
                .orElse(0.0);
        return MoveDart.rotated(spread, intake, front, 1 - drawn / intake.angle(), edge, Optional.empty(), options);
    }

    private static Altered spread(Draft draft, Options options, double spread, boolean asEase) {
        Piece front = front(draft);
        BustLines lines = new BustLines(front);
        requireRoom(lines, spread);
        Point upper = lines.upperSide(spread).of(lines.upperLegEnd());
        Point lower = lines.lowerSide(spread).of(lines.lowerLegEnd());
        Cut slashed = lines.cut(spread);
        Paper cut = Paper.of(front).marked(lines.withoutDart()).then(slashed);
        Map<String, Double> opened = lines.opened(slashed, cut.map());
        String dartName = lines.dart().map(EdgeDart::name).orElse("side bust dart");
        BustDart dart = new BustDart(
                dartName, Names.SIDE_SEAM, upper, lower, lines.apex().plus(lines.shift(spread)), tipDistance(options));
        List<String> kept = options.has("keep") ? kept(options) : List.of();
        List<Law> laws = laws(draft, lines, cut.piece(), opened, spread, asEase, dart, kept);
        if (asEase) {
            requireEase(draft, lines, spread);
            Altered eased = Faired.untilLawsHold(
                    draft,
                    BustEase.FAIR_OVER,
                    over -> finished(draft, lines, spread, kept, BustEase.eased(cut, upper, lower, over), laws));
            return withOpening(
                    notes(BustEase.inSeam(eased, front, lines), lines, spread, dart, true, kept),
                    lines,
                    opened,
                    spread);
        }
        Paper trued = dart.intake() <= Tolerance.COINCIDENT ? cut : dart.drawnOn(cut);
        return withOpening(
                notes(finished(draft, lines, spread, kept, trued, laws), lines, spread, dart, false, kept),
                lines,
                opened,
                spread);
    }

    /** Where the bust level lies above the apex, what it gets of the spread. */
    private static Altered withOpening(Altered altered, BustLines lines, Map<String, Double> opened, double spread) {
        double atBust = opened.getOrDefault(Names.BUST, spread);
        return lines.front().hasLevel(Names.BUST) && !lines.endsInMouth(Names.BUST) && spread - atBust > TOLD
                ? altered.withNote("the bust level is drawn above the bust apex, and there the paper opens by "
                        + Reason.millimetres(atBust) + " a half only; the whole spread is at the apex")
                : altered;
    }

    /** With the hem drawn, girths taken back where that was ordered, and the armhole fair. */
    private static Altered finished(
            Draft draft, BustLines lines, double spread, List<String> kept, Paper trued, List<Law> laws) {
        Paper hem = KeptGirth.on(trued.then(hem(lines, trued.piece(), spread)), spread, kept);
        double reach = Redraw.reach(hem.piece(), hinge(lines, hem.piece()));
        return Faired.untilLawsHold(draft, reach, shorter -> {
            Redraw armhole = Redraw.faired("Fair the armhole", hem.piece(), hinge(lines, hem.piece()), shorter);
            return Altered.of(draft, hem.then(armhole), Map.of("spread", spread))
                    .withLaws(laws);
        });
    }

    private static double spread(Options options) {
        Optional<Length> spread = options.amount("spread");
        Optional<Length> girth = options.amount("girth");
        if (spread.isPresent() == girth.isPresent()) {
            throw options.refuse("alter.full-bust.needs-one-amount");
        }
        double amount =
                spread.orElseGet(() -> new Length(girth.orElseThrow().mm() / 2)).mm();
        if (amount == 0) {
            throw options.refuse("alter.full-bust.nothing-to-spread");
        }
        return amount;
    }

    static OptionalDouble tipDistance(Options options) {
        Optional<Length> tip = options.length("tip");
        if (tip.isPresent() && !(tip.get().mm() > 0)) {
            throw options.refuse("alter.full-bust.tip-not-positive");
        }
        return tip.map(length -> OptionalDouble.of(length.mm())).orElseGet(OptionalDouble::empty);
    }

    private static List<String> kept(Options options) {
        List<String> kept = Stream.of(options.text("keep").orElseThrow().split(","))
                .map(String::strip)
                .flatMap(word -> word.equals("both") ? Stream.of(Names.WAIST, Names.HIP) : Stream.of(word))
                .toList();
        if (!KeptGirth.LEVELS.containsAll(kept)) {
            throw options.refuse("alter.full-bust.keep-choices");
        }
        return kept;
    }

    private static Piece front(Draft draft) {
        List<Piece> fronts = draft.piecesWithEdges(Names.CENTRE_FRONT, Names.ARMHOLE, Names.SIDE_SEAM);
        if (fronts.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("alter.full-bust.needs-edges"), Where.UNKNOWN.size(draft.size())));
        }
        Piece front = fronts.get(0);
        front.point(Names.BUST_APEX);
        return front;
    }

    /** Closing stops where the drawn dart is closed to nothing. */
    private static void requireRoom(BustLines lines, double spread) {
        if (spread > 0) {
            return;
        }
        if (lines.dart().isEmpty()) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.full-bust.no-side-dart"), lines.front().where(), spread, 0));
        }
        if (lines.intake(spread) < 0) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.full-bust.closes-past-nothing", Quantity.millimetres(-spread)),
                    lines.front().where()));
        }
    }

    private static void requireEase(Draft draft, BustLines lines, double spread) {
        boolean isKnit = draft.pattern().card().isKnit();
        double most = Fullness.mostEase(isKnit);
        double intake = lines.intake(spread);
        if (intake > most) {
            Quantity fullness = Quantity.millimetres(intake);
            Quantity takes = Quantity.millimetres(most);
            throw new Refusal(Reason.BeyondLimit.of(
                    isKnit
                            ? Message.of("alter.full-bust.too-full-for-knit", fullness, takes)
                            : Message.of("alter.full-bust.too-full-for-woven", fullness, takes),
                    lines.front().where()));
        }
    }

    private static Spot hinge(BustLines lines, Piece piece) {
        return piece.nearest(piece.edge(Names.ARMHOLE), lines.hinge());
    }

    /** The hem drawn fair through the gap, or over the overlap, that the slash from the apex left. */
    private static Redraw hem(BustLines lines, Piece piece, double spread) {
        Point strip = lines.apexToHem().end().plus(lines.down().times(lines.drop(spread)));
        Spot one = piece.nearest(piece.edge(lines.hem()), strip);
        Spot other = piece.nearest(
                piece.edge(lines.hem()), strip.plus(lines.outwards().times(spread)));
        return HemTruing.healed(piece, lines.hem(), Names.CENTRE_FRONT, one, other);
    }

    private static List<Law> laws(
            Draft draft,
            BustLines lines,
            Piece cut,
            Map<String, Double> opened,
            double spread,
            boolean asEase,
            BustDart dart,
            List<String> kept) {
        Piece front = lines.front();
        // where a leg end moves to make the legs equal, the seam follows, and with it the end of the bust level
        boolean isDart = !asEase && dart.intake() > Tolerance.COINCIDENT;
        double legCorrection = isDart ? Math.abs(dart.legCorrection(cut)) : 0;
        List<Law> laws = new ArrayList<>();
        Stream.of(Names.NECKLINE, Names.SHOULDER)
                .filter(front::hasEdge)
                .forEach(edge -> laws.add(Law.keepsPlace(front.name(), edge)));
        laws.add(Law.keepsLength(front.name(), Names.ARMHOLE, 0.3));
        laws.add(Law.changesLength(front.name(), Names.CENTRE_FRONT, lines.drop(spread), 0.1));
        front.marks(Level.class).map(Level::name).forEach(level -> {
            boolean isBlended = !kept.isEmpty() && !KeptGirth.LEVELS.contains(level) && !level.equals(Names.BUST);
            double tolerance = level.equals(Names.BUST) ? 0.5 + legCorrection : 0.1;
            if (kept.contains(level)) {
                laws.add(Law.keepsWidth(front.name(), level, 0.1));
            } else if (!isBlended && !lines.endsInMouth(level)) {
                laws.add(Law.changesPaperWidth(front.name(), level, opened.get(level), tolerance));
            }
            if (KeptGirth.LEVELS.contains(level) && !kept.contains(level)) {
                laws.add(Law.changesWidth(front.name(), level, spread, 0.1));
            }
        });
        laws.add(
                asEase
                        ? Law.changesLength(front.name(), Names.SIDE_SEAM, lines.intake(spread), Tolerance.SEAM_MATCH)
                        : Law.keepsLength(front.name(), Names.SIDE_SEAM, 0.1));
        if (isDart) {
            laws.add(Law.equalLegs(front.name(), dart.name(), 0.01));
            laws.add(movesLowerLeg(lines, dart.name(), spread, 0.5 + legCorrection));
        }
        if (!asEase) {
            laws.addAll(Law.keepsOthers(draft, List.of(front.name())));
        }
        return laws;
    }

    /** The side below the dart moves out by the spread; its leg may move a little more, to be as long as the other. */
    private static Law movesLowerLeg(BustLines lines, String dart, double spread, double tolerance) {
        Vector outwards = lines.outwards();
        double was = lines.lowerLegEnd().minus(lines.apex()).dot(outwards);
        return new Law(
                Message.of("alter.full-bust.law.wider-at-dart-leg", Quantity.millimetres(spread), dart),
                lines.front().where().mark(dart),
                (before, after) -> was + spread,
                (before, after) -> after.piece(lines.front().name())
                        .find(EdgeDart.class, dart)
                        .map(drawn -> drawn.lowerLegEnd(lines.down())
                                .minus(lines.apex())
                                .dot(outwards))
                        .orElse(Double.POSITIVE_INFINITY),
                tolerance);
    }

    private static Altered notes(
            Altered altered, BustLines lines, double spread, BustDart dart, boolean asEase, List<String> kept) {
        String girth = Reason.millimetres(2 * spread);
        List<String> grown =
                KeptGirth.LEVELS.stream().filter(level -> !kept.contains(level)).toList();
        String changed = (spread > 0 ? "grow" : "shrink") + (grown.size() == 1 ? "s" : "");
        Altered told = altered.withNote(Reason.millimetres(spread) + " each half front = " + girth + " round the body"
                + (grown.isEmpty()
                        ? ""
                        : "; the " + String.join(" and ", grown) + " " + changed
                                + " as much, so blend there only for what is still wanting"));
        double drop = lines.drop(spread);
        String side = Names.SIDE_SEAM;
        double takenIn = asEase
                ? told.draft().piece(lines.front().name()).sewnLength(side)
                        - lines.front().sewnLength(side)
                : dart.intake();
        told = told.withNote("centre front is " + Reason.millimetres(Math.abs(drop))
                + (drop > 0 ? " longer" : " shorter") + ", and the "
                + (asEase ? "fullness in the side seam" : "side bust dart") + " is now "
                + Reason.millimetres(takenIn));
        if (Math.abs(spread) > LARGE_SPREAD) {
            told = told.withNote("a spread of " + Reason.millimetres(spread)
                    + " a half is large: do it in two goes, or give the front two darts");
        }
        return told;
    }
}
