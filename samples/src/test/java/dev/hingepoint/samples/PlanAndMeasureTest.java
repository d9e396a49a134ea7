package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.svg.file.PatternFiles;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** {@code plan} and {@code measure} as a person calls them. */
class PlanAndMeasureTest extends CalledProgram {
    /** From a tape measure to pages: plan, alter, print; and planned again, nothing is left to do. */
    @Test
    void threeCommandsLeadFromABodyToPages() throws IOException {
        order("  - sway back: {wedge: 12 mm}\n");
        Path body = Files.copy(PATTERNS.resolve("ida.yaml"), folder.resolve("ida.yaml"));
        String card = folder.resolve("larkfield.yaml").toString();
        String ordered = folder.resolve("ida-order.yaml").toString();
        String altered = folder.resolve("altered").toString();
        assertEquals(0, run("plan", card, "--body", body.toString(), "--out", ordered, "--check"), err.toString());
        assertTrue(out.toString().contains("look again on the next toile"), out.toString());
        assertEquals(0, run("alter", ordered, "--out", altered), err.toString());
        assertEquals(0, run("print", altered + "/altered.yaml", "--size", "40", "--out", altered), err.toString());
        out.getBuffer().setLength(0);
        String again = folder.resolve("again.yaml").toString();
        Files.copy(Path.of(altered, "altered.yaml"), folder.resolve("altered.yaml"));
        Files.copy(Path.of(altered, "altered.svg"), folder.resolve("altered.svg"));
        assertEquals(
                0, run("plan", folder.resolve("altered.yaml").toString(), "--body", body.toString(), "--out", again));
        assertTrue(Files.readString(Path.of(again)).contains("alterations: []"), out.toString());
        assertEquals(0, run("alter", again, "--out", folder.resolve("same").toString()), err.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit: cm\\nupper bust: 87\\nhip: 10 | hip",
                "unit: cm\\nupper bust: -87 | upper bust",
                "unit: cm\\nupper bust: 34.25\\nfull bust: 37.8\\nwaist: 30\\nhip: 41.7 | write unit: in",
                "unit: cm\\nwaist: 76 | upper bust",
                "unit: furlongs\\nupper bust: 87 | unit",
                "unit: cm\\nupper bust: 87\\nobserved: {folds run: back only} | folds at back waist",
                "unit: cm\\nupper bust: 87\\ncloth: {stretch across: much} | per cent"
            })
    void nonsenseBodiesAreRefusedInOneLineWithNothingWritten(String written, String says) throws IOException {
        order("  - sway back: {wedge: 12 mm}\n");
        Path body = Files.writeString(folder.resolve("body.yaml"), written.replace("\\n", "\n"));
        Path plan = folder.resolve("plan.yaml");
        String card = folder.resolve("larkfield.yaml").toString();
        assertEquals(2, run("plan", card, "--body", body.toString(), "--out", plan.toString()), out.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().contains(says), err.toString());
        assertFalse(Files.exists(plan));
    }

    @Test
    void measuresEverySizeAndDrawsChartAndSheet() throws IOException {
        String card = PATTERNS.resolve("larkfield.yaml").toString();
        assertEquals(0, run("measure", card, "--unit", "in"), err.toString());
        assertTrue(out.toString().contains("centre back length"), out.toString());
        out.getBuffer().setLength(0);
        Path chart = folder.resolve("chart.svg");
        Path sheet = folder.resolve("sheet.svg");
        String body = PATTERNS.resolve("ida.yaml").toString();
        assertEquals(
                0,
                run(
                        "measure",
                        card,
                        "--size",
                        "40",
                        "--body",
                        body,
                        "--json",
                        "--chart",
                        chart.toString(),
                        "--sheet",
                        sheet.toString()),
                err.toString());
        Map<?, ?> json = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(out.toString());
        Map<?, ?> size = (Map<?, ?>) ((Map<?, ?>) json.get("sizes")).get("40");
        double bust = ((Number) ((Map<?, ?>) size.get("finished")).get("bust girth")).doubleValue();
        assertEquals(PatternFiles.read(Path.of(card)).in("40").girth("bust"), bust, 1e-3);
        assertTrue(Files.readString(chart).contains("TOO TIGHT"));
        assertTrue(Files.readString(sheet).contains("upper bust"));
        assertEquals(0, run("measure", PATTERNS.resolve("back-block.yaml").toString()), "a back alone has no way in");
        assertEquals(2, run("measure", card, "--unit", "parsec"));
        assertFalse(err.toString().contains("Refusal"), err.toString());
        assertEquals(2, run("measure"));
        assertEquals(2, run("measure", card, "--chart", chart.toString()));
    }

    @Test
    void withoutABodyItAsks() throws IOException {
        InputStream before = System.in;
        try {
            String typed = "cm\n87\n92\n75\n\n100\n" + "\n".repeat(13);
            System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
            assertEquals(0, run("plan", PATTERNS.resolve("larkfield.yaml").toString()), err.toString());
        } finally {
            System.setIn(before);
        }
        assertTrue(out.toString().contains("round the body over the fullest part of the bust"));
        assertTrue(out.toString().contains("size 40"), out.toString());
    }
}
