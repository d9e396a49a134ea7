package dev.hingepoint.svg.lesson;

import dev.hingepoint.check.Ledger;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Area;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Tint;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A lesson drawn by hand, with all that a page has to show: a back with a hem that goes down by up to 24 mm, at 1:5. */
final class MadeUpLesson {
    static final int FRAMES = 13;
    /** What the page does not ask for. */
    private static final Draft DRAFT =
            PatternFiles.read(Path.of("../samples/patterns/larkfield.yaml")).in("40");

    private static final double SCALE = 0.2;
    private static final Box BOX = new Box(0, 0, 60, 100);

    private MadeUpLesson() {}

    static Lesson lesson() {
        return named("back");
    }

    /** The same, where that is told of each frame. */
    static Lesson telling(String told) {
        Carry plain = carry();
        return lesson(
                "back",
                new Carry(
                        plain.box(),
                        plain.moves(),
                        plain.frames().stream()
                                .map(frame -> new Carry.Frame(frame.fraction(), told, frame.lines()))
                                .toList(),
                        plain.places()));
    }

    /** The same with a piece, and all that is told of it, of some name. */
    static Lesson named(String piece) {
        return lesson(piece, carry());
    }

    private static Lesson lesson(String piece, Carry carry) {
        List<Scene> scenes = List.of(
                scene(Scene.Kind.AS_IT_WAS, "The " + piece + " as it was drawn, before anything is cut.", piece, 0),
                scene(Scene.Kind.LINES, "Draw a line across the " + piece + ", 60 mm above the hem.", piece, 0),
                scene(Scene.Kind.SLASHED, "Cut the " + piece + " apart on that line.", piece, 0),
                scene(Scene.Kind.MOVED, "Move the lower part down by 24 mm, along the grain.", piece, 4.8),
                scene(Scene.Kind.COMPARED, "Before, dotted; and after. The hem went down by 24 mm.", "", 4.8));
        Ledger.Entry changed = new Ledger.Entry(
                "lengthen",
                Map.of("amount", 24.0),
                List.of(),
                List.of(
                        new Ledger.EdgeLine(piece, "centre back", 400, 424),
                        new Ledger.EdgeLine(piece, "side seam", 300.26, 323.94),
                        new Ledger.EdgeLine(piece, "neckline", 80, 80),
                        new Ledger.EdgeLine(piece, "shoulder", 128.3, 128.34)),
                List.of(new Ledger.GirthLine("hip", 1000, 998.5), new Ledger.GirthLine("bust", 930, 930)),
                List.of("the lining of the " + piece + " is not drawn: lengthen it as well"));
        return new Lesson(
                "lengthen",
                "amount: 24 mm",
                Unit.MILLIMETRE,
                DRAFT,
                DRAFT,
                List.of(),
                scenes,
                carry,
                changed,
                List.of("keeps the length of the neckline, on the " + piece),
                List.of("the hem is 2 mm less square to the centre back of the " + piece),
                Optional.of(why("a body that is longer from waist to hip than the " + piece + " is drawn for")));
    }

    private static Why why(String calledForBy) {
        Why why = Why.of("lengthen").orElseThrow();
        return new Why(
                calledForBy,
                why.withoutIt(),
                why.without(),
                why.confusedWith(),
                why.right(),
                why.wrong(),
                why.sources());
    }

    private static Scene scene(Scene.Kind kind, String caption, String piece, double down) {
        List<Point> now = outline(down);
        Area part = new Area(Tint.FIRST, now);
        Drawn drawn = new Drawn(
                List.of(part),
                List.of(
                        new Stroke(Style.BEFORE, closed(outline(0))),
                        new Stroke(Style.STITCHING, closed(now)),
                        new Stroke(Style.CUTTING, List.of(new Point(52, 5), new Point(52, 95))),
                        Stroke.of(Style.LEVEL, new Point(5, 40), new Point(48, 40)),
                        Stroke.of(Style.SLASH, new Point(3, 73), new Point(50, 73))),
                List.of(new Text(kind.words(), new Point(10, 20), 4, 0)));
        return new Scene(kind, caption, piece, SCALE, drawn, BOX);
    }

    private static List<Point> outline(double down) {
        return List.of(
                new Point(5, 5),
                new Point(20, 5),
                new Point(45, 10),
                new Point(48, 85 + down),
                new Point(5, 85 + down));
    }

    private static List<Point> closed(List<Point> ring) {
        return IntStream.rangeClosed(0, ring.size())
                .mapToObj(i -> ring.get(i % ring.size()))
                .toList();
    }

    private static Carry carry() {
        List<Carry.Frame> frames = IntStream.range(0, FRAMES)
                .mapToObj(i -> {
                    int down = 2400 * i / (FRAMES - 1);
                    return new Carry.Frame(
                            i / (FRAMES - 1.0),
                            down / 100 + " mm of 24 mm",
                            List.of(
                                    new Carry.Line(
                                            Layer.STITCHING,
                                            Style.STITCHING,
                                            "M2500 2500L10000 2500C15000 3000 20000 3500 22500 5000L24000 "
                                                    + (42500 + down) + "L2500 " + (42500 + down) + "Z"),
                                    new Carry.Line(Layer.CUTTING, Style.CUTTING, "M26000 2500L26000 " + (45000 + down)),
                                    new Carry.Line(Layer.MARKS, Style.LEVEL, "M2500 20000L24000 20000"),
                                    new Carry.Line(Layer.MARKS, Style.DART, "")));
                })
                .toList();
        return new Carry(new Box(0, 0, 30000, 50000), new Box(2000, 30000, 8000, 40000), frames, Map.of());
    }
}
