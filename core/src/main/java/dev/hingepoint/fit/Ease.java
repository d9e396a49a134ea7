package dev.hingepoint.fit;

/**
 * The ease of a garment at one level, in mm round the body.
 *
 * @param level as drawn on the pieces
 * @param measurement of the body, in a body file's words
 * @param body the body's girth
 * @param garment the finished girth
 * @param aim the ease aimed at: the draft's own, changed where the cloth stretches less
 * @param least the least ease that is right
 * @param most the most ease that is right
 * @param leastGirth the girth below which the garment cannot be worn
 */
public record Ease(
        String level,
        String measurement,
        double body,
        double garment,
        double aim,
        double least,
        double most,
        double leastGirth) {
    /** Tape and scissors: what is nearer in mm than this is on the mark. */
    static final double ON_THE_MARK = 0.5;

    public double ease() {
        return garment - body;
    }

    public boolean isShort() {
        return ease() < least - ON_THE_MARK;
    }

    public boolean isLoose() {
        return ease() > most + ON_THE_MARK;
    }

    /** Whether the garment has the ease it should have. */
    public boolean isRight() {
        return !isShort() && !isLoose();
    }

    /** Whether the garment, at rest, can be drawn over the body. */
    public boolean canBeWorn() {
        return garment >= leastGirth - ON_THE_MARK;
    }
}
