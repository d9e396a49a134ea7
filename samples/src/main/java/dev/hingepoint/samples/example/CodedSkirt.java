package dev.hingepoint.samples.example;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Pieces built in code, altered and printed: the front and back of a plain skirt with an elastic waist, in one size.
 *
 * <p>A piece is its edges in order round it, either way, and what is drawn on it; x runs out from the centre line, y down, all in mm. It is held to be sound
 * as it is built, so a gap or a crossing is refused here, by name.
 *
 * <p>Run it: {@code java -cp samples/target/hingepoint.jar dev.hingepoint.samples.example.CodedSkirt skirt}
 */
public final class CodedSkirt {
    private static final double HIP = 270;
    private static final double HIP_DEPTH = 200;
    private static final double LENGTH = 620;
    private static final double FLARE = 40;

    private CodedSkirt() {}

    /** @param arguments the folder to write to */
    public static void main(String[] arguments) {
        java.nio.file.Path folder = java.nio.file.Path.of(arguments.length == 0 ? "skirt" : arguments[0]);
        Order order = Order.of(
                "40", AlterationRequest.of("lengthen").with("by", "60 mm").with("at", "hip"));
        Fitting fitting = Fitting.of(skirt(), order);
        for (String piece : List.of("front", "back")) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: side seam %.1f mm, was %.1f mm%n",
                    piece,
                    fitting.after().piece(piece).sewnLength("side seam"),
                    fitting.before().piece(piece).sewnLength("side seam"));
        }
        PatternFiles.write(fitting.after().pattern(), folder, "skirt");
        Printing.write(Printing.print(fitting.after(), PrintOptions.of(Paper.A4)), folder);
    }

    /** The pattern: two pieces, and the one seam that joins them. */
    static Pattern skirt() {
        Piece front = quarter("front", "centre front", 15);
        Piece back = quarter("back", "centre back", 8);
        Seam sides = Seam.of(new EdgeRef("front", "side seam"), new EdgeRef("back", "side seam"));
        return new Pattern(Card.of("Choir skirt", "40", List.of(sides)), List.of(front, back));
    }

    /** A quarter of the skirt, on the fold; the waist dips so many mm at the centre. */
    private static Piece quarter(String name, String centre, double dip) {
        Point waistAtCentre = new Point(0, dip);
        Point waistAtSide = new Point(HIP - 10, 0);
        Point hipAtSide = new Point(HIP, HIP_DEPTH);
        Point hemAtSide = new Point(HIP + FLARE, LENGTH - 4);
        Point hemAtCentre = new Point(0, LENGTH + dip);
        Path waist = Path.of(new Cubic(waistAtCentre, new Point(90, dip), new Point(180, 4), waistAtSide));
        Path side = Path.of(
                new Cubic(waistAtSide, new Point(HIP - 4, 70), new Point(HIP - 6, 140), hipAtSide),
                new Line(hipAtSide, hemAtSide));
        Path hem = Path.of(new Cubic(hemAtSide, new Point(200, LENGTH + 8), new Point(100, LENGTH + dip), hemAtCentre));
        return Piece.of(
                name,
                "40",
                Optional.empty(),
                List.of(Cutting.onFold()),
                List.of(
                        Edge.seam("waist", waist),
                        Edge.seam("side seam", side),
                        Edge.hem("hem", hem),
                        Edge.fold(centre, Path.through(hemAtCentre, waistAtCentre))),
                List.of(
                        new Level("hip", Path.through(new Point(0, HIP_DEPTH), hipAtSide)),
                        new Grain(new Line(new Point(60, 120), new Point(60, 480)))));
    }
}
