package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import dev.hingepoint.svg.print.FreeSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Words in a picture, each near what it names, clear of lines and of one another; farther off with a leader line. */
final class Labels {
    /** To be read at arm's length, in mm. */
    static final double SIZE = 4.2;

    private static final double CLEAR = 0.8;
    private static final int DIRECTIONS = 16;
    private static final double STEP = 2;
    private static final double FARTHEST = 70;

    /** Words that stand no farther than this, in mm, from what they name need no leader. */
    private static final double NEAR = 4;

    private final Box box;
    private final FreeSpace free;

    /** The same room as if no lines were drawn. */
    private final FreeSpace overLines;

    private final List<Text> texts = new ArrayList<>();
    private final List<Stroke> leaders = new ArrayList<>();

    private final Unit unit;

    /** @param lines that words keep clear of */
    Labels(Box box, List<Stroke> lines, Unit unit) {
        this.unit = unit;
        this.box = box;
        this.free = FreeSpace.within(box, CLEAR);
        this.overLines = FreeSpace.within(box, CLEAR);
        lines.forEach(free::take);
    }

    /**
     * Words at the nearest free place to what they name, or to where the picture ends towards it; over lines, where there is no such place, and over other words only where the
     * picture is full of them.
     */
    void name(String words, Point named) {
        String told = fitting(Length.retold(words, unit));
        Point at = within(named);
        Text text = free.place(candidates(told, at))
                .or(() -> overLines.place(Stream.concat(Stream.of(centred(told, at)), candidates(told, at))))
                .orElseGet(() -> shifted(centred(told, at)));
        set(text);
        Box room = text.bounds();
        if (room.distanceTo(at) > NEAR) {
            Point edge = new Point(
                    Math.max(room.left() - 1, Math.min(room.right() + 1, at.x())),
                    Math.max(room.top() - 1, Math.min(room.bottom() + 1, at.y())));
            Stroke leader = Stroke.of(Style.LEADER, edge, at);
            leaders.add(leader);
            free.take(leader);
        }
    }

    /** The same where there is a place near; what is drawn says enough without it. */
    void nameNear(String words, Point at, double within) {
        Optional<Text> found = free.place(candidates(Length.retold(words, unit), at)
                .filter(text -> text.bounds().distanceTo(at) <= within));
        found.ifPresent(this::set);
    }

    private void set(Text text) {
        texts.add(text);
        free.take(text);
        overLines.take(text);
    }

    /** The nearest point of the picture. */
    private Point within(Point point) {
        return new Point(
                Math.max(box.left(), Math.min(box.right(), point.x())),
                Math.max(box.top(), Math.min(box.bottom(), point.y())));
    }

    /** No wider than the picture: of a longer name the middle is left out, since names differ at their ends. */
    private String fitting(String words) {
        int[] letters = words.codePoints().toArray();
        String fitting = words;
        for (int left = letters.length - 1; left > 0 && Type.width(fitting, SIZE) > box.width(); left--) {
            int first = left / 2;
            fitting = new String(letters, 0, first).stripTrailing() + "\u2026"
                    + new String(letters, letters.length - left + first, left - first).stripLeading();
        }
        return fitting;
    }

    /** The same words, moved into the picture. */
    private Text shifted(Text text) {
        Box room = text.bounds();
        double right = Math.max(0, box.left() - room.left()) - Math.max(0, room.right() - box.right());
        double down = Math.max(0, box.top() - room.top()) - Math.max(0, room.bottom() - box.bottom());
        return text.moved(Motion.shift(new Vector(right, down)));
    }

    List<Text> texts() {
        return texts;
    }

    List<Stroke> leaders() {
        return leaders;
    }

    private static Stream<Text> candidates(String words, Point at) {
        double half = Type.width(words, SIZE) / 2;
        return IntStream.iterate(1, i -> i * STEP <= FARTHEST, i -> i + 1)
                .boxed()
                .flatMap(i -> IntStream.range(0, DIRECTIONS).mapToObj(j -> {
                    Vector out = Vector.ofAngle(2 * StrictMath.PI * j / DIRECTIONS);
                    return centred(
                            words, at.plus(out.times(i * STEP)).plus(new Vector(out.x() * half, out.y() * SIZE / 2)));
                }));
    }

    private static Text centred(String words, Point middle) {
        double down = (Text.ABOVE - Text.BELOW) / 2 * SIZE;
        return new Text(words, middle.plus(new Vector(-Type.width(words, SIZE) / 2, down)), SIZE, 0);
    }
}
