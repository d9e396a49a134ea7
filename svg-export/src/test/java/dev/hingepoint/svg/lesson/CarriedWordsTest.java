package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.PatternFiles;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How far an alteration is carried is told in the words that it was ordered with. */
class CarriedWordsTest {
    private static final Pattern DRESS = PatternFiles.read(Path.of("../samples/patterns/larkfield.yaml"));

    private static String quarterOf(String alteration, Map<String, Object> options) {
        Order order = Order.of("40", new AlterationRequest(alteration, options));
        return Lesson.of(DRESS, order, Unit.MILLIMETRE)
                .get(0)
                .carry()
                .frames()
                .get(3)
                .told();
    }

    @Test
    void whatIsRaisedIsNotToldAsLowered() {
        assertEquals("raise 2.5 mm of 10 mm", quarterOf("move apex", Map.of("raise", "10 mm")));
        assertEquals("lower 2.5 mm of 10 mm", quarterOf("move apex", Map.of("lower", "10 mm")));
        assertEquals(
                "lower 2 mm of 8 mm, in 2 mm of 8 mm",
                quarterOf("move apex", Map.of("lower", "8 mm", "in", "8 mm", "legs", "moved")));
    }

    @Test
    void whatIsOrderedByAnotherMeasureIsToldAsItIsDone() {
        assertEquals("spread 5 mm of 20 mm", quarterOf("full bust", Map.of("girth", "+40 mm")));
    }
}
