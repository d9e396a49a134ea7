package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sleeve that is wider, or narrower, at the upper arm: {@code full upper arm: {by: 30 mm}}, {@code slim upper arm: {by: 20 mm}}, in all. The
 * cap keeps its length and so loses, or gains, height: for a side s and half a width w the height is the root of s&sup2; - w&sup2; (derived).
 * With {@code keep: height} it keeps its height instead, and what the armhole then owes is told.
 *
 * <p>Kept: the top of the cap and the hem, and so the length over the arm; the underarm seams change alike; nothing new is eased in below
 * the notches. A sleeve measures at least the arm and 2 in at the upper arm (Threads, 2021, "Set-in Sleeve Solutions").
 */
final class UpperArm implements Alteration {
    private static final double ROOM = 2 * 25.4;
    private static final double USUAL_MOST = 60;

    private final boolean isFull;

    private UpperArm(boolean isFull) {
        this.isFull = isFull;
    }

    static UpperArm full() {
        return new UpperArm(true);
    }

    static UpperArm slim() {
        return new UpperArm(false);
    }

    @Override
    public String name() {
        return isFull ? "full upper arm" : "slim upper arm";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "20 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by", "keep");
        double by = options.positive(
                "by", "by: 25 mm", Message.of("alter.options.order", isFull ? "slim upper arm" : "full upper arm"));
        boolean keepsHeight =
                options.choice("keep", "length", "height").orElse("length").equals("height");
        List<EdgeRef> caps = Sleeves.caps(draft, name());
        Altered altered = LargestAmount.orRefusal(
                draft, by, amount -> altered(draft, caps, isFull ? amount : -amount, keepsHeight));
        for (EdgeRef cap : caps) {
            altered = notes(altered, draft, cap, keepsHeight);
        }
        Altered told = CapEase.told(altered, draft, draft.piecesWithEdges(Names.ARMHOLE), "");
        return by > USUAL_MOST ? told.withNote(Reason.millimetres(by) + " is unusual: up to 60 mm is common") : told;
    }

    private static Altered altered(Draft draft, List<EdgeRef> caps, double wider, boolean keepsHeight) {
        Draft altered = draft;
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        for (EdgeRef ref : caps) {
            Piece sleeve = draft.piece(ref.piece());
            SleeveCap cap = new SleeveCap(sleeve, ref.edge());
            SleeveCap.Ends ends = keepsHeight
                    ? cap.ends(wider, 0)
                    : cap.ends(
                            wider, Path::length, sleeve.edge(ref.edge()).path().length());
            double higher = cap.height(ends) - cap.height();
            String caption = "Draw the " + sleeve.name() + " " + Reason.millimetres(Math.abs(wider))
                    + (wider > 0 ? " wider" : " narrower") + " at the upper arm, its cap "
                    + (keepsHeight
                            ? "as high as it was"
                            : Reason.millimetres(Math.abs(higher)) + (higher > 0 ? " higher" : " lower")
                                    + ", so that it keeps its length")
                    + "; top and hem stay";
            Paper paper = Paper.of(sleeve).then(cap.redraw(caption, ends));
            altered = altered.with(Sleeves.withDarts(sleeve, paper.piece()));
            steps.addAll(paper.steps());
            laws.addAll(laws(draft, ref, wider, keepsHeight));
        }
        for (Seam seam : CapEase.seams(draft, draft.piecesWithEdges(Names.ARMHOLE))) {
            altered = CapNotches.following(draft, altered, seam);
        }
        List<Piece> sleeves = caps.stream().map(cap -> draft.piece(cap.piece())).toList();
        laws.addAll(Bodice.staying(draft, sleeves));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("by", Math.abs(wider));
        amounts.put("keep", keepsHeight ? "height" : "length");
        return new Altered(altered, amounts, steps, laws, List.of());
    }

    private static List<Law> laws(Draft draft, EdgeRef cap, double wider, boolean keepsHeight) {
        List<Law> laws = new ArrayList<>();
        Piece sleeve = draft.piece(cap.piece());
        laws.add(new Law(
                wider > 0
                        ? Message.of("alter.upper-arm.law.wider", Quantity.millimetres(wider))
                        : Message.of("alter.upper-arm.law.narrower", Quantity.millimetres(-wider)),
                sleeve.where().edge(cap.edge()),
                (before, after) -> Sleeves.upperArm(before, cap) + wider,
                (before, after) -> Sleeves.upperArm(after, cap),
                0.1));
        laws.add(
                keepsHeight
                        ? new Law(
                                Message.of("alter.upper-arm.law.keeps-cap-height"),
                                sleeve.where().edge(cap.edge()),
                                (before, after) -> Sleeves.capHeight(before, cap),
                                (before, after) -> Sleeves.capHeight(after, cap),
                                1)
                        : Law.keepsLength(cap.piece(), cap.edge(), 0.1));
        Sleeves.hem(sleeve, cap.edge()).ifPresent(hem -> {
            laws.add(Law.keepsLength(cap.piece(), hem, 0.3));
            laws.add(Bodice.keepsShape(cap.piece(), hem, Motion.STAY, 0.5));
        });
        Sleeves.underarmSeams(draft, cap).forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.1)));
        return laws;
    }

    private static Altered notes(Altered altered, Draft before, EdgeRef cap, boolean keepsHeight) {
        double round = Sleeves.upperArm(altered.draft(), cap);
        Altered told = altered.withNote("the " + cap.piece() + " is " + Reason.millimetres(round)
                + " round the upper arm, for an arm of " + Reason.millimetres(Math.max(0, round - ROOM))
                + " at most (arm and 2 in: Threads, 2021)");
        double longer = altered.draft().sewnLength(cap) - before.sewnLength(cap);
        if (!keepsHeight) {
            return told;
        }
        List<Piece> bodice = before.piecesWithEdges(Names.SHOULDER, Names.ARMHOLE, Names.SIDE_SEAM);
        String offered = bodice.isEmpty() ? "" : ArmholeDepth.offered(before, bodice, longer);
        return told.withNote("at its old height the cap is " + Reason.millimetres(Math.abs(longer))
                + (longer > 0 ? " longer" : " shorter") + ", and the armhole owes that"
                + (offered.isEmpty() ? "" : ": " + offered + " would give it"));
    }
}
