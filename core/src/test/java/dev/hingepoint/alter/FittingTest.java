package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FittingTest {
    private static final Shape SHAPE = new Shape(200, 250, 30, 95, 262, 6, false, false, true, true, 0);
    private static final AlterationRequest BUST = new AlterationRequest("full bust", Map.of("spread", "15 mm"));
    private static final AlterationRequest BLEND = new AlterationRequest("hip blend", Map.of("hip", "44"));
    private static final AlterationRequest SWAY = new AlterationRequest("sway back", Map.of("wedge", "12 mm"));

    private static Fitting fitting(AlterationRequest... requests) {
        return Fitting.of(TestPatterns.dress(SHAPE), new Order("40", Optional.empty(), List.of(requests)));
    }

    @Test
    void onlyTheOrderedSizeChanges() {
        Pattern before = TestPatterns.dress(SHAPE);
        Pattern after = fitting(BUST, BLEND, SWAY).after().pattern();
        for (String size : List.of("38", "42", "44")) {
            assertEquals(before.in(size).pieces(), after.in(size).pieces());
        }
    }

    @Test
    void theCardSaysWhatWasDoneAndWhomItFits() {
        Card.Altered altered =
                fitting(BUST, BLEND).after().pattern().card().altered().orElseThrow();
        assertEquals(List.of(BUST, BLEND), altered.alterations());
        assertEquals("40", altered.size());
        double grown = fitting(BUST, BLEND).after().girth("hip")
                - TestPatterns.dress(SHAPE).in("40").girth("hip");
        double drafted = TestPatterns.dress(SHAPE)
                .card()
                .bodyChart()
                .body("40")
                .orElseThrow()
                .get("hip")
                .mm();
        assertEquals(drafted + grown, altered.fits().get("hip").mm(), 1e-6);
    }

    @Test
    void theLedgerTellsEachAlterationBeforeAndAfter() {
        Fitting fitting = fitting(BUST, BLEND, SWAY);
        assertEquals(3, fitting.ledger().alterations().size());
        var girths = fitting.ledger().alterations().get(0).girths();
        var hip = girths.stream()
                .filter(girth -> girth.level().equals("hip"))
                .findFirst()
                .orElseThrow();
        assertEquals(30, hip.after() - hip.before(), 0.4);
        assertTrue(fitting.ledger().seams().stream().allMatch(seam -> seam.matches()));
        assertTrue(fitting.brokenSeams().isEmpty());
    }

    @Test
    void theBlendSaysWhatTheFullBustHadGiven() {
        String notes = String.join("\n", fitting(BUST, BLEND).notes());
        assertTrue(notes.contains("of the hip, the full bust had already given 30 mm"), notes);
        assertTrue(fitting(BLEND).notes().stream().noneMatch(note -> note.contains("already given")));
    }

    @Test
    void anotherOrderRunsWithOneNote() {
        assertEquals(
                1,
                fitting(SWAY, BUST).notes().stream()
                        .filter(note -> note.contains("another order"))
                        .count());
        assertEquals(
                0,
                fitting(BUST, SWAY).notes().stream()
                        .filter(note -> note.contains("another order"))
                        .count());
    }

    @Test
    void eightThreadsGiveTheSamePieces() throws Exception {
        Pattern pattern = TestPatterns.dress(SHAPE);
        Order order = new Order("40", Optional.empty(), List.of(BUST, BLEND, SWAY));
        List<?> expected = Fitting.of(pattern, order).after().pieces();
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            Callable<Object> task = () -> Fitting.of(pattern, order).after().pieces();
            for (Future<Object> result :
                    threads.invokeAll(Stream.generate(() -> task).limit(16).toList())) {
                assertEquals(expected, result.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
