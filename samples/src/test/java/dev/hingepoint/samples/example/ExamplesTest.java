package dev.hingepoint.samples.example;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import dev.hingepoint.Refusal;
import dev.hingepoint.allowance.AllowancePlan;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Every example does what it says; edges are measured by JTS, on the drawing that it wrote. */
class ExamplesTest {
    private static final Path CARD = Path.of("patterns/larkfield.yaml");
    private static final List<String> REFUSED = List.of("23", "58", "77", "104", "189");

    @TempDir
    private Path folder;

    private static double length(Draft draft, String piece, String edge) {
        return JtsBridge.lineString(draft.piece(piece).edge(edge)).getLength();
    }

    @Test
    void aPieceBuiltInCodeIsAlteredAndPrinted() throws IOException {
        CodedSkirt.main(new String[] {folder.toString()});
        Draft drawn = CodedSkirt.skirt().in("40");
        Draft altered = PatternFiles.read(folder.resolve("skirt.yaml")).in("40");
        for (String piece : List.of("front", "back")) {
            assertEquals(length(drawn, piece, "side seam") + 60, length(altered, piece, "side seam"), 0.1);
            assertEquals(length(drawn, piece, "waist"), length(altered, piece, "waist"), 0.001);
            assertEquals(270, altered.piece(piece).width("hip"), 0.001);
        }
        assertTrue(SeamWalk.all(altered).stream().allMatch(Walked::lengthMatches));
        byte[] pdf = Files.readAllBytes(folder.resolve("pages.pdf"));
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        assertTrue(Files.exists(folder.resolve("pages/1.1.svg")));
    }

    @Test
    void anAlterationOfOnesOwnIsHeldToldAndRemembered() throws IOException {
        OwnAlteration.main(new String[] {folder.toString(), CARD.toString()});
        Pattern pattern = PatternFiles.read(CARD);
        Draft drawn = pattern.in("40");
        Draft altered = PatternFiles.read(folder.resolve("altered.yaml")).in("40");
        for (String piece : List.of("front", "back")) {
            assertEquals(length(drawn, piece, "hem") + 40, length(altered, piece, "hem"), 1);
            assertEquals(length(drawn, piece, "side seam"), length(altered, piece, "side seam"), 0.6);
        }
        assertEquals(drawn.girth("hip"), altered.girth("hip"), 2);
        assertTrue(SeamWalk.all(altered).stream().allMatch(Walked::lengthMatches));
        assertTrue(Files.readString(folder.resolve("ledger.json")).contains("\"name\": \"flared skirt\""));
        assertEquals(
                List.of("sway back", "flared skirt"),
                altered.altered().orElseThrow().alterations().stream()
                        .map(AlterationRequest::name)
                        .toList());
    }

    @Test
    void anAlterationOfOnesOwnIsKnownWhereItIsHandedInAlone() {
        Pattern pattern = PatternFiles.read(CARD);
        Order order = Order.of("40", AlterationRequest.of("flared skirt").with("by", "40 mm"));
        assertTrue(
                Fitting.of(pattern, order, List.of(new FlaredSkirt())).notes().isEmpty());
        Refusal unknown = assertThrows(Refusal.class, () -> Fitting.of(pattern, order));
        assertTrue(unknown.getMessage().contains("there is no alteration 'flared skirt'"), unknown.getMessage());
    }

    /** Its laws are held, and the largest amount that the refusal names works. */
    @Test
    void tooMuchOfItIsRefused() {
        Pattern pattern = PatternFiles.read(CARD);
        Refusal refusal = assertThrows(Refusal.class, () -> flared(pattern, "900 mm"));
        double most = refusal.reason().limit().orElseThrow();
        assertTrue(most > 40 && most < 900, refusal.getMessage());
        assertTrue(flared(pattern, most + " mm").brokenSeams().isEmpty());
    }

    private static Fitting flared(Pattern pattern, String by) {
        Order order = Order.of("40", AlterationRequest.of("flared skirt").with("by", by));
        return Fitting.of(pattern, order, List.of(new FlaredSkirt()));
    }

