package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Words in a picture stay in it, and off one another, wherever what they name lies and however long they are. */
class LabelsTest {
    private static final Box BOX = new Box(0, 0, 100, 60);

    /** So near to one another that no words fit between. */
    private static final List<Stroke> LINES = IntStream.range(1, 60)
            .mapToObj(y -> Stroke.of(Style.LEVEL, new Point(0, y), new Point(100, y)))
            .toList();

    private static void isIn(Box box, Text text) {
        Box room = text.bounds();
        assertTrue(
                room.left() >= box.left()
                        && room.right() <= box.right()
                        && room.top() >= box.top()
                        && room.bottom() <= box.bottom(),
                text.words() + " takes " + room);
    }

    private static boolean overlap(Text one, Text other) {
        Box a = one.bounds();
        Box b = other.bounds();
        return a.left() < b.right() && b.left() < a.right() && a.top() < b.bottom() && b.top() < a.bottom();
    }

    @Test
    void amongLinesWordsStandOnLinesAndNotOnOneAnother() {
        Labels labels = new Labels(BOX, LINES, Unit.MILLIMETRE);
        List.of("side seam +11.5 mm", "hip +31.6 mm", "armhole -30 mm")
                .forEach(words -> labels.name(words, new Point(50, 30)));
        List<Text> texts = labels.texts();
        assertEquals(3, texts.size());
        texts.forEach(text -> isIn(BOX, text));
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(!overlap(texts.get(i), texts.get(j)), texts.get(i) + " lies over " + texts.get(j));
            }
        }
    }

    @Test
    void whatLiesOutsideThePictureIsNamedAtItsEdge() {
        Labels labels = new Labels(BOX, List.of(), Unit.MILLIMETRE);
        labels.name("1107.2 mm", new Point(140, 260));
        isIn(BOX, labels.texts().get(0));
        labels.leaders().forEach(leader -> leader.points().forEach(point -> assertEquals(0, BOX.distanceTo(point))));
    }

    @Test
    void ofANameThatIsTooLongBothEndsAreSaid() {
        Labels labels = new Labels(BOX, List.of(), Unit.MILLIMETRE);
        labels.name("thread \uD83E\uDDF5 ".repeat(30) + "level +5.5 mm", new Point(50, 30));
        Text text = labels.texts().get(0);
        isIn(BOX, text);
        assertTrue(text.words().startsWith("thread"), text.words());
        assertTrue(text.words().contains("\u2026"), text.words());
        assertTrue(text.words().endsWith("+5.5 mm"), text.words());
        assertTrue(text.words().codePoints().noneMatch(c -> c >= 0xD800 && c < 0xE000), text.words());
    }

    /** The middle of the line is hemmed in by another on its right; there is room without a line between farther along. */
    @Test
    void wordsStandOnTheSideOfTheirLine() {
        Stroke own = Stroke.of(Style.STITCHING, new Point(4, 0), new Point(4, 60));
        Stroke other = Stroke.of(Style.STITCHING, new Point(10, 0), new Point(10, 45));
        Labels labels = new Labels(BOX, List.of(own, other), Unit.MILLIMETRE);
        labels.name("centre front +19 mm", List.of(new Point(4, 30), new Point(4, 55)));
        assertTrue(labels.texts().get(0).bounds().top() > 45, labels.texts().toString());
        assertEquals(List.of(), labels.leaders());
    }

    @Test
    void inAPictureThatIsFullWordsStillStandInIt() {
        Box small = new Box(0, 0, 30, 6);
        Labels labels = new Labels(small, LINES, Unit.MILLIMETRE);
        labels.name("waist", new Point(15, 3));
        labels.name("hip", new Point(15, 3));
        labels.texts().forEach(text -> isIn(small, text));
    }
}
