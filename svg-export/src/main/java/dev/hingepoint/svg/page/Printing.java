package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.WholeFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Prints the pieces of one size: draws them, lays them on a sheet, and cuts the sheet into pages. */
public final class Printing {
    private Printing() {}

    /** @throws dev.hingepoint.Refusal where a piece cannot be drawn, for example because its allowance is too wide */
    public static Printed print(Draft draft, PrintOptions options) {
        List<Piece> pieces = draft.pieces();
        Drawn firstPage = FirstPage.drawn(draft, options);
        List<PieceDrawing.Result> drawings = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            drawings.add(drawn(draft, i, options, List.of()));
        }
        Layout layout = Layout.ofFewestPages(
                firstPage, drawings.stream().map(PieceDrawing.Result::drawn).toList(), options);
        // now that it is known where the pages are joined, the words are set anew, off the joints
        List<Drawn> lettered = new ArrayList<>(List.of(firstPage));
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            PieceDrawing.Result again = drawn(draft, i, options, layout.jointsOn(i + 1));
            Box room = drawings.get(i).drawn().bounds();
            boolean keepsItsRoom = room.union(again.drawn().bounds()).equals(room);
            PieceDrawing.Result best = keepsItsRoom ? again : drawings.get(i);
            lettered.add(best.drawn());
            if (!best.isNamed()) {
                notes.add("there is no room for its name on the "
                        + pieces.get(i).name() + "; it stands beside it: write it on before you cut the paper");
            }
        }
        Layout whole = layout.with(lettered);
        List<Printed.Placed> placed = IntStream.range(0, pieces.size())
                .mapToObj(i -> new Printed.Placed(
                        pieces.get(i).name(), whole.laid(i + 1).strokes().get(0).bounds()))
                .toList();
        String title = draft.pattern().card().name() + ", size " + draft.size();
        Drawn sheet = whole.sheet();
        return new Printed(title, sheet, Tiling.pages(title, sheet, options), placed, notes, options);
    }

    private static PieceDrawing.Result drawn(Draft draft, int number, PrintOptions options, List<Box> joints) {
        List<Piece> pieces = draft.pieces();
        Piece piece = pieces.get(number);
        return PieceDrawing.of(draft, piece, Label.lines(draft, piece, number + 1, pieces.size(), options), joints);
    }

    /** The files of a print by name: {@code pages/1.1.svg}, ..., {@code map.svg}. */
    public static Map<String, String> contents(Printed printed) {
        Map<String, String> contents = new LinkedHashMap<>();
        printed.pages().forEach(page -> contents.put("pages/" + page.name() + ".svg", SvgPage.write(page)));
        contents.put("map.svg", SheetMap.write(printed));
        return contents;
    }

    /** All pages as one PDF. */
    public static byte[] pdf(Printed printed) {
        return PdfPages.write(printed.pages(), printed.title());
    }

    /**
     * Writes all pages, one by one and as one PDF, and the map, or nothing.
     *
     * @throws dev.hingepoint.Refusal where the folder cannot be written to
     */
    public static void write(Printed printed, Path folder) {
        Map<String, String> contents = contents(printed);
        Map<String, byte[]> files = WholeFiles.encoded(contents);
        files.put("pages.pdf", pdf(printed));
        WholeFiles.writeBytes(folder, files);
        // a page of an earlier print would be taped in with these
        WholeFiles.deleteOthers(folder, "pages", "[0-9]+\\.[0-9]+\\.svg", contents.keySet());
    }
}
