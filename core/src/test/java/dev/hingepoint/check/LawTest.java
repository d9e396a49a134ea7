package dev.hingepoint.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Message;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import org.junit.jupiter.api.Test;

/** What a broken law says, and what it still says as a part of more. */
class LawTest {
    private static final Piece BACK = TestPatterns.straightBack(225, 1000, 400);
    private static final Draft DRAFT = TestPatterns.of(BACK).in("40");

    /** An angle is told in degrees, also where the law is one of a step in the middle. */
    @Test
    void anAngleStaysAnAngle() {
        Law law = Law.ofAngles(
                Message.of("bends nothing"),
                BACK.where(),
                (before, after) -> 0,
                (before, after) -> StrictMath.toRadians(3),
                0.001);
        for (Law same : new Law[] {law, law.from(DRAFT), law.upTo(DRAFT)}) {
            Finding finding = same.on(DRAFT, DRAFT);
            assertTrue(!finding.holds());
            assertTrue(
                    finding.reason().what().contains("3 degrees"),
                    finding.reason().what());
        }
    }

    @Test
    void everyOtherPieceIsKept() {
        Draft two = TestPatterns.of(BACK, BACK.named("front", BACK.cuttings())).in("40");
        assertEquals(1, Law.keepsOthers(two, java.util.List.of("back")).size());
    }
}
