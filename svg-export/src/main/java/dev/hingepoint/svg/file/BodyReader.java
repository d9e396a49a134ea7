package dev.hingepoint.svg.file;

import dev.hingepoint.Quantity;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Cloth;
import dev.hingepoint.fit.Measure;
import dev.hingepoint.fit.Observed;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads a body: its measurements, what was seen on a toile, and the cloth. */
public final class BodyReader {
    private static final List<String> OTHER = List.of("form", "unit", "observed", "cloth");

    private BodyReader() {}

    /**
     * What a body file says.
     *
     * @param unit that it is written in
     * @param unused the names of measurements that no plan uses
     */
    public record ReadBody(Body body, Unit unit, List<String> unused) {
        public ReadBody {
            unused = List.copyOf(unused);
        }
    }

    /** @throws dev.hingepoint.Refusal saying where and why, with a guess at the cause where lengths are no body's */
    public static Body read(Path file) {
        return readWithNotes(file).body();
    }

    /** The same, with the unit that it is written in, and what no plan uses. */
    public static ReadBody readWithNotes(Path file) {
        return readWithNotes(WholeFiles.name(file), WholeFiles.text(file));
    }

    /**
     * A body that is written elsewhere than in a file.
     *
     * @param file the name to give in a refusal
     */
    public static ReadBody readWithNotes(String file, String yaml) {
        Yaml root = Yaml.parse(file, yaml);
        Unit unit = root.text("unit")
                .map(text -> root.inPlace("unit", () -> Unit.parse(text)))
                .orElse(Unit.MILLIMETRE);
        Map<String, Length> lengths = new LinkedHashMap<>();
        root.keys().stream()
                .filter(key -> !OTHER.contains(key))
                .forEach(key -> root.length(key, unit).ifPresent(length -> lengths.put(key, length)));
        Optional<Observed> observed = root.map("observed").map(seen -> observed(seen, unit));
        Optional<Cloth> cloth = root.map("cloth").map(BodyReader::cloth);
        Body body = root.inFile(() -> new Body(lengths, observed, cloth));
        List<String> unused = lengths.keySet().stream()
                .filter(name -> Measure.named(name).isEmpty())
                .toList();
        return new ReadBody(body, unit, unused);
    }

    private static Observed observed(Yaml seen, Unit unit) {
        seen.knowing("folds at back waist", "folds run", "back hem", "seen on");
        Length folds =
                seen.length("folds at back waist", unit).orElseThrow(() -> seen.refuse("file.body.folds-missing"));
        if (!(folds.mm() > 0 && folds.mm() <= 150)) {
            throw seen.refuse("file.body.folds-range", Quantity.millimetres(folds.mm()));
        }
        return new Observed(
                folds,
                choice(seen, "folds run", Observed.Run.values(), Observed.Run::words),
                choice(seen, "back hem", Observed.Hem.values(), Observed.Hem::words),
                choice(seen, "seen on", new String[] {"drawn", "altered"}, word -> word)
                        .map("altered"::equals)
                        .orElse(false));
    }

    private static <T> Optional<T> choice(Yaml yaml, String key, T[] choices, Function<T, String> words) {
        return yaml.text(key)
                .map(text -> Stream.of(choices)
                        .filter(choice -> words.apply(choice).equals(text))
                        .findFirst()
                        .orElseThrow(() -> yaml.refuse(
                                "options.no-such-choice",
                                key,
                                text,
                                Stream.of(choices).map(words).toList())));
    }

    private static Cloth cloth(Yaml cloth) {
        cloth.knowing("stretch across", "stretch down");
        return cloth.inPlace(
                "stretch", () -> new Cloth(cloth.percent("stretch across"), cloth.percent("stretch down")));
    }
}
