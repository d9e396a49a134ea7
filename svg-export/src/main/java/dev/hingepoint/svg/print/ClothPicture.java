package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Draws a {@link ClothLayout} small: the cloth upright, or lying where it is then larger. Words keep their size, and keep clear of lines and of one another. */
final class ClothPicture {
    /** Sizes of type in mm: of the heading and of what is below it; of names on pieces, the best first. */
    private static final double HEADING = 4.2;

    private static final double TYPE = 3.2;
    private static final List<Double> NAMES = List.of(4.2, 3.2, 2.5);
    private static final double SMALLEST = 2.5;

    /** Room in mm beside the cloth for its lengths, and at its end. */
    private static final double SIDE = 14;

    private static final double END = 4;

    /** Lengths are marked each so many mm of cloth; written only where the last is so far away on paper. */
    private static final double MARKED = 500;

    private static final double BETWEEN_WORDS = 5;
    private static final double TICK = 2;
    private static final double HEAD = 1.6;
    private static final double CLEAR = 0.5;

    /** Names are tried at so many places across a piece and down it; beside it at places so far apart. */
    private static final int PLACES = 24;

    private static final double STEP = 2;

    private final ClothLayout cloth;
    private final Box room;
    private final Motion small;
    private final double scale;
    private final boolean isLying;
    private final List<ClothPiece> onPaper;
    private final List<PreparedGeometry> grounds;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final FreeSpace free;

    /** All over the room, from its middle outwards. */
    private final List<Point> places;

    ClothPicture(ClothLayout cloth, double width, double height) {
        this.cloth = cloth;
        this.room = new Box(0, 0, width, height);
        this.free = FreeSpace.within(room, CLEAR);
        this.places = places(room, STEP, STEP);
        double top = heading(width);
        double down = height - top - END;
        double upright = Math.min((width - SIDE - END) / cloth.width(), down / cloth.needed());
        double lying = Math.min((width - END) / cloth.needed(), (down - SIDE) / cloth.width());
        this.isLying = lying > upright;
        this.scale = Math.max(upright, lying);
        // a lying cloth begins at the left, and is turned, not mirrored
        this.small = isLying
                ? new Motion(0, scale, -scale, 0, 1, top + scale * cloth.width())
                : Motion.enlargement(scale).then(Motion.shift(new Vector(SIDE, top)));
        this.onPaper = cloth.pieces().stream().map(piece -> piece.moved(small)).toList();
        this.grounds = onPaper.stream()
                .map(piece -> PreparedGeometryFactory.prepare(piece.ground()))
                .toList();
    }

    /** Sets the heading and what the numbers on the pieces mean, and says how far down that reaches. */
    private double heading(double width) {
        List<String> numbered = cloth.names().stream()
                .map(name -> cloth.number(name) + " " + name)
                .toList();
        double y = write(cloth.sentence(), HEADING, width, 0);
        y = write(
                cloth.title() + ": one open layer, right side up, the grain along the cloth"
                        + (cloth.isOneWay() ? ", all pieces the same way up" : "")
                        + ". Solid: selvedges. Not to scale.",
                TYPE,
                width,
                y);
        return write(String.join(", ", numbered), TYPE, width, y) + END;
    }

    private double write(String words, double size, double width, double top) {
        double y = top;
        for (String line : Type.wrapped(words, width, width, size)) {
            y += 1.3 * size;
            Text text = new Text(line, new Point(0, y - 0.3 * size), size, 0);
            texts.add(text);
            free.take(text);
        }
        return y;
    }

    Drawn drawn() {
        cloth();
        onPaper.forEach(piece -> {
            piece.outlines().forEach(this::draw);
            piece.grain().ifPresent(this::arrow);
        });
        onPaper.forEach(this::name);
        return new Drawn(strokes, texts);
    }

    private void draw(Stroke stroke) {
        strokes.add(stroke);
        free.take(stroke);
    }

