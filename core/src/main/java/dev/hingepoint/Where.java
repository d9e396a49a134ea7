package dev.hingepoint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where something is wrong: a file, a piece, an edge, a mark, as far as they are known. */
public record Where(
        Optional<String> file,
        Optional<String> size,
        Optional<String> piece,
        Optional<String> edge,
        Optional<String> mark) {
    public static final Where UNKNOWN =
            new Where(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public static Where inFile(String file) {
        return UNKNOWN.file(file);
    }

    public static Where inPiece(String piece) {
        return UNKNOWN.piece(piece);
    }

    public Where file(String name) {
        return new Where(Optional.of(name), size, piece, edge, mark);
    }

    public Where size(String name) {
        return new Where(file, Optional.of(name), piece, edge, mark);
    }

    public Where piece(String name) {
        return new Where(file, size, Optional.of(name), edge, mark);
    }

    public Where edge(String name) {
        return new Where(file, size, piece, Optional.of(name), mark);
    }

    public Where mark(String name) {
        return new Where(file, size, piece, edge, Optional.of(name));
    }

    /** "larkfield.svg: piece back, size 40, edge side seam"; empty where nothing is known. */
    public Message message() {
        List<Message> inside = new ArrayList<>();
        piece.ifPresent(name -> inside.add(Message.of("where.piece", name)));
        size.ifPresent(name -> inside.add(Message.of("where.size", name)));
        edge.ifPresent(name -> inside.add(Message.of("where.edge", name)));
        mark.ifPresent(name -> inside.add(Message.of("where.mark", name)));
        if (file.isEmpty()) {
            return Message.of("where.in-pattern", inside);
        }
        return inside.isEmpty()
                ? Message.of("where.in-file", file.get())
                : Message.of("where.in-pattern-of-file", file.get(), inside);
    }

    /** The place in English. */
    @Override
    public String toString() {
        return message().text();
    }
}
