package dev.hingepoint.samples;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.samples.draft.Larkfield;
import dev.hingepoint.svg.file.WholeFiles;
import dev.hingepoint.svg.print.BeforeAfter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What each alteration of the catalogue does to the Larkfield dress, by its example: one picture each, before and after. */
public final class Pictures {
    private Pictures() {}

    /** @param folder the folder to write to, {@code samples/pictures/alterations} */
    public static void main(String[] folder) {
        WholeFiles.writeAll(Path.of(folder[0]), all());
    }

    /** The pictures, by file name. */
    public static Map<String, String> all() {
        Pattern dress = Larkfield.dress();
        Map<String, String> pictures = new LinkedHashMap<>();
        for (Alteration alteration : Catalogue.all()) {
            AlterationRequest request = new AlterationRequest(alteration.name(), alteration.example());
            Fitting fitting = Fitting.of(dress, new Order("40", Optional.empty(), List.of(request)));
            pictures.put(
                    alteration.name().replace(' ', '-') + ".svg", BeforeAfter.svg(fitting.before(), fitting.after()));
        }
        return pictures;
    }
}
