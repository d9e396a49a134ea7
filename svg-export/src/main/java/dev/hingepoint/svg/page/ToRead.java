package dev.hingepoint.svg.page;

import dev.hingepoint.check.Measurements;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.CuttingText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

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
            done().ifPresent(sections::add);
        }
        sections.add(new Section("Pieces, to tick off", pieces()));
        if (drafts.size() > 1) {
            sections.add(Section.of("Cloth needed", List.of("Print one size alone to be told how much it needs.")));
        } else if (!cloth.isEmpty()) {
            sections.add(Section.of("Cloth needed", cloth));
        }
        sections.add(Section.of("Seam allowance, included", allowances()));
        sections.add(lines());
        sections.add(Section.of("Before you cut", cautions()));
        return sections;
    }

    private Section fit() {
        Map<String, Double> finished = new LinkedHashMap<>(Measurements.of(draft));
        List<Section.Entry> entries = new ArrayList<>();
        Body body = options.body().orElseGet(() -> FitCheck.charted(draft.pattern(), draft.size()));
        List<Ease> eases = draft.pattern().card().bodyChart().bySize().isEmpty()
                ? List.of()
                : FitCheck.ease(draft, body, FitRules.USUAL);
        String unit = options.unit() == Unit.MILLIMETRE ? "in mm" : "";
        if (!eases.isEmpty()) {
            entries.add(Section.Entry.row(unit, List.of("body", "finished", "ease")));
            for (Ease ease : eases) {
                entries.add(Section.Entry.row(
                        ease.level(), List.of(number(ease.body()), number(ease.garment()), number(ease.ease()))));
                finished.remove(ease.level() + GIRTH);
            }
        }
        finished.forEach((name, mm) -> entries.add(Section.Entry.row(name, List.of("", number(mm), ""))));
        String whose = options.body().isPresent() ? "Body, and the finished garment" : "Fits, and the finished garment";
        return new Section(whose, entries);
    }

    /** As read off a tape; where the column says mm, without the unit. */
    private String number(double mm) {
        String shown = new Length(mm).shownIn(options.unit());
        return options.unit() == Unit.MILLIMETRE ? shown.replace(" mm", "") : shown;
    }

    private Optional<Section> done() {
        return draft.pattern()
                .card()
                .altered()
                .filter(altered -> altered.size().equals(draft.size()))
                .map(altered -> Section.of("What was altered", told(altered)))
                .filter(section -> !section.entries().isEmpty());
    }

    /** Step by step where the card tells the steps, else by what was ordered. */
    private static List<String> told(Card.Altered altered) {
        return altered.steps().isEmpty()
                ? altered.alterations().stream().map(Label::told).toList()
                : altered.steps();
    }

    /** By number, as on the map. */
    private List<Section.Entry> pieces() {
        Map<String, Piece> byName = new LinkedHashMap<>();
        drafts.forEach(size -> size.pieces().forEach(piece -> byName.putIfAbsent(piece.name(), piece)));
        List<Section.Entry> entries = new ArrayList<>();
        byName.forEach((name, piece) -> entries.add(Section.Entry.toTick((entries.size() + 1) + " " + name + ": cut "
                + String.join(
                        ", ", piece.cuttings().stream().map(CuttingText::write).toList()))));
        return entries;
    }

    private List<String> allowances() {
        Map<String, String> byWidth = new LinkedHashMap<>();
        draft.allowances().byName().forEach((name, width) -> {
            boolean isOfNoPieceHere = name.contains("/")
                    && draft.find(EdgeRef.parse(name).piece()).isEmpty();
            if (!isOfNoPieceHere) {
                byWidth.merge(
                        width.toString(), name.equals("default") ? "seams" : name, (one, more) -> one + ", " + more);
            }
        });
        if (byWidth.isEmpty()) {
            return List.of(Allowances.HOME_SEWING + ": all seams");
        }
        List<String> said = new ArrayList<>();
        byWidth.forEach((width, names) -> said.add(width + ": " + names));
        said.add("none: folds and bound edges");
        return said;
    }

    private Section lines() {
        List<Section.Entry> entries = new ArrayList<>();
        if (drafts.size() > 1) {
            IntStream.range(0, drafts.size())
                    .forEach(i -> entries.add(Section.Entry.sample(
                            Style.nest().get(i), "cut, size " + drafts.get(i).size())));
        } else {
            entries.add(Section.Entry.sample(Style.CUTTING, "cut"));
            entries.add(Section.Entry.sample(Style.STITCHING, "stitch"));
        }
        entries.add(Section.Entry.sample(Style.FOLD, "on the fold of the cloth"));
        if (options.original() == PrintOptions.Original.SHOWN) {
            entries.add(Section.Entry.sample(Style.BEFORE, "as drawn, before it was altered"));
        }
        return new Section("Lines", entries);
    }

    private List<String> cautions() {
        Card card = draft.pattern().card();
        List<String> cautions = new ArrayList<>(
                List.of("Print at 100 %, and measure the squares.", "Wash and dry the cloth before cutting."));
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
