package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Takes length out of a centre back that is too long between bust line and hip line, while the side seam is right: {@code sway back:
 * {wedge: 12 mm}}.
 *
 * <p>Kept: the side seam's length, neckline, shoulder and armhole, every girth, the front. The centre back is shorter by the wedge. Where
 * the centre back is a seam, a {@linkplain SwayBackWedge wedge} is folded out at the waist; where it is a fold, which must stay straight
 * and on grain, the length is taken {@linkplain SwayBackShoulder at the shoulder}.
 *
 * <p>Amounts: 6 to 25 mm is usual (common practice), outside a note says so; a negative one is refused.
 */
final class SwayBack implements Alteration {
    private static final double USUAL_LEAST = 6;
    private static final double USUAL_MOST = 25;

    @Override
    public String name() {
        return "sway back";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("wedge", "12 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("wedge", "at", "above", "method", "keep fold");
        double wedge = options.requiredAmount("wedge", "wedge: 12 mm").mm();
        String level = options.text("at").orElse("waist");
        double above = options.length("above").map(length -> length.mm()).orElse(0.0);
        Piece back = back(draft, level);
        if (!(wedge > 0)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.sway-back.not-positive", Quantity.millimetres(wedge)), back.where()));
        }
        boolean isFold = back.edge(Names.CENTRE_BACK).kind() == Edge.Kind.FOLD;
        boolean keepFold = options.flag("keep fold");
        String method = options.choice("method", "wedge", "shoulder").orElse(isFold ? "shoulder" : "wedge");
        if (method.equals("wedge") && isFold && !keepFold) {
            throw options.refuse("alter.sway-back.wedge-bends-fold", back.name());
        }
        if (keepFold && !(isFold && method.equals("wedge"))) {
            throw options.refuse("alter.sway-back.keep-fold-alone");
        }
        Altered altered = LargestAmount.orRefusal(
                draft,
                wedge,
                amount -> method.equals("shoulder")
                        ? SwayBackShoulder.alter(draft, back, amount)
                        : SwayBackWedge.alter(draft, back, amount, level, above, keepFold));
        if (wedge < USUAL_LEAST || wedge > USUAL_MOST) {
            altered = altered.withNote(
                    "a sway-back wedge of " + Reason.millimetres(wedge) + " is unusual: 6 to 25 mm is common");
        }
        return altered;
    }

    private static Piece back(Draft draft, String level) {
        List<Piece> backs = draft.piecesWithEdges(Names.CENTRE_BACK, Names.SIDE_SEAM);
        if (backs.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("alter.sway-back.needs-edges"), Where.UNKNOWN.size(draft.size())));
        }
        return backs.stream()
                .filter(piece -> piece.hasLevel(level))
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.sway-back.needs-level", level),
                        backs.get(0).where())));
    }

    /** What all three ways have in common: the edges above stay, every girth and every other piece stays. */
    static List<Law> commonLaws(Draft draft, Piece back, double girthTolerance, String... edgesInPlace) {
        List<Law> laws = new ArrayList<>();
        Stream.of(edgesInPlace).filter(back::hasEdge).forEach(edge -> laws.add(Law.keepsPlace(back.name(), edge)));
        back.marks(Level.class).forEach(level -> laws.add(Law.keepsWidth(back.name(), level.name(), girthTolerance)));
        laws.addAll(Law.keepsOthers(draft, List.of(back.name())));
        return laws;
    }
}
