package dev.hingepoint.svg.lesson;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.Drawbacks;
import dev.hingepoint.check.Law;
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
import java.util.Map;
import java.util.Optional;

/**
 * One alteration of one pattern, as it is taught.
 *
 * @param alteration the name it is ordered by
 * @param order its amounts and choices as they were ordered: "wedge: 12 mm"
 * @param unit in which its lengths are told: mm or inches
 * @param before the size as it was
 * @param after the size as the alteration left it
 * @param steps the fitter's, as the alteration tells them
 * @param changed what changed, with the alteration's notes
 * @param kept what it promises and was held to: "keeps the length of the side seam, on the back"
 * @param worse what is worse than before, and has to be lived with
 * @param why what on a body calls for it; empty for an alteration that nobody wrote it down for
 */
public record Lesson(
        String alteration,
        String order,
        Unit unit,
        Draft before,
        Draft after,
        List<Step> steps,
        List<Scene> scenes,
        Carry carry,
        Ledger.Entry changed,
        List<String> kept,
        List<String> worse,
        Optional<Why> why) {
    /** @throws Refusal for centimetres, which small amounts are not told in */
    public Lesson {
        if (unit == Unit.CENTIMETRE) {
            throw new Refusal(new Reason.Unreadable(Message.of("lesson.unit"), Where.UNKNOWN));
        }
        steps = List.copyOf(steps);
        scenes = List.copyOf(scenes);
        kept = List.copyOf(kept);
        worse = List.copyOf(worse);
    }

    /**
     * The lesson of one alteration, of the catalogue or of your own, on one size.
     *
     * @param unit in which lengths are told
     * @throws Refusal where it cannot be done, a law would break, or no line moves
     */
    public static Lesson of(Draft before, Alteration alteration, Options options, Unit unit) {
        Altered altered = Catalogue.checked(before, alteration, options);
        if (Together.changed(before, altered.draft()).isEmpty()) {
            throw new Refusal(new Reason.Missing(
                    Message.of("lesson.changes-nothing", alteration.name()), Where.UNKNOWN.size(before.size())));
        }
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
                alteration.name(),
                options.toString(),
                unit,
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
     * @throws Refusal where one cannot be done, a law would break, or no line moves
     */
    public static List<Lesson> of(Pattern pattern, Order order, Unit unit) {
        return of(pattern, order, List.of(), unit);
    }

    /** The same for an order that names alterations of your own as well. */
    public static List<Lesson> of(Pattern pattern, Order order, List<Alteration> own, Unit unit) {
        Draft draft = pattern.in(order.size(), order.front());
        List<Lesson> lessons = new ArrayList<>();
        for (AlterationRequest request : order.alterations()) {
            Alteration alteration = Catalogue.named(request.name(), own);
            Options options = Options.of(request, order.body());
            Lesson lesson = of(draft, alteration, options, unit);
            lessons.add(lesson);
            draft = lesson.after();
        }
        return lessons;
    }

    /** "Sway back". */
    public String title() {
        return Words.capitalised(alteration);
    }

    /** The pattern's name. */
    public String pattern() {
        return before.pattern().card().name();
    }

    /** What is altered: "Larkfield dress, size 40". */
    String subject() {
        return pattern() + ", size " + before.size();
    }

    /** Each promise once, with the pieces that it is made of, unless it names them itself. */
    private static List<String> kept(Altered altered) {
        Map<String, List<String>> pieces = new LinkedHashMap<>();
        altered.laws().forEach(law -> {
            List<String> of = pieces.computeIfAbsent(law.sentence(), sentence -> new ArrayList<>());
            law.where()
                    .piece()
                    .filter(piece -> !of.contains(piece) && !names(law, piece))
                    .ifPresent(of::add);
        });
        return pieces.entrySet().stream()
                .map(promise -> promise.getKey()
                        + (promise.getValue().isEmpty() ? "" : ", on the " + Words.joined(promise.getValue())))
                .toList();
    }

    /** Alone, or before an edge of it: "front/side seam". */
    private static boolean names(Law law, String piece) {
        return law.message().arguments().stream()
                .map(Object::toString)
                .anyMatch(told -> told.equals(piece) || told.contains(piece + "/"));
    }
}
