package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A strip that is folded round an edge and encloses it: cut four times as wide as it shows. On a knit it is 0.95 of the edge; on the bias as long as the edge, less 2 % where the
 * edge is curved, so that it does not stand off (common practice, no source).
 */
final class Binding implements Alteration {
    private static final double USUAL_WIDTH = 8;
    private static final double KNIT = 0.95;
    private static final double LESS_ON_CURVES = 0.02;

    /** An edge that bends no more tightly than a circle of this radius in mm is straight to a binding. */
    private static final double STRAIGHT = 500;

    private static final int STEPS = 32;

    @Override
    public String name() {
        return "binding";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("edge", "neckline", "width", "8 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("edge", "width", "on", "cloth");
        String edge = options.text("edge").orElseThrow(() -> options.refuse("make.binding.which-edge"));
        double width = options.length("width").map(Length::mm).orElse(USUAL_WIDTH);
        if (!(width >= 3 && width <= 40)) {
            throw new Refusal(
                    Reason.BeyondLimit.of(Message.of("make.binding.width-range"), Where.UNKNOWN.edge(edge), width, 40));
        }
        boolean isKnit = options.choice("on", "bias", "knit")
                .map("knit"::equals)
                .orElse(draft.pattern().card().isKnit());
        JoinedEdge run = JoinedEdge.of(draft, edge);
        double ratio = isKnit ? KNIT : 1 - LESS_ON_CURVES * curvedShare(run.path());
        Map<String, Double> lines = new LinkedHashMap<>();
        lines.put("stitch here", width);
        lines.put("fold over the edge here", 2 * width);
        EdgeStrip strip = new EdgeStrip(
                "binding",
                run,
                ratio,
                4 * width,
                Length.ZERO,
                lines,
                !isKnit,
                options.text("cloth"),
                label(run, ratio, width, isKnit));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("width", width);
        amounts.put("on", isKnit ? "knit" : "bias");
        return strip.on(draft, amounts);
    }

    private static List<String> label(JoinedEdge run, double ratio, double width, boolean isKnit) {
        double whole = run.halves() * ratio * run.sewnLength();
        return List.of(
                "whole strip" + (isKnit ? "" : ", on the bias") + ": " + Reason.millimetres(Math.rint(whole + 20))
                        + " x " + Reason.millimetres(4 * width),
                "stitch " + Reason.millimetres(width) + " from the edge, fold over, stitch again",
                "try it on a scrap first: " + Percent.told(ratio) + " of the edge");
    }

    /** How large a part of a path's length is curved. */
    static double curvedShare(Path path) {
        double curved = 0;
        for (Segment segment : path.segments()) {
            for (int i = 0; i < STEPS; i++) {
                if (Math.abs(segment.curvature((i + 0.5) / STEPS)) * STRAIGHT > 1) {
                    curved += segment.lengthTo((i + 1.0) / STEPS) - segment.lengthTo((double) i / STEPS);
                }
            }
        }
        return curved / path.length();
    }
}
