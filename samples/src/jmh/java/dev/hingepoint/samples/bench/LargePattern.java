package dev.hingepoint.samples.bench;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The whole choir's wardrobe as one pattern: as many pieces and sizes as are asked for, the dress's own under other names, a little larger from size to size. */
final class LargePattern {
    private static final double STEP = 0.02;

    private LargePattern() {}

    /** Every size of a pattern of {@code pieces} pieces in {@code sizes} sizes. */
    static List<Draft> of(Pattern dress, int pieces, int sizes) {
        List<Piece> drawn = dress.in("40").pieces();
        List<Piece> nest = new ArrayList<>();
        for (int size = 0; size < sizes; size++) {
            double scale = 1 + STEP * (size - sizes / 2.0);
            Motion larger = new Motion(scale, 0, 0, scale, 0, 0);
            for (int i = 0; i < pieces; i++) {
                Piece piece = drawn.get(i % drawn.size());
                nest.add(piece.named(piece.name() + " " + (i / drawn.size() + 1), piece.cuttings())
                        .inSize(Integer.toString(30 + 2 * size))
                        .moved(larger));
            }
        }
        Pattern pattern = new Pattern(Card.of("Larkfield wardrobe", "", List.of()), nest);
        return IntStream.range(0, sizes)
                .mapToObj(size -> pattern.in(Integer.toString(30 + 2 * size)))
                .toList();
    }
}
