package dev.hingepoint.samples.draft;

import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.file.WholeFiles;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes the drafts, and the choir's measurements, to the folder of the sample patterns. */
public final class WriteSamples {
    /** The choir's measurements. */
    public static final String CHOIR = "choir.csv";

    private WriteSamples() {}

    /** Every draft, by the name of its files. */
    public static Map<String, Pattern> drafts() {
        Map<String, Pattern> drafts = new LinkedHashMap<>();
        drafts.put("larkfield", Larkfield.dress());
        drafts.put("shell", LarkfieldShell.shell());
        drafts.put("back-block", PracticalDesigner.backBlock());
        return drafts;
    }

    /** @param folder the folder to write to, such as {@code samples/patterns} */
    public static void main(String[] folder) {
        drafts().forEach((stem, pattern) -> PatternFiles.write(pattern, Path.of(folder[0]), stem));
        WholeFiles.writeAll(Path.of(folder[0]), Map.of(CHOIR, Choir.csv()));
    }
}
