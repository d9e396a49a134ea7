package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.Xml;
import java.util.List;
import java.util.Optional;

/** A page that lists lessons, each with a small picture of what its alteration does, for a teacher to choose from. */
final class LessonIndex {
    private static final String STYLE = LessonPage.STYLE + LessonPage.resource("index.css");

    private LessonIndex() {}

    /**
     * One alteration of the list.
     *
     * @param words what was ordered, or why there is no lesson
     * @param lesson empty where there is none
     * @param folder that the lesson's files are in
     */
    record Entry(String title, String words, Optional<Lesson> lesson, String folder) {
        static Entry of(Lesson lesson, String folder) {
            return new Entry(lesson.title(), lesson.order(), Optional.of(lesson), folder);
        }

        static Entry without(String alteration, String reason) {
            return new Entry(LessonSection.capitalised(alteration), reason, Optional.empty(), "");
        }
    }

    static String html(Draft draft, List<Entry> entries, Lengths lengths) {
        String title = "Alterations, step by step: "
                + Xml.escaped(draft.pattern().card().name() + ", size " + draft.size());
        StringBuilder html =
                new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src '"
                        + LessonPage.hash(STYLE) + "'; base-uri 'none'; form-action 'none'\"/>\n"
                        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>" + title
                        + "</title>\n<style>" + STYLE + "</style>\n</head>\n<body>\n<main>\n<h1>" + title
                        + "</h1>\n<p>Each picture shows the lines as they were, dotted, and as they are, drawn out. "
                        + Handout.TOILE
                        + "</p>\n<ul class=\"index\">\n");
        entries.forEach(entry -> entry.lesson().ifPresent(lesson -> html.append(item(entry, lesson, lengths))));
        html.append("</ul>\n");
        List<Entry> without =
                entries.stream().filter(entry -> entry.lesson().isEmpty()).toList();
        if (!without.isEmpty()) {
            html.append("<h2>Not on this pattern</h2>\n<dl>\n");
            without.forEach(entry -> html.append(
                    "<dt>" + Xml.escaped(entry.title()) + "</dt>\n<dd>" + Xml.escaped(entry.words()) + "</dd>\n"));
            html.append("</dl>\n");
        }
        return html.append("</main>\n</body>\n</html>\n").toString();
    }

    private static String item(Entry entry, Lesson lesson, Lengths lengths) {

        String name = Xml.escaped(entry.title());
        return "<li>" + new CarryPart(lesson, entry.folder(), lengths).small() + "<p>"
                + link(entry, "lesson.html", name) + "</p>\n<p>" + Xml.escaped(entry.words()) + "</p>\n<p>"
                + link(entry, "lesson.pdf", "Handout<span class=\"spoken\">: " + name + "</span>") + " "
                + link(entry, "student.pdf", "Exercise<span class=\"spoken\">: " + name + "</span>") + " "
                + link(entry, "answers.pdf", "Answer<span class=\"spoken\">: " + name + "</span>") + "</p></li>\n";
    }

    private static String link(Entry entry, String file, String words) {
        return "<a href=\"" + entry.folder() + "/" + file + "\">" + words + "</a>";
    }
}
