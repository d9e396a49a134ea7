package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.make.MadeUp;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.DrawingWriter;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The order of the samples that is made up in its own way. */
class MadeUpTest {
    @TempDir
    private Path folder;

    private static final Path GOLDEN = Path.of("src/test/resources/golden/sleeveless.svg");

    private static Fitting fitting() {
        OrderReader.ReadOrder read = OrderReader.read(Path.of("patterns/sleeveless-order.yaml"));
        return MadeUp.of(PatternFiles.read(read.card()), read.order(), read.make());
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

    private static final List<AlterationRequest> CHOICES = List.of(
            choice("facing", "edge", "neckline", "depth", "45 mm"),
            choice("facing", "edge", "armhole", "depth", "40 mm"),
            choice("binding", "edge", "neckline"),
            choice("binding", "edge", "sleeve/hem", "cloth", "contrast"),
            choice("band", "edge", "armhole", "stretch", "40 %"),
            choice("band", "edge", "front/hem", "width", "40 mm"),
            choice("sleeveless", "depth", "40 mm"),
            choice("sleeveless", "finish", "binding"),
            choice("sleeveless", "finish", "none"),
            choice("yoke", "piece", "both", "from", "armhole 60 mm", "to", "centre 90 mm", "curve", "12 mm"),
            choice("yoke", "piece", "back", "from", "armhole 90 mm", "to", "centre back 120 mm"),
            choice("yoke", "piece", "front", "line", "lengthen or shorten"),
            choice("centre back", "as", "fold"),
            choice("centre back", "as", "seam"),
            choice("finish", "edge", "side seam", "as", "French"),
            choice("finish", "edge", "front/armhole", "as", "overlocked"),
            choice("finish", "edge", "hem", "as", "rolled edge"),
            choice("cloth", "piece", "back", "as", "contrast"),
            choice("cloth", "piece", "front, back", "as", "lining"));

    private static AlterationRequest choice(String name, String... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put(options[i], options[i + 1]);
        }
        return new AlterationRequest(name, map);
    }

    /** Any two choices, in either order, walk, print and are read back, or are refused with a reason. */
    @Test
    void everyTwoChoicesHoldUpOrAreRefused() {
        OrderReader.ReadOrder read = OrderReader.read(Path.of("patterns/sleeveless-order.yaml"));
        Pattern dress = PatternFiles.read(read.card());
        Pattern alone = new Pattern(
                dress.card(),
                dress.nest().stream()
                        .filter(piece -> List.of("40", "44").contains(piece.size()))
                        .toList());
        Fitting altered = Fitting.of(alone, read.order());
        int made = 0;
        for (AlterationRequest one : CHOICES) {
            for (AlterationRequest other : CHOICES) {
                Fitting fitting;
                try {
                    fitting = MadeUp.of(altered, List.of(one, other));
                } catch (Refusal refusal) {
                    assertFalse(refusal.getMessage().contains("our mistake"), refusal.getMessage());
                    assertFalse(refusal.getMessage().contains("cannot be laid"), one + ", " + other + refusal);
                    continue;
                }
                made++;
                for (Walked seam : SeamWalk.all(fitting.after())) {
                    assertEquals(List.of(), seam.complaints(), one + ", " + other + ": " + seam.seam());
                }
                if (made % 12 == 0) {
                    Printing.print(fitting.after(), PrintOptions.of(Paper.A4));
                }
                PatternFiles.write(fitting.after().pattern(), folder, "made");
                Draft again = PatternFiles.read(folder.resolve("made.yaml")).in("40");
                assertEquals(
                        fitting.after().construction().labels(),
                        again.construction().labels());
                assertEquals(
                        SeamWalk.all(fitting.after()).stream()
                                .map(Walked::lengthMatches)
                                .toList(),
                        SeamWalk.all(again).stream().map(Walked::lengthMatches).toList());
            }
        }
        assertTrue(made > 150, made + " pairs were made");
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
