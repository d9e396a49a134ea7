package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Text;
import java.util.List;
import java.util.stream.Stream;

/**
 * A block under a heading in larger type.
 *
 * @param larger how many times as large the heading is set
 */
record Headed(Block heading, double larger, Block body) {
    /** Set round (0, 0), as {@link Block#set} does. */
    List<Text> set(double size, double angle) {
        double headingSize = size * larger;
        Vector along = Vector.ofAngle(angle);
        Vector down = along.right();
        double broader = heading.width(headingSize) - body.width(size);
        Motion up = shift(down.times(-body.height(size) / 2), along.times(Math.max(0, -broader) / -2));
        Motion low = shift(down.times(heading.height(headingSize) / 2), along.times(Math.max(0, broader) / -2));
        return Stream.concat(
                        heading.set(headingSize, angle).stream().map(text -> text.moved(up)),
                        body.set(size, angle).stream().map(text -> text.moved(low)))
                .toList();
    }

    private static Motion shift(Vector one, Vector other) {
        return Motion.shift(one.plus(other));
    }
}
