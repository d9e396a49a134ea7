package dev.hingepoint;

import java.util.OptionalDouble;

/** Why something was refused. Amounts and limits are in mm. */
public sealed interface Reason {
    /** What is wrong, in plain words, with what would work. */
    Message message();

    /** The message in English. */
    default String what() {
        return message().text();
    }

    Where where();

    Reason at(Where where);

    /** The amount that was asked for, where there is one. */
    default OptionalDouble amount() {
        return OptionalDouble.empty();
    }

    /** The largest amount that would work, where one can be computed. */
    default OptionalDouble limit() {
        return OptionalDouble.empty();
    }

    /** The whole of it as a message: place, reason, and what would work. */
    default Message line() {
        boolean isPlaced = !where().equals(Where.UNKNOWN);
        Message line = isPlaced ? Message.of("refusal.at", where().message(), message()) : message();
        return limit().isPresent()
                ? Message.of("refusal.limit", line, Quantity.millimetres(limit().getAsDouble()))
                : line;
    }

    /** One line in English: place, then reason. */
    default String sentence() {
        return line().text().replaceAll("\\s+", " ");
    }

    /** "12 mm", "0.35 mm": at most two decimals, none that says nothing. */
    static String millimetres(double mm) {
        return Quantity.millimetres(mm).toString();
    }

    /** A file, or a call, that cannot be understood. */
    record Unreadable(Message message, Where where) implements Reason {
        @Override
        public Unreadable at(Where place) {
            return new Unreadable(message, place);
        }
    }

    /** A drawing that is understood but is no sound pattern piece: a gap, a crossing outline, a dart that hangs in the air. */
    record Unsound(Message message, Where where) implements Reason {
        @Override
        public Unsound at(Where place) {
            return new Unsound(message, place);
        }
    }

    /** Something that the job needs and the pattern, card or order does not have. */
    record Missing(Message message, Where where) implements Reason {
        @Override
        public Missing at(Where place) {
            return new Missing(message, place);
        }
    }

    /** An amount or choice that the piece, the cloth or the alteration does not allow. */
    record BeyondLimit(Message message, Where where, OptionalDouble amount, OptionalDouble limit) implements Reason {
        public static BeyondLimit of(Message message, Where where) {
            return new BeyondLimit(message, where, OptionalDouble.empty(), OptionalDouble.empty());
        }

        public static BeyondLimit of(Message message, Where where, double amount, double limit) {
            return new BeyondLimit(message, where, OptionalDouble.of(amount), OptionalDouble.of(limit));
        }

        @Override
        public BeyondLimit at(Where place) {
            return new BeyondLimit(message, place, amount, limit);
        }
    }

    /** A law of an alteration that its result would break: in mm, or in radians for a law of angles, as the message's quantities say. */
    record BrokenLaw(Message message, Where where, double expected, double actual, double tolerance) implements Reason {
        @Override
        public BrokenLaw at(Where place) {
            return new BrokenLaw(message, place, expected, actual, tolerance);
        }
    }
}
