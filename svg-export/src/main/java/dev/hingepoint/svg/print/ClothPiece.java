package dev.hingepoint.svg.print;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;

/**
 * A piece as it is cut from a single open layer of cloth.
 *
 * @param rings the closed lines to cut along, in mm
 * @param grain the grainline, where one is drawn
 * @param way which ways round it may lie
 */
record ClothPiece(Piece piece, List<List<Point>> rings, Optional<Line> grain, Lays.Way way) {
    private static final Vector DOWN = new Vector(0, 1);

    ClothPiece {
        rings = rings.stream().map(List::copyOf).toList();
    }

    /** All that one entry of a piece's card has cut, each upright with its grain: what lies on the fold laid open, of a pair the one and its mirror image. */
    static List<ClothPiece> of(Draft draft, Piece piece, Cutting cutting, ClothWidths.Nap nap) {
        Unfolding unfolding = cutting.how() == Cutting.How.ON_FOLD ? Unfolding.of(piece) : Unfolding.NONE;
        Lays.Way way = nap == ClothWidths.Nap.ONE_WAY
                ? Lays.Way.ONE_WAY
                : draft.pattern().card().lays().of(piece);
        Optional<Line> slanting = Grain.slanting(piece);
        Vector along = slanting.map(line -> line.tangent(0))
                .orElseGet(() -> piece.grain().down());
        Motion upright = Motion.turn(piece.outline().bounds().centre(), along, DOWN);
        ClothPiece one = new ClothPiece(
                        piece,
                        unfolding.rings(CuttingLine.of(draft, piece).outline()),
                        slanting.or(() -> piece.marks(Grain.class).findFirst().map(Grain::line)),
                        way)
                .moved(upright);
        List<ClothPiece> cut = new ArrayList<>();
        for (int i = 0; i < cutting.count(); i++) {
            cut.add(one);
            if (cutting.how() == Cutting.How.PAIR) {
                cut.add(one.moved(Motion.stretch(new Point(0, 0), DOWN.left(), -1)));
            }
        }
        return cut;
    }

    ClothPiece moved(Motion motion) {
        return new ClothPiece(
                piece, rings.stream().map(motion::of).toList(), grain.map(line -> line.moved(motion)), way);
    }

    /** Area of its cloth in square mm. */
    double area() {
        return ground().getArea();
    }

    /** Its cloth; a ring within another is a hole. */
    Geometry ground() {
        return Ground.within(rings);
    }

    /** The place on its lines that is nearest to a point. */
    Point nearest(Point point) {
        return rings.stream()
                .map(ring -> Path.through(ring))
                .map(path -> path.at(path.nearest(point)))
                .min(Comparator.comparingDouble(point::distanceTo))
                .orElseThrow();
    }

    Box bounds() {
        return rings.stream().map(Box::around).reduce(Box::union).orElseThrow();
    }

    Stream<Stroke> outlines() {
        return rings.stream().map(ring -> new Stroke(Style.CUTTING, ring));
    }
}
