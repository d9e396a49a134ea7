package dev.hingepoint.svg.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** A small sound pattern as text, to be spoilt in one place. */
public final class Drawings {
    public static final String CARD = """
            form: 1
            pattern: Test tunic
            drawing: tunic.svg
            base size: "40"
            cup difference: 5 cm
            stretch: {across: 0 %, down: 5 %}
            body chart:
              unit: cm
              "40": {upper bust: 87, full bust: 92, waist: 76, hip: 100}
              "42": {upper bust: 91, full bust: 96, waist: 80, hip: 104}
            seams:
              - {join: front/side seam, to: back/side seam}
              - {join: back/shoulder, to: front/shoulder, ease: 0..6 mm}
            allowances: {default: 10 mm, hem: 30 mm, back/centre back: 15 mm}
            openings: {back/centre back: {from: neckline, length: 550 mm}}
            """;

    private Drawings() {}

    /** Front and back in sizes 40 and 42. */
    public static String drawing() {
        StringBuilder svg = new StringBuilder(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" data-form=\"1\" width=\"900mm\" height=\"1100mm\" viewBox=\"0 0 900 1100\">\n");
        for (int grow : new int[] {0, 10}) {
            svg.append(piece("front", "centre front", "fold", "1 on fold", 40 + grow / 5, grow, 80));
            svg.append(piece("back", "centre back", "seam", "1 pair", 40 + grow / 5, grow, 20));
        }
        return svg.append("</svg>\n").toString();
    }

    private static String piece(String name, String centre, String kind, String cut, int size, int grow, int neck) {
        int w = 220 + grow;
        int h = 250 + grow;
        String template = """
                <g id="%1$s-%5$d" data-piece="%1$s" data-size="%5$d" data-cut="%4$s">
                  <path id="%1$s-%5$d-neckline" data-edge="neckline" d="M0 %8$d C40 %8$d 70 %9$d 75 0"/>
                  <path data-edge="shoulder" d="M75 0 L190 45"/>
                  <path data-edge="armhole" d="M190 45 C165 120 160 200 %6$d 215"/>
                  <path data-edge="side seam" d="M%6$d 215 C%6$d 300 %10$d 330 %10$d 400 C%10$d 470 %7$d 530 %7$d 600 L%7$d 1000"/>
                  <path data-edge="hem" data-kind="hem" d="M%7$d 1000 L0 1000"/>
                  <path data-edge="%2$s" data-kind="%3$s" d="M0 1000 L0 %8$d"/>
                  <path data-mark="level" data-name="bust" d="M0 260 L%6$d 260"/>
                  <path data-mark="level" data-name="waist" d="M0 400 L%10$d 400"/>
                  <path data-mark="level" data-name="hip" d="M0 600 L%7$d 600"/>
                  <path data-mark="grain" d="M40 300 L40 900"/>
                  <circle data-mark="point" data-name="bust apex" cx="95" cy="260" r="3"/>
                </g>
                """;
        return String.format(Locale.ROOT, template, name, centre, kind, cut, size, w, h, neck, neck / 2, 200 + grow);
    }

    /** Writes card and drawing into a folder, the drawing spoilt; the card's path. */
    public static Path write(Path folder, UnaryOperator<String> spoilDrawing, UnaryOperator<String> spoilCard) {
        try {
            Files.writeString(folder.resolve("tunic.svg"), spoilDrawing.apply(drawing()));
            return Files.writeString(folder.resolve("tunic.yaml"), spoilCard.apply(CARD));
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }
}
