package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;

/**
 * Path data of SVG 1.1 (section 8.3), read in double and written as lines and cubics. Quadratics are raised exactly; arcs become cubics of
 * at most an eighth of a turn, within 5e-6 of their radius.
 */
final class PathData {
    private final String text;
    private int at;
    private final List<Subpath> done = new ArrayList<>();
    private List<Segment> segments = new ArrayList<>();
    private Point start = new Point(0, 0);
    private Point current = new Point(0, 0);

    /** The last control point, for the shorthands, and the command it belongs to. */
    private Point control = current;

    private char last = ' ';

    private PathData(String text) {
        this.text = text;
    }

    /** One subpath: the path, and whether it was closed with Z. */
    public record Subpath(Path path, boolean isClosed) {}

    /**
     * The subpaths of some path data. Segments without extent are dropped, and so are subpaths without any.
     *
     * @throws IllegalArgumentException where the text is no path data, saying where
     */
    public static List<Subpath> parse(String text) {
        return new PathData(text).parse();
    }

    private List<Subpath> parse() {
        skipSpace();
        char command = ' ';
        while (at < text.length()) {
            char c = text.charAt(at);
            if ("MmZzLlHhVvCcSsQqTtAa".indexOf(c) >= 0) {
                command = c;
                at++;
                if (last == ' ' && c != 'M' && c != 'm') {
                    throw wrong(Message.of("file.path.no-start"));
                }
            } else if (command == ' ' || command == 'Z' || command == 'z') {
                throw wrong(Message.of("file.path.no-command", c));
            } else if (command == 'M') {
                command = 'L';
            } else if (command == 'm') {
                command = 'l';
            }
            draw(command);
            last = Character.toUpperCase(command);
            skipSpace();
            if (at < text.length() && text.charAt(at) == ',') {
                at++;
                skipSpace();
            }
        }
        finish(false);
        return done;
    }

