package dev.hingepoint.pattern;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random dresses of two pieces in four sizes, drawn either way round, with or without darts, on a fold or not, mirrored or turned. */
public final class TestPatterns {
    public static final List<String> SIZES = List.of("38", "40", "42", "44");

    private TestPatterns() {}

    /** What varies from dress to dress. */
    public record Shape(
            double waist,
            double hip,
            double flare,
            double apexAcross,
            double apexDown,
            double step,
            boolean anticlockwise,
            boolean foldedBack,
            boolean bustDart,
            boolean waistDart,
            int pose) {}

    public static Arbitrary<Shape> shapes() {
        return Combinators.combine(
                        Arbitraries.doubles().between(190, 225),
                        Arbitraries.doubles().between(235, 280),
                        Arbitraries.doubles().between(-10, 60),
                        Arbitraries.doubles().between(80, 110),
                        Arbitraries.doubles().between(252, 275),
                        Arbitraries.doubles().between(3, 8),
                        Arbitraries.integers().between(0, 15),
                        Arbitraries.integers().between(0, 3))
                .as((waist, hip, flare, across, down, step, bits, pose) -> new Shape(
                        waist,
                        hip,
                        flare,
                        across,
                        down,
                        step,
                        (bits & 1) != 0,
                        (bits & 2) != 0,
                        (bits & 4) != 0,
                        (bits & 8) != 0,
                        pose));
    }

    public static Pattern dress(Shape shape) {
        List<Piece> nest = new ArrayList<>();
        Map<String, Map<String, Length>> chart = new LinkedHashMap<>();
        for (String size : SIZES) {
            double grow = (Integer.parseInt(size) - 40) / 2.0 * shape.step();
            nest.add(posed(piece(shape, size, true, grow), shape.pose(), 0));
            nest.add(posed(piece(shape, size, false, grow), shape.pose(), 700));
            chart.put(size, Map.of("full bust", new Length(880 + 4 * grow), "hip", new Length(960 + 4 * grow)));
        }
        Card card = Card.of(
                "test dress",
                "40",
                List.of(Seam.of(new EdgeRef("front", "side seam"), new EdgeRef("back", "side seam"))));
        return new Pattern(withChart(card, new BodyChart(Unit.MILLIMETRE, chart)), nest);
    }

    /** The same dress with a sleeve in each size, its cap 20 mm longer than the armholes. */
    public static Pattern withSleeve(Pattern dress) {
        List<Piece> nest = new ArrayList<>(dress.nest());
        for (String size : SIZES) {
            Draft draft = dress.in(size);
            double armholes = draft.piece("front").sewnLength("armhole")
                    + draft.piece("back").sewnLength("armhole");
            nest.add(sleeve(size, 0.36 * armholes, armholes + 20).moved(Motion.turn(new Point(0, 0), 0.3)));
        }
        List<Seam> seams = new ArrayList<>(dress.card().seams());
        seams.add(Seam.of(new EdgeRef("front", "shoulder"), new EdgeRef("back", "shoulder")));
        seams.add(new Seam(
                List.of(new EdgeRef("sleeve", "cap")),
                List.of(new EdgeRef("front", "armhole"), new EdgeRef("back", "armhole")),
                10,
                30,
                false));
        seams.add(Seam.of(new EdgeRef("sleeve", "front underarm seam"), new EdgeRef("sleeve", "back underarm seam")));
        return new Pattern(dress.card().withSeams(seams), nest);
    }

