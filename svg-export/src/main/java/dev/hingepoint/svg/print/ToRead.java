package dev.hingepoint.svg.print;

import dev.hingepoint.check.Measurements;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.fit.GettingIn;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.CuttingText;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a person who sews is told on the first pages: for which body, what was altered, which pieces and cloth, and what to heed. */
final class ToRead {
    private static final String GIRTH = " girth";

    private final List<Draft> drafts;
    private final Draft draft;
    private final PrintOptions options;

    /** @param drafts the sizes that are printed, the first of them the one that is spoken of */
    ToRead(List<Draft> drafts, PrintOptions options) {
        this.drafts = List.copyOf(drafts);
        this.draft = drafts.get(0);
        this.options = options;
    }

    /**
     * Section by section, the most important first.
     *
     * @param cloth what cloth is needed, a line for each
     */
    List<Section> sections(List<String> cloth) {
        List<Section> sections = new ArrayList<>();
        if (drafts.size() == 1) {
            sections.add(fit());
            altered().ifPresent(done -> sections.add(Section.of("What was altered", inUnit(ordered(done)))));
        }
        sections.add(new Section("Pieces, to tick off", pieces()));
        if (drafts.size() > 1) {
            sections.add(Section.of("Cloth needed", List.of("Print one size alone to be told how much it needs.")));
        } else if (!cloth.isEmpty()) {
            sections.add(Section.of("Cloth needed", cloth));
        }
        sections.add(Section.of("Seam allowance, included", allowances()));
        sections.add(lines());
        if (drafts.size() == 1) {
            altered()
                    .filter(done -> !done.steps().isEmpty())
                    .ifPresent(
                            done -> sections.add(Section.of("How it was altered, step by step", inUnit(done.steps()))));
        }
        return sections;
    }

    private List<String> inUnit(List<String> lines) {
        return lines.stream().map(line -> Length.retold(line, options.unit())).toList();
    }

    private Section fit() {
        Map<String, Double> finished = new LinkedHashMap<>(Measurements.of(draft));
        List<Section.Entry> entries = new ArrayList<>();
        Body body = body();
        List<Ease> eases = draft.pattern().card().bodyChart().bySize().isEmpty()
                ? List.of()
                : FitCheck.ease(draft, body, FitRules.USUAL);
        String unit = switch (options.unit()) {
            case MILLIMETRE -> "in mm";
            case CENTIMETRE -> "in cm";
            case INCH -> "in inches";
        };
        entries.add(Section.Entry.row(unit, eases.isEmpty() ? List.of() : List.of("body", "finished", "ease")));
        for (Ease ease : eases) {
            String level = ease.level() + GIRTH;
            entries.add(Section.Entry.row(
                    level + (ease.isShort() ? " !" : ""),
                    List.of(number(ease.body()), number(ease.garment()), number(ease.ease()))));
            finished.remove(level);
        }
        finished.forEach((name, mm) -> entries.add(
                Section.Entry.row(name, eases.isEmpty() ? List.of(number(mm)) : List.of("", number(mm), ""))));
        if (eases.stream().anyMatch(Ease::isShort)) {
            entries.add(Section.Entry.of("! less ease than it should have on this body"));
        }
        double needed = draft.pattern().card().stretchAcross();
        body.cloth()
                .filter(cloth -> cloth.across() < needed)
                .ifPresent(cloth -> entries.add(Section.Entry.of("! this cloth stretches " + percent(cloth.across())
                        + " across, and the pattern needs " + percent(needed))));
        tooNarrow().forEach(place -> entries.add(Section.Entry.of("! getting in: " + place)));
        return new Section(
                eases.isEmpty()
                        ? "The finished garment"
                        : options.body().isPresent()
                                ? "Body, and the finished garment"
                                : "The body it fits, and the finished garment",
                entries);
    }

    private static String percent(double fraction) {
        return Numbers.of(fraction * 100, 0) + " %";
    }

    private Body body() {
        return options.body().orElseGet(() -> FitCheck.charted(draft.pattern(), draft.size()));
    }

    /** Where one cannot get in; nothing where the pieces do not tell. */
    List<String> tooNarrow() {
        return GettingIn.into(draft, body(), FitRules.USUAL).stream()
                .filter(place -> !place.isWideEnough())
                .map(GettingIn.Narrow::sentence)
                .toList();
    }

    /** As read off a tape, without the unit: the table has it above. */
    private String number(double mm) {
        return new Length(mm).shownIn(options.unit()).replaceAll(" (mm|cm|in)$", "");
    }

    private Optional<Card.Altered> altered() {
        return draft.altered()
                .filter(altered ->
                        !altered.alterations().isEmpty() || !altered.make().isEmpty());
    }

    /** What was ordered, in its order. */
    private static List<String> ordered(Card.Altered done) {
        return Stream.concat(done.alterations().stream(), done.make().stream())
                .map(Label::told)
                .toList();
    }

