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
 * @param lays which ways round the pieces may be laid
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
        Lays lays,
        Optional<Altered> altered) {
    /**
     * What was done to one size, and whom it now fits.
     *
     * @param front the second front, where that one was altered
     * @param make how it is made up: the choices in order, done after the alterations
     * @param steps what was done, step by step, in a fitter's words
     * @param fits for the altered size, the body it now fits, in the chart's columns
     * @param construction how the altered size is put together, where not as the card says of all
     */
    public record Altered(
            String size,
            Optional<String> front,
            List<AlterationRequest> alterations,
            List<AlterationRequest> make,
            List<String> steps,
            Map<String, Length> fits,
            Optional<Construction> construction) {
        public Altered {
            steps = List.copyOf(steps);
            alterations = List.copyOf(alterations);
            make = List.copyOf(make);
            fits = Map.copyOf(fits);
        }

        /** Altered, and made up as the pattern is. */
        public static Altered of(
                String size, Optional<String> front, List<AlterationRequest> alterations, Map<String, Length> fits) {
            return new Altered(size, front, alterations, List.of(), List.of(), fits, Optional.empty());
        }

        /** A step as it is remembered: "sway back, back: Fold out 12 mm at centre back". */
        public static String step(String alteration, String piece, String caption) {
            return stepsOf(alteration, piece) + caption;
        }

        /** Whether an alteration, or a choice of how to make up, did anything to a piece; where no steps are remembered, it may have. */
        public boolean mayHaveChanged(String alteration, String piece) {
            String begins = stepsOf(alteration, piece);
            return steps.isEmpty() || steps.stream().anyMatch(step -> step.startsWith(begins));
        }

        private static String stepsOf(String alteration, String piece) {
            return alteration + ", " + piece + ": ";
        }

        public boolean isOf(String otherSize, Optional<String> otherFront) {
            return size.equals(otherSize) && front.equals(otherFront);
        }

        Altered with(Optional<Construction> changed) {
            return new Altered(size, front, alterations, make, steps, fits, changed);
        }

        /** The same, made up as well: every choice so far, and every step so far. */
        public Altered withMake(List<AlterationRequest> done, List<String> all) {
            return new Altered(size, front, alterations, done, all, fits, construction);
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
                Lays.ONE_WAY,
                Optional.empty());
    }

    /** Whether the draft counts on a cloth that stretches round the body. */
    public boolean isKnit() {
        return stretchAcross > 0;
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
                lays,
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
                lays,
                Optional.of(done));
    }

    /** How every size is put together that is not made up in its own way. */
    public Construction construction() {
        return new Construction(seams, allowances, openings, Map.of(), Map.of());
    }

    /** How one size is put together. */
    Construction construction(String size, Optional<String> front) {
        return altered.filter(done -> done.isOf(size, front))
                .flatMap(Altered::construction)
                .orElseGet(this::construction);
    }

    /** The same card, where one size is put together in its own way. */
    Card withConstruction(String size, Optional<String> front, Construction own) {
        Altered done = altered.filter(already -> already.isOf(size, front))
                .orElseGet(() -> Altered.of(size, front, List.of(), Map.of()));
        return withAltered(done.with(Optional.of(own).filter(changed -> !changed.equals(construction()))));
    }
}
