package dev.hingepoint.svg.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternFilesTest {
    @TempDir
    private Path folder;

    private Pattern tunic() {
        return PatternFiles.read(Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity()));
    }

    @Test
    void readsWhatTheCardSays() {
        Card card = tunic().card();
        assertEquals("Test tunic", card.name());
        assertEquals(50, card.cupDifference().orElseThrow().mm());
        assertEquals(0.05, card.stretchDown());
        assertEquals(List.of("40", "42"), tunic().sizes());
        assertEquals(
                920, card.bodyChart().body("40").orElseThrow().get("full bust").mm(), 1e-9);
        assertEquals(6, card.seams().get(1).easeTo());
        Piece back = tunic().in("40").piece("back");
        assertEquals(15, card.allowances().of(back, back.edge("centre back")).mm());
        assertEquals(30, card.allowances().of(back, back.edge("hem")).mm());
        assertEquals(10, card.allowances().of(back, back.edge("shoulder")).mm());
        assertEquals(550, card.openings().get(0).length().mm());
    }

    @Test
    void whatIsWrittenReadsBackWithinATenThousandth() {
        Pattern pattern = tunic();
        PatternFiles.write(pattern, folder, "again");
        Pattern again = PatternFiles.read(folder.resolve("again.yaml"));
        assertEquals(pattern.card(), again.card());
        for (int i = 0; i < pattern.nest().size(); i++) {
            Piece one = pattern.nest().get(i);
            Piece other = again.nest().get(i);
            assertTrue(one.isSamePieceAs(other));
            for (Edge edge : one.edges()) {
                List<Point> before = edge.path().controlPoints().toList();
                List<Point> after =
                        other.edge(edge.name()).path().controlPoints().toList();
                assertEquals(before.size(), after.size());
                for (int k = 0; k < before.size(); k++) {
                    assertEquals(0, before.get(k).distanceTo(after.get(k)), 1e-4);
                }
            }
        }
        assertEquals(PatternFiles.contents(again, "again"), PatternFiles.contents(pattern, "again"));
    }

    /** A zip from the neckline and a slit from the hem, in one seam. */
    @Test
    void anEdgeMayHaveTwoOpenings() {
        Pattern pattern = tunic();
        EdgeRef centreBack = new EdgeRef("back", "centre back");
        List<Opening> openings = List.of(
                new Opening(centreBack, "neckline", new Length(550)), new Opening(centreBack, "hem", new Length(200)));
        Draft draft = pattern.in("40");
        Draft slit = draft.with(draft.construction().withOpenings(openings));
        PatternFiles.write(slit.pattern(), folder, "slit");
        assertEquals(
                openings,
                PatternFiles.read(folder.resolve("slit.yaml")).in("40").openings());
    }

    @Test
    void anOrderMayNameTheBody() throws IOException {
        Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        Files.writeString(folder.resolve("body.yaml"), "unit: cm\nwaist to knee: 58\n");
        Path order = folder.resolve("order.yaml");
        Files.writeString(
                order, "pattern: tunic.yaml\nsize: \"40\"\nbody: body.yaml\nalterations:\n  - hem: {to: knee}\n");
        assertEquals(
                Map.of("waist to knee", new Length(580)),
                OrderReader.read(order).order().body());
    }

    @Test
    void whatWasDoneIsWrittenAndReadBack() {
        Pattern pattern = tunic();
        Card.Altered altered = Card.Altered.of(
                "40",
                Optional.empty(),
                List.of(
                        new AlterationRequest("hip blend", Map.of("hip", "42")),
                        new AlterationRequest("sway back", Map.of("wedge", "12 mm"))),
                Map.of("waist", new Length(765), "hip", new Length(1040)));
        Pattern done = pattern.with(pattern.card().withAltered(altered));
        PatternFiles.write(done, folder, "altered");
        assertEquals(
                altered,
                PatternFiles.read(folder.resolve("altered.yaml"))
                        .card()
                        .altered()
                        .orElseThrow());
    }

    /** What holds for the size that is made up holds for no other. */
    @Test
    void howOneSizeIsMadeUpIsWrittenAndReadBack() {
        Pattern pattern = tunic();
        Draft draft = pattern.in("40");
        EdgeRef edge = new EdgeRef("facing", "joined edge");
        EdgeRef neckline = new EdgeRef("back", "neckline");
        Construction own = draft.construction()
                .withSeam(Seam.of(neckline, edge).withEase(1.25, 1.25))
                .withAllowance(edge, new Length(7))
                .withOpenings(List.of())
                .withFinish(neckline, "French")
                .withLabel("facing", List.of("interface it: \"all of it\"", "understitch it"));
        Card.Altered made = new Card.Altered(
                "40",
                Optional.empty(),
                List.of(),
                List.of(new AlterationRequest("facing", Map.of("edge", "neckline"))),
                List.of("back: Fold out 12 mm, \"level\": # running to nothing", "front: yes"),
                Map.of(),
                Optional.of(own));
        PatternFiles.write(pattern.with(pattern.card().withAltered(made)), folder, "made");
        Pattern again = PatternFiles.read(folder.resolve("made.yaml"));
        assertEquals(made, again.card().altered().orElseThrow());
        assertEquals(own, again.in("40").construction());
        assertEquals(pattern.card().construction(), again.in("42").construction());
    }

    /** An opening all along an edge that was then shortened is still the card's. */
    @Test
    void anAlteredPatternIsReadThoughItsOpeningHasGrownTooLong() {
        String altered = "altered: {size: \"40\", alterations: [sway back: {wedge: 12 mm}]}\n";
        Path card = Drawings.write(
                folder,
                drawing -> drawing.replace("L0 1000\"", "L0 990\"").replace("M0 1000", "M0 990"),
                text -> text.replace("length: 550 mm", "length: 980 mm") + altered);
        assertThrows(Refusal.class, () -> PatternFiles.read(card));
        Path only = Drawings.write(
                folder,
                drawing -> drawing.replaceAll("(?s)<g id=\"(front|back)-42.*?</g>", "")
                        .replace("L0 1000\"", "L0 990\"")
                        .replace("M0 1000", "M0 990"),
                text -> text.replace("length: 550 mm", "length: 980 mm") + altered);
        assertEquals(970, PatternFiles.read(only).in("40").piece("back").sewnLength("centre back"), 1e-9);
    }

    @Test
    void theSameBytesInAnyLocale() {
        Map<String, String> expected = PatternFiles.contents(tunic(), "x");
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG", "de", "th-TH-u-nu-thai")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(expected, PatternFiles.contents(tunic(), "x"));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aStrictReaderOfXmlTakesTheDrawing() throws Exception {
        DocumentBuilderFactory strict = DocumentBuilderFactory.newInstance();
        strict.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        String svg = PatternFiles.contents(tunic(), "x").get("x.svg");
        var root = strict.newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        assertEquals("svg", root.getTagName());
        assertTrue(root.getAttribute("width").endsWith("mm"));
        assertTrue(svg.contains(" C"), "curves are written as curves");
    }

    /** 1 unit = 1 mm after viewBox, units and transforms, whatever they are. */
    @ParameterizedTest
    @CsvSource({
        "900mm, 1100mm, 0 0 900 1100, '', 1",
        "90cm, 110cm, 0 0 900 1100, '', 1",
        "900mm, 1100mm, 0 0 450 550, '', 2",
        "9in, 11in, 0 0 900 1100, '', 0.254",
        "72pt, 88pt, 0 0 900 1100, '', 0.028222222222",
        "450mm, 550mm, -100 -100 900 1100, '', 0.5",
        "900mm, 1100mm, 0 0 900 1100, translate(30 40), 1",
        "900mm, 1100mm, 0 0 900 1100, 'rotate(30, 5 5) scale(2)', 2",
        "900mm, 1100mm, 0 0 900 1100, 'matrix(0.5 0 0 0.5 7 7)', 0.5"
    })
    void theScaleIsWhatTheDrawingSays(String width, String height, String viewBox, String transform, double scale)
            throws Exception {
        String spoilt = Drawings.drawing()
                .replace(
                        "width=\"900mm\" height=\"1100mm\" viewBox=\"0 0 900 1100\"",
                        "width=\"%s\" height=\"%s\" viewBox=\"%s\"".formatted(width, height, viewBox))
                .replace("<g id", "<g transform=\"" + transform + "\" id");
        Path card = Drawings.write(folder, drawing -> spoilt, text -> text.replaceAll("openings:.*\n", ""));
        Piece back = PatternFiles.read(card).in("40").piece("back");
        assertEquals(980 * scale, back.sewnLength("centre back"), 1e-6);
        assertEquals(250 * scale, back.width("hip"), 1e-6);
        assertTrue(Files.exists(card));
    }
}
