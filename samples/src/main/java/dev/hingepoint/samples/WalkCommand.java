package dev.hingepoint.samples;

import dev.hingepoint.Reason;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code walk}: every seam of one size, side along side. */
@Command(
        name = "walk",
        mixinStandardHelpOptions = true,
        description = "Walks every seam of one size: are both sides as long as they should be, do the notches meet?",
        footer = {"", "Example: hingepoint walk larkfield.yaml --size 40", "Exit 1 where a seam does not match."})
final class WalkCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CARD.yaml", description = "The pattern's card.")
    private Path card;

    @Option(names = "--size", required = true, paramLabel = "S", description = "The size to walk.")
    private String size;

    @Option(names = "--front", paramLabel = "NAME", description = "A second front, where one is drawn.")
    private String front;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PatternFiles.LoadedPattern loaded = PatternFiles.readWithNotes(card);
        Draft draft = Pieces.of(loaded, card, size, Optional.ofNullable(front));
        List<Walked> walked = Pieces.named(card, () -> SeamWalk.all(draft));
        loaded.notes().forEach(note -> out.println("note: " + note));
        for (Walked seam : walked) {
            out.println(String.format(
                    Locale.ROOT,
                    "%-8s %s: %.1f mm to %.1f mm, %s",
                    seam.lengthMatches() ? "matches" : "DIFFERS",
                    seam.seam(),
                    seam.joinLength(),
                    seam.toLength(),
                    difference(seam)));
            seam.complaints().forEach(complaint -> out.println("         " + complaint));
        }
        boolean allMatch = walked.stream().allMatch(Walked::lengthMatches);
        out.println(walked.size() + " seams of size " + size + (allMatch ? ": all match" : ": not all match"));
        return allMatch ? Hingepoint.DONE : Hingepoint.DOES_NOT_HOLD_UP;
    }

    private static String difference(Walked seam) {
        double difference = Math.rint(seam.difference() * 10) / 10;
        if (difference == 0) {
            return "equal";
        }
        boolean isEased = seam.seam().easeTo() > 0 || seam.seam().easeFrom() < 0;
        return Reason.millimetres(Math.abs(difference))
                + (difference > 0 ? " longer on the first side" : " shorter on the first side")
                + (isEased ? ", eased in" : "");
    }
}
