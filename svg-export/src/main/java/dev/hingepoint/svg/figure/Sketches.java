package dev.hingepoint.svg.figure;

import dev.hingepoint.svg.file.Shipped;
import dev.hingepoint.svg.file.Yaml;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The pictures of an alteration, as they are written down in {@code figures.yaml}, which ships with the library; a test reads all of it. */
final class Sketches {
    private static final Yaml FIGURES = Shipped.yaml(Sketches.class, "figures.yaml");

    private final Yaml alteration;

    private Sketches(Yaml alteration) {
        this.alteration = alteration;
    }

    static Optional<Sketches> of(String alteration) {
        return FIGURES.map(alteration).map(Sketches::new);
    }

    /** @param which "without", "right" or "wrong" */
    FigurePicture picture(String which) {
        return new FigurePicture(
                written(which).requiredText("shows", "The hem is level."),
                sketch(which).drawn());
    }

    Sketch sketch(String which) {
        Yaml picture = written(which);
        picture.knowing("view", "body", "dress", "wrinkles", "labels", "shows");
        View view = named(View.class, picture.text("view").orElseGet(() -> alteration.requiredText("view", "front")));
        Differences differences = differences(picture.map("body").or(() -> alteration.map("body")))
                .and(differences(picture.map("dress")));
        List<Wrinkle> wrinkles = picture.list("wrinkles").stream()
                .map(name -> named(Wrinkle.class, name.toString()))
                .toList();
        Map<Place, String> labels = new LinkedHashMap<>();
        picture.map("labels")
                .ifPresent(map -> map.keys()
                        .forEach(place ->
                                labels.put(named(Place.class, place), map.requiredText(place, "cloth pools here"))));
        return new Sketch(view, differences, wrinkles, labels);
    }

    private Yaml written(String which) {
        return alteration.map(which).orElseThrow(() -> new IllegalStateException(which + " is missing"));
    }

    private static Differences differences(Optional<Yaml> parts) {
        Differences sum = Differences.NONE;
        if (parts.isPresent()) {
            for (String part : parts.get().keys()) {
                double heads = Double.parseDouble(parts.get().requiredText(part, "0.1"));
                sum = sum.and(named(Part.class, part), heads);
            }
        }
        return sum;
    }

    private static <E extends Enum<E>> E named(Class<E> kind, String words) {
        return Enum.valueOf(kind, words.toUpperCase(Locale.ROOT).replace(' ', '_'));
    }
}
