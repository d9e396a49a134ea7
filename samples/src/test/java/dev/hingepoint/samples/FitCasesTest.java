package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.samples.draft.Larkfield;
import dev.hingepoint.samples.draft.LarkfieldShell;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.OrderWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Twelve bodies with a fitter's answer, written down in {@code src/test/resources/fit} (the answers: common practice, no source). */
class FitCasesTest {
    static Stream<Path> cases() throws IOException {
        return Files.list(Path.of("src/test/resources/fit")).sorted();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void thePlanIsTheFitters(Path file) throws IOException {
        Map<?, ?> written = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
        Map<?, ?> fitter = (Map<?, ?>) written.get("fitter");
        Pattern pattern = pattern((String) written.get("pattern"));
        Body body =
                BodyReader.readWithNotes("body", (String) written.get("body")).body();
        Plan plan = Planner.plan(pattern, body);
        String order = OrderWriter.write(plan, "larkfield.yaml", Unit.CENTIMETRE);
        assertEquals(fitter.get("size"), plan.size());
        assertEquals(Optional.ofNullable(fitter.get("front")), plan.front().map(front -> (Object) front));
        List<String> ordered = order.lines()
                .filter(line -> line.startsWith("  - "))
                .map(line -> line.substring(4))
                .toList();
        assertEquals(fitter.get("orders"), ordered, order);
        String told = order.replaceAll("\n *# *", " ");
        for (Object sentence : (List<?>) fitter.get("says")) {
            assertTrue(told.contains((String) sentence), sentence + " is not in " + told);
        }
        assertEquals(fitter.get("exit"), plan.holdsUp() ? 0 : 1, plan.problems().toString());
        assertEquals(
                plan.after(),
                FitCheck.ease(Fitting.of(pattern, plan.order()).after(), plan.drafted(), body, FitRules.USUAL));
    }

    private static Pattern pattern(String name) {
        return switch (name) {
            case "larkfield" -> Larkfield.dress();
            case "larkfield without opening" -> withCard(Larkfield.dress(), List.of(), Map.of());
            case "larkfield with a second front" -> withSecondFront(Larkfield.dress());
            case "shell" -> LarkfieldShell.shell();
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static Pattern withCard(Pattern pattern, List<Opening> openings, Map<String, Length> fronts) {
        Card card = pattern.card();
        return pattern.with(new Card(
                card.name(),
                card.baseSize(),
                card.cupDifference(),
                card.stretchAcross(),
                card.stretchDown(),
                card.bodyChart(),
                card.seams(),
                card.allowances(),
                openings,
                fronts,
                card.lays(),
                Optional.empty()));
    }

    /** A second front for a cup difference 5 cm larger, spread from the first. */
    private static Pattern withSecondFront(Pattern dress) {
        List<Piece> fuller = new ArrayList<>();
        AlterationRequest spread = new AlterationRequest("full bust", Map.of("spread", "25 mm"));
        for (String size : dress.sizes()) {
            Piece front = Fitting.of(dress, new Order(size, Optional.empty(), List.of(spread)))
                    .after()
                    .piece("front");
            fuller.add(Piece.of(
                    front.name(), size, Optional.of("full bust"), front.cuttings(), front.edges(), front.marks()));
        }
        Map<String, Length> fronts = new LinkedHashMap<>();
        fronts.put("standard", new Length(50));
        fronts.put("full bust", new Length(100));
        return withCard(dress, dress.card().openings(), fronts).with(fuller);
    }
}
