package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.svg.figure.FigurePicture;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A lesson on paper: why, each step on a sheet of its own, and what changed. */
final class Handout {
    static final String TOILE = "Sew a toile before you cut good cloth.";

    private static final String NOTHING = "No edge and no girth that was measured.";

    private final Lesson lesson;

    private Handout(Lesson lesson) {
        this.lesson = lesson;
    }

    /**
     * The sheets, named by the lesson's number and, a dot between, the step's; those before the steps are 0.
     *
     * @param steps one for each
     */
    record Sheets(List<Page> why, List<Page> steps, List<Page> account) {
        List<Page> all() {
            return Stream.of(why, steps, account).flatMap(List::stream).toList();
        }
    }

    /** @param number of the lesson among those that are handed out together, from 1 */
    static Sheets sheets(Lesson lesson, int number, Paper paper) {
        Handout handout = new Handout(lesson);
        Supplier<TextSheets> blank = () -> new TextSheets(paper, number, handout.foot());
        TextSheets why = blank.get();
        handout.why(why);
        TextSheets steps = blank.get();
        handout.steps(steps);
        TextSheets account = blank.get();
        handout.account(account);
        List<Page> shown = steps.pages(i -> i + 1);
        return new Sheets(why.pages(i -> 0), shown, account.pages(i -> shown.size() + i + 1));
    }

    private String foot() {
        return lesson.subject() + ". Pictures are not for cutting.";
    }

    private void why(TextSheets sheets) {
        sheets.title(lesson.title()).words(lesson.order());
        lesson.why().ifPresent(why -> why(why, sheets));
        sheets.end();
    }

    private static void why(Why why, TextSheets sheets) {
        sheets.heading("What calls for it").words(why.calledForBy());
        sheets.heading("Without it").words(why.withoutIt());
        List<FigurePicture> figures =
                List.of(why.without(), why.right().picture(), why.wrong().picture());
        Box figure = new Box(0, 0, FigurePicture.WIDTH, FigurePicture.HEIGHT);
        sheets.pictures(
                figures.stream().map(FigurePicture::drawn).toList(),
                List.of(figure, figure, figure),
                List.of("without it", "the right cure", "a wrong cure"));
        sheets.heading("The right cure: " + why.right().name())
                .words(why.right().does());
        sheets.heading("A wrong cure: " + why.wrong().name()).words(why.wrong().does());
        sheets.heading("What people confuse it with")
                .items(why.confusedWith().stream()
                        .map(other -> Words.capitalised(other.cause()) + ". " + other.tell())
                        .toList());
        sheets.heading("Where it is written");
        why.sources().forEach(source -> sheets.small(source.name() + " (" + source.grade() + "): " + source.says()));
    }

    private void steps(TextSheets sheets) {
        List<Scene> scenes = lesson.scenes();
        for (int i = 0; i < scenes.size(); i++) {
            Scene scene = scenes.get(i);
            sheets.title(lesson.title() + ", " + (i + 1) + " of " + scenes.size() + ": "
                            + scene.kind().words())
                    .picture(scene.drawn(), scene.box())
                    .words(scene.caption())
                    .small("The picture is " + scene.scaleWords() + ".")
                    .end();
        }
    }

    private void account(TextSheets sheets) {
        sheets.title(lesson.title() + ": what changed").row(List.of("", "before", "after", "by"));
        List<Measurement> all = Measurement.of(lesson.changed());
        all.stream().filter(Measurement::isChanged).forEach(changed -> sheets.row(row(changed)));
        if (all.stream().noneMatch(Measurement::isChanged)) {
            sheets.words(NOTHING);
        }
        sheets.items(lesson.changed().notes().stream()
                .map(note -> Length.retold(note, lesson.unit()))
                .toList());
        sheets.heading("What did not change").words(unchanged(all));
        if (!lesson.kept().isEmpty()) {
            sheets.heading("What it was held to")
                    .items(lesson.kept().stream().map(law -> "It " + law + ".").toList());
        }
        worse(lesson, sheets);
        sheets.words(TOILE);
    }

    /** "front: neckline, shoulder; back: hem; round the body: bust, hip". */
    private static String unchanged(List<Measurement> all) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        all.stream().filter(measured -> !measured.isChanged()).forEach(measured -> {
            boolean isEdge = measured.names().size() > 1;
            names.computeIfAbsent(isEdge ? measured.names().get(0) : "round the body", of -> new ArrayList<>())
                    .add(measured.names().get(isEdge ? 1 : 0));
        });
        return names.isEmpty()
                ? NOTHING
                : names.entrySet().stream()
                        .map(of -> of.getKey() + ": " + String.join(", ", of.getValue()))
                        .collect(Collectors.joining("; "));
    }

    static void worse(Lesson lesson, TextSheets sheets) {
        sheets.heading("What is worse now");
        if (lesson.worse().isEmpty()) {
            sheets.words("Nothing that was checked is worse than before.");
        } else {
            sheets.items(lesson.worse());
        }
    }

    private List<String> row(Measurement changed) {
        String by = length(Math.abs(changed.difference()));
        return List.of(
                changed.told(),
                length(changed.before()),
                length(changed.after()),
                (changed.difference() > 0 ? "+" : "\u2212") + by);
    }

    private String length(double mm) {
        return Length.retold(new Length(mm).tenths().toString(), lesson.unit());
    }
}
