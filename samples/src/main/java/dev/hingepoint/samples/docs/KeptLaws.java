package dev.hingepoint.samples.docs;

import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.svg.file.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The laws of an alteration as one reads them: sentences that are equal but for the piece, or for the edge or level they name, become one. */
final class KeptLaws {
    private static final double EXACTLY = Tolerance.LAST_DECIMAL;

    /**
     * A sentence.
     *
     * @param pieces those that it holds of; none for a seam, whose sentence names them
     * @param within how closely it is held
     */
    record Line(String pieces, String sentence, String within) {
        boolean isKept() {
            return List.of("keeps ", "leaves ", "lets ").stream().anyMatch(sentence::startsWith);
        }
    }

    /**
     * What laws have in common that differ in the piece alone.
     *
     * @param name the edge, level or piece between the words; nothing where they have none, or name pieces as well
     */
    private record Said(String before, String name, String after, boolean namesItsPieces, String within) {}

    /** What sentences have in common that differ in one name alone. */
    private record Frame(String before, String after, Set<String> pieces, String within) {}

    private KeptLaws() {}

    static List<Line> of(List<Law> laws) {
        Map<Said, Set<String>> pieces = new LinkedHashMap<>();
        for (Law law : laws) {
            pieces.computeIfAbsent(said(law), key -> new LinkedHashSet<>())
                    .add(law.where().piece().orElseThrow());
        }
        Map<Frame, List<String>> names = new LinkedHashMap<>();
        pieces.forEach((said, on) -> {
            Set<String> of = said.namesItsPieces() ? Set.of() : on;
            names.computeIfAbsent(new Frame(said.before(), said.after(), of, said.within()), key -> new ArrayList<>())
                    .add(said.name());
        });
        List<Line> lines = new ArrayList<>();
        names.forEach((frame, all) -> lines.add(new Line(
                frame.pieces().isEmpty() ? joined(all) : joined(List.copyOf(frame.pieces())),
                frame.before() + joined(all) + (all.size() > 1 ? inThePlural(frame.after()) : frame.after()),
                frame.within())));
        return lines;
    }

    private static Said said(Law law) {
        Where where = law.where();
        String sentence = law.sentence();
        if (sentence.contains("/")) {
            return new Said(sentence, "", "", true, within(law));
        }
        String name = where.edge().or(where::mark).or(where::piece).orElseThrow();
        int at = sentence.indexOf("the " + name) + "the ".length();
        if (at < "the ".length()) {
            return new Said(sentence, "", "", false, within(law));
        }
        boolean isOfPiece = where.edge().isEmpty() && where.mark().isEmpty();
        return new Said(
                sentence.substring(0, at), name, sentence.substring(at + name.length()), isOfPiece, within(law));
    }

    private static String inThePlural(String words) {
        return words.replace(" it was", " they were")
                .replace(" it did", " they did")
                .replace(" its ", " their ");
    }

    /** "bust, waist and hip". */
    static String joined(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static String within(Law law) {
        if (law.isAngle()) {
            double degrees = StrictMath.toDegrees(law.tolerance());
            return degrees < EXACTLY ? "exactly" : Numbers.of(degrees, 1) + "°";
        }
        return law.tolerance() <= EXACTLY ? "exactly" : Numbers.of(law.tolerance(), 2) + " mm";
    }
}
