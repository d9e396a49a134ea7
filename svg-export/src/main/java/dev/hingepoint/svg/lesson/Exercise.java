package dev.hingepoint.svg.lesson;

import dev.hingepoint.Reason;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import dev.hingepoint.svg.print.Scale;
import java.util.ArrayList;
import java.util.List;

/** A lesson to do oneself, at a half or a quarter: the pieces with the lines to cut, and for who has done it, the answer. */
final class Exercise {
    /** A change of less in mm is not asked for. */
    private static final double ASKED = 0.5;

    /** An edge longer than so many mm is worth measuring. */
    private static final double LONG = 50;

    /** So many mm of the paper tell what the scale means. */
    private static final double SHOWN = 10;

    private final Lesson lesson;
    private final int number;
    private final Paper paper;
    private final Scale scale;

    Exercise(Lesson lesson, int number, Paper paper, Scale scale) {
        this.lesson = lesson;
        this.number = number;
        this.paper = paper;
        this.scale = scale;
    }

    /** What is to be done, and the pieces with the lines to cut along; no answer. */
    List<Page> student() {
        List<String> tasks = new ArrayList<>();
        tasks.add("Cut out " + pieces() + ", along the cutting line.");
        marked().forEach(told -> tasks.add(Length.retold(told, lesson.unit())));
        lesson.steps().forEach(step -> tasks.add(Length.retold(task(step).words(), lesson.unit())));
        tasks.add("Measure again, and fill in the table" + girthsTold() + ". What is worse than it was before?");
        TextSheets sheets = sheets().title("Exercise: " + lesson.title())
                .words(lesson.order())
                .words("Everything is " + scale.words() + ": " + told(SHOWN) + " on this paper are "
                        + told(SHOWN / scale.factor()) + " of the pattern. The lengths below are the pattern's.")
                .numbered(tasks)
                .row(List.of("", "before", "after"));
        asked().forEach(asked -> sheets.row(List.of(asked.told(), told(asked.before()), "")));
        return with(sheets, withLines(), false);
    }

    /** The table filled in, what is worse, and the pieces as they should be, over the lines as they were. */
    List<Page> answer() {
        TextSheets sheets = sheets().title("Answer: " + lesson.title())
                .words(lesson.order())
                .row(List.of("", "before", "after"));
        asked().forEach(asked -> sheets.row(List.of(asked.told(), told(asked.before()), told(asked.after()))));
        Handout.worse(lesson, sheets);
        sheets.words("On the next pages the pieces are as they are now, the lines as they were under them, dotted.");
        Draft after = lesson.after();
        return with(
                sheets,
                new Draft(
                        after.pattern(),
                        after.size(),
                        after.front(),
                        lesson.before().pattern()),
                true);
    }

    private TextSheets sheets() {
        return new TextSheets(paper, number, lesson.subject() + ". " + scale.words() + ", not for cutting cloth.");
    }

    private String pieces() {
        return Words.joined(changed().stream().map(name -> "the " + name).toList());
    }

    private List<String> changed() {
        return Together.changed(lesson.before(), lesson.after()).stream()
                .map(Piece::name)
                .toList();
    }

    /** How far marks go where no paper moves that would carry them: the steps' captions leave that to their pictures. */
    private List<String> marked() {
        return changed().stream()
                .filter(name -> lesson.steps().stream()
                        .noneMatch(step -> step.isCut() && step.before().name().equals(name)))
                .flatMap(name ->
                        new Redrawn(lesson.before().piece(name), lesson.after().piece(name)).marks().stream())
                .map(Words::sentence)
                .toList();
    }

    private ExerciseTask task(Step step) {
        return new ExerciseTask(step, lesson.before().find(step.before().name()).orElse(step.before()));
    }

    private List<Measurement> asked() {
        return Measurement.of(lesson.changed()).stream()
                .filter(asked -> Math.abs(asked.difference()) >= ASKED || isLong(asked))
                .toList();
    }

    /** A table that asked only for what changes would be an answer. */
    private static boolean isLong(Measurement asked) {
        return asked.before() > LONG;
    }

    private String girthsTold() {
        return lesson.changed().girths().isEmpty()
                ? ""
                : "; a girth gains what each piece gains there, and as much again for the piece's other half";
    }

    private String told(double mm) {
        return Length.retold(Reason.millimetres(Math.rint(mm)), lesson.unit());
    }

    /** The pieces as they were, with the first lines to cut on each. */
    private Draft withLines() {
        Draft draft = lesson.before();
        for (Piece piece : draft.pieces()) {
            Piece drawn = piece;
            for (Step step : lesson.steps()) {
                if (step.before().name().equals(piece.name())) {
                    drawn = task(step).on(drawn);
                }
            }
            draft = draft.with(drawn);
        }
        return draft;
    }

    private List<Page> with(TextSheets sheets, Draft draft, boolean isOver) {
        PrintOptions options = PrintOptions.of(paper).with(scale).with(lesson.unit());
        List<Page> pages = new ArrayList<>(sheets.pages());
        pages.addAll(Printing.pages(draft, changed(), isOver ? options.with(PrintOptions.Original.SHOWN) : options));
        return pages;
    }
}
