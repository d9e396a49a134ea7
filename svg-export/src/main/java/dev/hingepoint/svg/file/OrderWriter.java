package dev.hingepoint.svg.file;

import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.PlanLine;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.List;

/** Writes a plan as an order, with its reasons as comments. */
public final class OrderWriter {
    private static final int WIDE = 110;

    private OrderWriter() {}

    /**
     * @param card the name of the pattern's card, as seen from the order
     * @param unit for the measurements in the reasons
     */
    public static String write(Plan plan, String card, Unit unit) {
        StringBuilder yaml = new StringBuilder();
        plan.lines().stream().filter(line -> line.request().isEmpty()).forEach(line -> comment(yaml, "", line, unit));
        plan.problems().forEach(problem -> wrapped(yaml, "# ", "look: " + problem));
        yaml.append("pattern: ").append(CardWriter.plain(card)).append('\n');
        yaml.append("size: ").append(CardWriter.quoted(plan.size())).append('\n');
        plan.front()
                .ifPresent(front ->
                        yaml.append("front: ").append(CardWriter.plain(front)).append('\n'));
        yaml.append(plan.alterations().isEmpty() ? "alterations: []\n" : "alterations:\n");
        plan.alterations().forEach(request -> {
            plan.lines().stream()
                    .filter(line -> line.request().filter(request::equals).isPresent())
                    .forEach(line -> comment(yaml, "  ", line, unit));
            yaml.append("  - ").append(AlterationText.write(request)).append('\n');
        });
        yaml.append("# Sew a toile before you cut good cloth.\n");
        return yaml.toString();
    }

    private static void comment(StringBuilder yaml, String indent, PlanLine line, Unit unit) {
        wrapped(yaml, indent + "# ", line.topic().words() + ": " + line.amount());
        reasons(line, unit).forEach(reason -> wrapped(yaml, indent + "#   ", reason));
    }

    /** Why a plan says what it says: the measurement, where there is one, and the rule with its source. */
    public static List<String> reasons(PlanLine line, Unit unit) {
        List<String> reasons = new ArrayList<>();
        line.compared()
                .ifPresent(compared -> reasons.add(
                        compared.measurement() + ": body " + compared.body().shownIn(unit) + ", pattern "
                                + compared.pattern().shownIn(unit) + ", difference "
                                + compared.difference().shownIn(unit)));
        reasons.add(line.rule() + " (" + line.source() + ")");
        return reasons;
    }

    private static void wrapped(StringBuilder yaml, String start, String words) {
        lines(words, WIDE - start.length())
                .forEach(line -> yaml.append(start).append(line).append('\n'));
    }

    /** Words broken into lines of at most so many characters, where they allow it. */
    public static List<String> lines(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.strip().split("\\s+")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
