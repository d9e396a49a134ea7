package dev.hingepoint.svg.lesson;

import dev.hingepoint.Reason;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
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
    private final Unit unit;

    Exercise(Lesson lesson, int number, Paper paper, Scale scale, Unit unit) {
        this.lesson = lesson;
        this.number = number;
        this.paper = paper;
        this.scale = scale;
        this.unit = unit;
    }

    /** What is to be done, and the pieces with the lines to cut along; no answer. */
    List<Page> student() {
        List<String> tasks = new ArrayList<>();
        tasks.add("Cut out " + pieces() + ", along the cutting line.");
        lesson.steps().forEach(step -> tasks.add(task(step)));
        tasks.add("Measure again, and fill in the table. What is worse than it was before?");
        TextSheets sheets = sheets().title("Exercise: " + lesson.title())
                .words(lesson.order())
                .words("Everything is " + scale.words() + ": " + told(SHOWN) + " on this paper are "
                        + told(SHOWN / scale.factor()) + " of the pattern. The lengths below are the pattern's.")
                .numbered(tasks)
                .row(List.of("", "before", "after"));
        asked().forEach(edge -> sheets.row(List.of(edge.piece() + ", " + edge.edge(), told(edge.before()), "")));
        return with(sheets, withLines(), false);
    }

    /** The table filled in, what is worse, and the pieces as they should be, over the lines as they were. */
    List<Page> answer() {
        TextSheets sheets = sheets().title("Answer: " + lesson.title())
                .words(lesson.order())
                .row(List.of("", "before", "after"));
        asked().forEach(edge ->
                sheets.row(List.of(edge.piece() + ", " + edge.edge(), told(edge.before()), told(edge.after()))));
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

    private static String task(Step step) {
        return (step.isCut()
                        ? "On the " + step.before().name() + ", cut along the lines. "
                        : "On the " + step.before().name() + ": ")
                + step.caption() + ".";
    }

    private List<Ledger.EdgeLine> asked() {
        return lesson.changed().edges().stream()
                .filter(edge -> Math.abs(edge.after() - edge.before()) >= ASKED || isLong(edge))
                .toList();
    }

    /** A table that asked only for what changes would be an answer. */
    private static boolean isLong(Ledger.EdgeLine edge) {
        return edge.before() > LONG;
    }

    private String told(double mm) {
        return Length.retold(Reason.millimetres(Math.rint(mm)), unit);
    }

    /** The pieces as they were, with the first lines to cut on each. */
    private Draft withLines() {
        Draft draft = lesson.before();
        for (Piece piece : draft.pieces()) {
            Piece drawn = piece;
            for (Step step : lesson.steps()) {
                if (step.isCut() && step.before().name().equals(piece.name()) && lies(step, piece)) {
                    for (int i = 0; i < step.lines().size(); i++) {
                        drawn = drawn.withMark(
                                new DrawnLine("cut " + (i + 1), step.lines().get(i)));
                    }
                }
            }
            draft = draft.with(drawn);
        }
        return draft;
    }

    /** Whether the lines of a step are drawn on the piece as it was, and not on what earlier steps made of it. */
    private static boolean lies(Step step, Piece piece) {
        return step.before().edges().equals(piece.edges());
    }

    private List<Page> with(TextSheets sheets, Draft draft, boolean isOver) {
        PrintOptions options = PrintOptions.of(paper).with(scale).with(unit);
        List<Page> pages = new ArrayList<>(sheets.pages());
        pages.addAll(Printing.pages(draft, changed(), isOver ? options.with(PrintOptions.Original.SHOWN) : options));
        return pages;
    }
}
