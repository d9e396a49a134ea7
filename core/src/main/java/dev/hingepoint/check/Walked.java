package dev.hingepoint.check;

import dev.hingepoint.Reason;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.List;

/**
 * How a seam walks.
 *
 * @param joinLength sewn length in mm of the first side
 * @param toLength sewn length in mm of the other side
 * @param notches the notches that are sewn together
 * @param ends how the neighbouring edges run on at the seam's ends
 */
public record Walked(Seam seam, double joinLength, double toLength, List<NotchGap> notches, List<RunOn> ends) {
    /** Two edges that meet at a sewn seam run on within this many degrees (common practice, no source). */
    private static final double RUNS_ON = 5;

    /** Two notches of one name, each so many mm of sewn length from the end where the walk began. */
    public record NotchGap(String name, double onJoin, double onTo) {
        public double difference() {
            return onJoin - onTo;
        }
    }

    /**
     * How the neighbouring edges of both sides run on where the seam ends.
     *
     * @param degrees how far they are from running straight on; positive where they make a peak
     */
    public record RunOn(String edge, String otherEdge, double degrees) {}

    public Walked {
        notches = List.copyOf(notches);
        ends = List.copyOf(ends);
    }

    /** How much longer in mm the first side is. */
    public double difference() {
        return joinLength - toLength;
    }

    /** Whether the sewn lengths match: the difference within the seam's ease, give or take a sixteenth of an inch. */
    public boolean lengthMatches() {
        return difference() >= seam.easeFrom() - Tolerance.SEAM_MATCH
                && difference() <= seam.easeTo() + Tolerance.SEAM_MATCH;
    }

    /** What a person who walks the seam would remark on, in plain words; empty where all is well. */
    public List<String> complaints() {
        List<String> complaints = new ArrayList<>();
        if (!lengthMatches()) {
            complaints.add("the first side is " + Reason.millimetres(difference()) + " longer; "
                    + Reason.millimetres(seam.easeFrom()) + " to " + Reason.millimetres(seam.easeTo()) + " is meant");
        }
        double least = Math.min(0, seam.easeFrom()) - Tolerance.SEAM_MATCH;
        double most = Math.max(0, seam.easeTo()) + Tolerance.SEAM_MATCH;
        for (NotchGap notch : notches) {
            if (notch.difference() < least || notch.difference() > most) {
                complaints.add("the notches '" + notch.name() + "' miss each other by "
                        + Reason.millimetres(notch.difference()));
            }
        }
        for (RunOn end : ends) {
            if (Math.abs(end.degrees()) > RUNS_ON) {
                complaints.add(end.edge() + " and " + end.otherEdge() + " make a "
                        + (end.degrees() > 0 ? "peak" : "dip") + " of " + Math.round(Math.abs(end.degrees()))
                        + " degrees where the seam ends");
            }
        }
        return complaints;
    }
}
