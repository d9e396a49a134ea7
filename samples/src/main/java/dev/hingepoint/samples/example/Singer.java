package dev.hingepoint.samples.example;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Observed;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A row of the choir's list.
 *
 * @param row by the names of the columns
 */
record Singer(String number, String voice, Map<String, String> row) {
    private static final String FOLDS = "folds at back waist";

    /** Hands the singers of a list, read row by row, to whoever wants them. */
    static void each(Path csv, Consumer<Iterator<Singer>> wanted) {
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(csv)) {
            wanted.accept(rows.stream().map(Singer::of).iterator());
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    private static Singer of(NamedCsvRecord row) {
        Map<String, String> measured = new LinkedHashMap<>(row.getFieldsAsMap());
        return new Singer(measured.remove("singer"), measured.remove("voice"), measured);
    }

    /** A name for a folder. */
    String folder() {
        return number.replaceAll("[^0-9A-Za-z]+", "-");
    }

    /**
     * Her body, in the cm that the list is kept in; what was not measured is left out.
     *
     * @throws dev.hingepoint.Refusal for what is no length, or no body's
     */
    Body body() {
        Map<String, Length> lengths = new LinkedHashMap<>();
        row.forEach((name, text) -> {
            if (!text.isBlank()) {
                lengths.put(name, Length.parse(text, Unit.CENTIMETRE));
            }
        });
        Optional<Observed> observed = Optional.ofNullable(lengths.remove(FOLDS))
                .map(folds -> new Observed(
                        folds, Optional.of(Observed.Run.BACK_ONLY), Optional.of(Observed.Hem.LEVEL), false));
        return new Body(lengths, observed, Optional.empty());
    }
}
