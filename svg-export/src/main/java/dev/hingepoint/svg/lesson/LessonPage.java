package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.Xml;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Lessons as one page for a browser, whole in itself: it asks for nothing outside its file, and forbids the browser to.
 *
 * <p>Without script all steps stand one below the other, and so they do in print, one a page. The page is well-formed XML as well as HTML.
 */
final class LessonPage {
    static final String STYLE = WebPage.resource("lesson.css");

    /** Marked so that a reader of XML takes it as it stands; for a reader of HTML the marks are comments. */
    private static final String SCRIPT = "//<![CDATA[\n" + WebPage.resource("lesson.js") + "//]]>";

    private LessonPage() {}

    /** @param unit what lengths in the tables are told in, and the squares of the grid are counted in */
    static String html(List<Lesson> lessons, Unit unit) {
        if (lessons.isEmpty()) {
            throw new IllegalArgumentException("a page needs a lesson");
        }
        String title = title(lessons);
        StringBuilder body = new StringBuilder("<header>\n<h1>" + Xml.escaped(title) + "</h1>\n");
        if (lessons.size() > 1) {
            body.append(contents(lessons));
        }
        body.append("</header>\n<main>\n");
        for (int i = 0; i < lessons.size(); i++) {
            String number = lessons.size() > 1 ? (i + 1) + ". " : "";
            body.append(new LessonSection(lessons.get(i), number, id(i), new Lengths(unit)).html());
        }
        return new WebPage(title, STYLE, SCRIPT).html(body.append("</main>\n").toString());
    }

    private static String title(List<Lesson> lessons) {
        String what = lessons.size() == 1 ? lessons.get(0).title() : lessons.size() + " alterations";
        String of = lessons.stream().map(Lesson::subject).distinct().collect(Collectors.joining("; "));
        return what + ", step by step: " + of;
    }

    private static String id(int number) {
        return "lesson-" + (number + 1);
    }

    private static String contents(List<Lesson> lessons) {
        return IntStream.range(0, lessons.size())
                .mapToObj(i -> "<li><a href=\"#" + id(i) + "\">"
                        + Xml.escaped(lessons.get(i).title())
                        + "</a> <span>" + Xml.escaped(lessons.get(i).order()) + "</span></li>\n")
                .collect(Collectors.joining("", "<nav aria-label=\"Lessons\">\n<ol>\n", "</ol>\n</nav>\n"));
    }
}
