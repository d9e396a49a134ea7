package dev.hingepoint.alter;

import dev.hingepoint.pattern.Draft;
import java.util.Map;

/**
 * One alteration: of the catalogue, which shows <a href="doc-files/alterations.html">all of its own</a>, or of your own, which an order may name where it is given to {@link
 * Fitting#of(dev.hingepoint.pattern.Pattern, Order, java.util.List)}.
 *
 * <p>Kept, whatever it does: the draft that it is given, which is a value; every size but the one altered; and every {@link dev.hingepoint.check.Law} that it answers with, since
 * a result that breaks one is refused. It keeps nothing from one call to the next, so that it can be shared between threads.
 */
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
