package dev.hingepoint;

import java.util.Objects;

/** The library's one answer to what a user, a file or a body got wrong: what, where, how much, and what would work. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Reason reason;

    public Refusal(Reason reason) {
        super(reason.sentence());
        this.reason = Objects.requireNonNull(reason);
    }

    public Refusal(Reason reason, Throwable cause) {
        super(reason.sentence(), cause);
        this.reason = Objects.requireNonNull(reason);
    }

    public Reason reason() {
        return reason;
    }

    /** The same refusal, naming the file where none was named yet. */
    public Refusal in(String file) {
        return reason.where().file().isPresent()
                ? this
                : new Refusal(reason.at(reason.where().file(file)), this);
    }
}
