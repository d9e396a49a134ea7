package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.PatternFiles;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An order that moves no line is carried out, and cannot be taught. */
class NothingChangesTest {
    private static final Pattern DRESS = PatternFiles.read(Path.of("../samples/patterns/larkfield.yaml"));

    @ParameterizedTest
    @CsvSource({"sleeve, length, +0 mm", "hem, by, 0 mm"})
    void whereNoLineMovesThereIsNothingToShow(String alteration, String option, String amount) {
        Order order = Order.of("40", new AlterationRequest(alteration, Map.of(option, amount)));
        Refusal refused = assertThrows(Refusal.class, () -> Lesson.of(DRESS, order, Unit.MILLIMETRE));
        assertEquals("lesson.changes-nothing", refused.reason().message().key());
        assertTrue(refused.getMessage().startsWith("size 40: " + alteration + " "), refused.getMessage());
    }
}
