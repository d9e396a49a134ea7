package dev.hingepoint.samples.docs;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.samples.Combinations;
import dev.hingepoint.svg.file.Xml;
import java.util.List;
import java.util.Locale;

/** The page of the javadoc that tells every alteration: what it does, an example, a picture, and what it keeps. */
final class AlterationPage {
    private final String readme;
    private final StringBuilder index = new StringBuilder();
    private final StringBuilder sections = new StringBuilder();

    AlterationPage(String readme) {
        this.readme = readme;
    }

    void add(Alteration alteration, Altered altered, String picture) {
        String name = Xml.escaped(alteration.name());
        String id = alteration.name().replace(' ', '-');
        List<KeptLaws.Line> laws = KeptLaws.of(altered.laws());
        index.append(index.isEmpty() ? "" : ",\n").append("<a href=\"#" + id + "\">" + name + "</a>");
        sections.append("<h2 id=\"" + id + "\">" + name + "</h2>\n<p>" + does(alteration.name()) + ".</p>\n<p><code>"
                + Xml.escaped(Combinations.example(alteration)) + "</code></p>\n<p><a href=\"" + picture
                + "\"><img src=\"" + picture
                + "\" alt=\"" + name + ", as drawn and altered\" style=\"max-height: 40em\"></a></p>\n");
        table("Keeps", laws.stream().filter(KeptLaws.Line::isKept).toList());
        table("Changes", laws.stream().filter(line -> !line.isKept()).toList());
    }

    private void table(String heading, List<KeptLaws.Line> laws) {
        if (laws.isEmpty()) {
            return;
        }
        sections.append(
                "<table class=\"striped\">\n<caption>" + heading
                        + "</caption>\n<thead><tr><th>piece</th><th>the alteration</th><th>within</th></tr></thead>\n<tbody>\n");
        for (KeptLaws.Line law : laws) {
            sections.append("<tr><td>" + Xml.escaped(law.pieces().isEmpty() ? "seam" : law.pieces()) + "</td><td>"
                    + Xml.escaped(law.sentence()) + "</td><td>" + Xml.escaped(law.within()) + "</td></tr>\n");
        }
        sections.append("</tbody>\n</table>\n");
    }

    /** The table of the README has a row for each alteration, or for two that are one another's opposites. */
    private String does(String alteration) {
        String row = readme.lines()
                .filter(line -> line.startsWith("| `"))
                .filter(line -> line.split("\\|")[1].contains("`" + alteration + "`"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the README does not say what " + alteration + " does"));
        String does = row.split("\\|")[2].strip();
        return Xml.escaped(does.substring(0, 1).toUpperCase(Locale.ROOT) + does.substring(1))
                .replaceAll("`([^`]*)`", "<code>$1</code>");
    }

    String html() {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>The alterations</title>\n"
                + "</head>\n<body>\n<h1>The alterations</h1>\n"
                + "<p>Every alteration of {@link dev.hingepoint.alter.Catalogue}, in a fitter's usual order, each as its example alters size 40 of a dress: front, back and sleeve. What\n"
                + "it keeps and changes are its own {@linkplain dev.hingepoint.check.Law laws}: they are checked on every result, in millimetres on the pattern piece, and an order that\n"
                + "would break one is refused. This page is written by the alterations themselves.</p>\n<p>"
                + index + ".</p>\n" + sections + "</body>\n</html>\n";
    }
}
