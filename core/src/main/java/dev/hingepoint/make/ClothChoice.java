package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The cloth that a piece is cut from: main, contrast or sheer in place of what it was; lining or interfacing besides. Where the draft counts on the stretch of a knit, a
 * cloth that stretches less is held against the body the size fits: see {@link StretchRule}.
 */
final class ClothChoice implements Alteration {
    @Override
    public String name() {
        return "cloth";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("piece", "sleeve", "as", "sheer");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("piece", "as", "stretch");
        String as = options.choice("as", "main", "contrast", "sheer", "lining", "interfacing")
                .orElseThrow(() -> options.refuse("make.cloth.as-what"));
        List<Piece> pieces = List.of(options.text("piece")
                        .orElseThrow(() -> options.refuse("make.cloth.which-piece"))
                        .split("\\s*,\\s*"))
                .stream()
                .map(draft::piece)
                .toList();
        boolean isInside = as.equals("lining") || as.equals("interfacing");
        OptionalDouble stretch = stretch(draft, options, as, isInside);
        List<Piece> changed = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        for (Piece piece : pieces) {
            Piece now = piece.named(piece.name(), cuttings(piece, as, isInside));
            changed.add(now);
            steps.add(Step.of("Cut the " + piece.name() + " from " + as + (isInside ? " too" : " cloth"), piece, now));
            piece.edges().forEach(edge -> laws.add(Law.keepsPlace(piece.name(), edge.name())));
        }
        Draft cut = draft.with(changed);
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("piece", String.join(", ", pieces.stream().map(Piece::name).toList()));
        amounts.put("as", as);
        Altered altered = new Altered(cut, amounts, steps, laws, List.of());
        if (stretch.isEmpty()) {
            return altered;
        }
        List<String> names = pieces.stream().map(Piece::name).toList();
        double needed = draft.pattern().card().stretchAcross();
        ToDoubleFunction<Piece> each = piece -> names.contains(piece.name()) ? stretch.getAsDouble() : needed;
        StretchRule rule = new StretchRule(cut, names, each);
        rule.require();
        for (String told : rule.told()) {
            altered = altered.withNote(told);
        }
        return altered;
    }

    /** Empty where it stretches as far as the draft counts on. */
    private static OptionalDouble stretch(Draft draft, Options options, String as, boolean isInside) {
        double needed = draft.pattern().card().stretchAcross();
        OptionalDouble stretch = Percent.of(options, "stretch");
        if (isInside || needed == 0 || stretch.isPresent() && stretch.getAsDouble() >= needed) {
            return OptionalDouble.empty();
        }
        if (stretch.isEmpty() && !as.equals("main")) {
            throw options.refuse("make.cloth.how-far-stretches", Quantity.share(needed), as);
        }
        return stretch;
    }

    private static List<Cutting> cuttings(Piece piece, String as, boolean isInside) {
        Optional<String> cloth = Optional.of(as).filter(word -> !word.equals("main"));
        List<Cutting> cuttings = new ArrayList<>();
        boolean isShell = !isInside;
        for (Cutting cutting : piece.cuttings()) {
            if (isShell && !cutting.isInside()) {
                cuttings.add(new Cutting(cutting.count(), cutting.how(), cloth));
            } else if (!cutting.cloth().equals(cloth)) {
                cuttings.add(cutting);
            }
        }
        if (isInside) {
            Cutting first = piece.cuttings().get(0);
            cuttings.add(new Cutting(first.count(), first.how(), cloth));
        }
        if (cuttings.stream().allMatch(Cutting::isInside)) {
            throw new Refusal(Reason.BeyondLimit.of(Message.of("make.cloth.no-outer-cloth"), piece.where()));
        }
        return cuttings;
    }
}
