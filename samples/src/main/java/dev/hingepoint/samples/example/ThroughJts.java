package dev.hingepoint.samples.example;

import dev.hingepoint.allowance.AllowancePlan;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.WholeFiles;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/**
 * In from JTS and out again: a polygon becomes a piece, the piece gets its cutting line, and JTS says whether that can be cut from a remnant of cloth, and
 * what is left.
 *
 * <p>The bridge copies coordinates both ways, so what is done to a JTS geometry afterwards never reaches a piece.
 *
 * <p>Run it: {@code java -cp samples/target/hingepoint.jar dev.hingepoint.samples.example.ThroughJts pocket}
 */
public final class ThroughJts {
    /** A pocket for a music folder's pencil and glasses, in mm, y down. */
    private static final String POCKET = "POLYGON ((0 0, 160 0, 160 150, 80 190, 0 150, 0 0))";

    private static final String REMNANT = "POLYGON ((0 0, 420 0, 420 260, 250 300, 0 300, 0 0))";

    private ThroughJts() {}

    /**
     * @param arguments the folder to write to
     * @throws ParseException never: the polygons are well written
     */
    public static void main(String[] arguments) throws ParseException {
        Path folder = Path.of(arguments.length == 0 ? "pocket" : arguments[0]);
        Piece pocket = pocket((Polygon) new WKTReader().read(POCKET));
        Polygon cut = cut(pocket);
        Geometry remnant = new WKTReader().read(REMNANT);
        Geometry laid = AffineTransformation.translationInstance(30, 50).transform(cut);
        Geometry left = remnant.difference(laid);
        System.out.printf(
                Locale.ROOT,
                "paper %.0f mm2, with its allowances %.0f mm2; it %s on the remnant, of which %.0f mm2 are left%n",
                JtsBridge.polygon(pocket).getArea(),
                cut.getArea(),
                remnant.covers(laid) ? "lies" : "does not lie",
                left.getArea());
        WholeFiles.writeAll(folder, Map.of("cut.wkt", cut.toText() + "\n", "left.wkt", left.toText() + "\n"));
    }

    /** The polygon as a piece: each edge has a name, and begins at one of the polygon's corners. */
    static Piece pocket(Polygon polygon) {
        LinkedHashMap<String, Integer> corners = new LinkedHashMap<>();
        corners.put("opening", 0);
        corners.put("side", 1);
        corners.put("point", 2);
        corners.put("other point", 3);
        corners.put("other side", 4);
        return JtsBridge.piece("pocket", "one", List.of(Cutting.once()), polygon, corners);
    }

    /** What is cut out: 10 mm all round, and 25 mm at the opening, to turn in. */
    static Polygon cut(Piece piece) {
        AllowancePlan allowances = AllowancePlan.even(piece, 10).with("opening", 25);
        return JtsBridge.polygon(CuttingLine.of(piece, allowances).outline());
    }
}
