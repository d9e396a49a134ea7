package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.List;
import java.util.stream.Stream;

/**
 * A blend at the bust, carried on where the side seam ends: the armhole goes out or in with the underarm, up to its innermost point, and
 * the sleeve takes its width at the upper arm from the named size. Depths stay the chosen size's; only the height of the cap gives way,
 * until cap and armhole differ in length as they did, so that the ease stays. Derived: a stretch across the grain keeps the smoothness
 * of a curve where it runs along the grain or across it.
 */
final class UnderarmBlend {

    /** The height of a cap changes by less than this share of it, or there is no such cap. */
    private static final double MOST_OF_CAP = 0.9;

    private UnderarmBlend() {}

    /** The armhole from its innermost point to the underarm, which goes by {@code out} mm away from the centre line. */
    static Redraw armhole(String caption, Piece piece, Vector outwards, double out) {
        Path own = piece.from(Names.ARMHOLE, Names.SIDE_SEAM);
        Position innermost = own.farthest(outwards.negated());
        Point fixed = own.at(innermost);
        double across = own.start().minus(fixed).dot(outwards);
        if (!(across + out > Tolerance.JOINING) || !(across > Tolerance.JOINING)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.underarm-blend.no-room"),
                    piece.where().edge(Names.ARMHOLE),
                    out,
                    Math.max(0, across)));
        }
        Motion stretch = Motion.stretch(fixed, outwards, (across + out) / across);
        Path course = own.part(own.startPosition(), innermost).moved(stretch);
        Path whole = innermost.equals(own.endPosition()) ? course : course.then(own.part(innermost, own.endPosition()));
        return Redraw.whole(caption, piece, Names.ARMHOLE, Names.SIDE_SEAM, whole);
    }

    /** The darts of the side seam, whose mouths went with it: each tip slides along its mouth's direction until the legs are equal. */
    static Piece evenDarts(Piece piece) {
        return piece.withMarksChanged(mark -> mark instanceof EdgeDart dart
                        && piece.nearest(dart.mouthMiddle()).edge().equals(Names.SIDE_SEAM)
                        && dart.legs().stream().allMatch(leg -> leg.segments().size() == 1)
                ? even(dart)
                : mark);
    }

    private static EdgeDart even(EdgeDart dart) {
        Vector mouth = dart.mouthEnd().minus(dart.mouthStart()).unit();
        double off = dart.mouthMiddle().minus(dart.tip()).dot(mouth);
        return EdgeDart.of(dart.name(), dart.mouthStart(), dart.tip().plus(mouth.times(off)), dart.mouthEnd());
    }

    /** The seams that set a sleeve into the armhole of one of these pieces. */
    static List<Seam> armholeSeams(Draft draft, List<Piece> pieces) {
        return draft.seams().stream()
                .filter(seam -> pieces.stream().anyMatch(piece -> seam.joins(new EdgeRef(piece.name(), Names.ARMHOLE))))
                .filter(seam -> Stream.concat(seam.join().stream(), seam.to().stream())
                        .anyMatch(edge -> edge.edge().equals(Names.CAP)))
                .toList();
    }

    /** The edge of the sleeve in such a seam. */
    static EdgeRef cap(Seam seam) {
        boolean isFirst = seam.to().stream().anyMatch(edge -> edge.edge().equals(Names.ARMHOLE));
        return (isFirst ? seam.join() : seam.to()).get(0);
    }

    /**
     * The sleeve with the width at the upper arm of the size that the bust is blended to, its cap as much longer or shorter than the armholes of {@code after} as
     * it was than those of {@code before}.
     *
     * @throws Refusal where the sleeve is not drawn in that size
     */
    static Paper sleeve(Draft before, Draft after, Seam seam, Wanted bust) {
        String size = bust.size().orElseThrow();
        EdgeRef cap = cap(seam);
        Piece sleeve = before.piece(cap.piece());
        List<EdgeRef> armholes = seam.join().contains(cap) ? seam.to() : seam.join();
        double longer = length(after, armholes) - length(before, armholes);
        // the named size's sleeve may be drawn the other way round
        Edge first = sleeve.before(cap.edge());
        Edge last = sleeve.after(cap.edge());
        Cap own = Cap.of(sleeve, cap.edge(), first.name());
        Cap wanted = own.asWideAs(Cap.of(before.asDrawn(sleeve, size), cap.edge(), first.name()), 1 - bust.left());
        double length = own.path().length() + longer;
        double most = MOST_OF_CAP * own.height();
        double higher =
                Bisection.largest(-most, most, by -> wanted.higher(by).path().length() <= length);
        Path course = wanted.higher(higher).path();
        double wider = wanted.path().start().distanceTo(wanted.path().end())
                - own.path().start().distanceTo(own.path().end());
        String caption = "Redraw the " + sleeve.name() + " as wide at the upper arm as in size " + size + " ("
                + changed(wider, "wider", "narrower") + "), its cap " + changed(higher, "higher", "lower")
                + " so that it goes into the new armhole with the same ease";
        return Paper.of(sleeve)
                .then(Redraw.whole(caption, sleeve, cap.edge(), first.name(), course)
                        .and(underarm(caption, sleeve, first.name(), cap.edge(), course.start()))
                        .and(underarm(caption, sleeve, last.name(), cap.edge(), course.end())));
    }

    private static double length(Draft draft, List<EdgeRef> edges) {
        return edges.stream().mapToDouble(draft::sewnLength).sum();
    }

    private static String changed(double by, String more, String less) {
        return Reason.millimetres(Math.abs(by)) + " " + (by >= 0 ? more : less);
    }

    /** An underarm seam leans from its unchanged lower end to the new end of the cap. */
    private static Redraw underarm(String caption, Piece sleeve, String edge, String cap, Point underarm) {
        Path own = sleeve.from(edge, cap);
        Vector across = sleeve.grain().down().left();
        Vector rise = own.start().minus(own.end());
        if (Math.abs(rise.cross(across)) <= Tolerance.JOINING) {
            throw new Refusal(new Reason.Unsound(
                    Message.of("alter.underarm-blend.edge-not-down"),
                    sleeve.where().edge(edge)));
        }
        Motion lean = Motion.between(own.end(), across, rise, own.end(), across, underarm.minus(own.end()));
        return Redraw.whole(caption, sleeve, edge, cap, own.moved(lean).withStart(underarm));
    }

    /** Keeps how much longer one side of a seam is than the other. */
    static Law keepsEase(Seam seam) {
        EdgeRef cap = cap(seam);
        return new Law(
                Message.of("alter.underarm-blend.law.keeps-ease", seam),
                Where.inPiece(cap.piece()).edge(cap.edge()),
                (before, after) -> length(before, seam.join()) - length(before, seam.to()),
                (before, after) -> length(after, seam.join()) - length(after, seam.to()),
                0.1);
    }

    /**
     * A sleeve's cap in two halves that meet at its top.
     *
     * @param down unit direction of the grain
     */
    record Cap(Path rise, Path fall, Vector down) {
        /** @param from the neighbour at the end that rises to the top */
        static Cap of(Piece sleeve, String edge, String from) {
            Path path = sleeve.from(edge, from);
            Vector down = sleeve.grain().down();
            Position top = path.farthest(down.negated());
            if (path.distanceAlong(top) <= Tolerance.JOINING
                    || path.length() - path.distanceAlong(top) <= Tolerance.JOINING) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("alter.underarm-blend.cap-top-not-between"),
                        sleeve.where().edge(edge)));
            }
            return new Cap(path.part(path.startPosition(), top), path.part(top, path.endPosition()), down);
        }

        Point top() {
            return rise.end();
        }

        Path path() {
            return rise.then(fall);
        }

        /** In mm, over the lower of its ends. */
        double height() {
            return Math.min(
                    rise.start().minus(top()).dot(down), fall.end().minus(top()).dot(down));
        }

        private double across(Point end) {
            return end.minus(top()).dot(down.left());
        }

        /** Stretched across, each half by itself, until its ends have gone that part of the way to where another cap's lie. */
        Cap asWideAs(Cap other, double part) {
            return new Cap(
                    rise.moved(across(part(across(rise.start()), other.across(other.rise.start()), part))),
                    fall.moved(across(part(across(fall.end()), other.across(other.fall.end()), part))),
                    down);
        }

        private static double part(double own, double other, double part) {
            return 1 + part * (Math.abs(other / own) - 1);
        }

        /** Stretched across and up or down about the top, each half by itself, until its ends are where they should be. */
        Cap reaching(Point start, Point end) {
            return new Cap(
                    rise.moved(about(rise.start(), start)).withStart(start),
                    fall.moved(about(fall.end(), end)).withEnd(end),
                    down);
        }

        private Motion about(Point was, Point is) {
            double wider = across(is) / across(was);
            double deeper = is.minus(top()).dot(down) / was.minus(top()).dot(down);
            if (!(wider > 0 && deeper > 0)) {
                throw new IllegalArgumentException("the cap has no room for it");
            }
            return across(wider).then(Motion.stretch(top(), down, deeper));
        }

        private Motion across(double factor) {
            return Motion.stretch(top(), down.left(), factor);
        }

        /** Stretched up by so many mm, the ends where they are. */
        Cap higher(double by) {
            return new Cap(
                    rise.moved(up(rise.start(), by)).withStart(rise.start()),
                    fall.moved(up(fall.end(), by)).withEnd(fall.end()),
                    down);
        }

        private Motion up(Point end, double by) {
            double depth = end.minus(top()).dot(down);
            return Motion.stretch(end, down, (depth + by) / depth);
        }
    }
}
