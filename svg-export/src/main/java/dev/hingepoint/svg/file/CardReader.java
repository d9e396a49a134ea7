package dev.hingepoint.svg.file;

import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a card: everything about a pattern that is not geometry. */
final class CardReader {
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
            "lay",
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
            throw root.refuse("file.card.unknown-form", form);
        });
        Optional<Yaml> stretch = root.map("stretch");
        stretch.ifPresent(percent -> percent.knowing("across", "down"));
        BodyChart chart = root.map("body chart").map(CardReader::chart).orElse(BodyChart.NONE);
        Construction usual = ConstructionText.read(root, Construction.NONE);
        Card card = new Card(
                root.requiredText("pattern", "Larkfield dress"),
                root.text("base size").orElse(""),
                root.length("cup difference", Unit.MILLIMETRE),
                stretch.map(percent -> percent.percent("across")).orElse(0.0),
                stretch.map(percent -> percent.percent("down")).orElse(0.0),
                chart,
                usual.seams(),
                usual.allowances(),
                usual.openings(),
                root.map("fronts").map(CardReader::fronts).orElse(Map.of()),
                root.map("lay").map(CardReader::lays).orElse(Lays.ONE_WAY),
                root.map("altered").map(altered -> altered(altered, root, chart, usual)));
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
                        size,
                        lengths(chart.map(size).orElseThrow(() -> chart.refuse("file.says-nothing", size)), unit));
            }
        }
        return new BodyChart(unit, bySize);
    }

    static Map<String, Length> lengths(Yaml yaml, Unit unit) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        for (String key : yaml.keys()) {
            lengths.put(key, yaml.length(key, unit).orElseThrow(() -> yaml.refuse("file.no-value", key)));
        }
        return lengths;
    }

    private static Map<String, Length> fronts(Yaml fronts) {
        Map<String, Length> byName = new LinkedHashMap<>();
        for (String name : fronts.keys()) {
            Yaml front = fronts.map(name).orElseThrow(() -> fronts.refuse("file.says-nothing", name));
            front.knowing("cup difference");
            byName.put(
                    name,
                    front.length("cup difference", Unit.MILLIMETRE)
                            .orElseThrow(() -> front.refuse("file.card.no-cup-difference")));
        }
        return byName;
    }

    private static Lays lays(Yaml lay) {
        Map<String, Lays.Way> byPiece = new LinkedHashMap<>();
        for (String piece : lay.keys()) {
            String way = lay.text(piece).orElseThrow(() -> lay.refuse("file.says-nothing", piece));
            byPiece.put(piece, Lays.Way.named(way).orElseThrow(() -> lay.refuse("file.card.no-such-way", piece, way)));
        }
        return new Lays(byPiece);
    }

    private static Card.Altered altered(Yaml altered, Yaml root, BodyChart chart, Construction usual) {
        altered.knowing(
                "size",
                "front",
                "alterations",
                "make",
                "steps",
                "seams",
                "allowances",
                "openings",
                "finishes",
                "labels");
        List<AlterationRequest> alterations =
                altered.maps("alterations").stream().map(AlterationText::read).toList();
        Map<String, Length> fits =
                root.map("fits").map(body -> lengths(body, chart.unit())).orElse(Map.of());
        List<AlterationRequest> make =
                altered.maps("make").stream().map(AlterationText::read).toList();
        Construction own = ConstructionText.read(altered, usual);
        return new Card.Altered(
                altered.requiredText("size", "\"40\""),
                altered.text("front"),
                alterations,
                make,
                altered.list("steps").stream().map(String::valueOf).toList(),
                fits,
                Optional.of(own).filter(construction -> !construction.equals(usual)));
    }
}
