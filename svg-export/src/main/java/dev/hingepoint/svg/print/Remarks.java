package dev.hingepoint.svg.print;

import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a person who prints may have overlooked. */
final class Remarks {
    private Remarks() {}

    /** @param drawn the pieces as they are printed */
    static List<String> of(List<Draft> drafts, List<Drawn> drawn, PrintOptions options) {
        List<String> remarks = new ArrayList<>();
        unknownSigns(drawn)
                .ifPresent(signs -> remarks.add("the font has no sign for " + signs + "; a box stands in its place"));
        if (drafts.size() > 1) {
            remarks.addAll(ofSeveral(options));
            return remarks;
        }
        new ToRead(drafts, options).tooNarrow().forEach(place -> remarks.add("getting in: " + place));
        asDrawn(drafts.get(0)).ifPresent(remarks::add);
        return remarks;
    }

    private static Optional<String> unknownSigns(List<Drawn> drawn) {
        String unknown = drawn.stream()
                .flatMap(piece -> piece.texts().stream())
                .flatMapToInt(text -> text.words().codePoints())
                .filter(character -> Type.glyph(character) == 0)
                .distinct()
                .mapToObj(Character::toString)
                .collect(Collectors.joining(" "));
        return Optional.of(unknown).filter(signs -> !signs.isEmpty());
    }

    /** Some of what is asked for is told of one size alone. */
    private static List<String> ofSeveral(PrintOptions options) {
        List<String> remarks = new ArrayList<>();
        if (options.body().isPresent() || !options.cloths().byCloth().isEmpty()) {
            remarks.add("body and cloth are told of one size alone; print it by itself");
        }
        if (options.original() == PrintOptions.Original.SHOWN) {
            remarks.add("lines as they were drawn are shown of one size alone; print it by itself");
        }
        return remarks;
    }

    /** That another size, or another front, was altered. */
    private static Optional<String> asDrawn(Draft draft) {
        Optional<Card.Altered> other = draft.pattern().card().altered();
        return draft.altered().isPresent()
                ? Optional.empty()
                : other.map(altered -> "size " + draft.size() + " is printed as it was drawn; what was altered is size "
                        + altered.size()
                        + altered.front()
                                .map(front -> " with the front " + front)
                                .orElse(""));
    }
}
