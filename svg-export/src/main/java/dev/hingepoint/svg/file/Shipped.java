package dev.hingepoint.svg.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts that ship with the library. */
public final class Shipped {
    private Shipped() {}

    /** The text, in UTF-8, of the file of that name that lies beside a class. */
    public static String text(Class<?> beside, String name) {
        try (InputStream file = beside.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /** The same as YAML. */
    public static Yaml yaml(Class<?> beside, String name) {
        return Yaml.parse(name, text(beside, name));
    }
}
