package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What a person does at one stage of a step, from the step's own lines, hinges, parts and fills. */
final class StepWords {
    /** Nearer to a corner or a point in mm than this, that is meant. */
    private static final double AT = 0.5;

    /** How wide in mm a pencil draws, about. */
    static final double PENCIL = 0.3;

    private static final double SIXTEENTH = Unit.INCH.inMillimetres() / 16;

    private final Step step;
    private final Piece piece;
    private final SlashLines ruled;

    StepWords(Step step) {
        this.step = step;
        this.piece = step.before();
        this.ruled = SlashLines.of(step.lines(), this::place);
    }

    /** As they are numbered in {@link #lines()}. */
    List<Path> numbered() {
        return ruled.lines();
    }

    /** "Draw a line from the centre back, 398 mm from the neckline, to the side seam, 190 mm from the armhole: 236 mm long". */
    String lines() {
        List<String> told = ruled.told();
        return told.size() == 1
                ? "On the " + piece.name() + " draw a line " + told.get(0)
                : "On the " + piece.name() + " draw " + told.size() + " lines: "
                        + IntStream.range(0, told.size())
                                .mapToObj(i -> (i + 1) + ") " + told.get(i))
                                .collect(Collectors.joining("; "));
    }

    String slashed() {
        boolean isFolded = step.parts().stream().anyMatch(Step.Part::isFolded);
        String along = isFolded ? folded() : "Cut along " + (step.lines().size() == 1 ? "the line" : "the lines");
        if (step.hinges().isEmpty()) {
            return along + (isFolded ? "; there are " : ", into ")
                    + step.parts().size() + " parts";
        }
        List<String> hinges =
                step.hinges().stream().map(this::shortPlace).distinct().toList();
        return along + ", up to but not through " + Words.joined(hinges)
                + ": there the paper hangs together, by a hinge";
    }

    private String folded() {
        return numbered().size() == 2
                ? "Fold along line 1 and lay it on line 2, or cut along both"
                : "Cut, or fold, along the lines";
    }

    /** "B moves by 12 mm at most". */
    static String goes(Step.Part part, String name, double far) {
        if (part.isFolded()) {
            return name + " is folded away";
        }
        return far > 0 ? name + " moves by " + length(far) + " at most" : name + " stays";
    }

    /** The step's own words, and where each part goes. */
    String moved(List<String> parts) {
        return step.caption() + ". " + String.join(", ", parts);
    }

    /**
     * What is done where the parts have gone.
     *
     * @param opens whether paper is let in
     * @param overlaps whether paper lies double
     */
    String rejoined(boolean opens, boolean overlaps) {
        List<String> told = new ArrayList<>();
        if (opens) {
            Map<String, Double> widths = new LinkedHashMap<>();
            for (Path fill : step.fills()) {
                String edge =
                        step.after().nearest(fill.start().midpoint(fill.end())).edge();
                widths.merge(edge, fill.length(), Double::sum);
            }
            List<String> gaps = new ArrayList<>();
            widths.forEach((edge, width) -> gaps.add(length(width) + " at the " + edge));
            told.add("Lay paper under the gap and tape it" + (gaps.isEmpty() ? "" : ": " + Words.joined(gaps)));
        }
        if (overlaps) {
            told.add("Tape down what lies double, and cut off what stands out below");
        }
        if (step.parts().stream().anyMatch(Step.Part::isFolded)) {
            told.add("Tape the fold down flat");
        }
        return told.isEmpty() ? "Tape the parts together" : String.join(". ", told);
    }

    /**
     * The step's own words, and how far the line moves.
     *
     * @param unit it is told in: less than a ruler of that unit shows nobody can draw
     */
    String trued(double farthest, Unit unit) {
        if (farthest < Tolerance.LAST_DECIMAL) {
            return step.caption();
        }
        String moves = step.caption() + "; the line moves by ";
        if (farthest < PENCIL) {
            return moves + "less than the width of a pencil line";
        }
        return moves
                + (unit == Unit.INCH && farthest < SIXTEENTH ? "less than 1/16 in" : length(farthest) + " at most");
    }

    /** The edge, and how far along it from the nearer end; a marked point by its name; empty where there is neither. */
    private Optional<String> place(Point point) {
        return marked(point).or(() -> corner(point)).or(() -> {
            Spot spot = piece.nearest(point);
            if (!spot.point().isCloseTo(point, AT)) {
                return Optional.empty();
            }
            Path path = piece.edge(spot.edge()).path();
            double along = path.distanceAlong(spot.position());
            boolean isNearStart = along <= path.length() / 2;
            Edge neighbour = isNearStart ? piece.before(spot.edge()) : piece.after(spot.edge());
            return Optional.of("the " + spot.edge() + ", " + length(isNearStart ? along : path.length() - along)
                    + " from the " + neighbour.name());
        });
    }

    private String shortPlace(Point point) {
        return marked(point)
                .or(() -> corner(point))
                .orElseGet(() -> piece.nearest(point).point().isCloseTo(point, AT)
                        ? "the " + piece.nearest(point).edge()
                        : "the place where the lines meet");
    }

    private Optional<String> marked(Point point) {
        return piece.marks(MarkedPoint.class)
                .filter(mark -> mark.at().isCloseTo(point, AT))
                .map(mark -> "the " + mark.name())
                .findFirst();
    }

    private Optional<String> corner(Point point) {
        return piece.edges().stream()
                .filter(edge -> edge.path().start().isCloseTo(point, AT))
                .map(edge -> "the corner of " + piece.before(edge.name()).name() + " and " + edge.name())
                .findFirst();
    }

    /** "12.3 mm"; what is less than 1 mm to a hundredth, as a length is told. */
    static String length(double mm) {
        Length length = new Length(mm);
        return (mm < 1 ? length : length.tenths()).toString();
    }
}
