package dev.hingepoint.make;

import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;

/**
 * A pattern altered to order, then made up to order: every choice follows the altered lines.
 *
 * <p>Kept: every size but the ordered one; the laws of each alteration and each choice, since a result that breaks one is refused.
 */
public final class MadeUp {
    private MadeUp() {}

    /**
     * Alters one size of a pattern, and makes it up.
     *
     * @param make the choices, in the order in which they are done
     * @throws dev.hingepoint.Refusal where the order cannot be done, or a law would break
     */
    public static Fitting of(Pattern pattern, Order order, List<AlterationRequest> make) {
        return of(Fitting.of(pattern, order), make);
    }

    /** A fitting, made up: its body, and whom it fits, are what the alterations left. */
    public static Fitting of(Fitting fitting, List<AlterationRequest> make) {
        Draft draft = fitting.after();
        List<Ledger.Entry> entries = new ArrayList<>();
        List<Step> steps = new ArrayList<>(fitting.steps());
        List<String> notes = new ArrayList<>(fitting.notes());
        for (AlterationRequest request : make) {
            Altered made = Choices.make(draft, request);
            entries.add(made.entry(request.name(), draft));
            steps.addAll(made.steps());
            made.notes().forEach(note -> notes.add(request.name() + ": " + note));
            draft = made.draft();
        }
        Draft after = remembering(draft, make, entries);
        Ledger altered = fitting.ledger();
        Ledger ledger =
                new Ledger(altered.pattern(), altered.size(), altered.alterations(), entries, Ledger.seams(after));
        return new Fitting(fitting.before(), after, ledger, steps, notes);
    }

    private static Draft remembering(Draft draft, List<AlterationRequest> make, List<Ledger.Entry> entries) {
        Pattern pattern = draft.pattern();
        Card.Altered done = pattern.card().altered().orElseThrow();
        List<AlterationRequest> all = new ArrayList<>(done.make());
        all.addAll(make);
        List<String> told = new ArrayList<>(done.steps());
        entries.forEach(entry -> told.addAll(entry.sentences()));
        return draft.with(pattern.with(pattern.card().withAltered(done.withMake(all, told))));
    }
}
