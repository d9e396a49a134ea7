package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shoulders that lie forward of the draft's: {@code forward shoulders: {by: 10 mm}}. The shoulder seam moves forward at its tip by so many mm
 * of armhole, to nothing at the neck: the back gains what the front loses, as if the one had been cut off and joined to the other. A notch
 * at the top of the sleeve's cap moves with it.
 *
 * <p>Kept: the armholes together, in length and in shape; neckline, side seam and every girth; the cap. Both shoulders change by the same, since
 * both gain the third side of one triangle (derived). Common practice, no source.
 */
final class ForwardShoulder implements Alteration {
    private static final double USUAL_MOST = 20;

    @Override
    public String name() {
        return "forward shoulders";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "10 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by");
        double by = options.positive("by", "by: 10 mm", Message.of("alter.forward-shoulder.other-way"));
        List<Piece> pieces = Bodice.pieces(draft, name());
        Seam seam = Bodice.shoulderSeams(draft, pieces).stream()
                .filter(shoulder -> centred(draft, shoulder, Names.CENTRE_FRONT).isPresent()
                        && centred(draft, shoulder, Names.CENTRE_BACK).isPresent())
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.forward-shoulder.needs-shoulder-seam"), Where.UNKNOWN.size(draft.size()))));
        Piece front = centred(draft, seam, Names.CENTRE_FRONT).orElseThrow();
        Piece back = centred(draft, seam, Names.CENTRE_BACK).orElseThrow();
        Altered altered = LargestAmount.orRefusal(draft, by, amount -> altered(draft, front, back, seam, amount));
        Altered capped = withCapNotch(altered, front, by);
        Altered told = CapEase.told(capped, draft, pieces, "");
        return by > USUAL_MOST ? told.withNote(Reason.millimetres(by) + " is unusual: up to 20 mm is common") : told;
    }

    /** The piece of a seam that has an edge of that name. */
    private static Optional<Piece> centred(Draft draft, Seam seam, String centre) {
        return List.of(seam.join().get(0), seam.to().get(0)).stream()
                .map(ref -> draft.piece(ref.piece()))
                .filter(piece -> piece.hasEdge(centre))
                .findFirst();
    }

    private static Altered altered(Draft draft, Piece front, Piece back, Seam seam, double by) {
        Path armhole = front.from(Names.ARMHOLE, Names.SHOULDER);
        requireRoom(front, armhole, by);
        Path cutOff = armhole.part(0, by);
        Path joinedOn = cutOff.moved(seamToSeam(front, back)).reversed();

        Paper shorter = Paper.of(front);
        shorter = shorter.then(redrawn(
                "Draw the shoulder of the front to " + Reason.millimetres(by)
                        + " below its tip, from nothing at the neck",
                front,
                armhole.part(by, armhole.length())));
        Path own = back.from(Names.ARMHOLE, Names.SHOULDER);
        Paper longer = Paper.of(back)
                .then(redrawn("Join what the front loses to the shoulder of the back", back, joinedOn.then(own)));
        Spot joint = longer.piece().nearest(longer.piece().edge(Names.ARMHOLE), own.start());
        // front and back may not have run on quite straight where they met; within one edge that would be a corner
        if (Math.abs(joinedOn.endTangent().angleTo(own.startTangent())) > Tolerance.CORNER) {
            double reach = Math.min(by, Redraw.reach(longer.piece(), joint));
            longer = longer.then(Redraw.faired("Fair the armhole of the back", longer.piece(), joint, reach));
        }
        shorter = shorter.marked(Bodice.withDarts(front, shorter.piece(), Names.SHOULDER));
        longer = longer.marked(Bodice.withDarts(back, longer.piece(), Names.SHOULDER));
        List<Step> steps = new ArrayList<>(shorter.steps());
        steps.addAll(longer.steps());
        return new Altered(
                draft.with(shorter.piece(), longer.piece()),
                Map.of("by", by),
                steps,
                laws(draft, front, back, seam, by),
                List.of());
    }

    /** What is drawn on the front's armhole near the shoulder stays on it. */
    private static void requireRoom(Piece front, Path armhole, double by) {
        double room = front.marks(Notch.class)
                .filter(notch -> armhole.distanceTo(notch.at()) <= Tolerance.JOINING)
                .mapToDouble(notch -> armhole.distanceAlong(armhole.nearest(notch.at())))
                .filter(along -> along > Tolerance.JOINING)
                .min()
                .orElse(armhole.length() / 2);
        if (by >= room) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.forward-shoulder.armhole-too-short"),
                    front.where().edge(Names.ARMHOLE)));
        }
    }

    /** Lays the front on the back, shoulder on shoulder, tip on tip, as they are sewn. */
    private static Motion seamToSeam(Piece front, Piece back) {
        Path from = front.from(Names.SHOULDER, Names.ARMHOLE);
        Path to = back.from(Names.SHOULDER, Names.ARMHOLE);
        return Motion.between(
                from.start(),
                from.startTangent(),
                intoPaper(front, from),
                to.start(),
                to.startTangent(),
                intoPaper(back, to).negated());
    }

    private static Vector intoPaper(Piece piece, Path shoulder) {
        Vector square = shoulder.startTangent().left();
        return square.dot(piece.grain().down()) > 0 ? square : square.negated();
    }

    /** @param armhole the new one, from its tip */
    private static Redraw redrawn(String caption, Piece piece, Path armhole) {
        Path shoulder = piece.from(Names.SHOULDER, Names.NECKLINE);
        Motion motion = Motion.reaching(shoulder.start(), shoulder.end(), armhole.start());
        Path drawn = shoulder.moved(motion).withStart(shoulder.start()).withEnd(armhole.start());
        return Redraw.whole(caption, piece, Names.SHOULDER, Names.NECKLINE, drawn)
                .and(Redraw.whole(caption, piece, Names.ARMHOLE, Names.SHOULDER, armhole));
    }

    /** The sleeves with the notch at the top of the cap moved to the front as far as the shoulder seam. */
    private static Altered withCapNotch(Altered altered, Piece front, double by) {
        Altered moved = altered;
        for (Seam seam : CapEase.seams(altered.draft(), List.of(front))) {
            EdgeRef cap = UnderarmBlend.cap(seam);
            Piece sleeve = moved.draft().piece(cap.piece());
            Optional<Notch> top = CapNotches.top(moved.draft(), seam);
            Optional<String> frontEnd = CapNotches.endAt(moved.draft(), seam, front);
            if (top.isPresent() && frontEnd.isPresent()) {
                moved = moved.withDraft(
                        moved.draft().with(CapNotches.slid(sleeve, cap.edge(), top.get(), frontEnd.get(), -by)));
                moved = moved.withNote("the notch '" + top.get().name() + "' on the cap of the " + sleeve.name()
                        + " moves " + Reason.millimetres(by) + " to the front with the seam");
            } else {
                moved = moved.withNote(
                        "the " + sleeve.name() + " has no notch at the top of its cap that could move with the "
                                + "seam: set it in " + Reason.millimetres(by) + " farther to the front");
            }
        }
        return moved;
    }

    private static List<Law> laws(Draft draft, Piece front, Piece back, Seam seam, double by) {
        List<Law> laws = new ArrayList<>();
        for (Piece piece : List.of(front, back)) {
            for (String edge :
                    List.of(Names.NECKLINE, Names.SIDE_SEAM, Names.HEM, Names.CENTRE_FRONT, Names.CENTRE_BACK)) {
                if (piece.hasEdge(edge)) {
                    laws.add(Law.keepsPlace(piece.name(), edge));
                }
            }
        }
        laws.add(Law.changesLength(front.name(), Names.ARMHOLE, -by, 0.1));
        laws.add(Law.changesLength(back.name(), Names.ARMHOLE, by, 0.3));
        laws.add(Law.keepsDifference(seam.join(), seam.to(), Tolerance.SEAM_MATCH));
        return laws;
    }
}
