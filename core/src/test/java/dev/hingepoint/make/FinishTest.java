package dev.hingepoint.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishTest {
    private static Altered make(Draft draft, String edge, String as) {
        return Choices.make(draft, new AlterationRequest("finish", Map.of("edge", edge, "as", as)));
    }

    private static double allowance(Draft draft, String piece, String edge) {
        Piece of = draft.piece(piece);
        return draft.allowances().of(of, of.edge(edge)).mm();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "side seam | plain | 15 | stitch at 15 mm, press open",
                "side seam | overlocked | 10 | stitch at 10 mm, overlock",
                "side seam | narrow | 10 | stitch at 10 mm, again 2 mm beside it, trim to 3 mm",
                "side seam | French | 15 | stitch at 9 mm, trim to 3 mm; turn, right sides together, stitch at 6 mm",
                "side seam | flat-felled | 15 | trim one side to 5 mm",
                "front/hem | narrow | 8 | turn in 4 mm twice",
                "front/hem | rolled edge | 0 | roll the edge"
            })
    void allowancesFollowAndTheLabelSaysHow(String edge, String as, double mm, String says) {
        Draft after = make(Dresses.sleeved(Dresses.SHAPE), edge, as).draft();
        String name = edge.contains("/") ? "hem" : edge;
        assertEquals(mm, allowance(after, "front", name));
        String label = String.join("\n", after.construction().labels().get("front"));
        assertTrue(label.startsWith(name + ": " + as + ", ") && label.contains(says), label);
        assertEquals(as, after.construction().finishes().get(new EdgeRef("front", name)));
        if (!edge.contains("/")) {
            assertEquals(mm, allowance(after, "back", name), "both sides of a seam have the same allowance");
        }
    }

    @Test
    void aRolledEdgeIsBoundAndFinishedOnce() {
        Draft rolled = make(Dresses.sleeved(Dresses.SHAPE), "sleeve/hem", "rolled edge")
                .draft();
        assertEquals(Edge.Kind.BOUND, rolled.piece("sleeve").edge("hem").kind());
        assertThrows(Refusal.class, () -> make(rolled, "sleeve/hem", "narrow"));
    }

    @Test
    void finishedAnotherWayTheLabelSaysOnlyThat() {
        Draft french =
                make(Dresses.sleeved(Dresses.SHAPE), "side seam", "French").draft();
        Draft narrow = make(french, "side seam", "narrow").draft();
        assertEquals(1, narrow.construction().labels().get("back").size());
        assertEquals(10, allowance(narrow, "back", "side seam"));
    }

    @Test
    void aFrenchSeamOnATightCurveWarns() {
        assertTrue(make(Dresses.sleeved(Dresses.SHAPE), "shoulder", "French")
                .notes()
                .isEmpty());
        List<String> notes =
                make(Dresses.sleeved(Dresses.SHAPE), "front/armhole", "French").notes();
        assertTrue(
                notes.stream().anyMatch(note -> note.contains("radius") && note.contains("narrow")), notes.toString());
    }

    @Test
    void whatCannotBeFinishedSoIsRefused() {
        Draft draft = Dresses.sleeved(Dresses.SHAPE);
        assertThrows(Refusal.class, () -> make(draft, "front/hem", "French"));
        assertThrows(Refusal.class, () -> make(draft, "side seam", "rolled edge"));
        assertThrows(Refusal.class, () -> make(draft, "front/centre front", "narrow"));
        assertThrows(Refusal.class, () -> make(draft, "collar", "narrow"));
        assertThrows(Refusal.class, () -> make(draft, "front/collar", "narrow"));
        assertThrows(Refusal.class, () -> make(draft, "side seam", "glued"));
    }
}
