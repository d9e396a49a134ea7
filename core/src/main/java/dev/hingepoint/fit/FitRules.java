package dev.hingepoint.fit;

/**
 * What a fitter goes by where the pattern does not say; all of it common practice, no source, unless a source is named.
 *
 * @param leastBustWoven a full bust nearer in mm than this to the draft's needs no alteration in woven cloth
 * @param leastBustKnit the same for a knit
 * @param stretchShare how much of a cloth's stretch a garment may use at bust and hip, as a fraction
 * @param headGirth of a grown person, in mm, where it was not measured
 * @param exact whether girths are blended by amounts to 2 mm, and not by sizes
 */
public record FitRules(
        double leastBustWoven, double leastBustKnit, double stretchShare, double headGirth, boolean exact) {
    public static final FitRules USUAL = new FitRules(15, 25, 0.5, 580, false);

    public FitRules {
        if (!(leastBustWoven >= 0 && leastBustKnit >= 0 && stretchShare > 0 && stretchShare <= 1 && headGirth > 0)) {
            throw new IllegalArgumentException("rules of fit are positive, and the share of stretch at most 1");
        }
    }

    /** What a full bust must differ by, in mm, to be altered. */
    double leastBust(boolean isKnit) {
        return isKnit ? leastBustKnit : leastBustWoven;
    }

    /** Blends by amounts. */
    public FitRules exactly() {
        return new FitRules(leastBustWoven, leastBustKnit, stretchShare, headGirth, true);
    }
}
