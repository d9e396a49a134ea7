package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Point;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One step as a task: all that is needed to do it with scissors and a pencil, and what of it is printed on the piece. */
final class ExerciseTask {
    /** Nearer to a line or a point in mm than this, that is meant. */
    private static final double AT = 0.5;

    /** Radius in mm of a hinge. */
    private static final double HINGE = 3;

    private final Step step;
    private final Piece printed;

    /** @param printed the piece as it is handed out */
    ExerciseTask(Step step, Piece printed) {
        this.step = step;
        this.printed = printed;
    }

    String words() {
        List<String> told = new ArrayList<>();
        if (step.isCut()) {
            told.add(isPrinted() ? "On the " + name() + ", " + printedLines() : new StepWords(step).lines());
            told.add(new StepWords(step).slashed());
            clipped().ifPresent(told::add);
            told.add(step.caption());
        } else {
            told.add("On the " + name() + ": " + step.caption());
            new Redrawn(step.before(), step.after()).lines(step.lines()).ifPresent(told::add);
        }
        return String.join(" ", told.stream().map(Words::sentence).toList());
    }

    private String name() {
        return step.before().name();
    }

    private String printedLines() {
        int lines = step.lines().size();
        return lines == 1 ? "line 1 is drawn" : "lines 1 " + (lines == 2 ? "and " : "to ") + lines + " are drawn";
    }

    /** Whether the lines of a cut can be drawn on the piece as it is handed out: no step before has made another of it. */
    private boolean isPrinted() {
        return step.isCut() && step.before().edges().equals(printed.edges());
    }

    /** Outside a hinge on the stitching line lies its seam allowance, which must give way. */
    private Optional<String> clipped() {
        List<String> edges = step.hinges().stream()
                .map(step.before()::nearest)
                .filter(this::isUnderAllowance)
                .map(spot -> "the " + spot.edge())
                .distinct()
                .toList();
        boolean isFolded = step.parts().stream().anyMatch(Step.Part::isFolded);
        return edges.isEmpty()
                ? Optional.empty()
                : Optional.of((isFolded ? "Clip" : "Begin at the cutting line, and clip")
                        + " the seam allowance to the hinge at " + Words.joined(edges)
                        + ", so that the paper can turn flat");
    }

    private boolean isUnderAllowance(Spot spot) {
        Edge edge = step.before().edge(spot.edge());
        return edge.kind().takesAllowance()
                && step.hinges().stream().anyMatch(hinge -> hinge.isCloseTo(spot.point(), AT));
    }

    /** The piece with the lines and the hinges of the step, where they lie on it. */
    Piece on(Piece drawn) {
        if (!isPrinted()) {
            return drawn;
        }
        Piece marked = drawn;
        for (int i = 0; i < step.lines().size(); i++) {
            marked = marked.withMark(
                    new DrawnLine("line " + (i + 1), step.lines().get(i)));
        }
        List<Point> hinges = step.hinges().stream().filter(this::isUnmarked).toList();
        for (int i = 0; i < hinges.size(); i++) {
            marked = marked.withMark(new MarkedPoint(i == 0 ? "hinge" : "hinge " + (i + 1), hinges.get(i), HINGE));
        }
        return marked;
    }

    private boolean isUnmarked(Point hinge) {
        return printed.marks(MarkedPoint.class).noneMatch(mark -> mark.at().isCloseTo(hinge, AT));
    }
}
