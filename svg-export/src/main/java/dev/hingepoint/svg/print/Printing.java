package dev.hingepoint.svg.print;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.WholeFiles;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.PdfPages;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Prints the pieces of one size, or of several in one another: draws them, lays them on a sheet of few pages, and cuts the sheet into them. */
public final class Printing {
    private final List<Draft> drafts;
    private final String title;
    private final List<PieceDrawing> pieces;

    /** As they are drawn while it is not known where pages will be joined. */
    private final List<PieceDrawing.Result> drawn;

    private final List<ClothLayout> cloths;
    private final List<String> notes = new ArrayList<>();

    private Printing(List<Draft> drafts, Predicate<PieceDrawing> isPrinted, PrintOptions options) {
        this.drafts = drafts;
        this.title = ToRead.title(drafts);
        this.pieces =
                PieceDrawing.of(drafts, options).stream().filter(isPrinted).toList();
        this.drawn = pieces.stream().map(piece -> piece.drawn(List.of())).toList();
        this.cloths = drafts.size() == 1 ? cloths(drafts.get(0), options.cloths()) : List.of();
        notes.addAll(Remarks.of(
                drafts, drawn.stream().map(PieceDrawing.Result::drawn).toList(), options));
    }

    /** A cloth that nobody has named the width of may be too narrow: that is told, and nothing is refused for it. */
    private List<ClothLayout> cloths(Draft draft, ClothWidths widths) {
        try {
            return ClothLayout.of(draft, widths);
        } catch (Refusal tooNarrow) {
            if (!widths.byCloth().isEmpty()) {
                throw tooNarrow;
            }
            notes.add("how much cloth is needed is not told: " + tooNarrow.getMessage());
            return List.of();
        }
    }

    /** @throws Refusal where a piece cannot be drawn, for example because its allowance is too wide */
    public static Printed print(Draft draft, PrintOptions options) {
        return print(List.of(draft), options);
    }

    /**
     * Several sizes of a pattern in one another, each with a cutting line of its own kind.
     *
     * @throws Refusal where a piece cannot be drawn, or there are more sizes than kinds of lines
     */
    public static Printed print(List<Draft> sizes, PrintOptions options) {
        return new Printing(List.copyOf(sizes), piece -> true, options).printed(options);
    }

    /**
     * The pages of some of the pieces, without those to read.
     *
     * @param pieces their names; others are not printed, and still counted in every girth
     */
    public static List<Page> pages(Draft draft, Collection<String> pieces, PrintOptions options) {
        return new Printing(List.of(draft), piece -> pieces.contains(piece.name()), options)
                .printed(options)
                .pages();
    }

    private Printed printed(PrintOptions options) {
        return waysOfPaper(options).stream()
                .map(this::laid)
                .min(Comparator.comparingInt(OnPaper::pages))
                .orElseThrow()
                .printed();
    }

    /** Sheets upright, or lying where they then still hold the first page. */
    private static List<PrintOptions> waysOfPaper(PrintOptions options) {
        if (options.paper().kind() != Paper.Kind.SHEET) {
            return List.of(options);
        }
        try {
            return List.of(options, options.on(options.paper().turned()));
        } catch (Refusal tooNarrow) {
            return List.of(options);
        }
    }

    private OnPaper laid(PrintOptions options) {
        FrontPages front = front(options);
        List<Drawn> drawings = new ArrayList<>();
        List<List<List<Point>>> rings = new ArrayList<>();
        List<Lays.Way> ways = new ArrayList<>();
        if (options.areLeavesOnSheet()) {
            List<Point> ground = options.ground().corners();
            for (int i = 0; i < front.count(); i++) {
                drawings.add(new Drawn(List.of(new Stroke(Style.RULE, ground)), List.of()));
                rings.add(List.of(ground));
                ways.add(Lays.Way.ONE_WAY);
            }
        }
        int before = drawings.size();
        drawn.forEach(piece -> drawings.add(piece.drawn()));
        pieces.forEach(piece -> rings.add(piece.cutting()));
        pieces.forEach(piece -> ways.add(piece.way()));
        return new OnPaper(options, front, Layout.of(drawings, rings, ways, options), before);
    }

    private FrontPages front(PrintOptions options) {
        List<String> needed = cloths.stream()
                .map(cloth -> cloth.sentence()
                        + (options.unit() == Unit.INCH ? ", " + new Length(cloth.needed()).inInches() + " long" : ""))
                .toList();
        ToRead toRead = new ToRead(drafts, options);
        return new FrontPages(
                options.leaf(),
                drafts.get(0).pattern().card(),
                title,
                toRead.beforeCutting(),
                toRead.sections(needed),
                cloths,
                options);
    }

