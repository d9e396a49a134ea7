package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a dart took up, left in a seam: eased in or gathered between two notches, and the seam's ease says so; at a hem, left open as flare. */
enum Fullness {
    EASE,
    GATHERS,
    FLARE;

    /** It lies within so many mm on either side of where the dart was. */
    private static final double EACH_SIDE = 40;

    private static final double MOST_WOVEN = 12;
    private static final double MOST_KNIT = 20;

    static Fullness named(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How much ease in mm a seam takes (common practice, no source). */
    static double mostEase(boolean isKnit) {
        return isKnit ? MOST_KNIT : MOST_WOVEN;
    }

    /** @throws Refusal where the cloth does not take so much ease (common practice, no source), or the edge no flare */
    void requireTaken(Draft draft, Piece piece, String edge, double fullness) {
        if (this == FLARE && piece.edge(edge).kind() != Edge.Kind.HEM) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.fullness.only-hem-flares"), piece.where().edge(edge)));
        }
        boolean isKnit = draft.pattern().card().isKnit();
        double most = mostEase(isKnit);
        if (this == EASE && fullness > most) {
            Quantity takes = Quantity.millimetres(most);
            Quantity wanted = Quantity.millimetres(fullness);
            throw new Refusal(Reason.BeyondLimit.of(
                    isKnit
                            ? Message.of("alter.fullness.too-much-for-knit", takes, wanted)
                            : Message.of("alter.fullness.too-much-for-woven", takes, wanted),
                    piece.where().edge(edge),
                    fullness,
                    most));
        }
    }

    /**
     * The draft with the fullness between {@code first} and {@code last}, places of the altered edge, marked on it and on what is sewn to
     * it, and let into the seam.
     */
    Draft inSeam(Draft altered, EdgeRef edge, Point first, Point last, double fullness) {
        if (this == FLARE) {
            return altered;
        }
        Piece piece = altered.piece(edge.piece());
        SewnEdge sewn = piece.sewn(edge.edge());
        Path path = piece.edge(edge.edge()).path();
        double one = sewn.distanceAlong(path.nearest(first));
        double other = sewn.distanceAlong(path.nearest(last));
        double from = Math.min(one, other) - EACH_SIDE;
        double to = Math.max(one, other) + EACH_SIDE;
        List<Piece> changed = new ArrayList<>(List.of(notched(piece, edge.edge(), from, to)));
        List<Seam> seams = new ArrayList<>();
        for (Seam seam : altered.seams()) {
            boolean isFirst = seam.join().contains(edge);
            seams.add(
                    !seam.joins(edge)
                            ? seam
                            : isFirst
                                    ? seam.withEase(seam.easeFrom(), seam.easeTo() + fullness)
                                    : seam.withEase(seam.easeFrom() - fullness, seam.easeTo()));
            List<EdgeRef> opposite = isFirst ? seam.to() : seam.join();
            if (seam.joins(edge) && seam.join().size() == 1 && seam.to().size() == 1) {
                partner(altered, piece, edge, opposite.get(0), from, to - fullness)
                        .ifPresent(changed::add);
            }
        }
        return altered.with(changed).with(altered.construction().withSeams(seams));
    }

    /** The piece across a seam with its notches, where a neighbour of one name says which ends meet. */
    private Optional<Piece> partner(Draft draft, Piece piece, EdgeRef edge, EdgeRef opposite, double from, double to) {
        Optional<Piece> found = draft.find(opposite.piece()).filter(other -> !other.isSamePieceAs(piece));
        if (found.isEmpty()) {
            return found;
        }
        Piece other = found.get();
        double length = other.sewnLength(opposite.edge());
        String start = piece.before(edge.edge()).name();
        if (other.before(opposite.edge()).name().equals(start)) {
            return Optional.of(notched(other, opposite.edge(), from, to));
        }
        return other.after(opposite.edge()).name().equals(start)
                ? Optional.of(notched(other, opposite.edge(), length - from, length - to))
                : Optional.empty();
    }

    private Piece notched(Piece piece, String edge, double from, double to) {
        return piece.withMark(notch(piece, edge, word() + (this == EASE ? " begins" : " begin"), from))
                .withMark(notch(piece, edge, word() + (this == EASE ? " ends" : " end"), to));
    }

    private static Notch notch(Piece piece, String edge, String name, double along) {
        SewnEdge sewn = piece.sewn(edge);
        return Notch.on(piece, edge, sewn.positionAt(Math.min(sewn.length(), Math.max(0, along))), name, 1);
    }
}
