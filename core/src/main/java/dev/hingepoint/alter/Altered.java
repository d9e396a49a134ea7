package dev.hingepoint.alter;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What came of an alteration, before its laws are checked.
 *
 * @param draft the size as it is now
 * @param amounts what was done, by name: mm as Double, choices as String
 * @param notes what the person who ordered it should hear
 */
public record Altered(Draft draft, Map<String, Object> amounts, List<Step> steps, List<Law> laws, List<String> notes) {
    public Altered {
        amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
        steps = List.copyOf(steps);
        laws = List.copyOf(laws);
        notes = List.copyOf(notes);
    }

    /** The draft with the piece on the worktable put back, and the steps that led there. */
    public static Altered of(Draft draft, Paper paper, Map<String, Object> amounts) {
        return new Altered(draft.with(paper.piece()), amounts, paper.steps(), List.of(), List.of());
    }

    public Altered withLaws(List<Law> more) {
        List<Law> all = new ArrayList<>(laws);
        all.addAll(more);
        return new Altered(draft, amounts, steps, all, notes);
    }

    public Altered withNote(String note) {
        List<String> all = new ArrayList<>(notes);
        all.add(note);
        return new Altered(draft, amounts, steps, laws, all);
    }

    public Altered withDraft(Draft changed) {
        return new Altered(changed, amounts, steps, laws, notes);
    }

    /** Nothing done yet. */
    public static Altered of(Draft draft) {
        return new Altered(draft, Map.of(), List.of(), List.of(), List.of());
    }

    /** What comes of doing one more thing to the result; each part's laws are held against what that part was given and left. */
    public Altered then(Function<Draft, Altered> next) {
        Altered following = next.apply(draft);
        Map<String, Object> allAmounts = new LinkedHashMap<>(amounts);
        following.amounts.forEach(allAmounts::putIfAbsent);
        List<Step> allSteps = new ArrayList<>(steps);
        allSteps.addAll(following.steps);
        List<Law> allLaws = new ArrayList<>();
        laws.forEach(law -> allLaws.add(law.upTo(draft)));
        following.laws.forEach(law -> allLaws.add(law.from(draft)));
        List<String> allNotes = new ArrayList<>(notes);
        allNotes.addAll(following.notes);
        return new Altered(following.draft, allAmounts, allSteps, allLaws, allNotes);
    }

    /** The account of it. */
    public Ledger.Entry entry(String name, Draft before) {
        return new Ledger.Entry(
                name,
                amounts,
                steps.stream()
                        .map(step ->
                                new Ledger.StepLine(step.caption(), step.after().name()))
                        .toList(),
                Ledger.edges(before, draft),
                Ledger.girths(before, draft),
                notes);
    }

    /** This and then another alteration of the draft that came of it, as one: each law speaks of its own half. */
    Altered then(Altered next) {
        return then(before -> next);
    }

    /** @throws Refusal where a law is broken, with numbers */
    Altered lawful(Draft before) {
        laws.stream()
                .map(law -> law.on(before, draft))
                .filter(finding -> !finding.holds())
                .findFirst()
                .ifPresent(finding -> {
                    throw new Refusal(finding.reason());
                });
        return this;
    }

    /** Whether every law holds. */
    public boolean holds(Draft before) {
        return laws.stream().allMatch(law -> law.on(before, draft).holds());
    }
}
