package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Seam;
import java.util.List;
import java.util.stream.Stream;

/** Edges that change together because they are sewn together. */
final class SewnTogether {
    private SewnTogether() {}

    /**
     * Whatever is sewn to an edge that changes must change with it.
     *
     * @param doing what is done to them
     * @throws Refusal naming the side that would be left behind
     */
    static void requireBothSides(Draft draft, List<EdgeRef> changed, Message doing) {
        for (Seam seam : draft.seams()) {
            boolean join = seam.join().stream().anyMatch(changed::contains);
            boolean to = seam.to().stream().anyMatch(changed::contains);
            if (join != to) {
                throw new Refusal(new Reason.Unsound(
                        Message.of(
                                "alter.sewn-together.one-side-only",
                                doing,
                                seam,
                                Seam.nameOf(join ? seam.to() : seam.join())),
                        Where.UNKNOWN.size(draft.size())));
            }
        }
    }

    /** The two sides of each seam among these edges differ in length as they did. */
    static List<Law> keepDifference(Draft draft, List<EdgeRef> changed, double tolerance) {
        return draft.seams().stream()
                .filter(seam -> Stream.of(seam.join(), seam.to())
                        .allMatch(side -> side.stream().anyMatch(changed::contains)))
                .map(seam -> Law.keepsDifference(seam.join(), seam.to(), tolerance))
                .toList();
    }
}
