package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is told of the cap: cap ease by cloth, none below the notches (common practice, no source). */
class CapEaseTest {
    private static final Shape SHAPE = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
    private static final AlterationRequest SQUARE = new AlterationRequest("square shoulders", Map.of("by", "5 mm"));

    private static Pattern pattern(double stretch) {
        Pattern drawn = TestPatterns.withSleeve(TestPatterns.dress(SHAPE));
        Card card = drawn.card();
        return drawn.with(new Card(
                card.name(),
                card.baseSize(),
                card.cupDifference(),
                stretch,
                0,
                card.bodyChart(),
                card.seams(),
                card.allowances(),
                card.openings(),
                card.fronts(),
                card.lays(),
                card.altered()));
    }

    private static Piece withNotch(Piece piece, String edge, String from, double along) {
        Point at = piece.from(edge, from).at(along);
        return piece.withMark(new Notch("front", 1, new Line(at, at.plus(new Vector(1, 5)))));
    }

    private static String told(Draft draft) {
        return Catalogue.alter(draft, SQUARE).notes().toString();
    }

    @Test
    void theEaseThatTheClothTakesIsTold() {
        assertTrue(told(pattern(0).in("40")).contains("cotton or crepe takes 10 to 20 mm, wool 25 to 40"));
        assertTrue(told(pattern(0.4).in("40")).contains("a knit takes 0 to 8 mm"));
    }

    @Test
    void easeBelowANotchIsTold() {
        Draft plain = pattern(0).in("40");
        Piece front = withNotch(plain.piece("front"), "armhole", "side seam", 60);
        Draft even = plain.with(front, withNotch(plain.piece("sleeve"), "cap", "front underarm seam", 60));
        assertTrue(!told(even).contains("below"), told(even));
        Draft eased = plain.with(front, withNotch(plain.piece("sleeve"), "cap", "front underarm seam", 65));
        assertTrue(told(eased).contains("5 mm of it below the notch 'front', where none belongs"), told(eased));
        Draft tight = plain.with(front, withNotch(plain.piece("sleeve"), "cap", "front underarm seam", 56));
        assertTrue(told(tight).contains("below the notch 'front' the cap is 4 mm too short"), told(tight));
    }

    /** Whichever side of the seam the card writes first. */
    @Test
    void theEaseIsTheCapsOnEitherSideOfTheSeam() {
        Pattern pattern = pattern(0);
        List<Seam> seams = pattern.card().seams();
        Seam cap =
                seams.stream().filter(seam -> seam.to().size() == 2).findFirst().orElseThrow();
        Seam turned = new Seam(cap.to(), cap.join(), -cap.easeTo(), -cap.easeFrom(), false);
        Draft draft = pattern.with(pattern.card()
                        .withSeams(seams.stream()
                                .map(seam -> seam == cap ? turned : seam)
                                .toList()))
                .in("40");
        assertEquals(20, CapEase.of(pattern.in("40"), cap), 1e-6);
        assertEquals(20, CapEase.of(draft, turned), 1e-6);
    }
}
