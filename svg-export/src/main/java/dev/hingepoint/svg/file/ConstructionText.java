package dev.hingepoint.svg.file;

import dev.hingepoint.Quantity;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** How the pieces are put together, in YAML: on a card for every size, and under {@code altered} for the altered one. */
final class ConstructionText {
    private ConstructionText() {}

    /** What is not written is as it is usually. */
    static Construction read(Yaml yaml, Construction usual) {
        return new Construction(
                yaml.has("seams")
                        ? yaml.maps("seams").stream()
                                .map(ConstructionText::seam)
                                .toList()
                        : usual.seams(),
                yaml.map("allowances")
                        .map(allowances -> new Allowances(allowances(allowances)))
                        .orElse(usual.allowances()),
                yaml.map("openings").map(ConstructionText::openings).orElse(usual.openings()),
                yaml.map("finishes").map(ConstructionText::finishes).orElse(usual.finishes()),
                yaml.map("labels").map(ConstructionText::labels).orElse(usual.labels()));
    }

    private static Seam seam(Yaml seam) {
        seam.knowing("join", "to", "ease", "reversed");
        double[] ease = seam.text("ease").map(text -> ease(seam, text)).orElse(new double[] {0, 0});
        return new Seam(edges(seam, "join"), edges(seam, "to"), ease[0], ease[1], seam.flag("reversed"));
    }

    private static List<EdgeRef> edges(Yaml seam, String key) {
        Object value = seam.raw(key).orElseThrow(() -> seam.refuse("file.seam.incomplete", key));
        List<?> names = value instanceof List<?> list ? list : List.of(value);
        if (names.isEmpty() || names.stream().anyMatch(Objects::isNull)) {
            throw seam.refuse("file.seam.no-edge", key);
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
            throw seam.refuse("file.seam.ease-runs-back", text);
        }
        return new double[] {from, to};
    }

    private static Map<String, Length> allowances(Yaml allowances) {
        Map<String, Length> byName = CardReader.lengths(allowances, Unit.MILLIMETRE);
        byName.forEach((name, length) -> {
            if (length.mm() < 0 || length.mm() > 300) {
                throw allowances.refuse("file.allowance-range", name, Quantity.millimetres(length.mm()));
            }
        });
        return byName;
    }

    /** One opening of an edge, or a list of them: a zip from the neckline and a slit from the hem. */
    private static List<Opening> openings(Yaml openings) {
        List<Opening> list = new ArrayList<>();
        for (String edge : openings.keys()) {
            EdgeRef ref = openings.inPlace(edge, () -> EdgeRef.parse(edge));
            List<Yaml> each = openings.raw(edge).orElse("") instanceof List<?>
                    ? openings.maps(edge)
                    : List.of(openings.map(edge).orElseThrow(() -> openings.refuse("file.says-nothing", edge)));
            for (Yaml opening : each) {
                opening.knowing("from", "length");
                list.add(new Opening(
                        ref,
                        opening.requiredText("from", "neckline"),
                        opening.length("length", Unit.MILLIMETRE)
                                .orElseThrow(() -> opening.refuse("file.opening.no-length"))));
            }
        }
        return list;
    }

    private static Map<EdgeRef, String> finishes(Yaml finishes) {
        Map<EdgeRef, String> byEdge = new LinkedHashMap<>();
        for (String edge : finishes.keys()) {
            byEdge.put(
                    finishes.inPlace(edge, () -> EdgeRef.parse(edge)),
                    finishes.text(edge).orElseThrow(() -> finishes.refuse("file.says-nothing", edge)));
        }
        return byEdge;
    }

    private static Map<String, List<String>> labels(Yaml labels) {
        Map<String, List<String>> byPiece = new LinkedHashMap<>();
        for (String piece : labels.keys()) {
            byPiece.put(piece, labels.list(piece).stream().map(String::valueOf).toList());
        }
        return byPiece;
    }

    /** The lines, where they differ from what is usual. */
    static List<String> write(Construction construction, Construction usual) {
        List<String> lines = new ArrayList<>();
        if (!construction.seams().equals(usual.seams())) {
            lines.add(construction.seams().isEmpty() ? "seams: []" : "seams:");
            construction.seams().forEach(seam -> lines.add("  - " + seam(seam)));
        }
        if (!construction.allowances().equals(usual.allowances())) {
            lines.add("allowances:");
            construction
                    .allowances()
                    .byName()
                    .forEach((name, length) -> lines.add("  " + CardWriter.plain(name) + ": " + millimetres(length)));
        }
        if (!construction.openings().equals(usual.openings())) {
            lines.add(construction.openings().isEmpty() ? "openings: {}" : "openings:");
            construction.openings().stream()
                    .map(Opening::edge)
                    .distinct()
                    .forEach(edge ->
                            lines.add("  " + CardWriter.plain(edge.toString()) + ": " + openings(construction, edge)));
        }
        if (!construction.finishes().equals(usual.finishes())) {
            lines.add("finishes:");
            construction
                    .finishes()
                    .forEach((edge, finish) ->
                            lines.add("  " + CardWriter.plain(edge.toString()) + ": " + CardWriter.plain(finish)));
        }
        if (!construction.labels().equals(usual.labels())) {
            lines.add("labels:");
            construction
                    .labels()
                    .forEach((piece, words) -> lines.add("  " + CardWriter.plain(piece) + ": ["
                            + String.join(
                                    ", ", words.stream().map(CardWriter::quoted).toList())
                            + "]"));
        }
        return lines;
    }

    private static String seam(Seam seam) {
        String ease = seam.easeFrom() == 0 && seam.easeTo() == 0
                ? ""
                : ", ease: " + Numbers.of(seam.easeFrom()) + ".." + Numbers.of(seam.easeTo()) + " mm";
        return "{join: " + edges(seam.join()) + ", to: " + edges(seam.to()) + ease
                + (seam.reversed() ? ", reversed: true}" : "}");
    }

    private static String edges(List<EdgeRef> side) {
        List<String> names =
                side.stream().map(edge -> CardWriter.plain(edge.toString())).toList();
        return names.size() == 1 ? names.get(0) : "[" + String.join(", ", names) + "]";
    }

    private static String openings(Construction construction, EdgeRef edge) {
        List<String> openings = construction.openings().stream()
                .filter(opening -> opening.edge().equals(edge))
                .map(opening -> "{from: " + CardWriter.plain(opening.from()) + ", length: "
                        + millimetres(opening.length()) + "}")
                .toList();
        return openings.size() == 1 ? openings.get(0) : "[" + String.join(", ", openings) + "]";
    }

    static String millimetres(Length length) {
        return Numbers.of(length.mm()) + " mm";
    }
}
