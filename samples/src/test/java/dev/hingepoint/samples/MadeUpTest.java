package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.make.MadeUp;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.DrawingWriter;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of the samples that is made up in its own way. */
class MadeUpTest {
    private static final Path GOLDEN = Path.of("src/test/resources/golden/sleeveless.svg");

    private static Fitting fitting() {
        OrderReader.ReadOrder read = OrderReader.read(Path.of("patterns/sleeveless-order.yaml"));
        return MadeUp.of(PatternFiles.read(read.card()).pattern(), read.order(), read.make());
    }

    /** A picture that was looked at and found good; one that should change is looked at, and written anew with -Dgolden=write. */
    @Test
    void thePiecesAreDrawnAsTheyWere() throws IOException {
        Draft after = fitting().after();
        String drawn = DrawingWriter.write(new Pattern(after.pattern().card(), after.pieces()));
        if ("write".equals(System.getProperty("golden"))) {
            Files.createDirectories(GOLDEN.getParent());
            Files.writeString(GOLDEN, drawn);
        }
        assertEquals(Files.readString(GOLDEN), drawn);
    }

    @Test
    void everySeamWalksAndEveryNotchMeets() {
        for (Walked seam : SeamWalk.all(fitting().after())) {
            assertEquals(List.of(), seam.complaints(), seam.seam().toString());
        }
        assertTrue(fitting().brokenSeams().isEmpty());
    }

    /** Facing and binding follow the altered lines, and go on with their edges when those are divided. */
    @Test
    void whatIsMadeIsSewnToBothPartsOfADividedEdge() {
        List<String> seams =
                fitting().after().seams().stream().map(seam -> seam.toString()).toList();
        assertTrue(
                seams.contains("front/armhole + front yoke/armhole to front armhole facing/joined edge"),
                seams.toString());
        assertTrue(
                seams.contains("front yoke/neckline + back yoke/neckline to neckline binding/joined edge"),
                seams.toString());
    }
}
