package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The transform attribute of SVG 1.1 (section 7.6). */
final class Transforms {
    private static final Pattern FUNCTION = Pattern.compile("\\s*,?\\s*([a-zA-Z]+)\\s*\\(([^()]*)\\)\\s*");

    private Transforms() {}

    /** @throws IllegalArgumentException where the text is no list of transforms */
    static Motion parse(String text) {
        Matcher function = FUNCTION.matcher(text);
        Motion all = Motion.STAY;
        int end = 0;
        while (end < text.strip().length() && function.find(end) && function.start() == end) {
            all = one(function.group(1), numbers(function.group(2))).then(all);
            end = function.end();
        }
        if (!text.substring(end).isBlank()) {
            throw new Illegible(Message.of("file.transform.unreadable", text));
        }
        return all;
    }

    private static double[] numbers(String list) {
        String[] words = list.strip().split("[\\s,]+");
        double[] numbers = new double[words.length];
        for (int i = 0; i < words.length; i++) {
            try {
                numbers[i] = Double.parseDouble(words[i]);
            } catch (NumberFormatException wrong) {
                numbers[i] = Double.NaN;
            }
            if (!(Math.abs(numbers[i]) <= 1e7) || !words[i].matches("[-+0-9.eE]+")) {
                throw new Illegible(Message.of("file.transform.no-number", words[i]));
            }
        }
        return numbers;
    }

    private static Motion one(String name, double[] n) {
        Point origin = new Point(0, 0);
        Vector across = new Vector(1, 0);
        Vector down = new Vector(0, 1);
        switch (name + n.length) {
            case "matrix6":
                return new Motion(n[0], n[2], n[1], n[3], n[4], n[5]);
            case "translate1":
                return Motion.shift(new Vector(n[0], 0));
            case "translate2":
                return Motion.shift(new Vector(n[0], n[1]));
            case "scale1":
                return Motion.between(origin, across, down, origin, across.times(n[0]), down.times(n[0]));
            case "scale2":
                return Motion.between(origin, across, down, origin, across.times(n[0]), down.times(n[1]));
            case "rotate1":
                return Motion.turn(origin, StrictMath.toRadians(n[0]));
            case "rotate3":
                return Motion.turn(new Point(n[1], n[2]), StrictMath.toRadians(n[0]));
            case "skewX1":
                return new Motion(1, StrictMath.tan(StrictMath.toRadians(n[0])), 0, 1, 0, 0);
            case "skewY1":
                return new Motion(1, 0, StrictMath.tan(StrictMath.toRadians(n[0])), 1, 0, 0);
            default:
                throw new Illegible(Message.of("file.transform.unknown", name, Arrays.toString(n)));
        }
    }
}
