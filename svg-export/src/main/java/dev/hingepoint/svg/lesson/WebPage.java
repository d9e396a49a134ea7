package dev.hingepoint.svg.lesson;

import dev.hingepoint.svg.file.Shipped;
import dev.hingepoint.svg.file.Xml;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A page for a browser, whole in itself: it asks for nothing outside its file, and forbids the browser to (Content Security Policy, W3C). It is well-formed XML as well as HTML.
 *
 * @param style its style sheet
 * @param script empty where it has none
 */
record WebPage(String title, String style, String script) {
    /** @param name of a style sheet or a script that ships with the library */
    static String resource(String name) {
        return Shipped.text(WebPage.class, name);
    }

    /** @param body as markup */
    String html(String body) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + policy() + "\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>"
                + Xml.escaped(title) + "</title>\n<style>" + style + "</style>\n</head>\n<body>\n" + body
                + (script.isEmpty() ? "" : "<script>" + script + "</script>\n") + "</body>\n</html>\n";
    }

    private String policy() {
        return "default-src 'none'; style-src '" + hash(style) + "'; "
                + (script.isEmpty() ? "" : "script-src '" + hash(script) + "'; ")
                + "base-uri 'none'; form-action 'none'";
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
