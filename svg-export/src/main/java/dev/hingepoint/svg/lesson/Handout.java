package dev.hingepoint.svg.lesson;

import dev.hingepoint.check.Ledger;
import dev.hingepoint.curve.Box;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.figure.FigurePicture;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import java.util.ArrayList;
import java.util.List;

/** A lesson on paper: why, each step on a sheet of its own, and what changed. */
final class Handout {
    static final String TOILE = "Sew a toile before you cut good cloth.";

    /** A change of less in mm is none. */
    private static final double CHANGED = 0.05;

    private final Lesson lesson;
    private final Unit unit;

    private Handout(Lesson lesson, Unit unit) {
        this.lesson = lesson;
        this.unit = unit;
    }

    /** @param number of the lesson among those that are handed out together, from 1 */
    static List<Page> pages(Lesson lesson, int number, Paper paper, Unit unit) {
        Handout handout = new Handout(lesson, unit);
        TextSheets sheets = new TextSheets(paper, number, handout.foot());
        handout.why(sheets);
        handout.steps(sheets);
        handout.account(sheets);
        return sheets.pages();
    }

    private String foot() {
        return lesson.pattern() + ", size " + lesson.size() + ". Pictures are not for cutting.";
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
                        .map(other -> LessonSection.capitalised(other.cause()) + ". " + other.tell())
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
        rows(lesson.changed(), true).forEach(sheets::row);
        sheets.heading("What did not change");
        List<String> same =
                rows(lesson.changed(), false).stream().map(row -> row.get(0)).toList();
        if (!same.isEmpty()) {
            sheets.words(String.join(", ", same));
        }
        sheets.items(lesson.kept());
        worse(lesson, sheets);
        sheets.words(TOILE);
    }

    static void worse(Lesson lesson, TextSheets sheets) {
        sheets.heading("What is worse now");
        if (lesson.worse().isEmpty()) {
            sheets.words("Nothing that is seen.");
        } else {
            sheets.items(lesson.worse());
        }
    }

    private List<List<String>> rows(Ledger.Entry entry, boolean areChanged) {
        List<List<String>> rows = new ArrayList<>();
        entry.edges()
                .forEach(edge -> row(edge.piece() + ", " + edge.edge(), edge.before(), edge.after(), areChanged, rows));
        entry.girths()
                .forEach(girth ->
                        row(girth.level() + " round the body", girth.before(), girth.after(), areChanged, rows));
        return rows;
    }

    private void row(String what, double before, double after, boolean areChanged, List<List<String>> rows) {
        if (Math.abs(after - before) >= CHANGED == areChanged) {
            String by = length(after - before);
            rows.add(List.of(what, length(before), length(after), after > before ? "+" + by : by));
        }
    }

    private String length(double mm) {
        return Length.retold(new Length(mm).tenths().toString(), unit);
    }
}
