package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;

/** An edge of a piece, written {@code piece/edge}. */
public record EdgeRef(String piece, String edge) {
    /**
     * Reads {@code front/side seam}.
     *
     * @throws Refusal for anything but two names and a stroke between
     */
    public static EdgeRef parse(String text) {
        int stroke = text.indexOf('/');
        if (stroke < 1 || stroke == text.length() - 1) {
            throw new Refusal(new Reason.Unreadable(Message.of("pattern.edge-ref.unreadable", text), Where.UNKNOWN));
        }
        return new EdgeRef(
                text.substring(0, stroke).strip(), text.substring(stroke + 1).strip());
    }

    @Override
    public String toString() {
        return piece + "/" + edge;
    }
}
