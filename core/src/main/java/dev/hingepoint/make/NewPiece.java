package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What every piece needs that is made beside the pattern's own: a name that is free, a grainline, a place on the table. */
final class NewPiece {
    /** A grainline need not be longer in mm than this. */
    private static final double GRAIN = 100;

    /** It keeps so many mm from the outline, where there is room. */
    private static final double CLEAR = 8;

    private static final double BETWEEN = 40;
    private static final int TRIES = 40;

    private NewPiece() {}

    /** @throws Refusal where there is such a piece already */
    static String named(Draft draft, String name) {
        draft.find(name).ifPresent(piece -> {
            throw new Refusal(new Reason.Unsound(Message.of("make.new-piece.name-taken"), piece.where()));
        });
        return name;
    }

    /** The piece with another kind of edge. */
    static Piece withKind(Piece piece, String edge, Edge.Kind kind) {
        return piece.with(
                piece.edges().stream()
                        .map(old -> old.name().equals(edge) ? new Edge(edge, kind, old.path()) : old)
                        .toList(),
                piece.marks());
    }

    /** A notch on an edge, so many mm of sewn length from its end at a neighbour. */
    static Notch notch(Piece piece, String name, String edge, String neighbour, double sewn) {
        return notch(piece, name, edge, neighbour, sewn, 1);
    }

    static Notch notch(Piece piece, String name, String edge, String neighbour, double sewn, int count) {
        SewnEdge side = piece.sewn(edge);
        Path drawn = piece.edge(edge).path();
        boolean asDrawn = piece.before(edge).name().equals(neighbour);
        Position at = side.positionAt(asDrawn ? sewn : side.length() - sewn);
        return Notch.on(piece, edge, at, name, count);
    }

    /** A grainline along {@code down}: the longest that keeps clear of the outline. */
    static Grain grain(Path outline, Vector down) {
        for (double clear = CLEAR; clear > 0.1; clear /= 2) {
            double away = clear;
            Optional<Line> longest = along(outline, down).stream()
                    .filter(line -> IntStream.rangeClosed(0, TRIES)
                            .allMatch(i -> outline.distanceTo(line.at((double) i / TRIES)) >= away))
                    .max(Comparator.comparingDouble(Line::length));
            if (longest.isPresent()) {
                return new Grain(longest.get());
            }
        }
        throw new IllegalArgumentException("no grainline can be drawn on it");
    }

    /** The middles of all runs of paper along a direction, at even steps across. */
    private static List<Line> along(Path outline, Vector down) {
        Vector across = down.left();
        double from = outline.at(outline.farthest(across.negated()))
                .minus(outline.start())
                .dot(across);
        double to = outline.at(outline.farthest(across)).minus(outline.start()).dot(across);
        List<Line> lines = new ArrayList<>();
        for (int i = 1; i < TRIES; i++) {
            Point on = outline.start().plus(across.times(from + (to - from) * i / TRIES));
            List<Double> along = outline.crossings(on, down).stream()
                    .map((Position position) -> outline.at(position).minus(on).dot(down))
                    .sorted()
                    .toList();
            for (int k = 0; k + 1 < along.size(); k += 2) {
                Vector half = down.times(Math.min(GRAIN, 0.7 * (along.get(k + 1) - along.get(k))) / 2);
                Point middle = on.plus(down.times((along.get(k) + along.get(k + 1)) / 2));
                if (half.length() > 0.5) {
                    lines.add(new Line(middle.minus(half), middle.plus(half)));
                }
            }
        }
        return lines;
    }

    /** The draft with pieces laid on the table beside all others, below one another. */
    static Draft laidOut(Draft draft, List<Piece> pieces) {
        Box table = draft.pattern().nest().stream()
                .map(piece -> piece.outline().hull())
                .reduce(Box::union)
                .orElseThrow();
        double top = table.top();
        Draft with = draft;
        for (Piece piece : pieces) {
            Box box = piece.outline().bounds();
            with = with.with(
                    piece.moved(Motion.shift(new Vector(table.right() + BETWEEN - box.left(), top - box.top()))));
            top += box.height() + BETWEEN;
        }
        return with;
    }
}