    private void draw(char command) {
        boolean relative = Character.isLowerCase(command);
        Point origin = relative ? current : new Point(0, 0);
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                finish(false);
                start = point(origin);
                current = start;
            }
            case 'Z' -> {
                close();
                finish(true);
                current = start;
            }
            case 'L' -> line(point(origin));
            case 'H' -> line(new Point(origin.x() + number(), current.y()));
            case 'V' -> line(new Point(current.x(), origin.y() + number()));
            case 'C' -> cubic(point(origin), point(origin), point(origin));
            case 'S' -> cubic(reflected("CS"), point(origin), point(origin));
            case 'Q' -> quadratic(point(origin), point(origin));
            case 'T' -> quadratic(reflected("QT"), point(origin));
            default -> arc(number(), number(), number(), flag(), flag(), point(origin));
        }
        if ("MZLHVA".indexOf(Character.toUpperCase(command)) >= 0) {
            control = current;
        }
    }

    /** Back to the start; what rounding of relative steps has left between is made up by the last segment. */
    private void close() {
        if (segments.isEmpty() || !current.isCloseTo(start, Tolerance.COINCIDENT)) {
            line(start);
            return;
        }
        List<Segment> closed = Path.of(segments).withEnd(start).segments();
        segments.set(segments.size() - 1, closed.get(closed.size() - 1));
    }

    private void line(Point end) {
        if (!end.equals(current)) {
            segments.add(new Line(current, end));
        }
        current = end;
    }

    private void cubic(Point first, Point second, Point end) {
        if (!(first.equals(current) && second.equals(current) && end.equals(current))) {
            segments.add(new Cubic(current, first, second, end));
        }
        control = second;
        current = end;
    }

    private void quadratic(Point middle, Point end) {
        cubic(current.towards(middle, 2 / 3.0), end.towards(middle, 2 / 3.0), end);
        control = middle;
    }

    private Point reflected(String family) {
        return family.indexOf(last) >= 0 ? current.plus(current.minus(control)) : current;
    }

    /** SVG 1.1, appendix F.6: from end points to centre, then eighths of a turn as cubics. */
    private void arc(double rxGiven, double ryGiven, double degrees, boolean large, boolean sweep, Point end) {
        double rx = Math.abs(rxGiven);
        double ry = Math.abs(ryGiven);
        if (end.equals(current)) {
            return;
        }
        if (rx == 0 || ry == 0) {
            line(end);
            return;
        }
        double phi = StrictMath.toRadians(degrees);
        Vector u = Vector.ofAngle(phi);
        Vector v = u.right();
        Vector half = current.minus(end).times(0.5);
        double x = half.dot(u);
        double y = half.dot(v);
        double needed = x * x / (rx * rx) + y * y / (ry * ry);
        if (needed > 1) {
            rx *= Math.sqrt(needed);
            ry *= Math.sqrt(needed);
        }
        double above = rx * rx * ry * ry - rx * rx * y * y - ry * ry * x * x;
        double root = Math.sqrt(Math.max(0, above) / (rx * rx * y * y + ry * ry * x * x)) * (large == sweep ? -1 : 1);
        double cx = root * rx * y / ry;
        double cy = -root * ry * x / rx;
        Point centre = current.midpoint(end).plus(u.times(cx)).plus(v.times(cy));
        double from = StrictMath.atan2((y - cy) / ry, (x - cx) / rx);
        double turn = StrictMath.atan2((-y - cy) / ry, (-x - cx) / rx) - from;
        if (sweep && turn < 0) {
            turn += 2 * Math.PI;
        } else if (!sweep && turn > 0) {
            turn -= 2 * Math.PI;
        }
        int parts = Math.max(1, (int) Math.ceil(Math.abs(turn) / (Math.PI / 4) - 1e-9));
        double step = turn / parts;
        double handle = 4 / 3.0 * StrictMath.tan(step / 4);
        for (int i = 0; i < parts; i++) {
            double a = from + i * step;
            double b = a + step;
            Vector tangentA = u.times(-rx * StrictMath.sin(a)).plus(v.times(ry * StrictMath.cos(a)));
            Vector tangentB = u.times(-rx * StrictMath.sin(b)).plus(v.times(ry * StrictMath.cos(b)));
            Point to = i == parts - 1
                    ? end
                    : centre.plus(u.times(rx * StrictMath.cos(b))).plus(v.times(ry * StrictMath.sin(b)));
            cubic(current.plus(tangentA.times(handle)), to.minus(tangentB.times(handle)), to);
        }
    }

    private void finish(boolean isClosed) {
        if (!segments.isEmpty()) {
            done.add(new Subpath(Path.of(segments), isClosed));
            segments = new ArrayList<>();
        }
    }

    private Point point(Point origin) {
        double x = number();
        double y = number();
        return new Point(origin.x() + x, origin.y() + y);
    }

    private boolean flag() {
        skipSpaceAndComma();
        char c = at < text.length() ? text.charAt(at++) : ' ';
        if (c != '0' && c != '1') {
            throw wrong(Message.of("file.path.no-flag"));
        }
        return c == '1';
    }

    private double number() {
        skipSpaceAndComma();
        int from = at;
        if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            at++;
        }
        int digits = digits();
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits += digits();
        }
        if (digits == 0) {
            throw wrong(Message.of("file.path.no-number"));
        }
        int beforeExponent = at;
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
                at++;
            }
            if (digits() == 0) {
                at = beforeExponent;
            }
        }
        double value = Double.parseDouble(text.substring(from, at));
        if (Math.abs(value) > 1e7) {
            throw wrong(Message.of("file.path.too-large", text.substring(from, at)));
        }
        return value;
    }

    private int digits() {
        int from = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at - from;
    }

    private void skipSpaceAndComma() {
        skipSpace();
        if (at < text.length() && text.charAt(at) == ',') {
            at++;
            skipSpace();
        }
    }

    private void skipSpace() {
        while (at < text.length() && " \t\r\n\f".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private Illegible wrong(Message why) {
        return new Illegible(Message.of("file.path.at-character", why, at + 1));
    }

    /** An open path as M, L and C commands; what rounding leaves no extent is left out, as it is when it is read. */
    public static String write(Path path) {
        String last = pair(path.start());
        StringBuilder data = new StringBuilder("M").append(last);
        for (Segment segment : path.segments()) {
            String end = pair(segment.end());
            List<String> points = segment instanceof Cubic cubic
                    ? List.of(pair(cubic.startHandle()), pair(cubic.endHandle()), end)
                    : List.of(end);
            if (!points.stream().allMatch(last::equals)) {
                data.append(points.size() == 1 ? " L" : " C").append(String.join(" ", points));
            }
            last = end;
        }
        return data.toString();
    }

    private static String pair(Point point) {
        return Numbers.of(point.x()) + " " + Numbers.of(point.y());
    }
}