    /** The pieces on one kind of paper. */
    private final class OnPaper {
        private final PrintOptions options;
        private final FrontPages front;
        private final Layout layout;

        /** How many of the layout's drawings are leaves to read: the first ones. */
        private final int leaves;

        OnPaper(PrintOptions options, FrontPages front, Layout layout, int leaves) {
            this.options = options;
            this.front = front;
            this.layout = layout;
            this.leaves = leaves;
        }

        /** How many sheets of paper it takes, with those to read. */
        int pages() {
            int toRead = options.areLeavesOnSheet() ? 0 : front.count();
            return Tiling.count(layout.sheet(), rings(placed(layout)), options) + toRead;
        }

        Printed printed() {
            Layout lettered = lettered();
            if (options.paper().kind() == Paper.Kind.PROJECTION) {
                return printed(lettered, Projection.of(lettered.sheet(), title, options));
            }
            Printed alone = printed(lettered, lettered.sheet());
            SheetMap map = new SheetMap(alone);
            if (options.areLeavesOnSheet()) {
                // where they lie is settled
                List<Drawn> whole = new ArrayList<>(front.drawnSmall(map));
                whole.addAll(
                        lettered.drawings().subList(leaves, lettered.drawings().size()));
                return printed(lettered, lettered.with(whole).sheet());
            }
            List<Drawn> toRead = front.drawn(map);
            Motion toPaper = options.toPaper(0, 0);
            return alone.with(IntStream.range(0, toRead.size())
                    .mapToObj(i -> new Page(
                            0,
                            i + 1,
                            options.used(options.leaf(), options.leaf()),
                            options.margin(),
                            1,
                            toRead.get(i).moved(toPaper),
                            Drawn.NOTHING))
                    .toList());
        }

        /** Now that it is known where the pages are joined, the words are set anew, off the joints; those of a piece that lies whole on one page stay. */
        private Layout lettered() {
            List<Drawn> drawings = new ArrayList<>(layout.drawings().subList(0, leaves));
            for (int i = 0; i < pieces.size(); i++) {
                PieceDrawing.Result best = lettered(i);
                drawings.add(best.drawn());
                if (!best.isNamed() && options.paper().kind() != Paper.Kind.PROJECTION) {
                    notes.add("there is no room for its name on the "
                            + pieces.get(i).name() + "; it stands beside it: write it on before you cut the paper");
                }
            }
            return layout.with(drawings);
        }

        private PieceDrawing.Result lettered(int i) {
            List<Box> joints = layout.jointsOn(leaves + i);
            if (joints.isEmpty()) {
                return drawn.get(i);
            }
            PieceDrawing.Result again = pieces.get(i).drawn(joints);
            return layout.hasRoomFor(leaves + i, again.drawn()) ? again : drawn.get(i);
        }

        private Printed printed(Layout lettered, Drawn sheet) {
            List<Printed.Placed> placed = placed(lettered);
            PrintOptions cut = options.cutFor(sheet.bounds());
            return new Printed(
                    title,
                    sheet,
                    List.of(),
                    Tiling.pages(title, sheet, rings(placed), cut),
                    leastPages(),
                    placed,
                    notes,
                    cut);
        }

        private List<Printed.Placed> placed(Layout laid) {
            return IntStream.range(0, pieces.size())
                    .mapToObj(i -> {
                        Motion motion = laid.place(leaves + i);
                        return new Printed.Placed(
                                pieces.get(i).name(),
                                pieces.get(i).number(),
                                pieces.get(i).cutting().stream().map(motion::of).toList());
                    })
                    .toList();
        }

        private static List<List<Point>> rings(List<Printed.Placed> placed) {
            return placed.stream().flatMap(piece -> piece.rings().stream()).toList();
        }

        /** Derived: a page can show no more than its printable area. */
        private int leastPages() {
            double area = pieces.stream()
                    .mapToDouble(piece -> Ground.within(piece.cutting()).getArea())
                    .sum();
            return (int) Math.max(1, Math.ceil(area / (options.printableWidth() * options.printableHeight())));
        }
    }

    /** The drawings by name: {@code pages/0.1.svg}, {@code pages/1.1.svg}, ..., {@code map.svg}. */
    public static Map<String, String> contents(Printed printed) {
        Map<String, String> contents = new LinkedHashMap<>();
        printed.all().forEach(page -> contents.put("pages/" + page.name() + ".svg", SvgPage.write(page)));
        contents.put("map.svg", new SheetMap(printed).svg());
        return contents;
    }

    /** All pages in one PDF, as {@link PdfPages} writes it. */
    public static byte[] pdf(Printed printed) {
        return PdfPages.write(printed.all(), printed.title());
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
