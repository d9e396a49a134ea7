package dev.hingepoint.samples.docs;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Style;
import java.util.List;
import java.util.stream.Stream;

/** The pieces that an alteration changed, side by side, as they were drawn and as they are. */
final class AlterationPicture {
    private static final double BETWEEN = 15;
    private static final double TOP = 2.5 * Picture.TYPE;

    /** So much of a piece in mm is shown below the last thing that changed. */
    private static final double BELOW = 50;

    private AlterationPicture() {}

    static String svg(String name, Draft before, Draft after) {
        Picture picture = new Picture();
        double next = picture.key(Style.BEFORE, "as drawn", 0, 0);
        picture.key(Style.AFTER, "altered", next, 0);
        double x = 0;
        double bottom = 0;
        for (Piece piece : after.pieces()) {
            Piece old = before.piece(piece.name());
            if (old.equals(piece)) {
                continue;
            }
            Box box = piece.outline().bounds().union(old.outline().bounds());
            Motion place = Picture.small(box, x, TOP);
            picture.lines(Style.BEFORE, Picture.lines(old), place);
            picture.lines(Style.AFTER, Picture.lines(piece), place);
            picture.words(piece.name(), x, 2 * Picture.TYPE);
            x += Picture.SCALE * box.width() + BETWEEN;
            bottom = Math.max(bottom, TOP + Picture.SCALE * (changedDownTo(old, piece) + BELOW - box.top()));
        }
        return picture.svg(name + ", as drawn and altered", bottom);
    }

    private static double changedDownTo(Piece old, Piece piece) {
        List<Segment> was = segments(old);
        List<Segment> is = segments(piece);
        return Stream.concat(
                        was.stream().filter(segment -> !is.contains(segment)),
                        is.stream().filter(segment -> !was.contains(segment)))
                .mapToDouble(segment -> segment.bounds().bottom())
                .max()
                .orElseThrow();
    }

    private static List<Segment> segments(Piece piece) {
        return Picture.lines(piece).stream()
                .flatMap(path -> path.segments().stream())
                .toList();
    }
}
