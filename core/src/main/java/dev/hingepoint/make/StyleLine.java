package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import dev.hingepoint.pattern.Unit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A style line across a piece, from edge to edge: one that is drawn on the paper, or one between two places told by their distance down an edge, straight or with a
 * curve.
 *
 * @param from the edge that it begins on
 * @param to the edge that it ends on
 */
record StyleLine(Path path, Spot from, Spot to) {
    private static final Pattern PLACE = Pattern.compile("(\\p{L}.*?)\\s+([0-9].*)");

    /** A drawn line may end so many mm short of the outline. */
    private static final double SHORT = 5;

    /** @throws Refusal where the options do not say where it runs, or the piece has no such place */
    static StyleLine on(Piece piece, Options options) {
        if (options.has("line") == (options.has("from") || options.has("to"))) {
            throw options.refuse("make.style-line.where");
        }
        StyleLine line =
                options.text("line").map(drawn -> drawn(piece, drawn)).orElseGet(() -> between(piece, options));
        line.requireInside(piece);
        return line;
    }

    private void requireInside(Piece piece) {
        boolean isInside = JtsBridge.polygon(piece).buffer(Tolerance.JOINING).covers(JtsBridge.lineString(path));
        if (!isInside) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("make.style-line.runs-out", from.edge(), to.edge()), piece.where()));
        }
    }

    private static StyleLine drawn(Piece piece, String name) {
        Path path = piece.find(DrawnLine.class, name)
                .orElseThrow(() -> new Refusal(
                        new Reason.Missing(Message.of("make.style-line.no-such-line", name), piece.where())))
                .path();
        Spot from = piece.nearest(path.start());
        Spot to = piece.nearest(path.end());
        if (!from.point().isCloseTo(path.start(), SHORT) || !to.point().isCloseTo(path.end(), SHORT)) {
            throw new Refusal(new Reason.Unsound(
                    Message.of("make.style-line.not-edge-to-edge"),
                    piece.where().mark(name)));
        }
        return new StyleLine(path.withStart(from.point()).withEnd(to.point()), from, to);
    }

    private static StyleLine between(Piece piece, Options options) {
        Spot from = place(piece, options, "from");
        Spot to = place(piece, options, "to");
        if (from.edge().equals(to.edge())) {
            throw options.refuse("make.style-line.one-edge", from.edge());
        }
        Path path = options.length("curve")
                .map(curve -> curved(piece, from, to, curve.mm()))
                .orElseGet(() -> Path.through(from.point(), to.point()));
        return new StyleLine(path, from, to);
    }

    /** "armhole 60 mm": so far down the armhole from its upper end, as the grain runs. */
    private static Spot place(Piece piece, Options options, String option) {
        String written = options.text(option).orElseThrow(() -> options.refuse("make.style-line.missing", option));
        Matcher matcher = PLACE.matcher(written.strip());
        if (!matcher.matches()) {
            throw options.refuse("make.style-line.not-a-place", option, written);
        }
        Length down;
        try {
            down = Length.parse(matcher.group(2), Unit.MILLIMETRE);
        } catch (Refusal refusal) {
            throw options.refuse(
                    "alter.options.unreadable", option, refusal.reason().message());
        }
        Edge edge = matcher.group(1).equals("centre")
                ? piece.centre().orElseGet(() -> piece.edge("centre"))
                : piece.edge(matcher.group(1));
        boolean asDrawn = piece.downwards(edge.name()) == edge.path();
        Edge above = asDrawn ? piece.before(edge.name()) : piece.after(edge.name());
        return Place.along(edge.name(), above.name(), down.mm()).on(piece);
    }

    /**
     * One curve whose middle lies {@code sag} mm below the straight line; on a fold it ends square, so that the unfolded line has no point. Derived: the middle of a cubic
     * lies at three eighths of what its two handles together lie off the chord.
     */
    private static Path curved(Piece piece, Spot from, Spot to, double sag) {
        Vector chord = to.point().minus(from.point());
        Vector below = chord.left().dot(piece.grain().down()) > 0
                ? chord.left().unit()
                : chord.right().unit();
        double third = chord.length() / 3;
        double each = 4 * sag / 3;
        Point atStart = from.point().plus(chord.times(1 / 3.0)).plus(below.times(each));
        Point atEnd = to.point().minus(chord.times(1 / 3.0)).plus(below.times(each));
        if (isFold(piece, to)) {
            atEnd = to.point().plus(square(piece, to, chord.negated()).times(third));
            double off = 2 * each - atEnd.minus(to.point()).dot(below);
            atStart = from.point().plus(chord.times(1 / 3.0)).plus(below.times(off));
        } else if (isFold(piece, from)) {
            atStart = from.point().plus(square(piece, from, chord).times(third));
            double off = 2 * each - atStart.minus(from.point()).dot(below);
            atEnd = to.point().minus(chord.times(1 / 3.0)).plus(below.times(off));
        }
        return Path.of(new Cubic(from.point(), atStart, atEnd, to.point()));
    }

    private static boolean isFold(Piece piece, Spot spot) {
        Edge edge = piece.edge(spot.edge());
        return edge.kind() == Edge.Kind.FOLD || edge.name().equals("centre back");
    }

    private static Vector square(Piece piece, Spot spot, Vector into) {
        Vector fold = piece.edge(spot.edge()).path().tangent(spot.position());
        return fold.left().dot(into) > 0 ? fold.left() : fold.right();
    }
}
