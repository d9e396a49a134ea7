package dev.hingepoint.pattern;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A dart inside the piece, running to nothing at both ends.
 *
 * @param first from one tip to the other
 * @param second back from the other tip to the first
 */
public record DoublePointedDart(String name, Path first, Path second) implements Dart {
    public DoublePointedDart {
        if (!first.end().equals(second.start()) || !second.end().equals(first.start())) {
            throw new IllegalArgumentException("the legs of the dart " + name + " must meet at both tips");
        }
    }

    /**
     * A dart drawn as one closed line that begins at a tip; the other tip is the joint farthest from it.
     *
     * @throws IllegalArgumentException where the line is not closed or has fewer than two segments
     */
    public static DoublePointedDart of(String name, Path closed) {
        if (!closed.start().equals(closed.end()) || closed.segments().size() < 2) {
            throw new IllegalArgumentException("the dart " + name + " must be one closed line");
        }
        int joints = closed.segments().size();
        int tip = IntStream.range(1, joints)
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> closed.segments().get(i).start().distanceTo(closed.start())))
                .orElseThrow();
        return new DoublePointedDart(
                name,
                Path.of(closed.segments().subList(0, tip)),
                Path.of(closed.segments().subList(tip, joints)));
    }

    public Path closed() {
        return first.then(second);
    }

    public Point firstTip() {
        return first.start();
    }

    public Point secondTip() {
        return first.end();
    }

    @Override
    public List<Path> legs() {
        return List.of(first, second);
    }

    @Override
    public List<Path> legsFromTip() {
        return List.of(first, second.reversed());
    }

    @Override
    public DoublePointedDart moved(Motion motion) {
        return new DoublePointedDart(name, first.moved(motion), second.moved(motion));
    }
}
