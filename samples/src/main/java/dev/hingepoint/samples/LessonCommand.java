package dev.hingepoint.samples;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.lesson.Lesson;
import dev.hingepoint.svg.lesson.LessonIndex;
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
            "lesson.pdf, the same to hand out, and each sheet of it as SVG in steps; student.pdf, an exercise to cut out, and answers.pdf.",
            "",
            "Examples:",
            "  hingepoint lesson concert-order.yaml --out lesson",
            "  hingepoint lesson --all larkfield.yaml --size 40 --out lessons   every alteration there is, with an index.html"
        })
final class LessonCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "ORDER.yaml",
            description = "The order: which pattern, which size, which alterations.")
    private Path order;

    @Option(names = "--all", paramLabel = "CARD.yaml", description = "A pattern: a lesson for each alteration there is.")
    private Path card;

    @Option(names = "--size", description = "With --all, the size; the pattern's base size where it is not given.")
    private String size;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    @Option(names = "--unit", defaultValue = "mm", description = "The unit that lengths are told in: mm, or in for inches.")
    private String unit;

    @Option(names = "--paper", defaultValue = "a4", description = "The paper of the handouts: a4 or letter.")
    private String paper;

    @Option(names = "--scale", defaultValue = "1:4", description = "How large the exercises are: 1:4 or 1:2.")
    private String scale;

    @Override
    public Integer call() {
        if ((order == null) == (card == null)) {
            throw Hingepoint.misused(spec, "lesson.one-of-two");
        }
        Lessons.Form form = new Lessons.Form(Units.parse(unit), Paper.named(paper), Scale.parse(scale));
        return card == null ? ordered(form) : all(form);
    }
}
