package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.lay.Laid;
import dev.hingepoint.svg.lay.Shape;
import dev.hingepoint.svg.lay.StripLayout;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.SvgPage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How the pieces of one size lie on one cloth, and how much of it is needed: on a single open layer, each as often as it is cut, the grain along the cloth. All lengths are
 * in mm; the cloth begins at (0, 0), its width to the right, its length down.
 *
 * <p>What is needed is what this layout takes, rounded up; with patience some cloths can be cut with less.
 */
public final class ClothLayout {
    /** How far in mm pieces keep from one another and from the selvedges: room for scissors. */
    private static final double APART = 5;

    /** Cloth is bought by so many mm. */
    private static final double BOUGHT_BY = 50;

    private final Draft draft;
    private final String cloth;
    private final double width;
    private final double used;
    private final List<ClothPiece> pieces;

    private ClothLayout(Draft draft, String cloth, double width, double used, List<ClothPiece> pieces) {
        this.draft = draft;
        this.cloth = cloth;
        this.width = width;
        this.used = used;
        this.pieces = List.copyOf(pieces);
    }

    /**
     * A layout for each cloth that the pieces name, in the order in which they name them.
     *
     * @throws Refusal where a piece is wider than its cloth, or cannot be cut, or none is cut from a cloth that has a width
     */
    public static List<ClothLayout> of(Draft draft, ClothWidths widths) {
        Map<String, List<ClothPiece>> byCloth = new LinkedHashMap<>();
        for (Piece piece : draft.pieces()) {
            for (Cutting cutting : piece.cuttings()) {
                byCloth.computeIfAbsent(cutting.cloth().orElse(ClothWidths.MAIN), any -> new ArrayList<>())
                        .addAll(ClothPiece.of(draft, piece, cutting, widths.nap()));
            }
        }
        widths.byCloth().keySet().stream()
                .filter(name -> !byCloth.containsKey(name))
                .findFirst()
                .ifPresent(name -> {
                    throw new Refusal(new Reason.Missing(
                            Message.of("print.cloth.none-of-it", name, byCloth.keySet()), Where.UNKNOWN));
                });
        return byCloth.entrySet().stream()
                .map(entry ->
                        laid(draft, entry.getKey(), widths.of(entry.getKey()).mm(), entry.getValue()))
                .toList();
    }

    private static ClothLayout laid(Draft draft, String cloth, double width, List<ClothPiece> pieces) {
        List<Shape> shapes = pieces.stream()
                .map(piece -> new Shape(piece.rings(), piece.way()))
                .toList();
        for (int i = 0; i < shapes.size(); i++) {
            double least = StripLayout.narrowest(List.of(shapes.get(i)), APART);
            if (least > width) {
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of(
                                "print.cloth.too-narrow",
                                Quantity.millimetres(least - 2 * APART),
                                cloth.equals(ClothWidths.MAIN) ? Message.of("print.cloth.main") : cloth,
                                Quantity.clothWidth(width),
                                Quantity.clothWidth(10 * Math.ceil(StripLayout.narrowest(shapes, APART) / 10))),
                        pieces.get(i).piece().where()));
            }
        }
        Laid laid = StripLayout.laid(shapes, width, APART);
        List<ClothPiece> placed = IntStream.range(0, pieces.size())
                .mapToObj(i -> pieces.get(i).moved(laid.places().get(i)))
                .toList();
        return new ClothLayout(draft, cloth, width, laid.height(), placed);
    }

    /** The cloth's name, {@link ClothWidths#MAIN} where the pattern gives it none. */
    public String cloth() {
        return cloth;
    }

    /** The cloth's width. */
    public double width() {
        return width;
    }

    /** The length that the pieces take. */
    public double used() {
        return used;
    }

    /** The length to buy: that which the pieces take, rounded up to 5 cm. */
    public double needed() {
        return BOUGHT_BY * Math.ceil(used / BOUGHT_BY);
    }

    /** How much of the cloth that is needed goes into no piece, in per cent: 100 (1 - area of the pieces / (needed length x width)). */
    public double waste() {
        double area = pieces.stream().mapToDouble(ClothPiece::area).sum();
        return 100 * (1 - area / (needed() * width));
    }

    /** "main cloth, 140 cm wide: 185 cm (27 % waste)". */
    public String sentence() {
        String name = cloth.equals(ClothWidths.MAIN) ? "main cloth" : cloth;
        return name + ", " + Centimetres.of(width) + " wide: " + Centimetres.of(needed()) + " ("
                + (int) Math.rint(waste()) + " % waste)";
    }

    /** Where the pieces lie. */
    List<ClothPiece> pieces() {
        return pieces;
    }

    /** The names of the pieces that are cut from this cloth, each once. */
    List<String> names() {
        return pieces.stream().map(piece -> piece.piece().name()).distinct().toList();
    }

    /** The number of a piece among all of its size, as its label has it. */
    int number(String name) {
        return draft.pieces().stream().map(Piece::name).toList().indexOf(name) + 1;
    }

    /** Whether every piece lies the same way up, as a cloth with a nap asks for. */
    boolean isOneWay() {
        return pieces.stream().allMatch(piece -> piece.way() == Lays.Way.ONE_WAY);
    }

    /** A drawing of the cloth with the pieces on it, from (0, 0), within a width and height in mm. */
    public Drawn picture(double boxWidth, double boxHeight) {
        return new ClothPicture(this, boxWidth, boxHeight).drawn();
    }

    /** The drawing on a sheet of its own, as SVG; the sheet's width, its height and what is left free on every side are in mm. */
    public String svg(double sheetWidth, double sheetHeight, double margin) {
        Drawn picture = picture(sheetWidth - 2 * margin, sheetHeight - 2 * margin)
                .moved(Motion.shift(new Vector(margin, margin)));
        return SvgPage.write(sheetWidth, sheetHeight, picture, title() + ": " + sentence());
    }

    String title() {
        return ToRead.title(List.of(draft));
    }
}
