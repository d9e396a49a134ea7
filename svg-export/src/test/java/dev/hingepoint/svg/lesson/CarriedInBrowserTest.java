package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.DefaultPathHandler;
import org.apache.batik.parser.PathParser;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/**
 * The three alterations of the concert dress: where the slider ends, the lines in the browser are the library's own before and after, within 0.01 mm. The path data are read back out
 * of the page by Batik's parser.
 */
class CarriedInBrowserTest {
    /** In hundredths of a mm, which the path data are told in. */
    private static final double WITHIN = 1;

    /** Our own aim for a page of three alterations: small enough to send by mail and to open on a phone. */
    private static final int LARGEST = 1_500_000;

    private static final OrderReader.ReadOrder ORDERED =
            OrderReader.read(Path.of("../samples/patterns/concert-order.yaml"));

    @Test
    void theSlidersEndsAreTheDrawingsBeforeAndAfter() throws IOException {
        Pattern pattern = PatternFiles.read(ORDERED.card());
        List<Lesson> lessons = Lesson.of(pattern, ORDERED.order(), Unit.MILLIMETRE);
        String html = LessonPage.html(lessons, Unit.MILLIMETRE);
        assertEquals(3, lessons.size());
        assertTrue(html.length() < LARGEST, html.length() + " bytes");
        try (Browser browser = Browser.start()) {
            browser.open(html, 1280, 800);
            Draft draft = pattern.in(ORDERED.order().size(), ORDERED.order().front());
            for (int i = 0; i < lessons.size(); i++) {
                AlterationRequest request = ORDERED.order().alterations().get(i);
                Draft after = Catalogue.checked(draft, Catalogue.named(request.name()), Options.of(request))
                        .draft();
                String slider = "#lesson-" + (i + 1) + " [type=range]";
                assertTrue(Integer.parseInt(browser.find(slider).getAttribute("max")) >= 12, "13 frames");
                Carry carry = lessons.get(i).carry();
                browser.ask("arguments[0].focus()", browser.find(slider));
                browser.press(Keys.END);
                assertDrawn(after, carry, browser, i + 1);
                browser.press(Keys.HOME);
                assertDrawn(draft, carry, browser, i + 1);
                draft = after;
            }
            assertEquals(List.of(), browser.console());
            assertEquals(1, browser.asked().size(), "the page itself");
        }
    }

    private static void assertDrawn(Draft draft, Carry carry, Browser browser, int number) {
        List<Point> stitching = new ArrayList<>();
        List<Point> folds = new ArrayList<>();
        List<Point> cutting = new ArrayList<>();
        carry.places().forEach((name, place) -> {
            assertEquals(
                    100, place.of(new Point(1, 0)).distanceTo(place.of(new Point(0, 0))), 1e-9, "hundredths of a mm");
            assertEquals(
                    100, place.of(new Point(0, 1)).distanceTo(place.of(new Point(0, 0))), 1e-9, "hundredths of a mm");
            for (Edge edge : draft.piece(name).edges()) {
                (edge.kind() == Edge.Kind.FOLD ? folds : stitching).addAll(points(edge, place));
            }
            cutting.addAll(place.of(CuttingLine.of(draft, draft.piece(name)).outline()));
        });
        assertClose(stitching, browser, number, "stitching-lines", 0);
        assertClose(folds, browser, number, "stitching-lines", 1);
        assertClose(cutting, browser, number, "cutting-lines", 0);
    }

    private static List<Point> points(Edge edge, Motion place) {
        List<Point> points = new ArrayList<>(List.of(edge.path().start()));
        for (Segment segment : edge.path().segments()) {
            if (segment instanceof Cubic cubic) {
                points.addAll(List.of(cubic.startHandle(), cubic.endHandle()));
            }
            points.add(segment.end());
        }
        return place.of(points);
    }

    private static void assertClose(List<Point> expected, Browser browser, int number, String layer, int path) {
        String data = browser.all("#lesson-" + number + " .carry .layer-" + layer + " .carried")
                .get(path)
                .getAttribute("d");
        List<Point> drawn = read(data);
        assertEquals(expected.size(), drawn.size(), layer);
        for (int i = 0; i < drawn.size(); i++) {
            assertEquals(0, drawn.get(i).distanceTo(expected.get(i)), WITHIN, layer + " of lesson " + number);
        }
    }

    /** All points of path data, handles among them. Batik reads each number as a float, exact for whole ones to 16 million; they are added up here. */
    private static List<Point> read(String data) {
        List<Point> points = new ArrayList<>();
        if (data.isEmpty()) {
            return points;
        }
        PathParser parser = new PathParser();
        parser.setPathHandler(new DefaultPathHandler() {
            private double x;
            private double y;

            private void at(double newX, double newY) {
                x = newX;
                y = newY;
                points.add(new Point(x, y));
            }

            @Override
            public void movetoAbs(float toX, float toY) {
                at(toX, toY);
            }

            @Override
            public void linetoRel(float byX, float byY) {
                at(x + byX, y + byY);
            }

            @Override
            public void curvetoCubicRel(float x1, float y1, float x2, float y2, float byX, float byY) {
                points.add(new Point(x + x1, y + y1));
                points.add(new Point(x + x2, y + y2));
                at(x + byX, y + byY);
            }
        });
        parser.parse(data);
        return points;
    }
}
