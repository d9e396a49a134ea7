package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.alter.SideSeamBlend.Joint;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes back what a full bust gave at waist or hip: first in a waist dart, which may become {@value #MOST_INTAKE} mm deep (common practice,
 * no source), then at the side seam, whose length stays.
 */
final class KeptGirth {
    static final List<String> LEVELS = List.of(Names.WAIST, Names.HIP);
    private static final double MOST_INTAKE = 35;

    private KeptGirth() {}

    /** The paper with the growth of {@code spread} mm taken back at the levels to keep. */
    static Paper on(Paper paper, double spread, List<String> kept) {
        if (kept.isEmpty()) {
            return paper;
        }
        Paper inDart = kept.contains(Names.WAIST) ? takenInDart(paper, spread) : paper;
        double taken = paper.piece().hasLevel(Names.WAIST)
                ? paper.piece().width(Names.WAIST) - inDart.piece().width(Names.WAIST)
                : 0;
        Piece piece = inDart.piece();
        List<Joint> joints = new ArrayList<>();
        joints.add(new Joint(kept.contains(Names.WAIST) ? "bust" : Names.WAIST, piece, 0));
        if (kept.contains(Names.WAIST)) {
            joints.add(new Joint(Names.WAIST, piece, taken - spread));
        }
        joints.add(new Joint(Names.HIP, piece, kept.contains(Names.HIP) ? -spread : 0));
        SideSeamBlend blend = new SideSeamBlend(piece, joints);
        String caption = "Take back " + Reason.millimetres(spread) + " at the " + String.join(" and ", kept)
                + ": the side seam keeps its length";
        return inDart.then(blend.redraw(caption, -blend.growth()));
    }

    private static Paper takenInDart(Paper paper, double amount) {
        Piece piece = paper.piece();
        LevelFrame waist = piece.levelFrame(Names.WAIST);
        Optional<DoublePointedDart> found = piece.marks(DoublePointedDart.class)
                .filter(dart -> waist.intakeOf(dart) > 0)
                .findFirst();
        if (found.isEmpty() || amount <= 0) {
            return paper;
        }
        double intake = waist.intakeOf(found.get());
        double wanted = Math.min(intake + amount, Math.max(intake, MOST_INTAKE));
        Vector across = waist.outwards();
        Point middle = found.get().firstTip().midpoint(found.get().secondTip());
        return paper.marked(piece.withMark(found.get().moved(Motion.stretch(middle, across, wanted / intake))));
    }
}
