package dev.hingepoint.svg.file;

import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a card: everything about a pattern that is not geometry. */
public final class CardReader {
    private static final List<String> KNOWN = List.of(
            "form",
            "pattern",
            "drawing",
            "base size",
            "cup difference",
            "stretch",
            "body chart",
            "seams",
            "allowances",
            "openings",
            "fronts",
            "altered",
            "fits");

    private CardReader() {}

    /**
     * What a card says.
     *
     * @param drawing the name of the drawing beside it
     * @param unknown keys that this version does not know, left alone
     */
    public record ReadCard(Card card, String drawing, List<String> unknown) {}

    /**
     * @param file the name to give in a refusal
     * @throws dev.hingepoint.Refusal saying where and why
     */
    public static ReadCard read(String file, String yaml) {
        Yaml root = Yaml.parse(file, yaml);
        root.text("form").filter(form -> !form.equals("1")).ifPresent(form -> {
            throw root.refuse("the card is of form " + form + ", and only form 1 is known");
        });
        Optional<Yaml> stretch = root.map("stretch");
        stretch.ifPresent(percent -> percent.knowing("across", "down"));
        BodyChart chart = root.map("body chart").map(CardReader::chart).orElse(BodyChart.NONE);
        Card card = new Card(
                root.requiredText("pattern", "Larkfield dress"),
                root.text("base size").orElse(""),
                root.length("cup difference", Unit.MILLIMETRE),
                stretch.map(percent -> percent.percent("across")).orElse(0.0),
                stretch.map(percent -> percent.percent("down")).orElse(0.0),
                chart,
                root.maps("seams").stream().map(CardReader::seam).toList(),
                new Allowances(
                        root.map("allowances").map(CardReader::allowances).orElse(Map.of())),
                root.map("openings").map(CardReader::openings).orElse(List.of()),
                root.map("fronts").map(CardReader::fronts).orElse(Map.of()),
                root.map("altered").map(altered -> altered(altered, root, chart)));
        List<String> unknown =
                root.keys().stream().filter(key -> !KNOWN.contains(key)).toList();
        return new ReadCard(card, root.requiredText("drawing", "larkfield.svg"), unknown);
    }

    private static BodyChart chart(Yaml chart) {
        Unit unit = chart.text("unit")
                .map(text -> chart.inPlace("unit", () -> Unit.parse(text)))
                .orElse(Unit.MILLIMETRE);
        Map<String, Map<String, Length>> bySize = new LinkedHashMap<>();
        for (String size : chart.keys()) {
            if (!size.equals("unit")) {
                bySize.put(
                        size, lengths(chart.map(size).orElseThrow(() -> chart.refuse(size + " says nothing")), unit));
            }
        }
        return new BodyChart(unit, bySize);
    }

    private static Map<String, Length> lengths(Yaml yaml, Unit unit) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        for (String key : yaml.keys()) {
            lengths.put(key, yaml.length(key, unit).orElseThrow(() -> yaml.refuse(key + " has no value")));
        }
        return lengths;
    }

    private static Seam seam(Yaml seam) {
        seam.knowing("join", "to", "ease", "reversed");
        double[] ease = seam.text("ease").map(text -> ease(seam, text)).orElse(new double[] {0, 0});
        return new Seam(edges(seam, "join"), edges(seam, "to"), ease[0], ease[1], seam.flag("reversed"));
    }

    private static List<EdgeRef> edges(Yaml seam, String key) {
        Object value = seam.raw(key).orElseThrow(() -> seam.refuse("a seam needs join and to; " + key + " is missing"));
        List<?> names = value instanceof List<?> list ? list : List.of(value);
        if (names.isEmpty()) {
            throw seam.refuse(key + " names no edge");
        }
        List<EdgeRef> edges = new ArrayList<>();
        names.forEach(name -> edges.add(seam.inPlace(key, () -> EdgeRef.parse(String.valueOf(name)))));
        return edges;
    }

    /** {@code 0..6 mm}: from, to; a single length is both. */
    private static double[] ease(Yaml seam, String text) {
        String[] ends = text.split("\\.\\.", 2);
        String unit = ends[ends.length - 1].replaceAll("^[-+0-9./\\s]+", "");
        Unit bare = unit.isBlank() ? Unit.MILLIMETRE : seam.inPlace("ease", () -> Unit.parse(unit));
        double from = seam.inPlace("ease", () -> Length.parse(ends[0], bare)).mm();
        double to = seam.inPlace("ease", () -> Length.parse(ends[ends.length - 1], bare))
                .mm();
        if (from > to) {
            throw seam.refuse("ease runs from less to more, not " + text);
        }
        return new double[] {from, to};
    }

    private static Map<String, Length> allowances(Yaml allowances) {
        Map<String, Length> byName = lengths(allowances, Unit.MILLIMETRE);
        byName.forEach((name, length) -> {
            if (length.mm() < 0 || length.mm() > 300) {
                throw allowances.refuse(name + " must be between 0 and 300 mm, not " + length);
            }
        });
        return byName;
    }

    private static List<Opening> openings(Yaml openings) {
        List<Opening> list = new ArrayList<>();
        for (String edge : openings.keys()) {
            Yaml opening = openings.map(edge).orElseThrow(() -> openings.refuse(edge + " says nothing"));
            opening.knowing("from", "length");
            list.add(new Opening(
                    openings.inPlace(edge, () -> EdgeRef.parse(edge)),
                    opening.requiredText("from", "neckline"),
                    opening.length("length", Unit.MILLIMETRE).orElseThrow(() -> opening.refuse("length is missing"))));
        }
        return list;
    }

    private static Map<String, Length> fronts(Yaml fronts) {
        Map<String, Length> byName = new LinkedHashMap<>();
        for (String name : fronts.keys()) {
            Yaml front = fronts.map(name).orElseThrow(() -> fronts.refuse(name + " says nothing"));
            front.knowing("cup difference");
            byName.put(
                    name,
                    front.length("cup difference", Unit.MILLIMETRE)
                            .orElseThrow(() -> front.refuse("cup difference is missing")));
        }
        return byName;
    }

    private static Card.Altered altered(Yaml altered, Yaml root, BodyChart chart) {
        altered.knowing("size", "front", "alterations");
        List<AlterationRequest> alterations =
                altered.maps("alterations").stream().map(AlterationText::read).toList();
        Map<String, Length> fits =
                root.map("fits").map(body -> lengths(body, chart.unit())).orElse(Map.of());
        return new Card.Altered(altered.requiredText("size", "\"40\""), altered.text("front"), alterations, fits);
    }
}
