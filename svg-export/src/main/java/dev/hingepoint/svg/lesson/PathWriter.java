package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import java.util.List;

/**
 * Path data of SVG in whole units, each point told from the one before as that was written: short, and nowhere more than half a unit off, since nothing adds up.
 */
final class PathWriter {
    private final StringBuilder data = new StringBuilder();
    private long x;
    private long y;

    void add(Path path) {
        move(path.start());
        for (Segment segment : path.segments()) {
            if (segment instanceof Cubic cubic) {
                data.append('c');
                long startX = x;
                long startY = y;
                to(cubic.startHandle(), startX, startY);
                to(cubic.endHandle(), startX, startY);
                to(cubic.end(), startX, startY);
            } else {
                data.append('l');
                to(segment.end(), x, y);
            }
        }
    }

    void add(List<Point> points) {
        move(points.get(0));
        data.append('l');
        for (Point point : points.subList(1, points.size())) {
            to(point, x, y);
        }
    }

    private void move(Point point) {
        x = Math.round(point.x());
        y = Math.round(point.y());
        data.append('M').append(x);
        number(y);
    }

    private void to(Point point, long fromX, long fromY) {
        x = Math.round(point.x());
        y = Math.round(point.y());
        number(x - fromX);
        number(y - fromY);
    }

    /** A minus sign parts two numbers as a space does (SVG 1.1, 8.3.1). */
    private void number(long number) {
        char last = data.charAt(data.length() - 1);
        if (number >= 0 && Character.isDigit(last)) {
            data.append(' ');
        }
        data.append(number);
    }

    @Override
    public String toString() {
        return data.toString();
    }
}
