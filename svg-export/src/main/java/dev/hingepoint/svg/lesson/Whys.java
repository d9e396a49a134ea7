package dev.hingepoint.svg.lesson;

import dev.hingepoint.svg.figure.FigurePicture;
import dev.hingepoint.svg.figure.FigurePictures;
import dev.hingepoint.svg.file.Shipped;
import dev.hingepoint.svg.file.Yaml;
import java.util.List;
import java.util.Optional;

/** Reads what is said about each alteration in {@code why.yaml}, which ships with the library; a test reads all of it. */
final class Whys {
    private static final String SOURCES = "sources";
    private static final Yaml WORDS = Shipped.yaml(Whys.class, "why.yaml");

    private Whys() {}

    static List<String> names() {
        return WORDS.keys().stream().filter(name -> !name.equals(SOURCES)).toList();
    }

    static Optional<Why> of(String alteration) {
        if (!names().contains(alteration)) {
            return Optional.empty();
        }
        Yaml words = WORDS.map(alteration).orElseThrow();
        words.knowing("called for by", "without it", "confused with", "right", "wrong", SOURCES);
        FigurePictures pictures = FigurePictures.of(alteration).orElseThrow();
        return Optional.of(new Why(
                words.requiredText("called for by", "A long back."),
                words.requiredText("without it", "Folds at the waist."),
                pictures.without(),
                words.maps("confused with").stream().map(Whys::confusion).toList(),
                cure(words, "right", pictures.right()),
                cure(words, "wrong", pictures.wrong()),
                words.maps(SOURCES).stream().map(Whys::source).toList()));
    }

    private static Why.Confusion confusion(Yaml words) {
        words.knowing("cause", "tell");
        return new Why.Confusion(words.requiredText("cause", "a tight hip"), words.requiredText("tell", "Look there."));
    }

    private static Why.Cure cure(Yaml words, String which, FigurePicture picture) {
        Yaml cure = words.map(which).orElseThrow(() -> new IllegalStateException(which + " is missing"));
        cure.knowing("name", "does");
        return new Why.Cure(
                cure.requiredText("name", "A wedge"), cure.requiredText("does", "It takes length out."), picture);
    }

    private static Why.Source source(Yaml words) {
        words.knowing("from", "says");
        String from = words.requiredText("from", "practice");
        Yaml source = WORDS.map(SOURCES)
                .flatMap(sources -> sources.map(from))
                .orElseThrow(() -> new IllegalStateException("there is no source '" + from + "'"));
        return new Why.Source(
                source.requiredText("name", "a school"),
                source.requiredText("grade", "school"),
                words.requiredText("says", "lift the back"));
    }
}
