package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Rotates what a dart takes up into another edge, another dart, or fullness: {@code move dart: {dart: side bust dart, to: shoulder, at:
 * 0.5}}, in part with {@code share: 50 %}; {@code to: ease} or {@code to: gathers} leaves it in its own seam, {@code as: ease} or {@code as:
 * gathers} in the edge that it goes to, {@code as: flare} open at a hem.
 *
 * <p>Kept: the sewn length of every edge (darts closed; where fullness is left, it is the longer by it), the sum of the angles that the
 * darts take out at the apex, every other piece, the centre line in its place. The paper turns about the bust apex; a dart that does not
 * quite point at it, about the point nearest to the apex that is equally far from both its leg ends, and a dart that has nothing to do with
 * the bust about its own tip. Dart and remainder are trued as a full bust's: {@link BustDart}. The seam where a dart closed is faired.
 *
 * <p>{@code at} is a part of the edge, {@code 0.5} or {@code 40 %}, or a length, {@code at: 60 mm}, {@code from} one of its ends; else from its
 * upper end, or the one nearer the centre where it runs across. Without it the dart goes right below the apex, else where the slash meets the edge
 * square, else half way along, or as near to that as the slash passes other darts by.
 */
final class MoveDart implements Alteration {
    private static final double FAIR_OVER = 60;

    @Override
    public String name() {
        return "move dart";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("dart", "side bust dart", "to", "shoulder");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("dart", "piece", "to", "at", "from", "share", "as", "tip");
        Piece piece = piece(draft, options);
        EdgeDart dart = dart(piece, options);
        double share = options.carried(share(options));
        String to = options.text("to").orElseThrow(() -> options.refuse("alter.move-dart.needs-target"));
        OptionalDouble tip = FullBust.tipDistance(options);
        if (to.equals("ease") || to.equals("gathers")) {
            return leftInPlace(draft, piece, dart, share, Fullness.named(to), tip);
        }
        Optional<Fullness> fullness = options.choice("as", "dart", "ease", "gathers", "flare")
                .filter(as -> !as.equals("dart"))
                .map(Fullness::named);
        return rotated(draft, DartIntake.of(piece, dart, tip), piece, share, to, fullness, options);
    }

    /**
     * A share of what a dart takes up, rotated into an edge or a dart.
     *
     * @param fullness what is left there instead of a dart
     * @param options with the place: {@code at} and {@code from}
     */
    static Altered rotated(
            Draft draft,
            DartIntake intake,
            Piece piece,
            double share,
            String to,
            Optional<Fullness> fullness,
            Options options) {
        DartTarget target = DartTarget.of(intake, to, options);
        DartRotation rotation = new DartRotation(intake, target, share, fullness);
        fullness.ifPresent(kind -> kind.requireTaken(draft, piece, target.edge(), rotation.opening()));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("dart", intake.name());
        amounts.put("to", to);
        amounts.put("share", percent(share));
        Paper turned = rotation.turned(Paper.of(piece).marked(intake.lifted()));
        Altered altered = Faired.untilLawsHold(
                draft,
                rotation.reach(turned),
                reach -> Altered.of(draft, rotation.trued(turned, reach), amounts)
                        .withLaws(laws(draft, piece, rotation)));
        Draft marked = rotation.marked(altered.draft());
        return notes(altered.withDraft(marked), intake, rotation);
    }

    private static Piece piece(Draft draft, Options options) {
        Optional<String> wanted = options.text("piece");
        Optional<String> dart = options.text("dart");
        List<Piece> pieces = draft.pieces().stream()
                .filter(piece -> wanted.isEmpty() || wanted.get().equals(piece.name()))
                .filter(piece -> piece.marks(EdgeDart.class)
                        .anyMatch(drawn -> dart.isEmpty() || dart.get().equals(drawn.name())))
                .toList();
        if (pieces.size() == 1) {
            return pieces.get(0);
        }
        List<String> all = draft.pieces().stream()
                .flatMap(piece -> piece.marks(EdgeDart.class).map(drawn -> piece.name() + "/" + drawn.name()))
                .toList();
        throw new Refusal(new Reason.Missing(
                all.isEmpty() ? Message.of("alter.move-dart.no-dart") : Message.of("alter.move-dart.which-dart", all),
                Where.UNKNOWN.size(draft.size())));
    }

