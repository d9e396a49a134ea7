package dev.hingepoint.svg.file;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Files read whole, and written all or none. */
public final class WholeFiles {
    private static final long MOST_BYTES = 64L * 1024 * 1024;

    private WholeFiles() {}

    static byte[] bytes(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new NoSuchFileException(file.toString());
            }
            if (Files.size(file) > MOST_BYTES) {
                throw refusal(file, "the file is larger than 64 MB", null);
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException wrong) {
            throw refusal(file, "there is no such file", wrong);
        } catch (IOException wrong) {
            throw refusal(file, "the file cannot be read", wrong);
        }
    }

    static String text(Path file) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes(file)))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException wrong) {
            throw refusal(file, "the file is not text in UTF-8", wrong);
        }
    }

    /** The file of that name beside another, which it may not leave the folder of. */
    static Path beside(Path file, String name, Yaml from) {
        try {
            Path folder = file.toAbsolutePath().normalize().getParent();
            Path wanted = folder.resolve(name).normalize();
            boolean isInside = !Path.of(name).isAbsolute() && wanted.startsWith(folder);
            if (isInside && Files.exists(wanted)) {
                isInside = wanted.toRealPath().startsWith(folder.toRealPath());
            }
            if (!isInside) {
                throw from.refuse("'" + name + "' leads out of the folder; it must be a file beside this one");
            }
            return wanted;
        } catch (InvalidPathException | IOException wrong) {
            throw from.refuse("'" + name + "' is no name of a file beside this one");
        }
    }

    /**
     * Writes files into a folder: each is written whole beside its place first, and only when all are there do they take their
     * places.
     *
     * @param contents by name in the folder; names may lead into folders below
     * @throws Refusal where the folder cannot be written to; what stood there stays
     */
    public static void writeAll(Path into, Map<String, String> contents) {
        Path folder = into.toAbsolutePath().normalize();
        Path staged = null;
        try {
            boolean existed = Files.isDirectory(folder);
            Files.createDirectories(folder);
            staged = Files.createTempDirectory(folder, ".writing");
            for (Map.Entry<String, String> entry : contents.entrySet()) {
                Path file = staged.resolve(entry.getKey());
                Files.createDirectories(file.getParent());
                Files.writeString(file, entry.getValue());
            }
            for (String name : contents.keySet()) {
                Path place = folder.resolve(name);
                Files.createDirectories(place.getParent());
                Files.move(staged.resolve(name), place, StandardCopyOption.REPLACE_EXISTING);
            }
            if (!existed && contents.isEmpty()) {
                Files.delete(folder);
            }
        } catch (IOException | UnsupportedOperationException wrong) {
            throw refusal(folder, "the folder cannot be written to", wrong);
        } finally {
            delete(staged);
        }
    }

    /** Deletes the files of a folder below whose names match and that are not among those just written. */
    public static void deleteOthers(Path into, String below, String names, Set<String> written) {
        Path folder = into.toAbsolutePath().normalize().resolve(below);
        try (Stream<Path> inside = Files.list(folder)) {
            for (Path file : inside.toList()) {
                String name = name(file);
                if (name.matches(names) && !written.contains(below + "/" + name)) {
                    Files.delete(file);
                }
            }
        } catch (IOException wrong) {
            throw refusal(folder, "an earlier print's pages cannot be deleted", wrong);
        }
    }

    private static void delete(Path folder) {
        if (folder == null) {
            return;
        }
        try (Stream<Path> inside = Files.walk(folder)) {
            List<Path> deepestFirst = new ArrayList<>(inside.toList());
            Collections.reverse(deepestFirst);
            for (Path path : deepestFirst) {
                Files.deleteIfExists(path);
            }
        } catch (IOException left) {
            // what stays is a hidden folder of our own, and the outcome is already decided
            return;
        }
    }

    private static Refusal refusal(Path file, String what, Throwable cause) {
        return new Refusal(new Reason.Unreadable(what, Where.inFile(name(file))), cause);
    }

    static String name(Path file) {
        Path last = file.getFileName();
        return last == null ? file.toString() : last.toString();
    }
}
