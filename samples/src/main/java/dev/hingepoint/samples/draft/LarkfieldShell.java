package dev.hingepoint.samples.draft;

import static dev.hingepoint.samples.draft.Drawing.at;
import static dev.hingepoint.samples.draft.Drawing.curve;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.samples.draft.Chart.Size;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The Larkfield shell: a knit top without darts, front and back on the fold, to wear under the concert dress's jacket. Our own draft: 3 % smaller than the
 * body at bust and hip and level with it at the waist, for cloth that stretches 40 % across.
 */
public final class LarkfieldShell {
    private static final double CAP_EASE = 4;
    private static final double NOTCH = 60;

    private LarkfieldShell() {}

    /** The shell in all its sizes. */
    public static Pattern shell() {
        List<Piece> nest = new ArrayList<>();
        for (Size size : Chart.sizes()) {
            Piece front = piece(size, "front", 96);
            Piece back = piece(size, "back", 30);
            double cap = front.sewnLength("armhole") + back.sewnLength("armhole") + CAP_EASE;
            int n = size.steps();
            Piece sleeve = Sleeve.draft(size.name(), cap, 300 + 9 * n, 270 + 8 * n, 150, NOTCH);
            nest.addAll(Larkfield.sideBySide(front, back, sleeve));
        }
        return new Pattern(card(), nest);
    }

    private static Card card() {
        Map<String, Length> allowances = new LinkedHashMap<>();
        allowances.put("default", new Length(10));
        allowances.put("hem", new Length(25));
        List<Seam> seams = Larkfield.seams().stream()
                .map(seam -> seam.to().size() == 2 ? seam.withEase(0, 8) : seam)
                .toList();
        return new Card(
                "Larkfield shell",
                "40",
                Optional.of(new Length(Chart.CUP_DIFFERENCE)),
                0.4,
                0.2,
                Chart.chart(),
                seams,
                new Allowances(allowances),
                List.of(),
                Map.of(),
                new Lays(Map.of(Lays.DEFAULT, Lays.Way.TWO_WAYS)),
                Optional.empty());
    }

    private static Piece piece(Size size, String name, double neckDepth) {
        int n = size.steps();
        boolean isFront = name.equals("front");
        double bust = 0.97 * size.bust() / 4;
        double waist = size.waist() / 4;
        double hip = 0.97 * size.hip() / 4;
        double atWaist = 415 + 3 * n;
        double atHip = atWaist + 200;
        Vector down = new Vector(0, 1);
        Vector across = new Vector(1, 0);
        Point underarm = at(bust + 1, 215 + 3 * n);
        Path side = Path.of(
                curve(underarm, new Vector(-0.12, 1), 60, at(waist, atWaist), down, 70),
                curve(at(waist, atWaist), down, 70, at(hip, atHip), down, 80));
        Vector shoulder = across.turned(StrictMath.toRadians(20));
        Point neck = at(92 + 1.5 * n, 0);
        Point tip = neck.plus(shoulder.times(93 + 1.5 * n));
        double scoop = isFront ? 92 : 80;
        Path armhole = Path.of(curve(
                tip, shoulder.right(), 95 + 2 * n, underarm, side.startTangent().left(), scoop - 20 + 2 * n));
        Point neckCentre = at(0, neckDepth + 1.5 * n);
        Drawing drawing = new Drawing()
                .edge(
                        "neckline",
                        Edge.Kind.BOUND,
                        Path.of(curve(neckCentre, across, 44 + n, neck, shoulder.left(), neckDepth * 0.5)))
                .edge("shoulder", Edge.Kind.SEAM, Path.through(neck, tip))
                .edge("armhole", Edge.Kind.SEAM, armhole)
                .edge(Larkfield.SIDE, Edge.Kind.SEAM, side)
                .edge("hem", Edge.Kind.HEM, Path.through(at(hip, atHip), at(0, atHip)))
                .edge("centre " + name, Edge.Kind.FOLD, Path.through(at(0, atHip), neckCentre))
                .level("bust", 262 + 4 * n)
                .level("waist", atWaist)
                .level("high hip", atWaist + 95)
                .level("hip", atHip - 10)
                .line("lengthen or shorten", atWaist + 60)
                .grain(40, atWaist - 100, atWaist + 150)
                .notch(name + " armhole", isFront ? 1 : 2, "armhole", armhole.length() - NOTCH)
                .notchAt("waist", 1, Larkfield.SIDE, atWaist);
        if (isFront) {
            drawing.mark(new MarkedPoint("bust apex", at(92 + 2.5 * n, 262 + 4 * n), 4));
        }
        return drawing.piece(name, size.name(), new Cutting(1, Cutting.How.ON_FOLD, Optional.empty()));
    }
}
