package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Length;
import dev.hingepoint.svg.file.Xml;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What came of an alteration: what changed, what did not, and what is worse than before. */
record Outcome(Lesson lesson, Lengths lengths) {
    private static final List<String> EDGE = List.of("Piece", "Edge");
    private static final List<String> GIRTH = List.of("Level");

    String html() {
        List<Measurement> edges = Measurement.ofEdges(lesson.changed());
        List<Measurement> girths = Measurement.ofGirths(lesson.changed());
        return "<div class=\"outcome\">\n<h3>What changed</h3>\n"
                + orNothing(changed("Edges, as they are sewn", EDGE, edges)
                        + changed("Girths of the whole body, finished", GIRTH, girths))
                + list(lesson.changed().notes().stream()
                        .map(note -> Length.retold(note, lengths.unit()))
                        .toList())
                + "<h3>What did not</h3>\n"
                + orNothing(unchanged("Edges as long as before, as they are sewn", EDGE, edges)
                        + unchanged("Girths as before, of the whole body, finished", GIRTH, girths))
                + "<h3>What it was held to</h3>\n"
                + list(lesson.kept().stream().map(Outcome::promise).toList())
                + "<h3>What is worse now</h3>\n"
                + (lesson.worse().isEmpty()
                        ? "<p>Nothing that was checked is worse than before.</p>\n"
                        : list(lesson.worse()))
                + "<p class=\"small\">Lengths are told " + lengths.rounding()
                + ", each rounded by itself.</p>\n</div>\n";
    }

    private static String orNothing(String tables) {
        return tables.isEmpty() ? "<p>No edge and no girth that was measured.</p>\n" : tables;
    }

    private static String promise(String law) {
        return "It " + law + ".";
    }

    private String list(List<String> items) {
        return items.isEmpty()
                ? ""
                : items.stream()
                        .map(item -> "<li>" + Xml.escaped(Length.retold(item, lengths.unit())) + "</li>\n")
                        .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
    }

    private String changed(String caption, List<String> names, List<Measurement> rows) {
        List<String> heads = joined(names, List.of("Before", "After", "Difference"));
        return table(
                caption,
                heads,
                names.size(),
                rows.stream()
                        .filter(Measurement::isChanged)
                        .map(row -> joined(
                                row.names(),
                                List.of(
                                        lengths.of(row.before()),
                                        lengths.of(row.after()),
                                        lengths.difference(row.difference()))))
                        .toList());
    }

    private String unchanged(String caption, List<String> names, List<Measurement> rows) {
        return table(
                caption,
                joined(names, List.of("Length")),
                names.size(),
                rows.stream()
                        .filter(row -> !row.isChanged())
                        .map(row -> joined(row.names(), List.of(lengths.of(row.after()))))
                        .toList());
    }

    private static List<String> joined(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    /** @param names how many cells of a row name what is measured */
    private static String table(String caption, List<String> heads, int names, List<List<String>> rows) {
        if (rows.isEmpty()) {
            return "";
        }
        StringBuilder table = new StringBuilder("<div class=\"sideways\" role=\"group\" tabindex=\"0\" aria-label=\""
                + caption + "\">\n<table>\n<caption>" + caption + "</caption>\n<thead><tr>");
        heads.subList(0, names).forEach(head -> table.append("<th scope=\"col\">" + head + "</th>"));
        heads.subList(names, heads.size())
                .forEach(head -> table.append("<th scope=\"col\" class=\"measured\">" + head + "</th>"));
        table.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : rows) {
            table.append("<tr>");
            row.subList(0, names).forEach(name -> table.append("<th scope=\"row\">" + Xml.escaped(name) + "</th>"));
            row.subList(names, row.size()).forEach(cell -> table.append("<td>" + cell + "</td>"));
            table.append("</tr>\n");
        }
        return table.append("</tbody>\n</table>\n</div>\n").toString();
    }
}
