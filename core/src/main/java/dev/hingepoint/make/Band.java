package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A band, folded along its middle and sewn to an edge by both its long edges; stretched on, so that it lies flat. How much shorter it is than the edge goes
 * by its own cloth, see {@link #ratio}.
 *
 * <p>The edge is cut on its line, without an allowance, and the band is sewn on {@value #SEWN_AT} mm inside it.
 */
final class Band implements Alteration {
    static final double SEWN_AT = 6;
    private static final double USUAL_WIDTH = 20;
    private static final double WIDER = 0.05;
    private static final double MOST = 0.95;

    @Override
    public String name() {
        return "band";
    }

    /**
     * How long a band is, as a share of its edge, for a cloth that stretches by so large a fraction: 25 % 0.90, 50 % 0.85, 100 % and more 0.75, in between by line
     * (common practice, no source); a cloth that does not stretch must be as long as the edge (derived), and up to 25 % goes by line from there.
     *
     * @param isWideNeck a wide or straight neck takes 0.05 more, at most 0.95
     */
    static double ratio(double stretch, boolean isWideNeck) {
        double ratio = between(stretch, 0, 1.0, 0.25, 0.90);
        if (stretch > 0.25) {
            ratio = stretch <= 0.5
                    ? between(stretch, 0.25, 0.90, 0.5, 0.85)
                    : between(Math.min(1, stretch), 0.5, 0.85, 1, 0.75);
        }
        return isWideNeck && ratio < MOST ? Math.min(MOST, ratio + WIDER) : ratio;
    }

    private static double between(double x, double from, double there, double to, double then) {
        return there + (then - there) * (x - from) / (to - from);
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("edge", "neckline", "width", "20 mm", "stretch", "50 %");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("edge", "width", "stretch", "neck", "cloth");
        String edge = options.text("edge").orElseThrow(() -> options.refuse("make.band.which-edge"));
        double width = options.length("width").map(Length::mm).orElse(USUAL_WIDTH);
        if (!(width >= 5 && width <= 150)) {
            throw new Refusal(
                    Reason.BeyondLimit.of(Message.of("make.band.width-range"), Where.UNKNOWN.edge(edge), width, 150));
        }
        double stretch =
                Percent.of(options, "stretch").orElse(draft.pattern().card().stretchAcross());
        boolean isWide = options.choice("neck", "wide", "straight").isPresent();
        double ratio = ratio(stretch, isWide);
        JoinedEdge run = JoinedEdge.of(draft, edge);
        EdgeStrip strip = new EdgeStrip(
                "band",
                run,
                ratio,
                2 * width,
                new Length(SEWN_AT),
                Map.of("fold", width),
                false,
                options.text("cloth"),
                label(run, ratio, width));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("width", width);
        amounts.put("stretch", Percent.told(stretch));
        Altered altered = strip.on(draft, amounts)
                .withLaws(List.of(reaches(strip, stretch)))
                .withNote("the band is sewn on " + Reason.millimetres(SEWN_AT) + " inside the line, and its fold lies "
                        + Reason.millimetres(width - SEWN_AT) + " outside it; try it on a scrap");
        return stretch > 0
                ? altered
                : altered.withNote(
                        "a band that does not stretch lies flat on a straight edge only; on a curve bind it");
    }

    private static List<String> label(JoinedEdge run, double ratio, double width) {
        double whole = run.halves() * ratio * run.sewnLength();
        return List.of(
                "whole strip, allowances included: " + Reason.millimetres(Math.rint(whole + 20)) + " x "
                        + Reason.millimetres(Math.rint(2 * (width + SEWN_AT))),
                "greatest stretch along it; stretch it on from notch to notch, " + Reason.millimetres(SEWN_AT)
                        + " from the edge",
                "try it on a scrap first: " + Percent.told(ratio) + " of the edge");
    }

    /** Stretched, it must go round the edge. */
    private static Law reaches(EdgeStrip strip, double stretch) {
        EdgeRef edge = new EdgeRef(strip.name(), EdgeStrip.JOINED);
        return new Law(
                Message.of("make.band.law.reaches-round", strip.run().edge()),
                Where.inPiece(strip.name()).edge(EdgeStrip.JOINED),
                (before, after) -> 0,
                (before, after) -> Math.max(0, strip.run().sewnLength() - after.sewnLength(edge) * (1 + stretch)),
                0.01);
    }
}
