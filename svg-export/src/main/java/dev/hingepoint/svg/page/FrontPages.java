package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Card;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The leaves that are read before anything is cut: the squares with the map, then all there is to know, column by column, then the cloth. */
final class FrontPages {
    /** How far in mm the pictures of cloths stand from one another. */
    private static final double APART = 5;

    private final Box room;
    private final Box mapRoom;
    private final List<Drawn> toRead;
    private final List<ClothLayout> cloths;

    /** @param room of each leaf, in mm, as it comes out of the printer */
    FrontPages(
            Box room, Card card, String title, List<Section> sections, List<ClothLayout> cloths, PrintOptions options) {
        this.room = room;
        this.cloths = List.copyOf(cloths);
        Box gauge = new Box(room.left(), room.bottom() - StretchGauge.HEIGHT, room.right(), room.bottom());
        Optional<Drawn> stretch = StretchGauge.drawn(card, gauge);
        Box rest = new Box(room.left(), room.top(), room.right(), gauge.top() - 1);
        boolean isBeside = stretch.isPresent() && FirstLeaf.spare(rest.width(), rest.height()) >= 0;
        FirstLeaf first = new FirstLeaf(isBeside ? rest : room);
        this.mapRoom = first.mapRoom();
        Drawn squares = first.drawn(title, ToRead.whoFor(options), options);
        Columns columns =
                new Columns(isBeside ? squares.and(stretch.get()) : squares, first.columns(), Columns.in(room));
        sections.forEach(columns::add);
        if (stretch.isPresent() && !isBeside) {
            columns.add(stretch.get());
        }
        this.toRead = columns.leaves();
    }

    /** How many leaves there are, with the map on the first. */
    int count() {
        return toRead.size() + (cloths.isEmpty() ? 0 : 1);
    }

    /** Leaf by leaf, with the map in the larger square, or on a leaf more where it could not be read there. */
    List<Drawn> drawn(SheetMap map) {
        if (map.isReadableIn(mapRoom)) {
            return drawnSmall(map);
        }
        List<Drawn> leaves = leaves();
        leaves.add(map.withHeading(room));
        return leaves;
    }

    /** {@link #count} leaves, the first with the map in the larger square, however small it is there. */
    List<Drawn> drawnSmall(SheetMap map) {
        List<Drawn> leaves = leaves();
        leaves.set(0, leaves.get(0).and(map.drawn(mapRoom)));
        return leaves;
    }

    private List<Drawn> leaves() {
        List<Drawn> leaves = new ArrayList<>(toRead);
        if (!cloths.isEmpty()) {
            leaves.add(pictures());
        }
        return leaves;
    }

    /** The cloths, one picture beside the other, and in rows where there are many. */
    private Drawn pictures() {
        int columns = Math.min(2, cloths.size());
        int rows = (cloths.size() + columns - 1) / columns;
        double width = room.width() / columns;
        double height = room.height() / rows;
        List<Drawn> all = new ArrayList<>();
        for (int i = 0; i < cloths.size(); i++) {
            Vector place = new Vector(room.left() + i % columns * width, room.top() + i / columns * height);
            all.add(cloths.get(i).picture(width - APART, height - APART).moved(Motion.shift(place)));
        }
        return Drawn.of(all);
    }
}
