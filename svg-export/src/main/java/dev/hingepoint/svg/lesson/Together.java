package dev.hingepoint.svg.lesson;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.print.Upright;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** All pieces that an alteration changes, side by side and upright: as they were, and before and after over each other. */
final class Together {
    /** Between pieces, and round them, in mm. */
    private static final double GAP = 60;

    private static final double ROUND = 30;

    /** Room for words, in mm of the picture. */
    private static final double BESIDE = 26;

    /** A change of less in mm is not labelled. */
    private static final double TOLD = 0.5;

    /** The name of a level is left out where it would stand farther from it in mm. */
    private static final double LEVEL_NAME = 8;

    /** Where along an edge what became of it may be told, the best first. */
    private static final List<Double> ALONG = List.of(0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9);

    /** The same of a level, which grows or shrinks at an end. */
    private static final List<Double> ENDS = List.of(1.0, 0.0, 0.85, 0.15, 0.7, 0.3, 0.5);

    private final Draft before;
    private final Draft after;
    private final Map<String, Motion> places = new LinkedHashMap<>();
    private final View view;
    private final Picture picture;

    Together(Draft before, Draft after, Unit unit) {
        this.before = before;
        this.after = after;
        List<Box> laid = new ArrayList<>();
        double left = 0;
        for (Piece piece : changed(before, after)) {
            Piece old = before.piece(piece.name());
            Motion upright = Upright.of(old);
            Box box = bounds(before, old, upright).union(bounds(after, piece, upright));
            Vector shift = new Vector(left - box.left(), -box.top());
            places.put(piece.name(), upright.then(Motion.shift(shift)));
            laid.add(box.moved(shift));
            left = box.moved(shift).right() + GAP;
        }
        Box all = laid.stream().reduce(Box::union).orElse(new Box(0, 0, GAP, GAP));
        this.view = View.of(all.grownBy(ROUND), BESIDE);
        this.picture = new Picture(view, unit);
    }

    /** The pieces that are other than they were, and are still there. */
    static List<Piece> changed(Draft before, Draft after) {
        return after.pieces().stream()
                .filter(piece -> before.find(piece.name())
                        .filter(old -> !old.equals(piece))
                        .isPresent())
                .toList();
    }

    private static Box bounds(Draft draft, Piece piece, Motion upright) {
        return Box.around(upright.of(CuttingLine.of(draft, piece).outline()));
    }

    /** From the pattern to a common sheet, in mm of the pattern, by piece. */
    Map<String, Motion> places() {
        return places;
    }

    private Motion place(String piece) {
        return places.get(piece).then(view.place());
    }

    Scene asItWas() {
        List<Stroke> strokes = new ArrayList<>();
        places.keySet().stream().map(before::piece).forEach(piece -> {
            strokes.addAll(PaperLines.of(piece, place(piece.name())));
            strokes.addAll(PaperLines.cutting(before, piece, place(piece.name())));
        });
        String pieces =
                Words.joined(places.keySet().stream().map(name -> "the " + name).toList());
        String caption =
                "As it was: " + pieces + " of the " + before.pattern().card().name() + ", size " + before.size();
        return picture.scene(
                Scene.Kind.AS_IT_WAS,
                caption,
                one(),
                List.of(),
                strokes,
                labels -> places.keySet().forEach(name -> {
                    Piece piece = before.piece(name);
                    labels.name(name, middle(piece));
                    piece.marks(Level.class)
                            .forEach(level -> labels.nameNear(
                                    level.name(),
                                    place(name)
                                            .of(piece.levelFrame(level.name()).origin()),
                                    LEVEL_NAME));
                }));
    }

    private Point middle(Piece piece) {
        Box box = piece.outline().moved(place(piece.name())).bounds();
        return box.centre();
    }

    private String one() {
        return places.size() == 1 ? places.keySet().iterator().next() : "";
    }

    /** @param changed the account of it */
    Scene compared(Ledger.Entry changed) {
        List<Stroke> strokes = new ArrayList<>();
        places.keySet().forEach(name -> {
            lines(before.piece(name)).forEach(path -> strokes.add(PaperLines.stroke(Style.BEFORE, path, place(name))));
            lines(after.piece(name)).forEach(path -> strokes.add(PaperLines.stroke(Style.NOW, path, place(name))));
        });
        return picture.scene(
                Scene.Kind.COMPARED,
                "Before, dotted, and after, drawn out: " + told(changed),
                one(),
                List.of(),
                strokes,
                labels -> differences(changed, labels));
    }

    private static Stream<Path> lines(Piece piece) {
        return Stream.of(
                        piece.edges().stream().map(Edge::path),
                        piece.marks(Dart.class).flatMap(dart -> dart.legs().stream()),
                        piece.marks(Level.class).map(Level::path))
                .flatMap(paths -> paths);
    }

    private void differences(Ledger.Entry changed, Labels labels) {
        for (Ledger.EdgeLine line : changed.edges()) {
            double by = line.after() - line.before();
            if (Math.abs(by) >= TOLD && places.containsKey(line.piece())) {
                Path edge = after.piece(line.piece()).edge(line.edge()).path();
                labels.name(line.edge() + " " + signed(by), along(line.piece(), edge, ALONG));
            }
        }
        for (String name : places.keySet()) {
            Piece now = after.piece(name);
            now.marks(Level.class)
                    .filter(level -> before.piece(name).hasLevel(level.name()))
                    .forEach(level -> {
                        double by = now.width(level.name()) - before.piece(name).width(level.name());
                        if (Math.abs(by) >= TOLD) {
                            labels.name(level.name() + " " + times(now) + signed(by), along(name, level.path(), ENDS));
                        }
                    });
        }
    }

    private List<Point> along(String piece, Path line, List<Double> fractions) {
        return fractions.stream()
                .map(fraction -> place(piece).of(line.at(fraction * line.length())))
                .toList();
    }

    /** "2 \u00d7 ": what is told of the whole body, the piece is drawn for half of. */
    private static String times(Piece piece) {
        return piece.centre().isPresent() && piece.widths() > 1 ? piece.widths() + " \u00d7 " : "";
    }

    private static String told(Ledger.Entry changed) {
        List<String> told = Stream.concat(
                        changed.edges().stream()
                                .filter(line -> Math.abs(line.after() - line.before()) >= TOLD)
                                .map(line -> "the " + line.edge()
                                        + (isAlone(line, changed) ? "" : " of the " + line.piece()) + " is "
                                        + words(line.after() - line.before(), "longer", "shorter")),
                        changed.girths().stream()
                                .filter(girth -> Math.abs(girth.after() - girth.before()) >= TOLD)
                                .map(girth -> "the " + girth.level() + " is "
                                        + words(girth.after() - girth.before(), "wider", "narrower")
                                        + " round the body"))
                .toList();
        return told.isEmpty() ? "no seam and no girth changes" : Words.joined(told);
    }

    /** Whether no other piece has an edge of that name. */
    private static boolean isAlone(Ledger.EdgeLine line, Ledger.Entry changed) {
        return changed.edges().stream()
                        .filter(other -> other.edge().equals(line.edge()))
                        .count()
                == 1;
    }

    private static String words(double by, String more, String less) {
        return new Length(Math.abs(by)).tenths() + " " + (by > 0 ? more : less);
    }

    private static String signed(double by) {
        return (by > 0 ? "+" : "") + new Length(by).tenths();
    }
}
