package dev.hingepoint.move;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Piece;
import java.util.List;

/**
 * Darts that a slash straight across parted. What lies between the two parts of a leg is not filled in with a step: the leg is drawn anew from
 * joint to joint, from the tip to the dart's widest, as a fitter does. So the dart gets longer or shorter, and its intake stays.
 */
public final class StretchedDarts {
    private StretchedDarts() {}

    /**
     * The paper after its last move, with each dart drawn from the images of its joints.
     *
     * @param down the direction that the parts moved along; across it the dart keeps its measure everywhere
     */
    public static Paper on(Paper paper, Vector down) {
        Piece before = paper.original();
        List<Mark> marks = paper.piece().marks().stream()
                .map(mark -> mark instanceof Dart dart
                        ? before.find(dart.getClass(), dart.name())
                                .map(old -> (Mark) stretched(old, paper.map(), down))
                                .orElse(mark)
                        : mark)
                .toList();
        return paper.marked(paper.piece().withMarks(marks));
    }

    private static Dart stretched(Dart dart, PaperMap map, Vector down) {
        Path first = stretched(dart.legs().get(0), map, down);
        Path second = stretched(dart.legs().get(1), map, down);
        return MarksAfterCut.withLegs(dart, first, second.withStart(first.end()));
    }

    private static Path stretched(Path leg, PaperMap map, Vector down) {
        return leg.segments().stream()
                .map(segment -> Path.of(stretched(segment, map, down)))
                .reduce(Path::then)
                .orElseThrow();
    }

    private static Segment stretched(Segment segment, PaperMap map, Vector down) {
        Point start = map.of(segment.start());
        double depth = segment.end().minus(segment.start()).dot(down);
        double depthNow = map.of(segment.end()).minus(start).dot(down);
        Motion shift = Motion.shift(start.minus(segment.start()));
        boolean isWhole = Math.abs(depthNow - depth) <= Tolerance.COINCIDENT;
        return segment.moved(isWhole ? shift : shift.then(Motion.stretch(start, down, depthNow / depth)));
    }
}
