package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Trim;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * One piece's hem moved along the two seams that end at it: both change by one length, so that whatever is sewn together still is. The hem is its old self,
 * moved with its centre end and scaled across to its other end; its angle to either seam stays. Longer, the seams run on straight.
 *
 * @param by how many mm lower; negative for higher
 */
record HemLine(Piece piece, double by) {

    /** The edges that end at the hem, the one on the centre line first. */
    List<String> seams() {
        String before = piece.before(Names.HEM).name();
        String after = piece.after(Names.HEM).name();
        boolean afterIsCentre =
                piece.centre().map(Edge::name).filter(after::equals).isPresent();
        return afterIsCentre ? List.of(after, before) : List.of(before, after);
    }

    /** The length in mm of the shorter of the two seams. */
    double room() {
        return seams().stream().mapToDouble(seam -> toHem(seam).length()).min().orElseThrow();
    }

    private Path toHem(String seam) {
        return piece.from(seam, Names.HEM).reversed();
    }

    private Path changed(String seam) {
        Path old = toHem(seam);
        return by < 0
                ? old.part(0, old.length() + by)
                : old.then(
                        Path.through(old.end(), old.end().plus(old.endTangent().times(by))));
    }

    Paper paper() {
        String amount = Reason.millimetres(Math.abs(by));
        Paper paper = Paper.of(piece);
        if (by < 0) {
            return paper.then(
                    new Trim("Cut the hem off " + amount + " higher, level with itself", Names.HEM, course()));
        }
        String caption = "Draw the hem " + amount + " lower, level with itself; the seams run on";
        String centre = seams().get(0);
        return paper.then(Redraw.runOn(caption, piece, centre, Names.HEM, by)
                .and(Redraw.runOn(caption, piece, seams().get(1), Names.HEM, by))
                .and(Redraw.whole(caption, piece, Names.HEM, centre, course())));
    }

    /** The new hem, from its centre end. */
    private Path course() {
        Path old = piece.from(Names.HEM, seams().get(0));
        Path first = changed(seams().get(0));
        Path other = changed(seams().get(1));
        Vector across = piece.grain().down().left();
        double scale = other.end().minus(first.end()).dot(across)
                / old.end().minus(old.start()).dot(across);
        return old.moved(Motion.shift(first.end().minus(old.start())).then(Motion.stretch(first.end(), across, scale)))
                .withEnd(other.end())
                .withStartTangent(old.startTangent().turned(turn(seams().get(0))))
                .withEndTangent(old.endTangent().turned(turn(seams().get(1))));
    }

    /** By how much in radians the seam runs otherwise where it now ends. */
    private double turn(String seam) {
        return toHem(seam).endTangent().angleTo(changed(seam).endTangent());
    }

    List<Law> laws(Piece result) {
        List<Law> laws = new ArrayList<>();
        String name = piece.name();
        for (Edge edge : piece.edges()) {
            if (seams().contains(edge.name())) {
                laws.add(Law.changesLength(name, edge.name(), by, Tolerance.COINCIDENT));
                laws.add(KeptAngle.of(piece, Names.HEM, edge.name()));
            } else if (!edge.name().equals(Names.HEM)) {
                laws.add(Law.keepsPlace(name, edge.name()));
            }
        }
        result.marks(Level.class).forEach(level -> laws.add(Law.keepsWidth(name, level.name(), Tolerance.COINCIDENT)));
        return laws;
    }
}
