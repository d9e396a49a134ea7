package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A gauge to hold cloth against: a length of its fold is held between two lines, and stretched as far as it goes without force it must reach a third.
 * Stretch = (stretched - rest) / rest.
 */
final class StretchGauge {
    /** Height in mm of the strip that it takes. */
    static final double HEIGHT = 22;

    /** How much of the cloth is held, in mm: as much as the paper has room for. */
    private static final double[] HELD = {100, 50, 25};

    private static final double INSET = 2;
    private static final double TICK = 3.5;

    private StretchGauge() {}

    /** In a strip at least {@link #HEIGHT} high; empty for a pattern that needs no stretch. */
    static Optional<Drawn> drawn(Card card, Box strip) {
        double most = Math.max(card.stretchAcross(), card.stretchDown());
        if (most <= 0) {
            return Optional.empty();
        }
        double room = strip.width() - 2 * INSET;
        for (double held : HELD) {
            if (held * (1 + most) <= room) {
                return Optional.of(drawn(card, strip, held));
            }
        }
        return Optional.empty();
    }

    private static Drawn drawn(Card card, Box strip, double held) {
        double left = strip.left() + INSET;
        double line = strip.top() + 11;
        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        texts.add(new Text(
                "Stretch gauge: fold the cloth, hold " + Numbers.of(held)
                        + " mm of the fold from the first line to the second, and stretch it gently.",
                new Point(left, strip.top() + 4),
                Section.TYPE,
                0));
        double far = held;
        tick(strokes, left, line);
        tick(strokes, left + held, line);
        texts.add(new Text("hold", new Point(left + held + 1.5, line - 3.2), Section.TYPE, 0));
        double below = line + 4.6;
        // the nearer first, so that the farther one's line runs down beside its words
        List<String> ways =
                card.stretchAcross() <= card.stretchDown() ? List.of("across", "down") : List.of("down", "across");
        for (String way : ways) {
            double stretch = way.equals("across") ? card.stretchAcross() : card.stretchDown();
            if (stretch > 0) {
                double at = left + held * (1 + stretch);
                far = Math.max(far, held * (1 + stretch));
                tick(strokes, at, line);
                String words = way + ": it must reach here (" + Numbers.of(Math.rint(stretch * 1000) / 10) + " %)";
                strokes.add(Stroke.of(Style.RULE, new Point(at, line), new Point(at, below + 1)));
                texts.add(new Text(
                        words, new Point(at - 1.5 - Type.width(words, Section.TYPE), below), Section.TYPE, 0));
                below += 4.8;
            }
        }
        strokes.add(Stroke.of(Style.RULE, new Point(left, line), new Point(left + far, line)));
        return new Drawn(strokes, texts);
    }

    private static void tick(List<Stroke> strokes, double x, double line) {
        strokes.add(Stroke.of(Style.RULE, new Point(x, line - TICK), new Point(x, line)));
    }
}
