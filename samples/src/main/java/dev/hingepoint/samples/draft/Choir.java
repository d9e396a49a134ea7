package dev.hingepoint.samples.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * The measurements of a choir of two hundred, as its wardrobe keeper wrote them down: invented, like the choir. Seven of them are wrong or far from the chart,
 * as happens in every list.
 *
 * <p>Where the numbers come from: our own invention. Girths scatter about a body of the dress's middle sizes, and depend on each other as bodies' do.
 */
public final class Choir {
    private static final int SINGERS = 200;
    private static final List<String> VOICES = List.of("soprano 1", "soprano 2", "alto 1", "alto 2");
    private static final List<String> ROWS = List.of("front row", "second row", "back row");

    /** Every singer is the same in every run. */
    private static final long SEED = 1787;

    private static final String HEADER =
            "singer,voice,upper bust,full bust,waist,high hip,hip,back waist length,folds at back waist";

    /** What went wrong, by the singer's number: her row from the upper bust on. */
    private static final Map<Integer, String> SLIPS = Map.of(
            23, "98.5,87,77.5,98,104,41,", // upper and full bust swapped
            58, "34.5,36.5,30,38.5,41,16,", // in inches
            77, ",,72,92,98.5,40.5,", // no bust
            104, "\"ninety\",95,79,98,104,41,",
            131, "131,142,128,139,144,43,", // far above the chart
            166, "70.5,72,60,76,81,38,", // far below it
            189, "88,94,78,97.5,1060,40.5,"); // the hip in mm

    private Choir() {}

    /** One row a singer, in cm, as RFC 4180 has it; a field is left empty where nothing was measured or seen. */
    public static String csv() {
        Random random = new Random(SEED);
        StringBuilder csv = new StringBuilder(HEADER).append('\n');
        for (int singer = 1; singer <= SINGERS; singer++) {
            String voice = VOICES.get(random.nextInt(VOICES.size())) + ", " + ROWS.get(random.nextInt(ROWS.size()));
            String measured = measured(random);
            csv.append(singer).append(",\"").append(voice).append("\",");
            csv.append(SLIPS.getOrDefault(singer, measured)).append('\n');
        }
        return csv.toString();
    }

    private static String measured(Random random) {
        double upper = scattered(random, 90, 5, 80, 102);
        double full = upper + scattered(random, 6.5, 2.5, 1, 14);
        double waist = upper + scattered(random, -11.5, 3, -18, 2);
        double hip = waist + scattered(random, 24.5, 2.5, 16, 32);
        double highHip = hip - scattered(random, 6, 1, 4, 9);
        double backWaist = scattered(random, 40.5, 1, 38, 43);
        List<String> row = new ArrayList<>();
        for (double girth : new double[] {upper, full, waist, highHip, hip, backWaist}) {
            row.add(halves(girth));
        }
        // on every fifth the cloth folded across the back at the waist
        row.add(random.nextInt(5) == 0 ? halves(scattered(random, 1.5, 0.4, 0.5, 2.5)) : "");
        return String.join(",", row);
    }

    private static double scattered(Random random, double middle, double spread, double least, double most) {
        return Math.max(least, Math.min(most, middle + spread * random.nextGaussian()));
    }

    /** A tape is read to half a centimetre. */
    private static String halves(double cm) {
        double rounded = Math.rint(cm * 2) / 2;
        return rounded == Math.rint(rounded)
                ? Long.toString(Math.round(rounded))
                : String.format(Locale.ROOT, "%.1f", rounded);
    }
}