    /** The cap's height is solved for its length. */
    private static Piece sleeve(String size, double half, double capLength) {
        double height = 0;
        Path cap = null;
        for (double low = 10, high = 400; high - low > 1e-9; ) {
            height = (low + high) / 2;
            cap = Path.of(
                    cubic(-half, 0, -half * 0.5, 0, -half * 0.5, -height, 0, -height),
                    cubic(0, -height, half * 0.55, -height, half * 0.4, 0, half, 0));
            if (cap.length() < capLength) {
                low = height;
            } else {
                high = height;
            }
        }
        double hem = half - 30;
        return Piece.of(
                "sleeve",
                size,
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.PAIR, Optional.empty())),
                List.of(
                        new Edge("cap", Edge.Kind.SEAM, cap),
                        line("back underarm seam", Edge.Kind.SEAM, half, 0, hem, 420),
                        line("hem", Edge.Kind.HEM, hem, 420, -hem, 420),
                        line("front underarm seam", Edge.Kind.SEAM, -hem, 420, -half, 0)),
                List.of(new Grain(new Line(new Point(0, 40), new Point(0, 360)))));
    }

    private static Card withChart(Card card, BodyChart chart) {
        return new Card(
                card.name(),
                card.baseSize(),
                card.cupDifference(),
                0,
                0,
                chart,
                card.seams(),
                card.allowances(),
                List.of(),
                Map.of(),
                card.lays(),
                Optional.empty());
    }

    /** As drawn, mirrored, turned a little, or laid on its side and mirrored: the grain says which way is down. */
    private static Piece posed(Piece piece, int pose, double aside) {
        Motion shift = Motion.shift(new Vector(aside, 0));
        Point origin = new Point(0, 0);
        return piece.moved(
                switch (pose) {
                    case 1 -> Motion.stretch(origin, new Vector(1, 0), -1).then(shift);
                    case 2 -> Motion.turn(origin, 0.2).then(shift);
                    case 3 ->
                        Motion.stretch(origin, new Vector(1, 0), -1)
                                .then(Motion.turn(origin, -1.4))
                                .then(shift);
                    default -> shift;
                });
    }

    private static Piece piece(Shape s, String size, boolean isFront, double grow) {
        double intake = isFront && s.bustDart() ? 30 : 0;
        double bust = 230 + grow;
        double waist = s.waist() + grow;
        double hip = s.hip() + 1.2 * grow;
        double hem = hip + s.flare();
        double atBust = 213 + 0.2 * grow;
        double atWaist = 400 + 0.8 * grow + intake;
        double atHip = atWaist + 200 + 0.5 * grow;
        double atHem = atHip + 420 + 0.3 * grow;
        double neck = isFront ? 85 : 20;

        // as sewn, from the underarm down; a bust dart opens it 55 mm below the underarm
        double top = atBust + intake;
        double lean = s.flare() / 420;
        Path sewn = Path.of(
                cubic(bust, top, bust - 4, top + 60, waist, atWaist - 70, waist, atWaist),
                cubic(waist, atWaist, waist, atWaist + 60, hip - 70 * lean, atHip - 70, hip, atHip),
                cubic(hip, atHip, hip + 140 * lean, atHip + 140, hem - 140 * lean, atHem - 140, hem, atHem));
        Point tip = new Point(s.apexAcross() + 0.3 * grow + 30, s.apexDown() + 6);
        Path side = sewn;
        Path opened = null;
        Path below = null;
        if (intake > 0) {
            below = sewn.part(55, sewn.length());
            double angle = 2 * StrictMath.asin(intake / 2 / tip.distanceTo(below.start()));
            opened = sewn.part(0, 55).moved(Motion.turn(tip, -angle));
            side = opened.then(Path.through(opened.end(), below.start())).then(below);
        }
        Point underarm = side.start();
        Point shoulder = new Point(190 + 0.3 * grow, 45);
        String centre = isFront ? "centre front" : "centre back";
        Edge.Kind centreKind = isFront || s.foldedBack() ? Edge.Kind.FOLD : Edge.Kind.SEAM;
        List<Edge> edges = new ArrayList<>(List.of(
                new Edge("neckline", Edge.Kind.SEAM, Path.of(cubic(0, neck, 40, neck, 68, neck * 0.4, 75, 0))),
                new Edge("shoulder", Edge.Kind.SEAM, Path.through(new Point(75, 0), shoulder)),
                new Edge(
                        "armhole",
                        Edge.Kind.SEAM,
                        Path.of(new Cubic(
                                shoulder,
                                new Point(170, 120),
                                underarm.plus(side.startTangent().left().times(70)),
                                underarm))),
                new Edge("side seam", Edge.Kind.SEAM, side),
                new Edge(
                        "hem",
                        Edge.Kind.HEM,
                        Path.of(cubic(hem, atHem, hem - 90, atHem + 90 * lean, 90, atHem + 8, 0, atHem + 8))),
                new Edge(centre, centreKind, Path.through(new Point(0, atHem + 8), new Point(0, neck)))));

        List<Mark> marks = new ArrayList<>();
        marks.add(level("bust", s.apexDown(), side));
        marks.add(level("waist", atWaist, side));
        marks.add(level("hip", atHip, side));
        marks.add(new Grain(new Line(new Point(40, 300), new Point(40, 900))));
        marks.add(notch("hip", side, atHip));
        marks.add(notch("knee", side, atHip + 150));
        if (isFront) {
            marks.add(new MarkedPoint("bust apex", new Point(s.apexAcross() + 0.3 * grow, s.apexDown()), 3));
        }
        if (intake > 0) {
            marks.add(EdgeDart.of("side bust dart", opened.end(), tip, below.start()));
        }
        if (s.waistDart()) {
            double x = s.apexAcross() + 0.3 * grow;
            marks.add(DoublePointedDart.of(
                    "waist dart",
                    Path.through(
                            new Point(x, s.apexDown() + 30),
                            new Point(x - 10, atWaist),
                            new Point(x, atWaist + 110),
                            new Point(x + 10, atWaist),
                            new Point(x, s.apexDown() + 30))));
        }
        if (s.anticlockwise() == isFront) {
            List<Edge> reversed = new ArrayList<>();
            for (int i = edges.size() - 1; i >= 0; i--) {
                reversed.add(edges.get(i).reversed());
            }
            edges = reversed;
        }
        Cutting.How how = centreKind == Edge.Kind.FOLD ? Cutting.How.ON_FOLD : Cutting.How.PAIR;
        return Piece.of(
                isFront ? "front" : "back",
                size,
                Optional.empty(),
                List.of(new Cutting(1, how, Optional.empty())),
                edges,
                marks);
    }

    private static Cubic cubic(double... c) {
        return new Cubic(new Point(c[0], c[1]), new Point(c[2], c[3]), new Point(c[4], c[5]), new Point(c[6], c[7]));
    }

    private static Point onSide(Path side, double y) {
        return side.at(side.crossings(new Point(0, y), new Vector(1, 0)).get(0));
    }

    private static Level level(String name, double y, Path side) {
        return new Level(name, Path.through(new Point(0, y), onSide(side, y)));
    }

    private static Notch notch(String name, Path side, double y) {
        Point at = onSide(side, y);
        return new Notch(name, 1, new Line(at, at.minus(new Vector(6, 0))));
    }

    /** A piece of straight paper, {@code width} x {@code height}, with the edges of a back: for closed forms. */
    public static Piece straightBack(double width, double height, double waist) {
        List<Edge> edges = List.of(
                line("neckline", Edge.Kind.SEAM, 0, 0, 70, 0),
                line("shoulder", Edge.Kind.SEAM, 70, 0, 160, 0),
                line("armhole", Edge.Kind.SEAM, 160, 0, width, 150),
                line("side seam", Edge.Kind.SEAM, width, 150, width, height),
                line("hem", Edge.Kind.HEM, width, height, 0, height),
                line("centre back", Edge.Kind.SEAM, 0, height, 0, 0));
        List<Mark> marks = List.of(
                new Level("waist", Path.through(new Point(0, waist), new Point(width, waist))),
                new Level("hip", Path.through(new Point(0, waist + 200), new Point(width, waist + 200))),
                new Notch("side", 1, new Line(new Point(width, waist + 80), new Point(width - 6, waist + 80))),
                new Grain(new Line(new Point(50, 100), new Point(50, height - 50))));
        return Piece.of(
                "back",
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.PAIR, Optional.empty())),
                edges,
                marks);
    }

    /**
     * A back whose side seam runs straight from the underarm in to a corner and straight out to the hem, 10 mm in at the corner; the waist 400 mm
     * down, 225 mm wide.
     *
     * @param corner how far down, in mm, the corner lies
     */
    public static Piece corneredBack(double corner, Edge.Kind centre) {
        Piece straight = straightBack(225, 1000, 400);
        Path side = Path.through(new Point(235, 150), new Point(225, corner), new Point(265, 1000));
        List<Edge> edges = List.of(
                straight.edge("neckline"),
                straight.edge("shoulder"),
                line("armhole", Edge.Kind.SEAM, 160, 0, 235, 150),
                new Edge("side seam", Edge.Kind.SEAM, side),
                line("hem", Edge.Kind.HEM, 265, 1000, 0, 1000),
                line("centre back", centre, 0, 1000, 0, 0));
        return Piece.of(
                "back",
                "40",
                Optional.empty(),
                List.of(new Cutting(
                        1, centre == Edge.Kind.FOLD ? Cutting.How.ON_FOLD : Cutting.How.PAIR, Optional.empty())),
                edges,
                List.of(level("waist", 400, side), level("hip", 600, side), straight.grain()));
    }

    /** Straight paper for a full bust: apex P, hinge at (a, b) inches from it, the side seam four and a half inches away. */
    public static Piece straightFront(double a, double b, Optional<Double> dart) {
        double inch = 25.4;
        Point apex = new Point(100, 300);
        double side = apex.x() + 4.5 * inch;
        // the armhole runs straight through the hinge, one third of its length up from the underarm
        Point hinge = apex.plus(new Vector(a * inch, -b * inch));
        Point underarm = new Point(side, 2 * 300 - 300 - 40);
        Point top = underarm.plus(hinge.minus(underarm).times(3));
        List<Edge> edges = List.of(
                line("neckline", Edge.Kind.SEAM, 0, top.y() - 60, 60, top.y() - 100),
                line("shoulder", Edge.Kind.SEAM, 60, top.y() - 100, top.x(), top.y()),
                line("armhole", Edge.Kind.SEAM, top.x(), top.y(), underarm.x(), underarm.y()),
                line("side seam", Edge.Kind.SEAM, side, underarm.y(), side, 900),
                line("hem", Edge.Kind.HEM, side, 900, 0, 900),
                line("centre front", Edge.Kind.FOLD, 0, 900, 0, top.y() - 60));
        List<Mark> marks = new ArrayList<>(List.of(
                new MarkedPoint("bust apex", apex, 3),
                new Level("waist", Path.through(new Point(0, 450), new Point(side, 450))),
                new Grain(new Line(new Point(40, 400), new Point(40, 800)))));
        dart.ifPresent(intake -> marks.add(EdgeDart.of(
                "side bust dart",
                new Point(side, 300 - intake / 2),
                new Point(apex.x() + 25, 300),
                new Point(side, 300 + intake / 2))));
        return Piece.of(
                "front",
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.ON_FOLD, Optional.empty())),
                edges,
                marks);
    }

    private static Edge line(String name, Edge.Kind kind, double x1, double y1, double x2, double y2) {
        List<Segment> one = List.of(new Line(new Point(x1, y1), new Point(x2, y2)));
        return new Edge(name, kind, Path.of(one));
    }

    public static Pattern of(Piece... pieces) {
        return new Pattern(Card.of("test", "40", List.of()), List.of(pieces));
    }
}
