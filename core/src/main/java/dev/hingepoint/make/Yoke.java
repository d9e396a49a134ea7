package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Path;
import dev.hingepoint.move.Divide;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A yoke: front, back or both are divided for good along a style line. The part with the hem keeps its name, the other becomes a piece of its own, the yoke, and the two are sewn
 * together again along edges of the same course, with notches that meet. No paper moves or is lost, unless a dart that ends in the line is closed into it.
 *
 * <p>With {@code fold: yes} a yoke that has a centre seam is cut on the fold instead, where that seam is straight there.
 */
final class Yoke implements Alteration {
    static final String SEAM = "yoke seam";
    private static final double NOTCH_AT = 0.4;

    @Override
    public String name() {
        return "yoke";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("piece", "both", "from", "armhole 60 mm", "to", "centre 90 mm", "curve", "12 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("piece", "from", "to", "curve", "line", "fold", "close darts", "cloth", "stretch");
        List<String> pieces = pieces(options);
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("piece", String.join(", ", pieces));
        Altered altered = new Altered(draft, amounts, List.of(), List.of(), List.of());
        for (String piece : pieces) {
            altered = altered.then(before -> on(before, piece, options));
        }
        return altered;
    }

    private static List<String> pieces(Options options) {
        String written = options.text("piece").orElseThrow(() -> options.refuse("make.yoke.which-piece"));
        return written.equals("both") ? List.of("front", "back") : List.of(written.split("\\s*,\\s*"));
    }

    private static Altered on(Draft draft, String name, Options options) {
        Piece whole = draft.piece(name);
        StyleLine line = StyleLine.on(whole, options);
        String yokeName = NewPiece.named(draft, name + " yoke");
        String caption = "Divide the " + name + " along a line from the "
                + line.from().edge() + " to the " + line.to().edge() + ", "
                + Reason.millimetres(line.path().length()) + " long; the part above is the yoke";
        Divide.Divided parted = new Divide(caption, line.path(), lowest(whole), name, yokeName, SEAM).on(whole);
        Piece lower = notched(parted.first(), line, draft, name);
        Piece yoke = notched(parted.second(), line, draft, name);
        List<Step> steps = new ArrayList<>(List.of(parted.step()));
        Draft divided = NewPiece.laidOut(draft.with(lower), List.of(yoke))
                .with(new Divided(draft, whole, lower, yoke, SEAM).construction());
        Altered altered = new Altered(divided, Map.of(), steps, laws(whole, yokeName), List.of());
        if (options.flag("close darts")) {
            int told = altered.steps().size();
            altered = altered.then(before -> ClosedDarts.into(before, name, SEAM))
                    .then(before -> ClosedDarts.into(before, yokeName, SEAM));
            if (altered.steps().size() == told) {
                altered = altered.withNote("no dart of the " + name + " ends within "
                        + Reason.millimetres(ClosedDarts.NEAR) + " of the line, so none is closed into it");
            }
        }
        if (options.flag("fold") && !CentreEdge.of(divided, yoke).isFold()) {
            altered = altered.then(
                    before -> CentreEdge.of(before, before.piece(yokeName)).toFold());
        }
        if (options.has("cloth")) {
            Map<String, Object> cloth = new LinkedHashMap<>();
            cloth.put("piece", yokeName);
            cloth.put("as", options.text("cloth").orElse(""));
            options.raw("stretch").ifPresent(stretch -> cloth.put("stretch", stretch));
            altered = altered.then(
                    before -> new ClothChoice().alter(before, Options.of(new AlterationRequest("yoke, cloth", cloth))));
        }
        return altered;
    }

    /** The place on the outline that lies lowest: the hem's part keeps the piece's name. */
    private static Place lowest(Piece piece) {
        Path outline = piece.outline();
        Spot spot = piece.nearest(outline.at(outline.farthest(piece.grain().down())));
        return Place.near(spot.edge(), spot.point());
    }

    /** One notch on a front, two on a back, nearer to the line's beginning, so that the seam is sewn one way round only. */
    private static Piece notched(Piece part, StyleLine line, Draft draft, String name) {
        int count = draft.piece(name).hasEdge(Names.CENTRE_BACK) ? 2 : 1;
        return part.withMark(NewPiece.notch(
                part,
                name + " yoke",
                SEAM,
                line.from().edge(),
                NOTCH_AT * line.path().length(),
                count));
    }

    private static List<Law> laws(Piece whole, String yoke) {
        List<Law> laws = new ArrayList<>();
        laws.add(new Law(
                Message.of("make.yoke.law.equal-sides"),
                whole.where().edge(SEAM),
                (before, after) -> after.sewnLength(new EdgeRef(whole.name(), SEAM)),
                (before, after) -> after.sewnLength(new EdgeRef(yoke, SEAM)),
                0.01));
        for (Edge edge : whole.edges()) {
            laws.add(new Law(
                    Message.of("make.yoke.law.keeps-length", edge.name()),
                    whole.where().edge(edge.name()),
                    (before, after) -> before.sewnLength(new EdgeRef(whole.name(), edge.name())),
                    (before, after) -> length(after, whole.name(), edge.name()) + length(after, yoke, edge.name()),
                    0.01));
        }
        return laws;
    }

    private static double length(Draft draft, String piece, String edge) {
        return draft.find(piece)
                .filter(part -> part.hasEdge(edge))
                .map(part -> part.sewnLength(edge))
                .orElse(0.0);
    }
}
