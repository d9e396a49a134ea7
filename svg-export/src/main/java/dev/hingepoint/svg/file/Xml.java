package dev.hingepoint.svg.file;

/** Text made fit for XML. */
public final class Xml {
    private Xml() {}

    /** Escaped for text and for attributes in double quotes; characters that XML 1.0 does not allow become the replacement character. */
    public static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
            }
        });
        return escaped.toString();
    }

    private static boolean isAllowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || c >= 0x20 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
