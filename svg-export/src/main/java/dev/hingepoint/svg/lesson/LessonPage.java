package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.Xml;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Lessons as one page for a browser, whole in itself: it asks for nothing outside its file, and forbids the browser to (Content Security Policy, W3C).
 *
 * <p>Without script all steps stand one below the other, and so they do in print, one a page. The page is well-formed XML as well as HTML.
 */
public final class LessonPage {
    static final String STYLE = resource("lesson.css");

    /** Marked so that a reader of XML takes it as it stands; for a reader of HTML the marks are comments. */
    private static final String SCRIPT = "//<![CDATA[\n" + resource("lesson.js") + "//]]>";

    private LessonPage() {}

    /** @param unit what lengths in the tables are told in, and the squares of the grid are counted in */
    public static String html(List<Lesson> lessons, Unit unit) {
        if (lessons.isEmpty()) {
            throw new IllegalArgumentException("a page needs a lesson");
        }
        String title = title(lessons);
        StringBuilder page =
                new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                        + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + policy() + "\"/>\n"
                        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
                        + Xml.escaped(title) + "</title>\n<style>" + STYLE + "</style>\n</head>\n<body>\n<header>\n<h1>"
                        + Xml.escaped(title) + "</h1>\n");
        if (lessons.size() > 1) {
            page.append(contents(lessons));
        }
        page.append("</header>\n<main>\n");
        for (int i = 0; i < lessons.size(); i++) {
            String number = lessons.size() > 1 ? (i + 1) + ". " : "";
            page.append(new LessonSection(lessons.get(i), number, id(i), new Lengths(unit)).html());
        }
        return page.append("</main>\n<script>" + SCRIPT + "</script>\n</body>\n</html>\n")
                .toString();
    }

    private static String title(List<Lesson> lessons) {
        String what = lessons.size() == 1 ? lessons.get(0).title() : lessons.size() + " alterations";
        String of = lessons.stream().map(LessonSection::of).distinct().collect(Collectors.joining("; "));
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

    private static String policy() {
        return "default-src 'none'; style-src '" + hash(STYLE) + "'; script-src '" + hash(SCRIPT)
                + "'; base-uri 'none'; form-action 'none'";
    }

    static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    static String resource(String name) {
        try (InputStream file = LessonPage.class.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