    private static EdgeDart dart(Piece piece, Options options) {
        List<EdgeDart> darts = piece.marks(EdgeDart.class)
                .filter(drawn -> options.text("dart").isEmpty()
                        || options.text("dart").get().equals(drawn.name()))
                .toList();
        if (darts.size() > 1) {
            List<Message> named = darts.stream()
                    .map(drawn -> Message.of("alter.move-dart.dart", drawn.name()))
                    .toList();
            throw options.refuse("alter.move-dart.several-darts", piece.name(), Message.joined("list.or", named));
        }
        return darts.get(0);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static double share(Options options) {
        if (!options.has("share")) {
            return 1;
        }
        return DartTarget.fraction(options.text("share").orElseThrow().strip())
                .filter(share -> share > 0 && share <= 1)
                .orElseThrow(() -> options.refuse("alter.move-dart.share-range"));
    }

    /** The dart, or a share of it, is not sewn: both its legs come nearer to its middle, and the seam keeps the rest as fullness. */
    private static Altered leftInPlace(
            Draft draft, Piece piece, EdgeDart dart, double share, Fullness kind, OptionalDouble tip) {
        DartIntake intake = DartIntake.of(piece, dart, tip);
        double left = share * dart.intake();
        kind.requireTaken(draft, piece, intake.edge(), left);
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("dart", dart.name());
        amounts.put("to", kind.word());
        amounts.put("share", percent(share));
        List<Law> laws = new ArrayList<>();
        piece.edges().stream()
                .map(Edge::name)
                .forEach(edge -> laws.add(
                        edge.equals(intake.edge())
                                ? Law.changesLength(piece.name(), edge, left, Tolerance.SEAM_MATCH)
                                : Law.keepsPlace(piece.name(), edge)));
        Paper lifted = Paper.of(piece).marked(intake.lifted());
        Altered altered = Faired.untilLawsHold(draft, FAIR_OVER, reach -> {
            Paper trued = share < 1
                    ? intake.narrowed(1 - share).drawnOn(lifted)
                    : lifted.then(Redraw.bridged(
                            "Leave the dart as fullness; draw the " + intake.edge() + " fair",
                            piece,
                            piece.nearest(piece.edge(intake.edge()), dart.mouthStart()),
                            piece.nearest(piece.edge(intake.edge()), dart.mouthEnd()),
                            reach));
            return Altered.of(draft, trued, amounts).withLaws(laws);
        });
        double grown = altered.draft().piece(piece.name()).sewnLength(intake.edge()) - piece.sewnLength(intake.edge());
        EdgeRef edge = new EdgeRef(piece.name(), intake.edge());
        return altered.withDraft(kind.inSeam(altered.draft(), edge, dart.mouthStart(), dart.mouthEnd(), grown))
                .withNote(Reason.millimetres(grown) + " of fullness is left in the " + intake.edge() + " of the "
                        + piece.name() + " as " + kind.word() + ", between the notches");
    }

    private static List<Law> laws(Draft draft, Piece piece, DartRotation rotation) {
        List<Law> laws = new ArrayList<>(rotation.laws(piece));
        if (!rotation.leavesFullness()) {
            laws.addAll(Law.keepsOthers(draft, List.of(piece.name())));
        }
        piece.centre().map(Edge::name).ifPresent(centre -> {
            if (!centre.equals(rotation.target().edge())
                    && !centre.equals(rotation.intake().edge())) {
                laws.add(Law.keepsPlace(piece.name(), centre));
            }
        });
        return laws;
    }

    private static Altered notes(Altered altered, DartIntake intake, DartRotation rotation) {
        Altered told = altered.withNote(rotation.told());
        double aside = intake.aside();
        return aside > 1
                ? told.withNote("the " + intake.name() + " points past the bust apex by " + Reason.millimetres(aside)
                        + ": the paper turned about the point beside it")
                : told;
    }
}
