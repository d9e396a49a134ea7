package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.svg.page.Drawn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The leaves that are read before anything is cut: the squares with the map, then all there is to know, column by column, then the cloth. */
final class FrontPages {
    /** How far in mm the pictures of cloths stand from one another. */
    private static final double APART = 5;

    /** Cloths are drawn below words where these leave them so much of a leaf. */
    private static final double ENOUGH = 0.55;

    private final Box room;
    private final Box mapRoom;
    private final List<Drawn> toRead;
    private final List<ClothLayout> cloths;

    /** Whether the words leave room for the cloths on their last leaf, and where these are drawn. */
    private final boolean isRoomBelow;

    private final Box pictureRoom;

    /**
     * @param room of each leaf, in mm, as it comes out of the printer
     * @param heed what stands on the first leaf where there is any room on it
     */
    FrontPages(
            Box room,
            Card card,
            String title,
            Section heed,
            List<Section> sections,
            List<ClothLayout> cloths,
            PrintOptions options) {
        this.room = room;
        this.cloths = List.copyOf(cloths);
        Box gauge = new Box(room.left(), room.bottom() - StretchGauge.HEIGHT, room.right(), room.bottom());
        Optional<Drawn> stretch = StretchGauge.drawn(card, gauge);
        Box rest = new Box(room.left(), room.top(), room.right(), gauge.top() - 1);
        boolean isBeside = stretch.isPresent() && FirstLeaf.spare(rest.width(), rest.height()) >= 0;
        FirstLeaf first = new FirstLeaf(isBeside ? rest : room);
        this.mapRoom = first.mapRoom();
        List<Drawn> onFirst = new ArrayList<>(List.of(first.drawn(title, ToRead.whoFor(options), options)));
        if (isBeside) {
            onFirst.add(stretch.get());
        }
        List<Box> free = new ArrayList<>(first.columns());
        List<Box> below = Columns.in(first.below());
        // what to heed stands below the squares, whatever else finds room
        boolean isBelow = !below.isEmpty() && heed.fits(below.get(0));
        if (isBelow) {
            onFirst.add(heed.set(below.get(0)));
            free.addAll(below.subList(1, below.size()));
        } else {
            free.addAll(below);
        }
        Columns columns = new Columns(Drawn.of(onFirst), free, Columns.in(room));
        if (!isBelow) {
            columns.add(heed);
        }
        sections.forEach(columns::add);
        if (stretch.isPresent() && !isBeside) {
            columns.add(stretch.get());
        }
        this.toRead = columns.leaves();
        double under = Math.min(columns.reached() + APART, room.bottom());
        Box left = new Box(room.left(), under, room.right(), room.bottom());
        this.isRoomBelow = left.height() >= ENOUGH * room.height();
        this.pictureRoom = isRoomBelow ? left : room;
    }

    /** How many leaves there are, with the map on the first. */
    int count() {
        return toRead.size() + (cloths.isEmpty() || isRoomBelow ? 0 : 1);
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
            Drawn before = isRoomBelow ? leaves.remove(leaves.size() - 1) : Drawn.NOTHING;
            leaves.add(before.and(pictures()));
        }
        return leaves;
    }

    /** The cloths, one picture beside the other, and in rows where there are many. */
    private Drawn pictures() {
        int columns = Math.min(2, cloths.size());
        int rows = (cloths.size() + columns - 1) / columns;
        double width = pictureRoom.width() / columns;
        double height = pictureRoom.height() / rows;
        List<Drawn> all = new ArrayList<>();
        for (int i = 0; i < cloths.size(); i++) {
            Vector place =
                    new Vector(pictureRoom.left() + i % columns * width, pictureRoom.top() + i / columns * height);
            all.add(cloths.get(i).picture(width - APART, height - APART).moved(Motion.shift(place)));
        }
        return Drawn.of(all);
    }
}
