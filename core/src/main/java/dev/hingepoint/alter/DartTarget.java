package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.SewnEdge;
import dev.hingepoint.pattern.Spot;
import dev.hingepoint.pattern.Unit;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where an intake goes to: a place of an edge, or a dart that opens on one.
 *
 * @param place where the edge is slashed
 * @param into the dart that takes it up, where there is one already
 * @param name of the dart afterwards
 */
record DartTarget(Spot place, Optional<EdgeDart> into, String name) {
    /** A leg ends at least so many mm from the end of its edge. */
    private static final double ROOM = 5;

    /** This part of an edge at either end is no place for a dart of no written place. */
    private static final double NEAR_END = 0.15;

    /** How finely a free place is looked for along an edge. */
    private static final int STEPS = 50;

    /**
     * An edge, at a written place or, without one, right below the pivot, or where the slash meets it square, or half way along
     * it, or as near to that as the slash passes other darts by; or a dart by its name.
     *
     * @param intake the dart that is moved; the slash ends at its pivot
     */
    static DartTarget of(DartIntake intake, String to, Options options) {
        Piece piece = intake.lifted();
        Optional<EdgeDart> into = piece.find(EdgeDart.class, to);
        if (into.isPresent()) {
            if (options.has("at")) {
                throw options.refuse("alter.dart-target.at-goes-with-edge", to);
            }
            Spot middle = piece.nearest(edgeOf(piece, into.get()), into.get().mouthMiddle());
            requireFree(withoutDart(piece, into.get()), middle, intake);
            return new DartTarget(middle, into, to);
        }
        Edge edge = edge(piece, to);
        Spot place = options.has("at") ? written(piece, edge, options) : preferred(piece, edge, intake);
        requireFree(piece, place, intake);
        return new DartTarget(place, Optional.empty(), freeName(intake, to + " dart"));
    }

    String edge() {
        return place.edge();
    }

    static Edge edgeOf(Piece piece, EdgeDart dart) {
        return piece.edges().stream()
                .filter(edge -> SewnEdge.isOn(edge.path(), dart))
                .findFirst()
                .orElseThrow();
    }

    /** The piece with a dart, and the notches at its legs, rubbed out. */
    static Piece withoutDart(Piece piece, EdgeDart dart) {
        return piece.withMarks(piece.marks().stream()
                .filter(mark -> !mark.equals(dart) && !mark.name().startsWith(dart.name() + ", "))
                .toList());
    }

