package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.curve.Motion;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How large a drawing's unit is. It is known only where the root's width or height is written in mm, cm, in, pt or pc; a bare number, px or per cent
 * leaves each reader to guess. The origin stays the drawing's own.
 */
final class DrawingScale {
    private static final double PX = 25.4 / 96;
    private static final double MOST = 1e6;
    private static final Pattern LENGTH =
            Pattern.compile("\\s*([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?)\\s*(mm|cm|in|pt|pc)\\s*");

    private DrawingScale() {}

    /**
     * From the drawing's units to millimetres.
     *
     * @param width the root's attributes; null where they are not there
     * @throws IllegalArgumentException where the scale cannot be known
     */
    static Motion of(String width, String height, String viewBox, String preserveAspectRatio) {
        double across = millimetres("width", width);
        double down = millimetres("height", height);
        if (Double.isNaN(across) && Double.isNaN(down)) {
            throw new Illegible(Message.of("file.drawing.no-scale"));
        }
        if (viewBox == null) {
            return scale(PX, PX);
        }
        String[] box = viewBox.strip().split("[\\s,]+");
        double boxWidth = box.length == 4 ? number(box[2]) : Double.NaN;
        double boxHeight = box.length == 4 ? number(box[3]) : Double.NaN;
        if (!(boxWidth > 0 && boxHeight > 0)) {
            throw new Illegible(Message.of("file.drawing.view-box", viewBox));
        }
        double x = across / boxWidth;
        double y = down / boxHeight;
        if (Double.isNaN(x)) {
            return scale(y, y);
        }
        if (Double.isNaN(y)) {
            return scale(x, x);
        }
        String fit = preserveAspectRatio == null ? "" : preserveAspectRatio;
        if (fit.contains("none")) {
            return scale(x, y);
        }
        double uniform = fit.contains("slice") ? Math.max(x, y) : Math.min(x, y);
        return scale(uniform, uniform);
    }

    private static Motion scale(double x, double y) {
        if (x == 1 && y == 1) {
            return Motion.STAY;
        }
        return new Motion(x, 0, 0, y, 0, 0);
    }

    private static double number(String word) {
        try {
            return Double.parseDouble(word);
        } catch (NumberFormatException wrong) {
            return Double.NaN;
        }
    }

    /** Not a number where the length is not there, or has no unit that tells its size. */
    private static double millimetres(String name, String text) {
        Matcher length = LENGTH.matcher(text == null ? "" : text.toLowerCase(Locale.ROOT));
        if (!length.matches()) {
            return Double.NaN;
        }
        double unit = switch (length.group(2)) {
            case "mm" -> 1;
            case "cm" -> 10;
            case "in" -> 25.4;
            case "pt" -> 25.4 / 72;
            default -> 25.4 / 6;
        };
        double value = number(length.group(1)) * unit;
        if (!(value > 0 && value < MOST)) {
            throw new Illegible(Message.of("file.drawing.side-range", name, text.strip()));
        }
        return value;
    }
}
