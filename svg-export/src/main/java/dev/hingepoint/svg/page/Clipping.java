package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import java.util.ArrayList;
import java.util.List;

/** Cuts strokes off at a rectangle, exactly (Liang and Barsky, 1984). */
public final class Clipping {
    private Clipping() {}

    /** The parts of a stroke inside the box, in order. */
    public static List<Stroke> clipped(Stroke stroke, Box box) {
        List<Stroke> parts = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        double travelled = stroke.before();
        double before = travelled;
        for (int i = 1; i < stroke.points().size(); i++) {
            Point from = stroke.points().get(i - 1);
            Point to = stroke.points().get(i);
            double[] inside = inside(from, to, box);
            double length = from.distanceTo(to);
            if (inside == null || run.isEmpty() || inside[0] > 0) {
                end(stroke.style(), before, run, parts);
            }
            if (inside != null) {
                if (run.isEmpty()) {
                    run.add(from.towards(to, inside[0]));
                    before = travelled + inside[0] * length;
                }
                run.add(from.towards(to, inside[1]));
                if (inside[1] < 1) {
                    end(stroke.style(), before, run, parts);
                }
            }
            travelled += length;
        }
        end(stroke.style(), before, run, parts);
        return parts;
    }

    private static void end(Style style, double before, List<Point> run, List<Stroke> parts) {
        if (run.size() > 1) {
            parts.add(new Stroke(style, run, before));
        }
        run.clear();
    }

    /** From where to where, as fractions of the way, a line is inside; null where it never is. */
    private static double[] inside(Point from, Point to, Box box) {
        double[] range = {0, 1};
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        boolean isInside = cut(-dx, from.x() - box.left(), range)
                && cut(dx, box.right() - from.x(), range)
                && cut(-dy, from.y() - box.top(), range)
                && cut(dy, box.bottom() - from.y(), range);
        return isInside && range[0] < range[1] ? range : null;
    }

    private static boolean cut(double speed, double room, double[] range) {
        if (speed == 0) {
            return room >= 0;
        }
        double at = room / speed;
        if (speed < 0) {
            range[0] = Math.max(range[0], at);
        } else {
            range[1] = Math.min(range[1], at);
        }
        return range[0] <= range[1];
    }
}