    private static Edge edge(Piece piece, String to) {
        if (!piece.hasEdge(to)) {
            Stream<String> darts = piece.marks(EdgeDart.class).map(Mark::name);
            Stream<String> edges = piece.edges().stream()
                    .filter(edge -> edge.kind() != Edge.Kind.FOLD)
                    .map(Edge::name);
            throw new Refusal(new Reason.Missing(
                    Message.of(
                            "alter.dart-target.no-such-target",
                            to,
                            Stream.concat(edges, darts).toList()),
                    piece.where()));
        }
        Edge edge = piece.edge(to);
        if (edge.kind() == Edge.Kind.FOLD) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.dart-target.on-fold"), piece.where().edge(to)));
        }
        return edge;
    }

    private static Spot written(Piece piece, Edge edge, Options options) {
        String from = options.text("from").orElseGet(() -> firstNeighbour(piece, edge));
        String text = options.text("at").orElseThrow().strip();
        Optional<Double> fraction = fraction(text);
        double length = edge.path().length();
        double mm = fraction.map(part -> part * length)
                .orElseGet(() -> Length.parse(text, Unit.MILLIMETRE).mm());
        if (mm < ROOM || mm > length - ROOM) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "alter.dart-target.too-near-end",
                            Quantity.millimetres(ROOM),
                            text,
                            Quantity.millimetres(mm),
                            from),
                    piece.where().edge(edge.name()),
                    mm,
                    length - ROOM));
        }
        return Place.along(edge.name(), from, mm).on(piece);
    }

    /** "40 %", or a bare number up to 1. */
    static Optional<Double> fraction(String text) {
        if (text.endsWith("%")) {
            return number(text.substring(0, text.length() - 1).strip()).map(percent -> percent / 100);
        }
        return number(text).filter(value -> value >= 0 && value <= 1);
    }

    private static Optional<Double> number(String text) {
        return text.matches("[0-9]+(\\.[0-9]+)?") ? Optional.of(Double.valueOf(text)) : Optional.empty();
    }

    /** The end that a place is measured from where none is named: the upper one; of an edge that runs across, the one nearer the centre. */
    private static String firstNeighbour(Piece piece, Edge edge) {
        Vector down = piece.grain().down();
        Point start = edge.path().start();
        Point end = edge.path().end();
        Vector run = end.minus(start);
        boolean runsDown = Math.abs(run.dot(down)) >= Math.abs(run.dot(down.left()));
        boolean startsFirst = runsDown || piece.centre().isEmpty()
                ? run.dot(down) >= 0
                : piece.centre().get().path().distanceTo(start)
                        <= piece.centre().get().path().distanceTo(end);
        return (startsFirst ? piece.before(edge.name()) : piece.after(edge.name())).name();
    }

    private static Spot preferred(Piece piece, Edge edge, DartIntake intake) {
        Point pivot = intake.pivot();
        Path path = edge.path();
        Vector down = piece.grain().down();
        double wanted = path.crossings(pivot, down).stream()
                .filter(position -> path.at(position).minus(pivot).dot(down) > 0)
                .findFirst()
                .map(position -> path.distanceAlong(position) / path.length())
                .orElseGet(() -> squarePlace(path, pivot));
        Stream<Double> places = Stream.concat(
                Stream.of(wanted),
                IntStream.range(1, STEPS)
                        .mapToObj(step -> (double) step / STEPS)
                        .sorted(Comparator.comparingDouble(place -> Math.abs(place - wanted))));
        return places.filter(place -> place * path.length() >= ROOM && (1 - place) * path.length() >= ROOM)
                .map(place -> {
                    Position position = path.positionAt(place * path.length());
                    return new Spot(edge.name(), position, path.at(position));
                })
                .filter(spot -> obstacle(piece, spot, intake).isEmpty())
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Unsound(
                        Message.of("alter.dart-target.no-clear-slash", edge.name()),
                        piece.where().edge(edge.name()))));
    }

    /** The part of the edge at which the slash meets it square, so that it opens along itself; half way where that is near an end. */
    private static double squarePlace(Path path, Point pivot) {
        double nearest = path.distanceAlong(path.nearest(pivot)) / path.length();
        return nearest >= NEAR_END && nearest <= 1 - NEAR_END ? nearest : 0.5;
    }

    private static void requireFree(Piece piece, Spot place, DartIntake intake) {
        obstacle(piece, place, intake).ifPresent(why -> {
            throw new Refusal(new Reason.Unsound(why, piece.where().edge(place.edge())));
        });
    }

    /** What a slash would run into, if anything. */
    private static Optional<Message> obstacle(Piece piece, Spot place, DartIntake intake) {
        if (Path.through(intake.one(), intake.other()).distanceTo(place.point()) <= ROOM) {
            return Optional.of(Message.of("alter.dart-target.slash-where-dart-is", place.edge(), intake.name()));
        }
        Line slash = new Line(place.point(), intake.pivot());
        Optional<Message> dart = piece.marks(Dart.class)
                .filter(drawn -> isCrossed(drawn, slash))
                .map(drawn -> Message.of("alter.dart-target.slash-through-dart", place.edge(), drawn.name()))
                .findFirst();
        boolean leaves = piece.edges().stream()
                .flatMap(edge -> edge.path().crossings(slash).stream().map(edge.path()::at))
                .anyMatch(point -> !point.isCloseTo(place.point(), Tolerance.COINCIDENT));
        return dart.or(() ->
                leaves ? Optional.of(Message.of("alter.dart-target.slash-off-paper", place.edge())) : Optional.empty());
    }

    private static boolean isCrossed(Dart dart, Line slash) {
        boolean inMouth = dart instanceof EdgeDart edge
                && Path.through(edge.mouthStart(), edge.mouthEnd()).distanceTo(slash.start()) <= Tolerance.JOINING;
        return inMouth
                || dart.legs().stream().anyMatch(leg -> !leg.crossings(slash).isEmpty());
    }

    private static String freeName(DartIntake intake, String wanted) {
        return Stream.concat(
                        Stream.of(wanted),
                        IntStream.iterate(2, number -> number + 1).mapToObj(number -> wanted + " " + number))
                .filter(name -> !name.equals(intake.name())
                        && intake.lifted().find(Dart.class, name).isEmpty())
                .findFirst()
                .orElseThrow();
    }
}
