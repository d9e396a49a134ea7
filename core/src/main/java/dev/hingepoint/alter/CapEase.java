package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.check.Walked.NotchGap;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Walks sleeve caps into their armholes after either was altered, stretch by stretch, and tells the ease: how much there is, how much the
 * cloth takes, and what lies below the notches, where none belongs (common practice, no source).
 */
final class CapEase {
    /** Of ease below a notch less than this is no more than a pencil line. */
    private static final double TOLD = 1;

    private CapEase() {}

    /** The seams that set a sleeve into an armhole of these pieces. */
    static List<Seam> seams(Draft draft, List<Piece> pieces) {
        return UnderarmBlend.armholeSeams(draft, pieces).stream()
                .filter(seam -> draft.find(UnderarmBlend.cap(seam).piece()).isPresent())
                .toList();
    }

    /** How much longer in mm the cap is than the armholes it goes into. */
    static double of(Draft draft, Seam seam) {
        Walked walked = SeamWalk.of(draft, seam);
        return capIsFirst(seam) ? walked.difference() : -walked.difference();
    }

    private static boolean capIsFirst(Seam seam) {
        return seam.join().contains(UnderarmBlend.cap(seam));
    }

    /**
     * The alteration with a note on every cap that goes into an armhole of these pieces.
     *
     * @param correction what to order where the cap does not fit; ends the note
     */
    static Altered told(Altered altered, Draft before, List<Piece> pieces, String correction) {
        Altered told = altered;
        for (Seam seam : seams(before, pieces)) {
            told = told.withNote(note(before, altered.draft(), seam, correction));
        }
        return told;
    }

    private static String note(Draft before, Draft after, Seam seam, String correction) {
        String sleeve = UnderarmBlend.cap(seam).piece();
        double was = of(before, seam);
        double is = of(after, seam);
        boolean isKnit = after.pattern().card().isKnit();
        StringBuilder note = new StringBuilder("the cap of the " + sleeve + " goes into the armhole with "
                + Reason.millimetres(is) + " of ease"
                + (Math.abs(is - was) > 0.05 ? ", before " + Reason.millimetres(was) : "")
                + (isKnit ? " (a knit takes 0 to 8 mm)" : " (cotton or crepe takes 10 to 20 mm, wool 25 to 40)"));
        belowNotches(after, seam).forEach(below -> note.append("; ").append(below));
        if (!SeamWalk.of(after, seam).lengthMatches()) {
            note.append("; it is ")
                    .append(new Length(Math.abs(is - was)).tenths())
                    .append(is < was ? " too short" : " too long")
                    .append(" for what the pattern means")
                    .append(correction.isEmpty() ? "" : ": " + correction);
        }
        return note.toString();
    }

    /** What is eased in between the underarm and the notch nearest to it, on either side. */
    private static List<String> belowNotches(Draft draft, Seam seam) {
        Walked walked = SeamWalk.of(draft, seam);
        List<String> told = new ArrayList<>();
        double sign = capIsFirst(seam) ? 1 : -1;
        walked.notches().stream()
                .filter(notch -> notch.onJoin() < walked.joinLength() / 2)
                .min(Comparator.comparingDouble(NotchGap::onJoin))
                .ifPresent(notch -> tell(told, notch.name(), sign * notch.difference()));
        walked.notches().stream()
                .filter(notch -> notch.onJoin() > walked.joinLength() / 2)
                .max(Comparator.comparingDouble(NotchGap::onJoin))
                .ifPresent(notch -> tell(told, notch.name(), sign * (walked.difference() - notch.difference())));
        return told;
    }

    private static void tell(List<String> told, String notch, double ease) {
        if (Math.abs(ease) > TOLD) {
            told.add(
                    ease > 0
                            ? new Length(ease).tenths() + " of it below the notch '" + notch + "', where none belongs"
                            : "below the notch '" + notch + "' the cap is " + new Length(-ease).tenths()
                                    + " too short");
        }
    }
}
