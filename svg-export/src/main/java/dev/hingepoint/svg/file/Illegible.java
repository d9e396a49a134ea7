package dev.hingepoint.svg.file;

import dev.hingepoint.Message;

/** What a reader of one attribute cannot read; the reader of the file adds where that stands, and refuses. */
final class Illegible extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    private final transient Message why;

    Illegible(Message why) {
        this(why, null);
    }

    Illegible(Message why, Throwable cause) {
        super(why.text(), cause);
        this.why = why;
    }

    /** Why something was not accepted that stands in a file. */
    static Message why(IllegalArgumentException wrong) {
        return wrong instanceof Illegible illegible
                ? illegible.why
                : Message.of("file.not-accepted", String.valueOf(wrong.getMessage()));
    }
}
