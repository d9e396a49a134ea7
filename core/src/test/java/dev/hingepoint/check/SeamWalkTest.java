package dev.hingepoint.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Walking straight paper: 1/16 in is the trade's limit (Threads no. 200, 2018). */
class SeamWalkTest {
    private static final EdgeRef FRONT = new EdgeRef("front", "side seam");
    private static final EdgeRef BACK = new EdgeRef("back", "side seam");

    /** A bodice half: armhole, side seam from (100, 0) down, hem leaning by some degrees. */
    private static Piece half(String name, double side, double lean, boolean reversed, Mark... marks) {
        Point corner = new Point(100, side);
        Point centre = new Point(0, side + 100 * StrictMath.tan(StrictMath.toRadians(lean)));
        List<Edge> edges = new ArrayList<>(List.of(
                new Edge("neckline", Edge.Kind.SEAM, Path.through(new Point(0, -150), new Point(40, -150))),
                new Edge(
                        "armhole",
                        Edge.Kind.SEAM,
                        Path.through(new Point(40, -150), new Point(60, 0), new Point(100, 0))),
                new Edge("side seam", Edge.Kind.SEAM, Path.through(new Point(100, 0), corner)),
                new Edge("hem", Edge.Kind.HEM, Path.through(corner, centre)),
                new Edge("centre " + name, Edge.Kind.FOLD, Path.through(centre, new Point(0, -150)))));
        if (reversed) {
            List<Edge> back = new ArrayList<>();
            for (int i = edges.size() - 1; i >= 0; i--) {
                back.add(edges.get(i).reversed());
            }
            edges = back;
        }
        return Piece.of(
                name,
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.ON_FOLD, Optional.empty())),
                edges,
                List.of(marks));
    }

    private static Notch notch(String name, double down) {
        return new Notch(name, 1, new Line(new Point(100, down), new Point(94, down)));
    }

    private static Walked walked(Seam seam, Piece... pieces) {
        Draft draft = new Pattern(Card.of("t", "40", List.of(seam)), List.of(pieces)).in("40");
        return SeamWalk.of(draft, seam);
    }

    @ParameterizedTest
    @CsvSource({
        "300, 300, 0, 0, true",
        "301.5, 300, 0, 0, true",
        "301.7, 300, 0, 0, false",
        "298.3, 300, 0, 0, false",
        "304, 300, 0, 6, true",
        "307.7, 300, 0, 6, false",
        "298, 300, 0, 6, false",
        "330, 300, 15, 35, true",
        "310, 300, 15, 35, false"
    })
    void matchesWithinItsEaseAndASixteenthOfAnInch(double front, double back, double from, double to, boolean matches) {
        Walked walked = walked(
                Seam.of(FRONT, BACK).withEase(from, to), half("front", front, 0, false), half("back", back, 0, false));
        assertEquals(front - back, walked.difference(), 1e-9);
        assertEquals(matches, walked.lengthMatches());
        assertEquals(matches, walked.complaints().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void notchesAreMeasuredFromTheSameEndWhicheverWayThePiecesAreDrawn(boolean reversed) {
        Walked walked = walked(
                Seam.of(FRONT, BACK),
                half("front", 300, 0, false, notch("hip", 80)),
                half("back", 300, 0, reversed, notch("hip", 83)));
        assertEquals(3, Math.abs(walked.notches().get(0).difference()), 1e-9);
        assertTrue(
                walked.complaints().get(0).contains("hip"), walked.complaints().toString());
        Walked meeting = walked(
                Seam.of(FRONT, BACK),
                half("front", 300, 0, reversed, notch("hip", 80)),
                half("back", 300, 0, false, notch("hip", 80)));
        assertEquals(List.of(), meeting.complaints());
    }

    @Test
    void aDartOnTheSeamIsClosed() {
        EdgeDart dart = EdgeDart.of("dart", new Point(100, 50), new Point(40, 60), new Point(100, 70));
        Walked walked = walked(
                Seam.of(FRONT, BACK),
                half("front", 320, 0, false, dart, notch("hip", 120)),
                half("back", 300, 0, true, notch("hip", 100)));
        assertEquals(0, walked.difference(), 1e-9);
        assertEquals(List.of(), walked.complaints());
    }

    /** Both hems rise by so many degrees from the seam: sewn together they make a peak, or a dip, of twice that. */
    @ParameterizedTest
    @CsvSource({"0, 0", "2, 4", "-2, -4", "5, 10"})
    void hemsMustRunOnWithin5Degrees(double lean, double peak) {
        Walked walked = walked(Seam.of(FRONT, BACK), half("front", 300, lean, false), half("back", 300, lean, true));
        var hem = walked.ends().stream()
                .filter(end -> end.edge().endsWith("hem"))
                .findFirst()
                .orElseThrow();
        assertEquals(-peak, hem.degrees(), 1e-6);
        assertEquals(Math.abs(peak) <= 5, walked.complaints().isEmpty());
    }

    @Test
    void aRunOfArmholesMeetsAtTheShoulder() {
        Piece front = half("front", 300, 0, false);
        Piece back = half("back", 300, 0, true);
        double armhole = front.sewnLength("armhole") + back.sewnLength("armhole");
        Piece sleeve = sleeve(armhole + 20);
        List<Seam> seams = List.of(
                Seam.of(FRONT, BACK),
                Seam.of(new EdgeRef("front", "neckline"), new EdgeRef("back", "neckline")),
                new Seam(
                        List.of(new EdgeRef("sleeve", "cap")),
                        List.of(new EdgeRef("front", "armhole"), new EdgeRef("back", "armhole")),
                        15,
                        35,
                        false),
                Seam.of(new EdgeRef("sleeve", "front underarm seam"), new EdgeRef("sleeve", "back underarm seam")));
        Draft draft = new Pattern(Card.of("t", "40", seams), List.of(front, back, sleeve)).in("40");
        List<Walked> walked = SeamWalk.all(draft);
        assertEquals(20, walked.get(2).difference(), 1e-6);
        assertTrue(walked.stream().allMatch(Walked::lengthMatches));
    }

    private static Piece sleeve(double cap) {
        List<Edge> edges = List.of(
                new Edge("cap", Edge.Kind.SEAM, Path.through(new Point(0, 0), new Point(cap, 0))),
                new Edge("back underarm seam", Edge.Kind.SEAM, Path.through(new Point(cap, 0), new Point(cap, 200))),
                new Edge("hem", Edge.Kind.HEM, Path.through(new Point(cap, 200), new Point(0, 200))),
                new Edge("front underarm seam", Edge.Kind.SEAM, Path.through(new Point(0, 200), new Point(0, 0))));
        return Piece.of(
                "sleeve",
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.PAIR, Optional.empty())),
                edges,
                List.of());
    }

    @Test
    void layingAPieceElsewhereChangesNothing() {
        Piece front = half("front", 301, 1, false, notch("hip", 80));
        Piece back = half("back", 300, 1, true, notch("hip", 80));
        Motion away = Motion.turn(new Point(3, 4), 1).then(Motion.shift(new Vector(500, -80)));
        Walked here = walked(Seam.of(FRONT, BACK), front, back);
        Walked there = walked(Seam.of(FRONT, BACK), front.moved(away), back);
        assertEquals(here.difference(), there.difference(), 1e-9);
        assertEquals(here.notches().get(0).difference(), there.notches().get(0).difference(), 1e-6);
        assertEquals(here.ends().get(0).degrees(), there.ends().get(0).degrees(), 1e-6);
    }

    @Test
    void aSeamOfAPieceThatIsNotDrawnIsAMistakeOfTheCards() {
        Seam seam = Seam.of(FRONT, new EdgeRef("yoke", "side seam"));
        Draft draft = new Pattern(Card.of("t", "40", List.of(seam)), List.of(half("front", 300, 0, false))).in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> SeamWalk.all(draft));
        assertTrue(refusal.getMessage().contains("yoke"), refusal.getMessage());
        assertFalse(refusal.getMessage().contains("\n"));
    }
}
