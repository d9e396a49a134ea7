package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class RefitTest {
    @Provide
    Arbitrary<Cubic> smooth() {
        return Curves.smooth();
    }

    @Property(seed = "41")
    void oneSegmentIsItself(@ForAll("smooth") Cubic cubic) {
        assertEquals(cubic, Refit.cubic(Path.of(cubic)));
    }

    @Property(seed = "42", tries = 60)
    void aCurveThatWasSplitIsFoundAgain(
            @ForAll("smooth") Cubic cubic, @ForAll @DoubleRange(min = 0.2, max = 0.8) double t) {
        Path split = Path.of(cubic.part(0, t), cubic.part(t, 1));
        Cubic fitted = Refit.cubic(split);
        assertEquals(split.start(), fitted.start());
        assertEquals(split.end(), fitted.end());
        assertEquals(0, split.startTangent().angleTo(fitted.tangent(0)), 1e-9);
        assertEquals(0, split.endTangent().angleTo(fitted.tangent(1)), 1e-9);
        assertTrue(Refit.deviation(fitted, split) <= Tolerance.REFIT);
    }
}