    /** Against JTS's own buffer with mitred corners, where the allowance is the same all round. */
    @Test
    void aPolygonGoesThroughAndComesBack() throws Exception {
        ThroughJts.main(new String[] {folder.toString()});
        Geometry cut = new WKTReader().read(Files.readString(folder.resolve("cut.wkt")));
        Geometry left = new WKTReader().read(Files.readString(folder.resolve("left.wkt")));
        Polygon drawn = (Polygon) new WKTReader().read("POLYGON ((0 0, 160 0, 160 150, 80 190, 0 150, 0 0))");
        Piece pocket = ThroughJts.pocket(drawn);
        assertTrue(JtsBridge.polygon(pocket).equalsTopo(drawn));
        assertTrue(cut.covers(drawn.buffer(9.9)));
        // the remnant: a rectangle less a corner of it, by hand
        assertEquals(420 * 300 - 170 * 40 / 2.0, left.getArea() + cut.getArea(), 0.01);

        Polygon even = JtsBridge.polygon(
                CuttingLine.of(pocket, AllowancePlan.even(pocket, 10)).outline());
        BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 10);
        Geometry buffer = BufferOp.bufferOp(drawn, 10, mitred);
        assertEquals(0, even.symDifference(buffer).getArea(), 0.5);
    }

    @Test
    void aBatchDressesEverybodyWhomItCan() throws IOException {
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        ByteArrayOutputStream progress = new ByteArrayOutputStream();
        Path list = Path.of("patterns/choir.csv");
        ChoirBatch.run(folder, list, CARD, new PrintStream(table, true), new PrintStream(progress, true));

        List<NamedCsvRecord> rows = rows(folder.resolve("summary.csv"));
        assertEquals(
                IntStream.rangeClosed(1, 200).mapToObj(Integer::toString).toList(),
                rows.stream().map(row -> row.getField("singer")).toList());
        assertEquals(
                REFUSED,
                rows.stream()
                        .filter(row -> !row.getField("refused").isEmpty())
                        .map(row -> row.getField("singer"))
                        .toList());
        for (NamedCsvRecord row : rows) {
            String singer = row.getField("singer");
            assertEquals(!REFUSED.contains(singer), Files.exists(folder.resolve(singer + "/altered.svg")), singer);
        }
        assertEquals(10, progress.toString(StandardCharsets.UTF_8).lines().count());
        assertTrue(table.toString(StandardCharsets.UTF_8).contains("200 singers"), table.toString());
        assertTrue(table.toString(StandardCharsets.UTF_8).matches("(?s).*\nrefused +5\n.*"), table.toString());
        assertTrue(rows.get(57).getField("refused").contains("looks like inches"), rows.get(57)::toString);
        for (int far : new int[] {131, 166}) {
            assertTrue(rows.get(far - 1).getField("look").contains("outside the chart"), "singer " + far);
        }
    }

    /** What a thread of the batch wrote is what the same body gets alone; her voice, in quotes in the list, came through whole. */
    @Test
    void aDressOfABatchIsTheDressThatOneGetsAlone() throws IOException {
        Path list = folder.resolve("two.csv");
        Files.writeString(
                list,
                "singer,voice,upper bust,full bust,waist,hip\n"
                        + "1,\"alto 1, the \"\"low\"\" row\",87,97,76,106\n2,soprano,x,,,\n");
        PrintStream nowhere = new PrintStream(PrintStream.nullOutputStream());
        ChoirBatch.run(folder, list, CARD, nowhere, nowhere);
        List<Singer> singers = new ArrayList<>();
        Singer.each(list, all -> all.forEachRemaining(singers::add));
        assertEquals("alto 1, the \"low\" row", singers.get(0).voice());
        Pattern pattern = PatternFiles.read(CARD);
        Fitting alone =
                Fitting.of(pattern, Planner.plan(pattern, singers.get(0).body()).order());
        PatternFiles.write(alone.after().pattern(), folder.resolve("alone"), "altered");
        for (String file : List.of("altered.svg", "altered.yaml")) {
            assertArrayEquals(
                    Files.readAllBytes(folder.resolve("alone").resolve(file)),
                    Files.readAllBytes(folder.resolve("1").resolve(file)));
        }
        assertFalse(Files.exists(folder.resolve("2")));
    }

    private static List<NamedCsvRecord> rows(Path csv) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(csv)) {
            return reader.stream().toList();
        }
    }
}
