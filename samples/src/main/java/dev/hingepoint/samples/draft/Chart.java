package dev.hingepoint.samples.draft;

import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The bodies that the Larkfield sizes are drafted for.
 *
 * <p>Bust and waist are ASTM D5585-11e1, misses sizes 2 to 16, straight waist (the curvy one + 1 1/2 in), read off its public summary page in
 * inches. The hip is our own: bust + 8 cm. The upper bust is derived: full bust - the cup difference of 5 cm.
 * High hip (hip - 6 cm) and the three waist lengths are our own, read off the draft.
 */
final class Chart {
    static final List<String> SIZES = List.of("34", "36", "38", "40", "42", "44", "46", "48");
    static final double CUP_DIFFERENCE = 50;

    private static final double[] BUST_INCHES = {33, 34.125, 35.25, 36.25, 37.25, 38.75, 40.375, 42.125};
    private static final double[] CURVY_WAIST_INCHES = {25.375, 26.125, 27, 28, 29, 30.75, 32.5, 34.5};
    private static final double STRAIGHT_MORE_INCHES = 1.5;
    private static final double HIP_MORE = 80;
    private static final double HIGH_HIP_LESS = 60;

    private Chart() {}

    /** One size: its body in mm, and how many sizes it lies above 40. */
    record Size(String name, double bust, double waist, double hip, int steps) {}

    static List<Size> sizes() {
        return IntStream.range(0, SIZES.size())
                .mapToObj(i -> {
                    double bust = rounded(BUST_INCHES[i] * 25.4);
                    double waist = rounded((CURVY_WAIST_INCHES[i] + STRAIGHT_MORE_INCHES) * 25.4);
                    return new Size(SIZES.get(i), bust, waist, bust + HIP_MORE, i - SIZES.indexOf("40"));
                })
                .toList();
    }

    /** To the millimetre, as a tape is read. */
    private static double rounded(double mm) {
        return Math.rint(mm);
    }

    static BodyChart chart() {
        Map<String, Map<String, Length>> bySize = new LinkedHashMap<>();
        for (Size size : sizes()) {
            Map<String, Length> body = new LinkedHashMap<>();
            body.put("upper bust", new Length(size.bust() - CUP_DIFFERENCE));
            body.put("full bust", new Length(size.bust()));
            body.put("waist", new Length(size.waist()));
            body.put("high hip", new Length(size.hip() - HIGH_HIP_LESS));
            body.put("hip", new Length(size.hip()));
            body.put("back waist length", new Length(405 + 3 * size.steps()));
            body.put("front waist length", new Length(445 + 4 * size.steps()));
            body.put("side length", new Length(183));
            bySize.put(size.name(), body);
        }
        return new BodyChart(Unit.CENTIMETRE, bySize);
    }
}
