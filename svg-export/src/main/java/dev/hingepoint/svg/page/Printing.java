package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.WholeFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Prints the pieces of one size: draws them, lays them on a sheet, and cuts the sheet into pages. */
public final class Printing {
    private static final int MOST_COLUMNS = 8;

    private Printing() {}

    /** @throws dev.hingepoint.Refusal where a piece cannot be drawn, for example because its allowance is too wide */
    public static Printed print(Draft draft, PrintOptions options) {
        List<Drawn> drawings = new ArrayList<>();
        drawings.add(FirstPage.drawn(draft, options));
        List<Box> boxes = new ArrayList<>();
        boxes.add(new Box(0, 0, options.printableWidth() + 1, options.printableHeight() + 1));
        List<Piece> pieces = draft.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Drawn drawn = PieceDrawing.of(
                    draft, pieces.get(i), Label.lines(draft, pieces.get(i), i + 1, pieces.size(), options));
            drawings.add(drawn);
            boxes.add(drawn.strokes().get(0).bounds());
        }
        return fewestPages(draft, drawings, boxes, options);
    }

    /** Sheets of different widths are tried; the one that needs the fewest pages is taken. */
    private static Printed fewestPages(Draft draft, List<Drawn> drawings, List<Box> boxes, PrintOptions options) {
        double widest = boxes.stream().mapToDouble(Box::width).max().orElseThrow();
        String title = draft.pattern().card().name() + ", size " + draft.size();
        Printed fewest = null;
        for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
            double width = columns * options.stepAcross() + options.overlap();
            if (width < widest && columns < MOST_COLUMNS) {
                continue;
            }
            List<Vector> shifts = Packing.shifts(boxes, Math.max(width, widest));
            Drawn sheet = laid(drawings, shifts);
            Printed printed =
                    new Printed(sheet, Tiling.pages(title, sheet, options), placed(draft, boxes, shifts), options);
            if (fewest == null || printed.pages().size() < fewest.pages().size()) {
                fewest = printed;
            }
        }
        return fewest;
    }

    /** The first box is the first page's. */
    private static List<Printed.Placed> placed(Draft draft, List<Box> boxes, List<Vector> shifts) {
        List<Printed.Placed> placed = new ArrayList<>();
        List<Piece> pieces = draft.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            placed.add(new Printed.Placed(pieces.get(i).name(), boxes.get(i + 1).moved(shifts.get(i + 1))));
        }
        return placed;
    }

    private static Drawn laid(List<Drawn> drawings, List<Vector> shifts) {
        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        for (int i = 0; i < drawings.size(); i++) {
            Drawn moved = drawings.get(i).moved(Motion.shift(shifts.get(i)));
            strokes.addAll(moved.strokes());
            texts.addAll(moved.texts());
        }
        return new Drawn(strokes, texts);
    }

    /** The files of a print by name: {@code pages/1.1.svg}, ..., {@code map.svg}. */
    public static Map<String, String> contents(Printed printed) {
        Map<String, String> contents = new LinkedHashMap<>();
        printed.pages().forEach(page -> contents.put("pages/" + page.name() + ".svg", SvgPage.write(page)));
        contents.put("map.svg", SheetMap.write(printed));
        return contents;
    }

    /**
     * Writes all pages and the map, or nothing.
     *
     * @throws dev.hingepoint.Refusal where the folder cannot be written to
     */
    public static void write(Printed printed, Path folder) {
        Map<String, String> contents = contents(printed);
        WholeFiles.writeAll(folder, contents);
        // a page of an earlier print would be taped in with these
        WholeFiles.deleteOthers(folder, "pages", "[0-9]+\\.[0-9]+\\.svg", contents.keySet());
    }
}
