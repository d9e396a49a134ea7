package dev.hingepoint.samples;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.file.WholeFiles;
import dev.hingepoint.svg.print.BeforeAfter;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;

/** The demo: one singer's concert dress, altered, walked and printed into {@code target/demo}. */
public final class Demo {
    private Demo() {}

    /** @param arguments the folder of the samples module */
    public static void main(String[] arguments) {
        Path module = Path.of(arguments.length == 0 ? "samples" : arguments[0]);
        Path order = module.resolve("patterns/concert-order.yaml");
        Path demo = module.resolve("target/demo");
        PrintWriter out = new PrintWriter(System.out, true);
        PrintWriter err = new PrintWriter(System.err, true);
        int code = Hingepoint.run(out, err, "alter", order.toString(), "--out", demo.toString());
        String altered = demo.resolve("altered.yaml").toString();
        if (code != Hingepoint.REFUSED) {
            code = Hingepoint.run(out, err, "walk", altered, "--size", "40");
        }
        if (code == Hingepoint.DONE) {
            code = Hingepoint.run(
                    out,
                    err,
                    "print",
                    altered,
                    "--size",
                    "40",
                    "--paper",
                    "a4",
                    "--for",
                    "Ida, second row",
                    "--body",
                    module.resolve("patterns/ida.yaml").toString(),
                    "--out",
                    demo.toString());
        }
        if (code == Hingepoint.DONE) {
            code = Hingepoint.run(
                    out,
                    err,
                    "lesson",
                    order.toString(),
                    "--out",
                    demo.resolve("lesson").toString());
        }
        if (code != Hingepoint.DONE) {
            throw new IllegalStateException("the demo ended with exit code " + code);
        }
        OrderReader.ReadOrder read = OrderReader.read(order);
        Fitting fitting = Fitting.of(PatternFiles.read(read.card()), read.order());
        WholeFiles.writeAll(demo, Map.of("before-after.svg", BeforeAfter.svg(fitting.before(), fitting.after())));
        out.println();
        out.println(
                "Look at samples/target/demo: before-after.svg (what moved), pages.pdf (what to print), lesson/lesson.html (how)");
    }
}
