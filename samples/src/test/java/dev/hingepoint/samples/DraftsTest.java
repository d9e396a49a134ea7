package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.samples.draft.Choir;
import dev.hingepoint.samples.draft.WriteSamples;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftsTest {
    private static final double INCH = 25.4;

    @ParameterizedTest
    @ValueSource(strings = {"larkfield", "shell", "back-block"})
    void theCommittedFilesAreWhatTheDraftsWrite(String stem) throws IOException {
        for (Map.Entry<String, String> file :
                PatternFiles.contents(WriteSamples.drafts().get(stem), stem).entrySet()) {
            assertEquals(file.getValue(), Files.readString(Path.of("patterns", file.getKey())), file.getKey());
        }
    }

    @Test
    void theChoirsListIsWhatItsDraftWrites() throws IOException {
        String list = Files.readString(Path.of("patterns", WriteSamples.CHOIR));
        assertEquals(Choir.csv(), list);
        assertEquals(201, list.lines().count());
    }

    /** Within 1/16 in (Threads no. 200), notch to notch, running on at neck, armhole and hem. */
    @ParameterizedTest
    @ValueSource(strings = {"larkfield", "shell"})
    void everySeamOfEverySizeWalks(String stem) {
        Pattern pattern = WriteSamples.drafts().get(stem);
        assertEquals(8, pattern.sizes().size());
        for (String size : pattern.sizes()) {
            List<Walked> walked = SeamWalk.all(pattern.in(size));
            assertEquals(4, walked.size());
            walked.forEach(seam -> {
                assertTrue(seam.lengthMatches(), size + ": " + seam.seam());
                assertEquals(List.of(), seam.complaints(), size + ": " + seam.seam());
            });
        }
    }

    /** Not below the ease of Central Washington University's costume text, ch. 16: waist 3/4 in, hip 2 in; bust 3 in, New Mexico State University, C-228. */
    @Test
    void theDressHasTheEaseOfTheTables() {
        Pattern dress = WriteSamples.drafts().get("larkfield");
        for (String size : dress.sizes()) {
            Draft draft = dress.in(size);
            var body = dress.card().bodyChart().body(size).orElseThrow();
            assertTrue(draft.girth("bust") - body.get("full bust").mm() >= 2.85 * INCH, size);
            assertTrue(draft.girth("waist") - body.get("waist").mm() >= 0.75 * INCH, size);
            assertTrue(draft.girth("hip") - body.get("hip").mm() >= 2 * INCH, size);
        }
    }

    /** ASTM D5585-11e1, misses size 8: bust 36 1/4 in, straight waist 28 + 1 1/2 in. */
    @Test
    void size40IsDraftedForTheTablesBody() {
        var body = WriteSamples.drafts()
                .get("larkfield")
                .card()
                .bodyChart()
                .body("40")
                .orElseThrow();
        assertEquals(36.25 * INCH, body.get("full bust").mm(), 0.5);
        assertEquals(29.5 * INCH, body.get("waist").mm(), 0.5);
        assertEquals(body.get("full bust").mm() - 50, body.get("upper bust").mm(), 1e-9);
    }

    /** "The Practical Designer", size 36: its points in inches, and the 6 in shoulder from K through I. */
    @Test
    void theBackBlockIsTheBooks() {
        Piece back = WriteSamples.drafts().get("back-block").in("36").piece("back");
        assertEquals(15.5 * INCH, back.sewnLength("centre back"), 1e-9);
        assertEquals(8.5 * INCH, back.sewnLength("side seam"), 1e-9);
        assertEquals(12 * INCH, back.sewnLength("waist"), 1e-9);
        assertEquals(6 * INCH, back.sewnLength("shoulder"), 1e-9);
        Point i = new Point(7.5 * INCH, 0);
        assertEquals(0, back.edge("shoulder").path().distanceTo(i), 1e-9);
    }
}
