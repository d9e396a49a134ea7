package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
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
                throw refusal(file, Message.of("file.too-large"), null);
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException wrong) {
            throw refusal(file, Message.of("file.none"), wrong);
        } catch (IOException wrong) {
            throw refusal(file, Message.of("file.cannot-be-read"), wrong);
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
            throw refusal(file, Message.of("file.no-text"), wrong);
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
                throw from.refuse("file.leads-out", name);
            }
            return wanted;
        } catch (InvalidPathException | IOException wrong) {
            throw from.refuse("file.no-file-name", name);
        }
    }

    /** Texts as they stand in files, in UTF-8. */
    public static Map<String, byte[]> encoded(Map<String, String> texts) {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        texts.forEach((name, text) -> contents.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return contents;
    }

    /** Writes texts into a folder, all or none: {@link #writeBytes}. */
    public static void writeAll(Path into, Map<String, String> texts) {
        writeBytes(into, encoded(texts));
    }

    /**
     * Writes files into a folder: each is written whole beside its place first, and only when all are there do they take their
     * places. Where one of them cannot, those that did go back to what stood there before.
     *
     * @param contents by name in the folder; names may lead into folders below
     * @throws Refusal where the folder cannot be written to, or a folder stands where a file would; what stood there stays
     */
    public static void writeBytes(Path into, Map<String, byte[]> contents) {
        Path folder = into.toAbsolutePath().normalize();
        contents.keySet().stream()
                .map(folder::resolve)
                .filter(Files::isDirectory)
                .findFirst()
                .ifPresent(taken -> {
                    throw refusal(taken, Message.of("file.folder-in-the-way"), null);
                });
        List<Path> made = new ArrayList<>();
        Path staged = null;
        try {
            make(folder, made);
            staged = Files.createTempDirectory(folder, ".writing");
            Path fresh = Files.createDirectory(staged.resolve("new"));
            for (Map.Entry<String, byte[]> entry : contents.entrySet()) {
                Path file = fresh.resolve(entry.getKey());
                Files.createDirectories(file.getParent());
                Files.write(file, entry.getValue());
            }
            place(fresh, folder, contents.keySet(), Files.createDirectory(staged.resolve("old")), made);
        } catch (IOException | UnsupportedOperationException wrong) {
            delete(staged);
            Collections.reverse(made);
            made.forEach(WholeFiles::deleteEmpty);
            throw refusal(folder, Message.of("file.cannot-be-written"), wrong);
        }
        delete(staged);
    }

    /** Moves all files to their places, what stood there aside; or, where one cannot be moved, everything back. */
    private static void place(Path fresh, Path folder, Set<String> names, Path old, List<Path> made)
            throws IOException {
        List<String> begun = new ArrayList<>();
        try {
            for (String name : names) {
                Path place = folder.resolve(name);
                make(place.getParent(), made);
                begun.add(name);
                if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
                    Files.createDirectories(old.resolve(name).getParent());
                    Files.move(place, old.resolve(name));
                }
                Files.move(fresh.resolve(name), place);
            }
        } catch (IOException wrong) {
            for (String name : begun) {
                if (!Files.exists(fresh.resolve(name))) {
                    Files.delete(folder.resolve(name));
                }
                if (Files.exists(old.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                    Files.move(old.resolve(name), folder.resolve(name));
                }
            }
            throw wrong;
        }
    }

    /**
     * Makes a folder and those above it.
     *
     * @param made takes those that were not there, outermost first
     */
    private static void make(Path folder, List<Path> made) throws IOException {
        if (!Files.isDirectory(folder)) {
            make(folder.getParent(), made);
            Files.createDirectory(folder);
            made.add(folder);
        }
    }

    private static void deleteEmpty(Path folder) {
        try {
            Files.deleteIfExists(folder);
        } catch (IOException notEmpty) {
            // somebody else has put something there meanwhile, and it is theirs
            return;
        }
    }

    /** Deletes the files of a folder below whose names match and that are not among those just written. */
    public static void deleteOthers(Path into, String below, String names, Set<String> written) {
        Path folder = into.toAbsolutePath().normalize().resolve(below);
        try (Stream<Path> inside = Files.list(folder)) {
            for (Path file : inside.filter(Files::isRegularFile).toList()) {
                String name = name(file);
                if (name.matches(names) && !written.contains(below + "/" + name)) {
                    Files.delete(file);
                }
            }
        } catch (IOException wrong) {
            throw refusal(folder, Message.of("file.cannot-be-deleted"), wrong);
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

    private static Refusal refusal(Path file, Message why, Throwable cause) {
        return new Refusal(new Reason.Unreadable(why, Where.inFile(name(file))), cause);
    }

    static String name(Path file) {
        Path last = file.getFileName();
        return last == null ? file.toString() : last.toString();
    }
}
