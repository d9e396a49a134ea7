package dev.hingepoint.alter;

import dev.hingepoint.pattern.Draft;
import java.util.Map;

/** One alteration of the catalogue. */
public interface Alteration {
    /** The name it is ordered by, in the trade's words. */
    String name();

    /** An ordinary order, for help, docs and the table of combinations: options by name, as written. */
    Map<String, Object> example();

    /**
     * Alters one size.
     *
     * @throws dev.hingepoint.Refusal where the pattern lacks something, or an amount does not work
     */
    Altered alter(Draft draft, Options options);
}
