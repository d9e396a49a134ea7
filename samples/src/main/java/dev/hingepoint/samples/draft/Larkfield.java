package dev.hingepoint.samples.draft;

import static dev.hingepoint.samples.draft.Drawing.at;
import static dev.hingepoint.samples.draft.Drawing.curve;
import static dev.hingepoint.samples.draft.Drawing.direction;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Opening;
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
 * The Larkfield concert dress: a woven dress to below the knee for a small choir, our own draft.
 *
 * <p>Ease at bust 90, waist 70 and hip 64 mm: above the floors of New Mexico State University Guide C-228 (bust 3 - 4 in) and of Central
 * Washington University's costume text, ch. 16 (waist 3/4 - 1 in, hip 2 - 2 3/4 in). Each quarter takes a fourth, the front 5 mm more and the back 5 mm
 * less, so that the side seam lies a little to the back. Proportions and grading are our own.
 */
public final class Larkfield {
    static final String SIDE = "side seam";
    private static final double FORWARD = 5;
    private static final double WAIST_DART = 26;
    private static final double CAP_EASE = 22;
    private static final double NOTCH = 75;

    private final Size size;
    private final int n;

    private Larkfield(Size size) {
        this.size = size;
        this.n = size.steps();
    }

    /** The dress in all its sizes. */
    public static Pattern dress() {
        List<Piece> nest = new ArrayList<>();
        for (Size size : Chart.sizes()) {
            Larkfield draft = new Larkfield(size);
            Piece front = draft.front();
            Piece back = draft.back();
            double cap = front.sewnLength("armhole") + back.sewnLength("armhole") + CAP_EASE;
            Piece sleeve = Sleeve.draft(size.name(), cap, 330 + 9 * draft.n, 280 + 7 * draft.n, 300, NOTCH);
            nest.addAll(sideBySide(front, back, sleeve));
        }
        return new Pattern(card(), nest);
    }

    /** Laid out so that no piece is drawn over another. */
    static List<Piece> sideBySide(Piece front, Piece back, Piece sleeve) {
        return List.of(
                front, back.moved(Motion.shift(new Vector(450, 0))), sleeve.moved(Motion.shift(new Vector(1120, 40))));
    }

    private static Card card() {
        Map<String, Length> allowances = new LinkedHashMap<>();
        allowances.put("default", new Length(15));
        allowances.put("hem", new Length(40));
        allowances.put("neckline", new Length(10));
        allowances.put("back/centre back", new Length(20));
        allowances.put("sleeve/hem", new Length(25));
        return new Card(
                "Larkfield concert dress",
                "40",
                Optional.of(new Length(Chart.CUP_DIFFERENCE)),
                0,
                0,
                Chart.chart(),
                seams(),
                new Allowances(allowances),
                List.of(new Opening(new EdgeRef("back", "centre back"), "neckline", new Length(550))),
                Map.of(),
                new Lays(Map.of(Lays.DEFAULT, Lays.Way.TWO_WAYS)),
                Optional.empty());
    }

    static List<Seam> seams() {
        EdgeRef frontArmhole = new EdgeRef("front", "armhole");
        EdgeRef backArmhole = new EdgeRef("back", "armhole");
        return List.of(
                Seam.of(new EdgeRef("front", SIDE), new EdgeRef("back", SIDE)),
                Seam.of(new EdgeRef("back", "shoulder"), new EdgeRef("front", "shoulder"))
                        .withEase(0, 6),
                new Seam(List.of(new EdgeRef("sleeve", "cap")), List.of(frontArmhole, backArmhole), 15, 35, false),
                Seam.of(new EdgeRef("sleeve", "front underarm seam"), new EdgeRef("sleeve", "back underarm seam")));
    }

    private double quarter(double girth, double ease) {
        return (girth + ease) / 4;
    }

    /** The side seam as sewn, for the back: from the underarm over waist and hip to the hem, smooth at each joint. */
    private Path sideSeam() {
        double bust = quarter(size.bust(), 90) - FORWARD;
        double waist = quarter(size.waist(), 70) - FORWARD + WAIST_DART;
        double hip = quarter(size.hip(), 64) - FORWARD;
        Vector down = new Vector(0, 1);
        Point underarm = at(bust + 2, 222 + 3 * n);
        Point atWaist = at(waist, waist());
        Point atHip = at(hip, waist() + 205);
        Point corner = at(hip + 25, hem() - 10);
        Vector inwards = new Vector(waist - bust - 8, waist() - underarm.y());
        return Path.of(
                curve(underarm, inwards, 60, atWaist, down, 70),
                curve(atWaist, down, 65, atHip, direction(1.5), 85),
                curve(atHip, direction(1.5), 140, corner, direction(4), 140));
    }

    private double waist() {
        return 425 + 3 * n;
    }

    private double hem() {
        return 1075 + 5 * n;
    }

