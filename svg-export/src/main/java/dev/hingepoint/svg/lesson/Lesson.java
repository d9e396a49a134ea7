package dev.hingepoint.svg.lesson;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.Drawbacks;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.print.Upright;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One alteration of one pattern, as it is taught.
 *
 * @param pattern its name
 * @param alteration the name it is ordered by
 * @param order its amounts and choices as they were ordered: "wedge: 12 mm"
 * @param before the size as it was
 * @param after the size as the alteration left it
 * @param steps the fitter's, as the alteration tells them
 * @param changed what changed, with the alteration's notes
 * @param kept what it promises and was held to: "keeps the length of the side seam, on the back"
 * @param worse what is worse than before, and has to be lived with
 * @param why what on a body calls for it; empty for an alteration that nobody wrote it down for
 */
public record Lesson(
        String pattern,
        String size,
        String alteration,
        String order,
        Draft before,
        Draft after,
        List<Step> steps,
        List<Scene> scenes,
        Carry carry,
        Ledger.Entry changed,
        List<String> kept,
        List<String> worse,
        Optional<Why> why) {
    public Lesson {
        steps = List.copyOf(steps);
        scenes = List.copyOf(scenes);
        kept = List.copyOf(kept);
        worse = List.copyOf(worse);
    }

    /**
     * The lesson of one alteration, of the catalogue or of your own, on one size.
     *
     * @param unit in which lengths are told
     * @throws dev.hingepoint.Refusal where it cannot be done, or a law would break
     */
    public static Lesson of(Draft before, Alteration alteration, Options options, Unit unit) {
        Altered altered = Catalogue.checked(before, alteration, options);
        Together together = new Together(before, altered.draft(), unit);
        Ledger.Entry entry = altered.entry(alteration.name(), before);
        List<Scene> scenes = new ArrayList<>();
        scenes.add(together.asItWas());
        for (Step step : altered.steps()) {
            Motion upright = Upright.of(before.find(step.before().name()).orElse(step.before()));
            Stage stage = new Stage(step, upright, unit);
            scenes.addAll(step.isCut() ? new CutScenes(step, stage).scenes() : List.of(TruedScene.of(step, stage)));
        }
        scenes.add(together.compared(entry));
        return new Lesson(
                before.pattern().card().name(),
                before.size(),
                alteration.name(),
                options.toString(),
                before,
                altered.draft(),
                altered.steps(),
                scenes,
                CarryWriter.of(before, alteration, options, altered, together, unit),
                entry,
                kept(altered).stream().map(told -> Length.retold(told, unit)).toList(),
                Drawbacks.of(before, altered.draft(), altered.steps()).stream()
                        .map(told -> Length.retold(told, unit))
                        .toList(),
                Why.of(alteration.name()));
    }

    /**
     * A lesson for each alteration of an order, each on what the ones before it left.
     *
     * @throws dev.hingepoint.Refusal where one cannot be done, or a law would break
     */
    public static List<Lesson> of(Pattern pattern, Order order, Unit unit) {
        Draft draft = pattern.in(order.size(), order.front().filter(front -> !front.equals("standard")));
        List<Lesson> lessons = new ArrayList<>();
        for (AlterationRequest request : order.alterations()) {
            Alteration alteration = Catalogue.named(request.name());
            Options options = Options.of(request, order.body());
            lessons.add(of(draft, alteration, options, unit));
            draft = Catalogue.checked(draft, alteration, options).draft();
        }
        return lessons;
    }

    /** "Sway back". */
    public String title() {
        return alteration.substring(0, 1).toUpperCase(Locale.ROOT) + alteration.substring(1);
    }

    /** Each promise once, with the pieces that it is made of. */
    private static List<String> kept(Altered altered) {
        Map<String, List<String>> pieces = new LinkedHashMap<>();
        altered.laws().forEach(law -> {
            List<String> of = pieces.computeIfAbsent(law.sentence(), sentence -> new ArrayList<>());
            law.where().piece().filter(piece -> !of.contains(piece)).ifPresent(of::add);
        });
        return pieces.entrySet().stream()
                .map(promise -> promise.getKey()
                        + (promise.getValue().isEmpty() || promise.getKey().startsWith("leaves the ")
                                ? ""
                                : ", on the " + StepWords.joined(promise.getValue())))
                .toList();
    }
}
