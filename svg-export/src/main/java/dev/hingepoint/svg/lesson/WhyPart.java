package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.svg.figure.FigurePicture;
import dev.hingepoint.svg.file.Xml;
import dev.hingepoint.svg.page.SvgPage;
import java.util.stream.Collectors;

/** Why an alteration is made, on the page: three figures beside each other, the wrong cure beside the right one, and the sources. */
record WhyPart(Why why) {
    private static final Box FIGURE = new Box(0, 0, FigurePicture.WIDTH, FigurePicture.HEIGHT);

    String html() {
        return "<div class=\"why\">\n<h3>Why</h3>\n<p>" + Xml.escaped(why.calledForBy())
                + "</p>\n<div class=\"figures\">\n"
                + figure("Without it", why.withoutIt(), why.without())
                + figure(
                        "The right cure: " + why.right().name(),
                        why.right().does(),
                        why.right().picture())
                + figure(
                        "A wrong cure: " + why.wrong().name(),
                        why.wrong().does(),
                        why.wrong().picture())
                + "</div>\n<h4>What people confuse it with</h4>\n<dl>\n"
                + why.confusedWith().stream()
                        .map(other -> "<dt>" + Xml.escaped(Words.capitalised(other.cause())) + "</dt>\n<dd>"
                                + Xml.escaped(other.tell()) + "</dd>\n")
                        .collect(Collectors.joining())
                + "</dl>\n<h4>Where it is written</h4>\n<ul class=\"small\">\n"
                + why.sources().stream()
                        .map(source ->
                                "<li>" + Xml.escaped(source.name() + " (" + source.grade() + "): " + source.says())
                                        + "</li>\n")
                        .collect(Collectors.joining())
                + "</ul>\n</div>\n";
    }

    private static String figure(String heading, String words, FigurePicture picture) {
        return "<figure>\n" + SvgPage.inline(picture.drawn(), FIGURE, picture.describes()) + "<figcaption>\n<h4>"
                + Xml.escaped(heading) + "</h4>\n<p>" + Xml.escaped(words) + "</p>\n</figcaption>\n</figure>\n";
    }
}
