package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.Xml;
import dev.hingepoint.svg.page.SvgPage;
import java.util.List;
import java.util.Optional;

/** A page that lists lessons, each with a small picture of what its alteration does. */
final class LessonIndex {
    private LessonIndex() {}

    /**
     * One alteration of the list.
     *
     * @param words what was ordered, or why there is no lesson
     * @param lesson with the name of its folder; empty where there is none
     */
    record Entry(String title, String words, Optional<Lesson> lesson, String folder) {
        static Entry of(Lesson lesson, String folder) {
            return new Entry(lesson.title(), lesson.order(), Optional.of(lesson), folder);
        }

        static Entry without(String alteration, String reason) {
            return new Entry(alteration, reason, Optional.empty(), "");
        }
    }

    static String html(Draft draft, List<Entry> entries) {
        String name = Xml.escaped(draft.pattern().card().name() + ", size " + draft.size());
        StringBuilder html =
                new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>\n"
                        + "<title>Alterations of the " + name + "</title>\n<style>" + STYLE
                        + "</style>\n</head>\n<body>\n<main>\n"
                        + "<h1>Alterations of the " + name + "</h1>\n<ul>\n");
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            if (entry.lesson().isPresent()) {
                List<Scene> scenes = entry.lesson().get().scenes();
                Scene compared = scenes.get(scenes.size() - 1);
                html.append("<li><a href=\"" + entry.folder() + "/lesson.html\">"
                        + SvgPage.inline(compared.drawn(), compared.box(), "picture-" + i, compared.caption())
                        + "<span>" + Xml.escaped(entry.title()) + "</span></a><p>" + Xml.escaped(entry.words())
                        + "</p><p><a href=\"" + entry.folder() + "/lesson.pdf\">handout</a> <a href=\"" + entry.folder()
                        + "/student.pdf\">exercise</a> <a href=\"" + entry.folder()
                        + "/answers.pdf\">answer</a></p></li>\n");
            }
        }
        html.append("</ul>\n");
        List<Entry> without =
                entries.stream().filter(entry -> entry.lesson().isEmpty()).toList();
        if (!without.isEmpty()) {
            html.append("<h2>Not on this pattern</h2>\n<dl>\n");
            without.forEach(entry -> html.append(
                    "<dt>" + Xml.escaped(entry.title()) + "</dt><dd>" + Xml.escaped(entry.words()) + "</dd>\n"));
            html.append("</dl>\n");
        }
        return html.append("<p>Sew a toile before you cut good cloth.</p>\n</main>\n</body>\n</html>\n")
                .toString();
    }

    private static final String STYLE = "";
}
