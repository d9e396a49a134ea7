package dev.hingepoint.samples;

import dev.hingepoint.check.Ledger;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.lesson.Lesson;
import dev.hingepoint.svg.lesson.Lessons;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.Scale;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code lesson}: how an alteration moves the lines, step by step. */
@Command(
        name = "lesson",
        mixinStandardHelpOptions = true,
        description = "Shows, step by step, how each alteration moves the lines.",
        footer = {
            "",
            "Writes lesson.html, a page for a browser, with every step and a slider that carries the amount from nothing to all of it;",
            "lesson.pdf, the same to hand out, and each sheet of it in steps as SVG; student.pdf, an exercise to cut out, and answers.pdf.",
            "",
            "Examples: hingepoint lesson concert-order.yaml --out lesson",
            "          hingepoint lesson --all larkfield.yaml --out lessons    a folder for every alteration there is, and index.html"
        })
final class LessonCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "ORDER.yaml",
            description = "The order: which pattern, which size, which alterations.")
    private Path order;

    @Option(
            names = "--all",
            paramLabel = "CARD.yaml",
            description = "Instead of an order: a pattern's card, for a lesson of every alteration.")
    private Path card;

    @Option(names = "--size", paramLabel = "S", description = "With --all: the size, else the pattern's base size.")
    private String size;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    @Option(
            names = "--unit",
            paramLabel = "mm|in",
            defaultValue = "mm",
            converter = Units.class,
            description = "The unit that lengths are told in, ${DEFAULT-VALUE} where not given.")
    private Unit unit;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description =
                    "The paper of handouts and exercises: a4, letter or larger; ${DEFAULT-VALUE} where not given.")
    private String paper;

    @Option(
            names = "--scale",
            paramLabel = "1:N",
            defaultValue = "1:4",
            description = "How large an exercise is: 1:2 or 1:4; ${DEFAULT-VALUE} where not given.")
    private String scale;

    @Override
    public Integer call() {
        if ((order == null) == (card == null)) {
            throw wrongCall("name an order, or a pattern's card with --all; one of the two");
        }
        if (size != null && card == null) {
            throw wrongCall("--size goes with --all; an order names its own size");
        }
        Lessons.Form form = new Lessons.Form(Paper.named(paper), Scale.parse(scale));
        return card == null ? ordered(form) : all(form);
    }

    private ParameterException wrongCall(String what) {
        return new ParameterException(spec.commandLine(), what);
    }

    private int ordered(Lessons.Form form) {
        OrderReader.ReadOrder read = OrderReader.read(order);
        Pattern pattern = PatternFiles.read(read.card());
        List<Lesson> lessons = Pieces.named(order, () -> {
            List<Lesson> all = Lesson.of(pattern, read.order(), unit);
            Lessons.write(all, form, folder);
            return all;
        });
        PrintWriter out = spec.commandLine().getOut();
        for (Lesson lesson : lessons) {
            out.println(lesson.title() + " (" + lesson.order() + "): "
                    + lesson.scenes().size() + " pictures");
            lesson.worse().forEach(worse -> out.println("  worse now: " + worse));
        }
        if (!read.make().isEmpty()) {
            out.println("note: how it is made up is not shown; a lesson shows the alterations");
        }
        out.println("written to " + folder
                + ": lesson.html, lesson.pdf, steps/*.svg, student.pdf, answers.pdf; open lesson.html in a browser");
        out.println("Sew a toile before you cut good cloth.");
        Draft before = lessons.get(0).before();
        Draft after = lessons.get(lessons.size() - 1).after();
        return Ledger.broken(before, after).isEmpty() ? Hingepoint.DONE : Hingepoint.DOES_NOT_HOLD_UP;
    }

    private int all(Lessons.Form form) {
        PatternFiles.LoadedPattern loaded = PatternFiles.readWithNotes(card);
        String chosen = size == null ? loaded.pattern().card().baseSize() : size;
        Draft draft = Pieces.of(loaded, card, chosen, Optional.empty());
        int lessons = Lessons.writeAll(draft, unit, form, folder);
        spec.commandLine()
                .getOut()
                .println(lessons + " lessons written to " + folder + "; open index.html in a browser");
        return Hingepoint.DONE;
    }
}
