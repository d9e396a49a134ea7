package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Text;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sheets for a class hold names of any length, on the paper and off one another. */
class TextSheetsTest {
    private static final String LONG =
            "the right front of the under-dress for the second altos, side seam below the pocket";

    private static void areApartOn(Paper paper, Page page) {
        List<Text> texts = page.drawn().texts();
        for (int i = 0; i < texts.size(); i++) {
            Box box = texts.get(i).bounds();
            assertTrue(
                    box.left() >= 0 && box.right() <= paper.width() && box.bottom() <= paper.height(),
                    texts.get(i).words() + " takes " + box);
            for (int j = 0; j < i; j++) {
                Box other = texts.get(j).bounds();
                boolean overlap = box.left() < other.right()
                        && other.left() < box.right()
                        && box.top() < other.bottom()
                        && other.top() < box.bottom();
                assertTrue(!overlap, texts.get(i) + " lies over " + texts.get(j));
            }
        }
    }

    @Test
    void aLongNameInATableStaysInItsColumn() {
        TextSheets sheets = new TextSheets(Paper.A4, 1, "choir dress, size 40");
        for (int i = 0; i < 60; i++) {
            sheets.row(List.of(LONG, "1075 mm", "1087 mm"));
        }
        List<Page> pages = sheets.pages();
        assertTrue(pages.size() > 1);
        pages.forEach(page -> areApartOn(Paper.A4, page));
    }

    @Test
    void aLongFootIsBrokenAndKeepsItsRoom() {
        String foot = String.join(". ", LONG, LONG, LONG);
        TextSheets sheets = new TextSheets(Paper.A4, 1, foot);
        for (int i = 0; i < 200; i++) {
            sheets.words("words");
        }
        for (Page page : sheets.pages()) {
            areApartOn(Paper.A4, page);
            List<String> footed = page.drawn().texts().stream()
                    .map(Text::words)
                    .filter(words -> !words.equals("words"))
                    .toList();
            assertEquals(foot, String.join(" ", footed));
        }
    }
}
