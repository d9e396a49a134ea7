package dev.hingepoint.svg.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.make.MadeUp;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The ledger's published schema, held by a validator for JSON Schema 2020-12 that knows nothing of ledgers. */
class LedgerSchemaTest {
    private static final Path PATTERNS = Path.of("../samples/patterns");
    private static final Pattern DRESS = PatternFiles.read(PATTERNS.resolve("larkfield.yaml"));
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final SchemaRegistry DRAFT = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = DRAFT.getSchema(text());

    private static String text() {
        try (InputStream file = LedgerJson.class.getResourceAsStream("ledger.schema.json")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unread) {
            throw new IllegalStateException(unread);
        }
    }

    private static List<String> complaints(String json) {
        return SCHEMA.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }

    @Test
    void theSchemaIsOne() {
        Schema ofSchemas = DRAFT.getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        assertEquals(List.of(), ofSchemas.validate(text(), InputFormat.JSON));
        assertFalse(ofSchemas
                .validate("{\"type\": \"number of mm\"}", InputFormat.JSON)
                .isEmpty());
    }

    static Stream<Alteration> alterations() {
        return Catalogue.all().stream();
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void everyAlterationsLedgerHoldsToIt(Alteration alteration) {
        AlterationRequest request = new AlterationRequest(alteration.name(), alteration.example());
        String json =
                LedgerJson.write(Fitting.of(DRESS, Order.of("40", request)).ledger());
        assertEquals(List.of(), complaints(json));
        JsonNode read = JSON.readTree(json);
        assertEquals(alteration.name(), read.at("/alterations/0/name").asString());
        assertTrue(read.at("/alterations/0/edges").size() > 0, json);
    }

    @Test
    void aLedgerOfWhatIsMadeUpHoldsToIt() {
        OrderReader.ReadOrder read = OrderReader.read(PATTERNS.resolve("sleeveless-order.yaml"));
        Ledger ledger = MadeUp.of(DRESS, read.order(), read.make()).ledger();
        String json = LedgerJson.write(ledger);
        assertEquals(List.of(), complaints(json));
        assertEquals(read.make().size(), JSON.readTree(json).at("/make").size());
    }

    @Test
    void nothingAlteredHoldsToIt() {
        String json = LedgerJson.write(Fitting.of(DRESS, Order.of("40")).ledger());
        assertEquals(List.of(), complaints(json));
        assertEquals(0, JSON.readTree(json).at("/alterations").size());
    }

    /** What is read back is what was meant: RFC 8259, section 7. */
    @Test
    void namesMayHoldAnything() {
        String odd = "a \"quoted\" \\ name,\twith\n\u0001 control\u007f\u2028 and \uD83E\uDDF5 thread/";
        Ledger ledger = new Ledger(
                odd,
                odd,
                List.of(new Ledger.Entry(
                        odd,
                        Map.of(odd, odd),
                        List.of(new Ledger.StepLine(odd, odd)),
                        List.of(new Ledger.EdgeLine(odd, odd, 1, 2.5)),
                        List.of(new Ledger.GirthLine(odd, 3, 4)),
                        List.of(odd))),
                List.of(),
                List.of(new Ledger.SeamLine(odd, odd + odd, -0.5, 0, 6, true)));
        String json = LedgerJson.write(ledger);
        assertEquals(List.of(), complaints(json));
        JsonNode read = JSON.readTree(json);
        for (String place : List.of(
                "/pattern", "/size", "/alterations/0/steps/0/caption", "/alterations/0/notes/0", "/seams/0/join")) {
            assertEquals(odd, read.at(place).asString(), place);
        }
        assertEquals(
                odd,
                read.at("/alterations/0/amounts").properties().iterator().next().getKey());
        assertEquals(2.5, read.at("/alterations/0/edges/0/after").asDouble());
    }

    /** The form that other programs rely on, with nothing that came to it later. */
    @Test
    void theFormWithoutNotesAndMakingHoldsToIt() {
        assertEquals(List.of(), complaints(SOUND));
    }

    private static final String SOUND = """
            {"pattern": "p", "size": "40",
             "alterations": [{"name": "sway back", "amounts": {"wedge": 12.0},
               "steps": [{"caption": "c", "piece": "back"}],
               "edges": [{"piece": "back", "edge": "side seam", "before": 612.40, "after": 612.40}],
               "girths": [{"level": "hip", "before": 1060.0, "after": 1060.0}]}],
             "seams": [{"join": "front/side seam", "to": "back/side seam", "difference": 0.0, "ease": [0, 0], "matches": true}]}
            """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"pattern\": \"p\", | ``",
                "\"size\": \"40\" | \"size\": 40",
                "\"size\": \"40\" | \"size\": \"\"",
                "\"size\": \"40\" | \"size\": \"40\", \"sise\": \"40\"",
                "{\"wedge\": 12.0} | {\"wedge\": null}",
                "{\"wedge\": 12.0} | {\"wedge\": [12.0]}",
                "\"caption\": \"c\", | ``",
                "\"after\": 612.40 | \"after\": \"612.40\"",
                "\"after\": 612.40 | \"after\": -612.40",
                "\"level\": \"hip\", | ``",
                "\"join\": \"front/side seam\" | \"join\": \"front\"",
                "[0, 0] | [0]",
                "[0, 0] | [0, 0, 0]",
                "\"matches\": true | \"matches\": \"yes\"",
                "\"seams\": [ | \"seems\": ["
            })
    void aBrokenLedgerDoesNot(String sound, String broken) {
        String json = SOUND.replace(sound, broken);
        assertFalse(json.equals(SOUND), "nothing was broken");
        assertFalse(complaints(json).isEmpty(), json);
    }
}