    /** By number, as on the map. */
    private List<Section.Entry> pieces() {
        Map<String, Piece> byName = new LinkedHashMap<>();
        drafts.forEach(size -> size.pieces().forEach(piece -> byName.putIfAbsent(piece.name(), piece)));
        List<Section.Entry> entries = new ArrayList<>();
        byName.forEach((name, piece) -> entries.add(Section.Entry.toTick(
                (entries.size() + 1) + " " + name + ": cut " + String.join(", ", cuttings(piece)))));
        return entries;
    }

    /** As its card says, or, where its drawing is laid open, as that is cut. */
    private List<String> cuttings(Piece piece) {
        Copy copy = Copy.of(piece, options).get(0);
        String both = copy == Copy.ONE_OF_PAIR ? ", both drawn" : "";
        return copy == Copy.UNFOLDED
                ? copy.cut(piece).stream()
                        .map(line -> line.substring("cut ".length()))
                        .toList()
                : piece.cuttings().stream()
                        .map(cutting -> CuttingText.write(cutting) + both)
                        .toList();
    }

    /** Of the edges that are cut, each as its piece's label has it: the one that most seams have, then the others by name. */
    private List<String> allowances() {
        Map<Length, Map<String, List<String>>> byWidth = new LinkedHashMap<>();
        Map<String, Set<Length>> widths = new HashMap<>();
        for (Piece piece : draft.pieces()) {
            for (Edge edge : piece.edges()) {
                Length width = draft.allowances().of(piece, edge);
                widths.computeIfAbsent(edge.name(), any -> new HashSet<>()).add(width);
                byWidth.computeIfAbsent(width, any -> new LinkedHashMap<>())
                        .computeIfAbsent(edge.name(), any -> new ArrayList<>())
                        .add(piece.name());
            }
        }
        Length usual = draft.allowances().usual();
        List<String> said = new ArrayList<>(List.of(options.length(usual) + ": every seam not named here"));
        byWidth.forEach((width, edges) -> {
            List<String> names = new ArrayList<>();
            edges.forEach((edge, pieces) ->
                    names.add(widths.get(edge).size() == 1 ? edge : edge + " (" + String.join(", ", pieces) + ")"));
            if (!width.equals(usual)) {
                said.add((width.mm() == 0 ? "none" : options.length(width)) + ": " + String.join(", ", names));
            }
        });
        return said;
    }

    private Section lines() {
        List<Section.Entry> entries = new ArrayList<>();
        if (drafts.size() > 1) {
            IntStream.range(0, drafts.size())
                    .forEach(i -> entries.add(Section.Entry.sample(
                            Style.nest().get(i), "size " + drafts.get(i).size())));
        } else {
            entries.add(Section.Entry.sample(Style.CUTTING, "cut"));
            entries.add(Section.Entry.sample(Style.STITCHING, "stitch"));
        }
        boolean hasFold = options.pieces() == PrintOptions.Pieces.AS_DRAWN
                && draft.pieces().stream()
                        .flatMap(piece -> piece.edges().stream())
                        .anyMatch(edge -> edge.kind() == Edge.Kind.FOLD);
        if (hasFold) {
            entries.add(Section.Entry.sample(Style.FOLD, "on the fold, not cut"));
        }
        entries.add(Section.Entry.sample(Style.LEVEL, "level of the body"));
        if (options.original() == PrintOptions.Original.SHOWN) {
            entries.add(Section.Entry.sample(Style.BEFORE, "as drawn, before it was altered"));
        }
        return new Section("Lines", entries);
    }

    /** What to heed, on the first leaf whatever else has room there. */
    Section beforeCutting() {
        return Section.of("Before you cut", cautions());
    }

    private List<String> cautions() {
        Card card = draft.pattern().card();
        List<String> cautions =
                new ArrayList<>(List.of("Measure the squares; the paper must be true.", "Wash and dry the cloth."));
        cautions.add(
                card.isKnit()
                        ? "Sew a toile in cloth of the same stretch before you cut good cloth."
                        : "Sew a toile in cloth that handles alike before you cut good cloth.");
        return cautions;
    }

    /** "Concert dress, size 40": what is printed, in which sizes. */
    static String title(List<Draft> drafts) {
        String sizes = String.join(", ", drafts.stream().map(Draft::size).toList());
        return drafts.get(0).pattern().card().name() + (drafts.size() == 1 ? ", size " : ", sizes ") + sizes;
    }

    /** "for Ida, 25 November"; empty for nobody. */
    static String whoFor(PrintOptions options) {
        List<String> parts = new ArrayList<>();
        if (!options.whoFor().isBlank()) {
            parts.add("for " + options.whoFor());
        }
        if (!options.date().isBlank()) {
            parts.add(options.date());
        }
        return String.join(", ", parts);
    }
}
