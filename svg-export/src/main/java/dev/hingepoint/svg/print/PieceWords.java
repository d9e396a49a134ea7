package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The names of what is drawn on a piece. What is drawn in several images is named once.
 *
 * @param size whose lines are named
 * @param sizeNames where several sizes lie in one another: the names of their lines; the girths at the levels, which are each size's own, are then left out
 * @param original the lines as drawn, the longest first
 * @param options in whose unit girths are told
 */
record PieceWords(
        LaidSize size, PieceLines lines, Optional<SizeNames> sizeNames, List<Path> original, PrintOptions options) {
    private static final Set<String> CENTRES = Set.of(Names.CENTRE_FRONT, Names.CENTRE_BACK);

    void set(Lettering lettering) {
        Piece piece = size.piece();
        sizeNames.ifPresent(names -> names.set(lettering));
        piece.marks(Level.class).forEach(level -> lettering.along(images(level.path()), named(level)));
        piece.marks(DrawnLine.class).forEach(line -> lettering.along(images(line.path()), line.name()));
        lines.brackets().forEach(line -> lettering.along(List.of(line), "place on fold"));
        piece.edges().stream()
                .filter(size.unfolding()::opens)
                .forEach(fold -> lettering.along(List.of(fold.path().moved(size.place())), centre(fold)));
        piece.marks(MarkedPoint.class)
                .forEach(point -> lettering.atPoint(size.place().of(point.at()), lines.cross(), point.name()));
        piece.marks(Dart.class)
                .forEach(dart -> lettering.along(images(dart.legs().get(0)), lines.pressedWords(dart)));
        if (!original.isEmpty()) {
            lettering.along(original.stream().flatMap(size::images).toList(), "as drawn");
        }
    }

    /** A strip's fold is named for what it is of the strip, but lies on a centre line all the same. */
    private static String centre(Edge fold) {
        return CENTRES.contains(fold.name()) ? fold.name() : "centre";
    }

    /** "waist 819 mm round": a true measure, however small the piece is drawn. */
    private String named(Level level) {
        return sizeNames.isPresent()
                ? level.name()
                : level.name() + " "
                        + options.length(new Length(Math.rint(size.draft().girth(level.name())))) + " round";
    }

    private List<Path> images(Path path) {
        return size.images(path).toList();
    }
}
