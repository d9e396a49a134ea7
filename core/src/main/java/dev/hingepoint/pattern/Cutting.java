package dev.hingepoint.pattern;

import java.util.Optional;
import java.util.Set;

/**
 * How often a piece is cut, and from which cloth.
 *
 * @param cloth empty for the main cloth
 */
public record Cutting(int count, How how, Optional<String> cloth) {
    /** How the paper lies on the cloth. */
    public enum How {
        SINGLE,
        ON_FOLD,
        PAIR
    }

    private static final Set<String> INSIDE = Set.of("lining", "interfacing");

    public Cutting {
        if (count < 1) {
            throw new IllegalArgumentException("a piece is cut at least once, not " + count + " times");
        }
    }

    /** Once, from the main cloth. */
    public static Cutting once() {
        return new Cutting(1, How.SINGLE, Optional.empty());
    }

    /** Once, with the piece's fold on the fold of the main cloth. */
    public static Cutting onFold() {
        return new Cutting(1, How.ON_FOLD, Optional.empty());
    }

    /** A mirrored pair, from the main cloth. */
    public static Cutting pair() {
        return new Cutting(1, How.PAIR, Optional.empty());
    }

    public boolean isMainCloth() {
        return cloth.isEmpty() || cloth.get().equals("main");
    }

    /** Whether it lies inside the garment: a lining, an interfacing. */
    public boolean isInside() {
        return cloth.filter(INSIDE::contains).isPresent();
    }

    /** How often the paper's width goes round the body: a folded piece and each of a pair count twice. */
    public int widths() {
        return how == How.SINGLE ? count : 2 * count;
    }
}
