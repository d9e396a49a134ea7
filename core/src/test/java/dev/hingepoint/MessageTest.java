package dev.hingepoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.check.Finding;
import dev.hingepoint.check.Law;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.TestPatterns;
import java.lang.reflect.Constructor;
import java.util.ArrayList;
import java.util.List;
import java.util.ListResourceBundle;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Refusals are typed, and told in the words of the library or of an app. */
class MessageTest {
    private static final ResourceBundle APP = ResourceBundle.getBundle("dev.hingepoint.app", Locale.ROOT);

    private static Reason tooLargeAWedge() {
        Draft back = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        AlterationRequest request = new AlterationRequest("sway back", Map.of("wedge", "1650.5 mm"));
        return assertThrows(Refusal.class, () -> Catalogue.alter(back, request)).reason();
    }

    @Test
    void anAppTellsARefusalInItsOwnWordsAndItsOwnUnit() {
        Reason reason = tooLargeAWedge();
        assertEquals(
                "piece back, size 40: a wedge of 1650.5 mm does not fit on centre back; the largest that would work is 30 mm",
                reason.sentence());
        assertEquals(
                "utmo 3 zel: nu 165,05 zel ana centre back, sot (pano «back», ölm 40)",
                reason.line().text(APP));
    }

    @Test
    void anAppIsHandedTheNumbers() {
        Reason reason = tooLargeAWedge();
        assertEquals("alter.centre-wedge.does-not-fit", reason.message().key());
        assertEquals(
                List.of(Quantity.millimetres(1650.5), "centre back"),
                reason.message().arguments());
        assertEquals(1650.5, reason.amount().orElseThrow());
    }

    /** A law within a refusal is told in the app's words as well; what the app has no words for is told in English. */
    @Test
    void aMessageWithinAMessageIsToldInTheSameWords() {
        Law law = Law.keepsLength("back", "hem", 0.1);
        Reason broken = new Finding(law, 200, 212.34).reason();
        assertEquals(
                "it would not hold that it keeps the length of the hem: 212.34 mm instead of 200 mm, and 0.1 mm is allowed",
                broken.what());
        assertEquals("ne tenu hem: 21,234 zel, ne 20 zel", broken.message().text(APP));
        assertEquals(
                "leaves the hem where it was",
                Law.keepsPlace("back", "hem").message().text(APP));
    }

    @ParameterizedTest
    @CsvSource({"12, 12 mm", "0.354, 0.35 mm", "120, 120 mm", "-0.001, 0 mm", "1234567.5, 1234567.5 mm"})
    void lengthsAreToldToTwoDecimals(double mm, String told) {
        assertEquals(told, Quantity.millimetres(mm).toString());
        assertEquals(told, Reason.millimetres(mm));
    }

    /** One inch is 25.4 mm (the international inch, by definition). */
    @Test
    void aBundleChoosesTheUnit() {
        Message message = Message.of("{0}", Quantity.millimetres(25.4));
        assertEquals("25.4 mm", message.text());
        assertEquals("2,54 zel", message.text(APP));
        ResourceBundle inches = new ListResourceBundle() {
            @Override
            protected Object[][] getContents() {
                return new Object[][] {{"quantity.length", "{2} in"}};
            }
        };
        assertEquals("1 in", message.text(inches));
    }

    @Test
    void everyKindOfQuantityHasItsWords() {
        assertEquals("3.4 degrees", Quantity.radians(StrictMath.toRadians(3.4)).toString());
        assertEquals("+5 mm", Quantity.change(5).toString());
        assertEquals("-5 mm", Quantity.change(-5).toString());
        assertEquals("0 mm", Quantity.change(0).toString());
        assertEquals("91.4 cm", Quantity.clothWidth(914.4).toString());
        assertEquals("33.3 %", Quantity.share(1 / 3.0).toString());
        assertEquals(
                "3,4 gir",
                Message.of("{0}", Quantity.radians(StrictMath.toRadians(3.4))).text(APP));
    }

    @Test
    void listsAreToldWithTheirWords() {
        assertEquals("a, b, c", Message.of("{0}", List.of("a", "b", "c")).text());
        assertEquals("", Message.of("{0}", List.of()).text());
        assertEquals(
                "a or b or c", Message.joined("list.or", List.of("a", "b", "c")).text());
        assertEquals("a ube b", Message.joined("list.or", List.of("a", "b")).text(APP));
        assertEquals("a", Message.joined("list.or", List.of("a")).text(APP));
    }

    /** What stands in an argument is never read as words: no placeholder, no dollar sign, no quote. */
    @Test
    void argumentsAreToldAsTheyStand() {
        assertEquals(
                "the piece '{0} $1 \\ it's'",
                Message.of("the piece '{0}'", "{0} $1 \\ it's").text());
        assertEquals("{edge: hem} {1}", Message.of("{edge: hem} {1}", "unused").text());
    }

    @Test
    void messagesAreValues() {
        List<Object> names = new ArrayList<>(List.of("a"));
        Message message = Message.of("list", names, Where.inPiece("back"));
        names.add("b");
        assertEquals(Message.of("list", List.of("a"), "piece back"), message);
        assertThrows(
                UnsupportedOperationException.class, () -> message.arguments().add("c"));
        assertFalse(message.equals(Message.of("list", List.of("a", "b"), "piece back")));
    }

    @Test
    void aReasonIsMadeOfAMessageAndNeverOfText() {
        for (Class<?> kind : Reason.class.getPermittedSubclasses()) {
            for (Constructor<?> constructor : kind.getDeclaredConstructors()) {
                assertEquals(Message.class, constructor.getParameterTypes()[0], constructor.toString());
            }
        }
    }

    /** Whatever is refused of a random dress is typed, and says in English what its message says. */
    @Property(seed = "3", tries = 20)
    void everyRefusalIsItsMessage(@ForAll("dresses") Draft dress, @ForAll @IntRange(min = 100, max = 900) int mm) {
        for (String alteration :
                List.of("sway back", "full seat", "hem", "neckline", "full bust", "sleeve", "shorten")) {
            String option =
                    Catalogue.named(alteration).example().keySet().iterator().next();
            AlterationRequest request = new AlterationRequest(alteration, Map.of(option, mm + " mm"));
            try {
                Catalogue.alter(dress, request);
            } catch (Refusal refusal) {
                Reason reason = refusal.reason();
                assertEquals(reason.message().text(), reason.what());
                assertEquals(refusal.getMessage(), reason.sentence());
                assertTrue(reason.sentence().contains(reason.what()), reason.sentence());
                assertFalse(
                        reason.message().key().contains(" "), reason.message().key());
            }
        }
    }

    @Provide
    Arbitrary<Draft> dresses() {
        return TestPatterns.shapes().map(shape -> TestPatterns.dress(shape).in("40"));
    }
}
