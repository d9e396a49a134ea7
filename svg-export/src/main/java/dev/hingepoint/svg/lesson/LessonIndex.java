package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.Xml;
import java.util.List;
import java.util.Optional;

/** A page that lists lessons, each with a small picture of what its alteration does, for a teacher to choose from. */
final class LessonIndex {
    private static final String STYLE = LessonPage.STYLE + WebPage.resource("index.css");

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
            return new Entry(Words.capitalised(alteration), reason, Optional.empty(), "");
        }
    }

    static String html(Draft draft, List<Entry> entries, Lengths lengths) {
        String title = "Alterations, step by step: " + draft.pattern().card().name() + ", size " + draft.size();
        StringBuilder body = new StringBuilder("<main>\n<h1>" + Xml.escaped(title)
                + "</h1>\n<p>Each picture shows the lines as they were, dotted, and as they are, drawn out. "
                + Handout.TOILE + "</p>\n<ul class=\"index\">\n");
        entries.forEach(entry -> entry.lesson().ifPresent(lesson -> body.append(item(entry, lesson, lengths))));
        body.append("</ul>\n");
        List<Entry> without =
                entries.stream().filter(entry -> entry.lesson().isEmpty()).toList();
        if (!without.isEmpty()) {
            body.append("<h2>Not on this pattern</h2>\n<dl>\n");
            without.forEach(entry -> body.append(
                    "<dt>" + Xml.escaped(entry.title()) + "</dt>\n<dd>" + Xml.escaped(entry.words()) + "</dd>\n"));
            body.append("</dl>\n");
        }
        return new WebPage(title, STYLE, "").html(body.append("</main>\n").toString());
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
