package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.check.Ledger.SeamLine;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Pattern;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A pattern altered to order.
 *
 * <p>Kept: every piece of every other size, as it was drawn; and the laws of each alteration, as they held when it was done: the next one may change what an earlier one kept.
 *
 * @param before the ordered size as it is drawn
 * @param after the same size altered; its pattern's card says what was done
 * @param steps all of the fitter's steps, in order
 * @param notes what the person who ordered it should hear
 */
public record Fitting(Draft before, Draft after, Ledger ledger, List<Step> steps, List<String> notes) {
    private static final List<String> BLENDED = List.of(Names.WAIST, Names.HIP);

    /** A change of less in mm is not worth telling. */
    private static final double TOLD = 0.5;

    public Fitting {
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
    }

    /**
     * Alters one size of a pattern: only that size's pieces change.
     *
     * @throws dev.hingepoint.Refusal where the order cannot be done, or a law would break
     */
    public static Fitting of(Pattern pattern, Order order) {
        return of(pattern, order, List.of());
    }

    /**
     * The same, where the order may name alterations of your own beside the catalogue's. They are held to their laws, told in the ledger and
     * remembered on the card as any other.
     */
    public static Fitting of(Pattern pattern, Order order, List<Alteration> own) {
        Draft before = pattern.in(order.size(), order.front());
        requireNoOtherMadeUp(before);
        Draft draft = before;
        List<Ledger.Entry> entries = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        List<String> notes = new ArrayList<>(orderNote(order));
        for (AlterationRequest request : order.alterations()) {
            Alteration alteration = Catalogue.named(request.name(), own);
            Altered altered = Catalogue.checked(draft, alteration, Options.of(request, order.body()));
            entries.add(altered.entry(request.name(), draft));
            steps.addAll(altered.steps());
            altered.notes().forEach(note -> notes.add(request.name() + ": " + note));
            if (request.name().equals("hip blend")) {
                notes.addAll(alreadyGiven(entries));
            }
            draft = altered.draft();
        }
        Card card = draft.pattern().card().withAltered(altered(before, draft, order, entries));
        Draft after = draft.with(draft.pattern().with(card));
        Ledger ledger = new Ledger(card.name(), order.size(), entries, List.of(), Ledger.seams(after));
        return new Fitting(before, after, ledger, steps, notes);
    }

    /** How much a full bust before the blend had given at waist and hip already. */
    private static List<String> alreadyGiven(List<Ledger.Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.name().equals("full bust"))
                .flatMap(entry -> entry.girths().stream())
                .filter(girth -> BLENDED.contains(girth.level()) && Math.abs(girth.after() - girth.before()) > TOLD)
                .map(girth -> "hip blend: of the " + girth.level() + ", the full bust had already given "
                        + Reason.millimetres(girth.after() - girth.before()) + " round the body")
                .toList();
    }

    /** A card remembers how one size is made up; the pieces of that size would be left without their seams. */
    private static void requireNoOtherMadeUp(Draft draft) {
        draft.pattern()
                .card()
                .altered()
                .filter(done -> !done.isOf(draft.size(), draft.front()))
                .filter(done -> done.construction().isPresent())
                .ifPresent(done -> {
                    throw new Refusal(Reason.BeyondLimit.of(
                            Message.of("alter.fitting.made-up-already", done.size()),
                            Where.UNKNOWN.size(draft.size())));
                });
    }

    /** The catalogue stands in a fitter's usual order; of alterations that are not in it nothing is known. */
    private static List<String> orderNote(Order order) {
        List<String> usual = Catalogue.all().stream().map(Alteration::name).toList();
        List<String> ordered = order.alterations().stream()
                .map(AlterationRequest::name)
                .filter(usual::contains)
                .toList();
        List<String> sorted =
                ordered.stream().sorted(Comparator.comparingInt(usual::indexOf)).toList();
        return sorted.equals(ordered)
                ? List.of()
                : List.of("a fitter would go in another order: " + String.join(", ", sorted));
    }

    private static Card.Altered altered(Draft before, Draft after, Order order, List<Ledger.Entry> entries) {
        List<AlterationRequest> all = new ArrayList<>();
        Optional<Card.Altered> already =
                before.pattern().card().altered().filter(done -> done.size().equals(order.size()));
        already.ifPresent(done -> all.addAll(done.alterations()));
        List<String> told = new ArrayList<>(already.map(Card.Altered::steps).orElse(List.of()));
        entries.forEach(entry -> told.addAll(entry.sentences()));
        List<AlterationRequest> made = already.map(Card.Altered::make).orElse(List.of());
        Optional<Construction> own = after.pattern()
                .card()
                .altered()
                .filter(done -> done.isOf(after.size(), after.front()))
                .flatMap(Card.Altered::construction);
        all.addAll(order.alterations());
        Map<String, Length> fits = new LinkedHashMap<>(already.map(Card.Altered::fits)
                .filter(body -> !body.isEmpty())
                .orElseGet(() ->
                        before.pattern().card().bodyChart().body(order.size()).orElse(Map.of())));
        // the chart speaks of the front that is drawn without a name
        Draft charted = already.isPresent() ? before : before.pattern().in(order.size());
        for (Ledger.GirthLine girth : Ledger.girths(charted, after)) {
            String column = BodyChart.column(girth.level()).orElse(girth.level());
            fits.computeIfPresent(column, (name, body) -> new Length(body.mm() + girth.after() - girth.before()));
        }
        return new Card.Altered(order.size(), before.front(), all, made, told, fits, own);
    }

    /** The seams that matched before and no longer do. */
    public List<SeamLine> brokenSeams() {
        return Ledger.broken(before, after);
    }
}