    /** The selvedges, the ends, and the lengths along one side. */
    private void cloth() {
        double width = cloth.width();
        double length = cloth.needed();
        draw(line(Style.RULE, 0, 0, 0, length));
        draw(line(Style.RULE, width, 0, width, length));
        draw(line(Style.LEVEL, 0, 0, width, 0));
        draw(line(Style.LEVEL, 0, length, width, length));
        double every = MARKED * Math.max(1, Math.ceil(BETWEEN_WORDS / (MARKED * scale)));
        DoubleStream.iterate(MARKED, at -> at <= length, at -> at + MARKED).forEach(at -> {
            draw(line(Style.RULE, -TICK / scale, at, 0, at));
            if (at % every == 0) {
                lengthAt(at);
            }
        });
    }

    private Stroke line(Style style, double fromX, double fromY, double toX, double toY) {
        return Stroke.of(style, small.of(new Point(fromX, fromY)), small.of(new Point(toX, toY)));
    }

    private void lengthAt(double at) {
        String words = Centimetres.of(at);
        Point end = small.of(new Point(-TICK / scale, at));
        double width = Type.width(words, SMALLEST);
        Point start = isLying
                ? end.plus(new Vector(-width / 2, SMALLEST + 0.5))
                : end.plus(new Vector(-width - 1, SMALLEST / 3));
        free.place(Stream.of(new Text(words, start, SMALLEST, 0))).ifPresent(texts::add);
    }

    private void arrow(Line grain) {
        draw(Stroke.of(Style.MARK, grain.start(), grain.end()));
        head(grain.end(), grain.tangent(1));
        head(grain.start(), grain.tangent(0).negated());
    }

    private void head(Point tip, Vector direction) {
        Vector back = direction.times(-HEAD);
        Vector aside = direction.left().times(HEAD / 3);
        draw(Stroke.of(
                Style.MARK, tip.plus(back).plus(aside), tip, tip.plus(back).minus(aside)));
    }

    /** The piece's number and name in it, else its number, else that beside it with a leader line. */
    private void name(ClothPiece piece) {
        String number = Integer.toString(cloth.number(piece.piece().name()));
        FreeSpace inside = free.alsoWithin(piece.rings());
        Box box = piece.bounds();
        List<Point> onPiece = places(box, box.width() / PLACES, box.height() / PLACES);
        Stream<Text> within = Stream.of(number + " " + piece.piece().name(), number)
                .flatMap(words -> NAMES.stream()
                        .flatMap(size -> Stream.of(0.0, -StrictMath.PI / 2)
                                .flatMap(angle -> onPiece.stream().map(at -> centred(words, at, size, angle)))));
        inside.place(within).ifPresentOrElse(texts::add, () -> beside(number, piece));
    }

    /** The number on the cloth between the pieces, or beside the cloth, with a leader line to the piece's edge. */
    private void beside(String number, ClothPiece piece) {
        Box box = piece.bounds();
        Stream<Text> around = places.stream()
                .sorted(Comparator.comparingDouble(box::distanceTo))
                .map(at -> centred(number, at, SMALLEST, 0))
                .filter(text -> grounds.stream().noneMatch(ground -> ground.intersects(room(text))));
        free.place(around).ifPresent(text -> {
            texts.add(text);
            Box words = text.bounds();
            Point on = piece.nearest(words.centre());
            Point from = new Point(
                    Math.max(words.left(), Math.min(words.right(), on.x())),
                    Math.max(words.top(), Math.min(words.bottom(), on.y())));
            draw(Stroke.of(Style.LEADER, from, on));
        });
    }

    private static Polygon room(Text text) {
        return JtsBridge.polygon(text.bounds().corners());
    }

    /** Places in a box, those nearest to its middle first. */
    private static List<Point> places(Box box, double across, double down) {
        return DoubleStream.iterate(box.left(), x -> x <= box.right(), x -> x + Math.max(across, CLEAR))
                .boxed()
                .flatMap(x -> DoubleStream.iterate(box.top(), y -> y <= box.bottom(), y -> y + Math.max(down, CLEAR))
                        .mapToObj(y -> new Point(x, y)))
                .sorted(Comparator.comparingDouble(box.centre()::distanceTo))
                .toList();
    }

    private static Text centred(String words, Point middle, double size, double angle) {
        Vector along = Vector.ofAngle(angle);
        Point start = middle.minus(along.times(Type.width(words, size) / 2))
                .plus(along.right().times(size * (Text.ABOVE - Text.BELOW) / 2));
        return new Text(words, start, size, angle);
    }
}
