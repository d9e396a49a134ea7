package dev.hingepoint.pattern;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything about a pattern that is not geometry.
 *
 * @param name of the pattern
 * @param baseSize the size that the others were graded from
 * @param cupDifference full bust minus upper bust that the draft allows for
 * @param stretchAcross what the draft needs of the cloth, as a fraction
 * @param stretchDown what the draft needs of the cloth, as a fraction
 * @param fronts the cup difference of each front, by its name, where a second one is drawn
 * @param altered what was done to it
 */
public record Card(
        String name,
        String baseSize,
        Optional<Length> cupDifference,
        double stretchAcross,
        double stretchDown,
        BodyChart bodyChart,
        List<Seam> seams,
        Allowances allowances,
        List<Opening> openings,
        Map<String, Length> fronts,
        Optional<Altered> altered) {
    /**
     * What was done to one size, and whom it now fits.
     *
     * @param front the second front, where that one was altered
     * @param fits for the altered size, the body it now fits, in the chart's columns
     */
    public record Altered(
            String size, Optional<String> front, List<AlterationRequest> alterations, Map<String, Length> fits) {
        public Altered {
            alterations = List.copyOf(alterations);
            fits = Map.copyOf(fits);
        }
    }

    public Card {
        seams = List.copyOf(seams);
        openings = List.copyOf(openings);
        fronts = Map.copyOf(fronts);
    }

    /** A card that says no more than the pattern's name and its seams. */
    public static Card of(String name, String baseSize, List<Seam> seams) {
        return new Card(
                name,
                baseSize,
                Optional.empty(),
                0,
                0,
                BodyChart.NONE,
                seams,
                new Allowances(Map.of()),
                List.of(),
                Map.of(),
                Optional.empty());
    }

    public Card withSeams(List<Seam> changed) {
        return new Card(
                name,
                baseSize,
                cupDifference,
                stretchAcross,
                stretchDown,
                bodyChart,
                changed,
                allowances,
                openings,
                fronts,
                altered);
    }

    public Card withOpenings(List<Opening> changed) {
        return new Card(
                name,
                baseSize,
                cupDifference,
                stretchAcross,
                stretchDown,
                bodyChart,
                seams,
                allowances,
                changed,
                fronts,
                altered);
    }

    public Card withAltered(Altered done) {
        return new Card(
                name,
                baseSize,
                cupDifference,
                stretchAcross,
                stretchDown,
                bodyChart,
                seams,
                allowances,
                openings,
                fronts,
                Optional.of(done));
    }
}
