package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A dress without its sleeves: the sleeve and its seams go, the armhole is raised and taken in at the underarm, where a sleeve needs room and a bare arm shows a gap,
 * and is faced or bound. Raised 12 mm and taken in 6 mm on a woven, 10 and 10 mm on a knit, unless said otherwise (common practice, no source).
 *
 * <p>Kept: shoulder, neckline, hem, centre line; front and back side seams as alike as they were.
 */
final class Sleeveless implements Alteration {

    @Override
    public String name() {
        return "sleeveless";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("finish", "facing");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("raise", "take in", "finish", "depth", "width", "cloth");
        boolean isKnit = draft.pattern().card().isKnit();
        double raise = options.length("raise").map(Length::mm).orElse(isKnit ? 10.0 : 12.0);
        double takeIn = options.length("take in").map(Length::mm).orElse(isKnit ? 10.0 : 6.0);
        List<Piece> dropped = sleeves(draft);
        Draft bare = without(draft, dropped);
        requireUndivided(bare);
        if (!works(bare, raise, takeIn)) {
            throw tooFar(bare, raise, takeIn);
        }
        Altered raised = raised(bare, raise, takeIn);
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("raise", raise);
        amounts.put("take in", takeIn);
        String finish = options.choice("finish", "facing", "binding", "none").orElse(isKnit ? "binding" : "facing");
        amounts.put("finish", finish);
        List<Step> steps = new ArrayList<>();
        dropped.forEach(piece -> steps.add(Step.of("Leave the " + piece.name() + " out", piece, piece)));
        steps.addAll(raised.steps());
        Altered altered = new Altered(raised.draft(), amounts, steps, raised.laws(), raised.notes());
        return finish.equals("none") ? altered : finished(altered, finish, options);
    }

    /** The pieces that are set into an armhole, and whatever is sewn to nothing else. */
    private static List<Piece> sleeves(Draft draft) {
        List<Piece> dropped = new ArrayList<>(draft.pieces().stream()
                .filter(piece -> piece.hasEdge(Names.CAP))
                .filter(piece -> draft.seams().stream().anyMatch(seam -> joins(seam, piece, Names.ARMHOLE)))
                .toList());
        if (dropped.isEmpty()) {
            throw new Refusal(new Reason.Missing(Message.of("make.sleeveless.no-sleeve"), Where.UNKNOWN));
        }
        boolean more = true;
        while (more) {
            List<String> names = dropped.stream().map(Piece::name).toList();
            more = dropped.addAll(draft.pieces().stream()
                    .filter(piece -> !names.contains(piece.name()))
                    .filter(piece -> isSewnToThese(draft, piece, names))
                    .toList());
        }
        return dropped;
    }

    private static boolean joins(Seam seam, Piece sleeve, String edge) {
        return seam.joins(new EdgeRef(sleeve.name(), Names.CAP))
                && edges(seam).anyMatch(other -> other.edge().equals(edge));
    }

    private static Stream<EdgeRef> edges(Seam seam) {
        return Stream.concat(seam.join().stream(), seam.to().stream());
    }

    private static boolean isSewnToThese(Draft draft, Piece piece, List<String> names) {
        List<String> partners = draft.seams().stream()
                .filter(seam -> edges(seam).anyMatch(edge -> edge.piece().equals(piece.name())))
                .flatMap(Sleeveless::edges)
                .map(EdgeRef::piece)
                .filter(partner -> !partner.equals(piece.name()))
                .toList();
        return !partners.isEmpty() && names.containsAll(partners);
    }

    private static Draft without(Draft draft, List<Piece> dropped) {
        List<String> names = dropped.stream().map(Piece::name).toList();
        List<Seam> seams = draft.seams().stream()
                .filter(seam -> edges(seam).noneMatch(edge -> names.contains(edge.piece())))
                .toList();
        return draft.without(dropped).with(draft.construction().withSeams(seams));
    }

    /** A raised armhole is drawn from shoulder to underarm in one. */
    private static void requireUndivided(Draft draft) {
        draft.piecesWithEdges(Names.ARMHOLE, Names.SIDE_SEAM).stream()
                .filter(piece -> !piece.hasEdge(Names.SHOULDER))
                .findFirst()
                .ifPresent(piece -> {
                    throw new Refusal(Reason.BeyondLimit.of(
                            Message.of("make.sleeveless.divided-already"),
                            piece.where().edge(Names.ARMHOLE)));
                });
    }

    private static boolean works(Draft draft, double raise, double takeIn) {
        try {
            return raised(draft, raise, takeIn).holds(draft);
        } catch (Refusal | IllegalArgumentException no) {
            return false;
        }
    }

    private static Refusal tooFar(Draft draft, double raise, double takeIn) {
        // where the raising alone does not work, the alteration says why, and how much would
        Draft raised = raised(draft, raise, 0).draft();
        return new Refusal(Reason.BeyondLimit.of(
                Message.of("make.sleeveless.cannot-take-in"),
                Where.UNKNOWN.size(draft.size()).edge(Names.ARMHOLE),
                takeIn,
                Bisection.largest(0, takeIn, less -> works(raised, 0, less))));
    }

    private static Altered raised(Draft draft, double raise, double takeIn) {
        Altered raised = Altered.of(draft);
        if (raise != 0) {
            String way = raise > 0 ? "raise" : "lower";
            AlterationRequest armhole = new AlterationRequest(Names.ARMHOLE, Map.of(way, Math.abs(raise) + " mm"));
            raised = raised.then(before -> Catalogue.named(Names.ARMHOLE).alter(before, Options.of(armhole)));
        }
        return takeIn == 0 ? raised : raised.then(before -> takenIn(before, takeIn));
    }

    private static Altered takenIn(Draft draft, double takeIn) {
        List<Piece> changed = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        double over = TakenInUnderarm.roomBelow(draft);
        for (Piece piece : draft.piecesWithEdges(Names.ARMHOLE, Names.SIDE_SEAM)) {
            TakenInUnderarm underarm = new TakenInUnderarm(piece, takeIn, over);
            Paper paper = underarm.paper();
            steps.addAll(paper.steps());
            changed.add(paper.piece());
            laws.addAll(underarm.laws());
        }
        draft.seams().stream()
                .filter(seam -> edges(seam).allMatch(edge -> edge.edge().equals(Names.SIDE_SEAM)))
                .forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.5)));
        return new Altered(draft.with(changed), Map.of(), steps, laws, List.of());
    }

    /** The same, with its armhole faced or bound. */
    private static Altered finished(Altered raised, String finish, Options options) {
        Map<String, Object> own = new LinkedHashMap<>();
        own.put("edge", Names.ARMHOLE);
        String size = finish.equals("facing") ? "depth" : "width";
        options.raw(size).ifPresent(value -> own.put(size, value));
        options.raw("cloth").ifPresent(value -> own.put("cloth", value));
        return raised.then(before ->
                Choices.named(finish).alter(before, Options.of(new AlterationRequest("sleeveless, " + finish, own))));
    }
}
