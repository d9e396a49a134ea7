package dev.hingepoint.svg.lesson;

import dev.hingepoint.check.Ledger;
import java.util.List;
import java.util.Optional;

/**
 * One alteration of one pattern, as it is taught.
 *
 * @param pattern its name
 * @param alteration the name it is ordered by
 * @param order its amounts and choices as they were ordered: "wedge: 12 mm"
 * @param scale how large the pattern is in the scenes: 0.2 is 1:5
 * @param changed what changed, with the alteration's notes
 * @param kept what it promises and was held to: "keeps the length of the side seam, on the back"
 * @param worse what is worse than before, and has to be lived with
 * @param why what on a body calls for it; empty for an alteration that nobody wrote it down for
 */
public record Lesson(
        String pattern,
        String size,
        String alteration,
        String order,
        double scale,
        List<Scene> scenes,
        Carry carry,
        Ledger.Entry changed,
        List<String> kept,
        List<String> worse,
        Optional<Why> why) {
    public Lesson {
        scenes = List.copyOf(scenes);
        kept = List.copyOf(kept);
        worse = List.copyOf(worse);
    }
}
