package dev.hingepoint.samples.docs;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.samples.draft.Larkfield;
import dev.hingepoint.svg.file.WholeFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The files that the javadoc of the core shows beside its words. */
public final class DocFiles {
    /** Where they belong, from the top folder of the repository. */
    public static final String SOURCES = "core/src/main/java";

    private static final String MOVES = "dev/hingepoint/move/doc-files/";
    private static final String ALTERATIONS = "dev/hingepoint/alter/doc-files/";

    private DocFiles() {}

    /** @param top the top folder of the repository */
    public static void main(String[] top) throws IOException {
        Path repository = Path.of(top[0]);
        String readme = Files.readString(repository.resolve("README.md"));
        WholeFiles.writeAll(repository.resolve(SOURCES), all(readme));
    }

    /**
     * The files, by name below the sources.
     *
     * @param readme its table is the one place that says what an alteration does
     */
    public static Map<String, String> all(String readme) {
        Draft dress = Larkfield.dress().in("40");
        Map<String, String> files = new LinkedHashMap<>();
        MovePictures.of(dress).forEach((name, picture) -> files.put(MOVES + name, picture));
        AlterationPage page = new AlterationPage(readme);
        for (Alteration alteration : Catalogue.all()) {
            Altered altered = Catalogue.alter(dress, new AlterationRequest(alteration.name(), alteration.example()));
            String picture = alteration.name().replace(' ', '-') + ".svg";
            files.put(ALTERATIONS + picture, AlterationPicture.svg(alteration.name(), dress, altered.draft()));
            page.add(alteration, altered, picture);
        }
        files.put(ALTERATIONS + "alterations.html", page.html());
        return files;
    }
}
