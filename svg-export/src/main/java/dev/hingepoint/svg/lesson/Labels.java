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
import java.util.Comparator;
import java.util.List;
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

    /** A leader no longer than this in mm may rather cross a line than be longer. */
    private static final double SHORT = 20;

    /** Lines so near in mm to what is named, as a line lies to its old course, do not come between. */
    private static final double OWN = 2;

    private final Box box;
    private final FreeSpace free;

    /** The same room as if no lines were drawn. */
    private final FreeSpace overLines;

    private final List<Text> texts = new ArrayList<>();
    private final List<Stroke> leaders = new ArrayList<>();

    /** What a leader should not cross: lines, and words with their leaders. */
    private final List<Stroke> crossed;

    private final Unit unit;

    /** @param lines that words keep clear of */
    Labels(Box box, List<Stroke> lines, Unit unit) {
        this.unit = unit;
        this.box = box;
        this.free = FreeSpace.within(box, CLEAR);
        this.overLines = FreeSpace.within(box, CLEAR);
        this.crossed = new ArrayList<>(lines);
        lines.forEach(free::take);
    }

    /** Words for a place. */
    void name(String words, Point named) {
        name(words, List.of(named));
    }

    /**
     * Words at the nearest free place to what they name, or to where the picture ends towards it, from which no line lies between, or else as few as may be; over lines, where
     * there is no such place, and over other words only where the picture is full of them.
     *
     * @param along places on what is named, the best first
     */
    void name(String words, List<Point> along) {
        String told = fitting(Length.retold(words, unit));
        List<Point> at = along.stream().map(this::within).toList();
        Point best = at.get(0);
        Text text = free.place(candidates(told, at).filter(found -> isShort(found, at) && crossings(found, at) == 0))
                .or(() -> free.place(
                        candidates(told, at).filter(found -> isShort(found, at) && crossings(found, at) == 1)))
                .or(() -> free.place(candidates(told, at).filter(found -> crossings(found, at) == 0)))
                .or(() -> free.place(candidates(told, at).filter(found -> crossings(found, at) == 1)))
                .or(() -> free.place(candidates(told, at)))
                .or(() -> overLines.place(Stream.concat(Stream.of(centred(told, best)), candidates(told, at))))
                .orElseGet(() -> shifted(centred(told, best)));
        Stroke leader = leader(text, at);
        set(text);
        if (text.bounds().distanceTo(nearest(text, at)) > NEAR) {
            leaders.add(leader);
            crossed.add(leader);
            free.take(leader);
        }
    }

    /** The same where there is a place near; what is drawn says enough without it. */
    void nameNear(String words, Point at, double within) {
        nameNear(words, List.of(at), within);
    }

    /** The same, beside a line. */
    void nameNear(String words, List<Point> along, double within) {
        free.place(candidates(Length.retold(words, unit), along)
                        .filter(text -> text.bounds().distanceTo(nearest(text, along)) <= within
                                && crossings(text, along) == 0))
                .ifPresent(this::set);
    }

    private void set(Text text) {
        texts.add(text);
        free.take(text);
        overLines.take(text);
        crossed.add(new Stroke(Style.LEADER, text.corners()));
    }

    private static Point nearest(Text text, List<Point> along) {
        return along.stream()
                .min(Comparator.comparingDouble(at -> text.bounds().distanceTo(at)))
                .orElseThrow();
    }

    /** From the words to what they name. */
    private static Stroke leader(Text text, List<Point> along) {
        Point at = nearest(text, along);
        Box room = text.bounds();
        Point edge = new Point(
                Math.max(room.left() - 1, Math.min(room.right() + 1, at.x())),
                Math.max(room.top() - 1, Math.min(room.bottom() + 1, at.y())));
        return Stroke.of(Style.LEADER, edge, at);
    }

    private static boolean isShort(Text text, List<Point> along) {
        return text.bounds().distanceTo(nearest(text, along)) <= SHORT;
    }

    /** How often a leader from there would cross what is drawn, but for what lies close to what is named. */
    private long crossings(Text text, List<Point> along) {
        Point from = leader(text, along).points().get(0);
        Point at = nearest(text, along);
        double length = from.distanceTo(at);
        if (length <= OWN) {
            return 0;
        }
        Point until = at.plus(from.minus(at).times(OWN / length));
        return crossed.stream()
                .mapToLong(stroke -> IntStream.range(1, stroke.points().size())
                        .filter(i -> cross(
                                from,
                                until,
                                stroke.points().get(i - 1),
                                stroke.points().get(i)))
                        .count())
                .sum();
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return side(a, b, c) != side(a, b, d) && side(c, d, a) != side(c, d, b);
    }

    private static boolean side(Point from, Point to, Point point) {
        return (to.x() - from.x()) * (point.y() - from.y()) > (to.y() - from.y()) * (point.x() - from.x());
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

    private static Stream<Text> candidates(String words, List<Point> along) {
        return IntStream.iterate(1, i -> i * STEP <= FARTHEST, i -> i + 1)
                .boxed()
                .flatMap(i -> along.stream().flatMap(at -> round(words, at, i * STEP)));
    }

    private static Stream<Text> round(String words, Point at, double far) {
        double half = Type.width(words, SIZE) / 2;
        return IntStream.range(0, DIRECTIONS).mapToObj(j -> {
            Vector out = Vector.ofAngle(2 * StrictMath.PI * j / DIRECTIONS);
            return centred(words, at.plus(out.times(far)).plus(new Vector(out.x() * half, out.y() * SIZE / 2)));
        });
    }

    private static Text centred(String words, Point middle) {
        double down = (Text.ABOVE - Text.BELOW) / 2 * SIZE;
        return new Text(words, middle.plus(new Vector(-Type.width(words, SIZE) / 2, down)), SIZE, 0);
    }
}
