package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The lines of a cut as a person rules them: one that runs straight on is one line, and what begins on another line comes after it. */
final class SlashLines {
    /** Nearer to a line in mm than this, a point is on it. */
    private static final double AT = 0.5;

    /** Two lines that turn by less than this in radians are ruled in one stroke. */
    private static final double STRAIGHT = 1e-3;

    private final List<Path> lines;

    /** The name of a place on an edge or a mark. */
    private final Function<Point, Optional<String>> named;

    private SlashLines(List<Path> lines, Function<Point, Optional<String>> named) {
        this.lines = lines;
        this.named = named;
    }

    /** @param named what a place is called without the lines; empty for one in the middle of the paper */
    static SlashLines of(List<Path> cuts, Function<Point, Optional<String>> named) {
        List<Path> ruled = new ArrayList<>();
        for (Path cut : cuts) {
            Path last = ruled.isEmpty() ? cut : ruled.get(ruled.size() - 1);
            boolean runsOn = !ruled.isEmpty()
                    && named.apply(cut.start()).isEmpty()
                    && last.end().isCloseTo(cut.start(), AT)
                    && Math.abs(last.endTangent().angleTo(cut.startTangent())) < STRAIGHT;
            if (runsOn) {
                ruled.set(ruled.size() - 1, last.then(cut.withStart(last.end())));
            } else {
                ruled.add(cut);
            }
        }
        ruled.sort(Comparator.comparing(line -> open(line, named)));
        return new SlashLines(List.copyOf(ruled), named);
    }

    /** How many of its ends can only be told by another line. */
    private static int open(Path line, Function<Point, Optional<String>> named) {
        return (named.apply(line.start()).isEmpty() ? 1 : 0)
                + (named.apply(line.end()).isEmpty() ? 1 : 0);
    }

    /** In the order in which they are ruled, and numbered. */
    List<Path> lines() {
        return lines;
    }

    /** "from the bust apex to the hem, 94 mm from the centre front: 834.3 mm long". */
    List<String> told() {
        return lines.stream()
                .map(line -> {
                    String from = place(line.start(), line);
                    return "from " + from + (from.contains(", ") ? "," : "") + " to " + place(line.end(), line) + ": "
                            + StepWords.length(line.length()) + " long";
                })
                .toList();
    }

    private String place(Point point, Path own) {
        return named.apply(point).or(() -> onAnother(point, own)).orElse("the place where the lines meet");
    }

    private Optional<String> onAnother(Point point, Path own) {
        return lines.stream()
                .filter(line -> line != own && line.distanceTo(point) < AT)
                .findFirst()
                .map(line -> {
                    String name = "line " + (lines.indexOf(line) + 1);
                    if (point.isCloseTo(line.start(), AT)) {
                        return "the beginning of " + name;
                    }
                    return point.isCloseTo(line.end(), AT)
                            ? "the end of " + name
                            : name + ", " + StepWords.length(line.distanceAlong(line.nearest(point)))
                                    + " from its beginning";
                });
    }
}
