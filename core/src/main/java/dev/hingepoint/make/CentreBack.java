package dev.hingepoint.make;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Map;

/**
 * The centre back on the fold, or as a seam: of every piece that has one. To a fold only where it is straight, and where one still gets in without
 * whatever opening it had.
 */
final class CentreBack implements Alteration {
    @Override
    public String name() {
        return "centre back";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("as", "fold");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("as", "piece");
        String as = options.choice("as", "fold", "seam").orElseThrow(() -> options.refuse("make.centre-back.as-what"));
        List<Piece> pieces =
                options.text("piece").map(draft::piece).map(List::of).orElseGet(() -> draft.piecesWithEdges(name()));
        if (pieces.isEmpty()) {
            throw options.refuse("make.centre-back.no-edge");
        }
        Altered altered = Altered.of(draft);
        for (Piece piece : pieces) {
            altered = altered.then(before -> {
                CentreEdge centre = new CentreEdge(before, before.piece(piece.name()), piece.edge(name()));
                return as.equals("fold") ? centre.toFold() : centre.toSeam();
            });
        }
        return altered;
    }
}
