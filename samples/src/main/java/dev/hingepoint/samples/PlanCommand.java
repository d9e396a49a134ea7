package dev.hingepoint.samples;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.PlanLine;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.OrderWriter;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code plan}: from a body to an order. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Plans size, front, blends and alterations for a body, each with its reason and numbers.",
        footer = {
            "",
            "Writes an order for alter, with the reasons as comments. Without --body it asks for the measurements one by one.",
            "",
            "Example: hingepoint plan larkfield.yaml --body ida.yaml --out ida-order.yaml",
            "A body is a short text:",
            "  unit: cm",
            "  upper bust: 87",
            "  full bust: 96",
            "  waist: 76",
            "  hip: 106",
            "  observed: {folds at back waist: 12 mm, folds run: back only, back hem: level}   # on a toile",
            "Exit 1 where the body is outside the chart, or something is left that the plan cannot put right."
        })
final class PlanCommand implements Callable<Integer> {
    private static final int WIDE = 96;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CARD.yaml", description = "The pattern's card.")
    private Path card;

    @Option(names = "--body", paramLabel = "BODY.yaml", description = "The body. Without it you are asked.")
    private Path bodyFile;

    @Option(
            names = "--out",
            paramLabel = "ORDER.yaml",
            description = "The order to write, in the card's folder or above it.")
    private Path order;

    @Option(names = "--exact", description = "Blends by amounts, to 2 mm, and not by sizes.")
    private boolean exact;

    @Option(names = "--check", description = "Does the order, and shows the ease before and after.")
    private boolean check;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PatternFiles.LoadedPattern loaded = PatternFiles.readWithNotes(card);
        String cardFromOrder = order == null ? "" : fromOrder();
        BodyReader.ReadBody read = bodyFile == null
                ? Asking.forBody(out, loaded.pattern().card().stretchAcross() > 0)
                : BodyReader.readWithNotes(bodyFile);
        FitRules rules = exact ? FitRules.USUAL.exactly() : FitRules.USUAL;
        Plan plan = Pieces.named(card, () -> Planner.plan(loaded.pattern(), read.body(), rules));
        if (order != null) {
            Pieces.write(order, OrderWriter.write(plan, cardFromOrder, read.unit()));
        }
        loaded.notes().forEach(note -> out.println("note: " + note));
        read.unused().forEach(name -> out.println("note: no plan uses '" + name + "'"));
        out.println(loaded.pattern().card().name() + ": the plan");
        plan.lines().forEach(line -> tell(out, line, read.unit()));
        plan.problems().forEach(problem -> wrapped(out, "LOOK: ", problem));
        if (check) {
            Fitting fitting = Pieces.named(card, () -> Fitting.of(loaded.pattern(), plan.order()));
            List<Ease> after = FitCheck.ease(fitting.after(), plan.drafted(), read.body(), rules);
            out.println();
            ease(out, plan.before(), after, read.unit());
        }
        out.println();
        if (order != null) {
            out.println("order written to " + order + "; next: hingepoint alter " + order + " --out altered");
        }
        out.println("Sew a toile before you cut good cloth.");
        return plan.holdsUp() ? Hingepoint.DONE : Hingepoint.DOES_NOT_HOLD_UP;
    }

    /** The card as an order in its folder, or above it, names it. */
    private String fromOrder() {
        Path folder = order.toAbsolutePath().normalize().getParent();
        Path pattern = card.toAbsolutePath().normalize();
        if (folder == null || !pattern.startsWith(folder)) {
            throw new Refusal(new Reason.Unreadable(
                    Message.of("program.order-elsewhere", card.resolveSibling("order.yaml")),
                    Where.inFile(order.toString())));
        }
        return folder.relativize(pattern).toString().replace('\\', '/');
    }

    private static void tell(PrintWriter out, PlanLine line, Unit unit) {
        out.println();
        wrapped(out, String.format(Locale.ROOT, "%-14s ", line.topic().words()), line.amount());
        OrderWriter.reasons(line, unit).forEach(reason -> wrapped(out, " ".repeat(15), reason));
    }

    private static void wrapped(PrintWriter out, String start, String words) {
        String indent = start;
        for (String line : OrderWriter.lines(words, WIDE - start.length())) {
            out.println(indent + line);
            indent = " ".repeat(start.length());
        }
    }

    private static void ease(PrintWriter out, List<Ease> before, List<Ease> after, Unit unit) {
        Table table = new Table(List.of("body", "ease as drawn", "ease altered", "right from", "to"));
        for (Ease now : after) {
            Ease was = before.stream()
                    .filter(ease -> ease.level().equals(now.level()))
                    .findFirst()
                    .orElse(now);
            table.row(
                    now.level(),
                    List.of(
                            shown(now.body(), unit),
                            shown(was.ease(), unit) + (was.isRight() ? "" : " !"),
                            shown(now.ease(), unit) + (now.isRight() ? "" : " !"),
                            shown(now.least(), unit),
                            Double.isInfinite(now.most()) ? "-" : shown(now.most(), unit)));
        }
        table.print(out);
    }

    private static String shown(double mm, Unit unit) {
        return new Length(mm).shownIn(unit);
    }
}