    private Piece back() {
        Path side = sideSeam();
        Point neck = at(74 + 1.5 * n, 0);
        Vector shoulder = new Vector(1, 0).turned(StrictMath.toRadians(19));
        Point tip = neck.plus(shoulder.times(125 + 1.5 * n));
        Path armhole = Path.of(curve(
                tip,
                shoulder.right(),
                95 + 2 * n,
                side.start(),
                side.startTangent().left(),
                62 + 2 * n));
        Point nape = at(0, 20);
        return new Drawing()
                .edge(
                        "neckline",
                        Edge.Kind.SEAM,
                        Path.of(curve(nape, new Vector(1, 0), 44 + n, neck, shoulder.left(), 20)))
                .edge("shoulder", Edge.Kind.SEAM, Path.through(neck, tip))
                .edge("armhole", Edge.Kind.SEAM, armhole)
                .edge(SIDE, Edge.Kind.SEAM, side)
                .edge("hem", Edge.Kind.HEM, hemFrom(side))
                .edge("centre back", Edge.Kind.SEAM, Path.through(at(0, hem()), nape))
                .level("bust", 262 + 4 * n)
                .level("waist", waist())
                .level("high hip", waist() + 100)
                .level("hip", waist() + 205)
                .line("lengthen or shorten", waist() + 330)
                .grain(50, waist() - 120, waist() + 420)
                .waistDart(98 + 2 * n, waist() - 150, waist(), waist() + 125, WAIST_DART)
                .notch("back armhole", 2, "armhole", armhole.length() - NOTCH)
                .notchAt("waist", 1, SIDE, waist())
                .notchAt("hip", 1, SIDE, waist() + 205)
                .notch("zip end", 1, "centre back", hem() - 20 - 550)
                .piece("back", size.name(), new Cutting(1, Cutting.How.PAIR, Optional.empty()));
    }

    private Path hemFrom(Path side) {
        return Path.of(curve(
                side.end(), side.endTangent().right(), 110, at(0, side.end().y() + 10), new Vector(-1, 0), 110));
    }

    /** The front is longer than the back by its bust dart: above the dart the side seam is opened about the dart's tip. */
    private Piece front() {
        double intake = 28 + n;
        Path closed = sideSeam().moved(Motion.shift(new Vector(2 * FORWARD, intake)));
        Point apex = at(94 + 2.5 * n, 268 + 4 * n);
        Path below = closed.part(62, closed.length());
        Path above = closed.part(0, 62);
        Point lowerLeg = below.start();
        Point tip = apex.plus(
                lowerLeg.minus(apex).plus(new Vector(0, -intake / 2)).unit().times(30));
        double angle = 2 * StrictMath.asin(intake / 2 / tip.distanceTo(lowerLeg));
        Path opened = above.moved(Motion.turn(tip, -angle));
        Path side = opened.then(Path.through(opened.end(), lowerLeg)).then(below);

        Point neck = at(74 + 1.5 * n, 0);
        Vector shoulder = new Vector(1, 0).turned(StrictMath.toRadians(22));
        Point shoulderTip = neck.plus(shoulder.times(122 + 1.5 * n));
        Path armhole = Path.of(curve(
                shoulderTip,
                shoulder.right(),
                110 + 2 * n,
                side.start(),
                side.startTangent().left(),
                85 + 2 * n));
        Point neckFront = at(0, 88 + 1.5 * n);
        double waist = waist() + intake;
        return new Drawing()
                .edge(
                        "neckline",
                        Edge.Kind.SEAM,
                        Path.of(curve(neckFront, new Vector(1, 0), 42 + n, neck, shoulder.left(), 48 + n)))
                .edge("shoulder", Edge.Kind.SEAM, Path.through(neck, shoulderTip))
                .edge("armhole", Edge.Kind.SEAM, armhole)
                .edge(SIDE, Edge.Kind.SEAM, side)
                .edge("hem", Edge.Kind.HEM, hemFrom(side))
                .edge(
                        "centre front",
                        Edge.Kind.FOLD,
                        Path.through(at(0, side.end().y() + 10), neckFront))
                .level("bust", apex.y())
                .level("waist", waist)
                .level("high hip", waist + 100)
                .level("hip", waist + 205)
                .line("lengthen or shorten", waist + 330)
                .grain(50, waist - 120, waist + 420)
                .mark(new MarkedPoint("bust apex", apex, 4))
                .mark(EdgeDart.of("side bust dart", opened.end(), tip, lowerLeg))
                .waistDart(apex.x(), apex.y() + 32, waist, waist + 105, WAIST_DART)
                .notch("front armhole", 1, "armhole", armhole.length() - NOTCH)
                .notchAt("waist", 1, SIDE, waist)
                .notchAt("hip", 1, SIDE, waist + 205)
                .piece("front", size.name(), new Cutting(1, Cutting.How.ON_FOLD, Optional.empty()));
    }
}
