package dev.hingepoint.svg.lesson;

import dev.hingepoint.svg.file.Xml;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.SvgPage;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * One lesson on the page: what was ordered and why, its steps, its amount to carry, and what came of it.
 *
 * @param number what stands before its name: "2. ", where there are several
 * @param id what the section is linked by
 */
record LessonSection(Lesson lesson, String number, String id, Lengths lengths) {
    private static final String CONTROLS = """
            <button type="button" class="previous">Previous</button>
            <button type="button" class="next">Next</button>
            <p class="where">Step 1 of %s</p>
            """;

    String html() {
        return "<section class=\"lesson\" id=\"" + id + "\" aria-labelledby=\"" + id + "-name\">\n<h2 id=\"" + id
                + "-name\">" + number + Xml.escaped(lesson.title()) + "</h2>\n<p>Ordered for the "
                + Xml.escaped(lesson.subject()) + ": <strong>"
                + Xml.escaped(lesson.alteration() + (lesson.order().isEmpty() ? "" : ", " + lesson.order()))
                + "</strong>.</p>\n"
                + lesson.why().map(why -> new WhyPart(why).html()).orElse("")
                + "<p class=\"caution\">" + Handout.TOILE + " These pictures show how the lines move:"
                + " they are not to scale, so cut from the printed pattern, never from them.</p>\n"
                + Viewer.key(layers(), lengths)
                + steps()
                + new CarryPart(lesson, id, lengths).html() + new Outcome(lesson, lengths).html() + "</section>\n";
    }

    private String steps() {
        List<Scene> scenes = lesson.scenes();
        StringBuilder steps = new StringBuilder("<ol class=\"steps\">\n");
        for (int i = 0; i < scenes.size(); i++) {
            steps.append(step(scenes.get(i), i + 1));
        }
        steps.append("</ol>\n<p class=\"spoken\" role=\"status\"></p>\n");
        return new Viewer("stepper", "Step by step", CONTROLS.formatted(scenes.size()), layers(), steps.toString())
                .html(lengths);
    }

    private String step(Scene scene, int number) {
        String name = scene.kind().words() + (scene.piece().isEmpty() ? "" : ": " + scene.piece());
        String which = "Step " + number + " of " + lesson.scenes().size();
        Drawn onGrid = scene.drawn().and(lengths.grid(scene.box(), scene.scale()));
        return "<li class=\"step" + (number == 1 ? " now" : "") + "\"><figure>\n<div class=\"picture\" role=\"group\""
                + " aria-label=\"Picture of step " + number + "\">\n"
                + SvgPage.inline(onGrid, scene.box(), name)
                + "</div>\n<figcaption>\n<h4><span class=\"number\">" + which + ". </span>" + Xml.escaped(name)
                + "</h4>\n<p>" + Xml.escaped(Words.sentence(scene.caption())) + "</p>\n</figcaption>\n</figure></li>\n";
    }

    private Set<Layer> layers() {
        Set<Layer> layers = EnumSet.of(Layer.GRID);
        for (Scene scene : lesson.scenes()) {
            scene.drawn().strokes().forEach(stroke -> layers.add(stroke.style().layer()));
            if (!scene.drawn().texts().isEmpty()) {
                layers.add(Layer.LABELS);
            }
        }
        return layers;
    }
}
