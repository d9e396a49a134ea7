package dev.hingepoint.samples;

import dev.hingepoint.Refusal;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** The program: one command for each thing that a person does with a pattern. */
@Command(
        name = "hingepoint",
        mixinStandardHelpOptions = true,
        versionProvider = Hingepoint.Version.class,
        subcommands = {
            PlanCommand.class,
            AlterCommand.class,
            PrintCommand.class,
            MeasureCommand.class,
            LessonCommand.class,
            WalkCommand.class
        },
        description =
                "Alters sewing patterns as a fitter does with scissors and paper, exactly, and prints them to tape together.",
        footer = {
            "",
            "Exit 0: done. 1: done and written, but the pattern does not hold up, for example a seam no longer matches. 2: refused, and nothing written.",
            "",
            "Example: hingepoint plan larkfield.yaml --body ida.yaml --out ida-order.yaml",
            "Then:    hingepoint alter ida-order.yaml --out altered",
            "Then:    hingepoint print altered/altered.yaml --size 40 --paper a4 --out altered",
            "",
            "Sew a toile before you cut good cloth."
        })
public final class Hingepoint {
    static final int DONE = 0;
    static final int DOES_NOT_HOLD_UP = 1;
    static final int REFUSED = 2;

    private Hingepoint() {}

    /** Runs a command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(run(new PrintWriter(System.out, true), new PrintWriter(System.err, true), arguments));
    }

    /** Runs a command; its exit code. Nothing that a person can get wrong leaves a stack trace. */
    public static int run(PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine program = new CommandLine(new Hingepoint())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(100)
                .registerConverter(Path.class, Hingepoint::path)
                .setParameterExceptionHandler(Hingepoint::wrongCall)
                .setExecutionExceptionHandler(Hingepoint::refused);
        return program.execute(arguments);
    }

    /** A file or a folder that was named; an empty name would be the folder that one happens to be in. */
    private static Path path(String name) {
        if (name.isBlank()) {
            throw new TypeConversionException("no file or folder is named");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException wrong) {
            throw new TypeConversionException("'" + name + "' is no name of a file or folder");
        }
    }

    private static int wrongCall(ParameterException wrong, String[] arguments) {
        CommandLine command = wrong.getCommandLine();
        String name = command.getCommandName();
        command.getErr()
                .println(oneLine(wrong.getMessage()) + "; see "
                        + (name.equals("hingepoint") ? name : "hingepoint " + name) + " --help");
        return REFUSED;
    }

    /** Even what should not happen is told in one line: a person who sews has no use for a stack trace. */
    private static int refused(Exception thrown, CommandLine command, CommandLine.ParseResult call) {
        String message = thrown instanceof Refusal
                ? thrown.getMessage()
                : "this should not happen, and is our mistake: " + thrown + "; nothing was written";
        command.getErr().println(oneLine(message));
        return REFUSED;
    }

    private static String oneLine(String message) {
        return message.replaceAll("\\s+", " ").strip();
    }

    /** The version that the jar was built as. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {
                "hingepoint "
                        + Optional.ofNullable(Hingepoint.class.getPackage().getImplementationVersion())
                                .orElse("unbuilt")
            };
        }
    }
}
