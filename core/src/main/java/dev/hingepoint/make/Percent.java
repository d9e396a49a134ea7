package dev.hingepoint.make;

import dev.hingepoint.alter.Options;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Shares in per cent, as people write them. */
final class Percent {
    private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]+)?)\\s*%");

    private Percent() {}

    /** A fraction; empty where it is not given. */
    static OptionalDouble of(Options options, String name) {
        if (!options.has(name)) {
            return OptionalDouble.empty();
        }
        Matcher written = WRITTEN.matcher(options.text(name).orElse("").strip());
        if (!written.matches()) {
            throw options.refuse(
                    "make.percent.not-per-cent", name, options.text(name).orElse(""));
        }
        return OptionalDouble.of(Double.parseDouble(written.group(1)) / 100);
    }

    /** To a tenth. */
    static String told(double fraction) {
        double percent = Math.rint(1000 * fraction) / 10;
        return (percent == Math.rint(percent) ? Long.toString(Math.round(percent)) : Double.toString(percent)) + " %";
    }
}
