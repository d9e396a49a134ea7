package dev.hingepoint.make;

import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a size is put together once a piece of it is divided in two: the new seam is listed; wherever the piece was named, now stands the part that has the edge, or both in the order
 * in which they are sewn; allowances and finishes go with the edges; an opening that ran over the whole edge runs on over both.
 *
 * @param whole the piece as it was
 * @param one the part that keeps its name
 * @param other the new piece
 * @param seam the edge that both have along the line
 */
record Divided(Draft before, Piece whole, Piece one, Piece other, String seam) {
    Construction construction() {
        Construction old = before.construction();
        List<Seam> seams = new ArrayList<>();
        for (Seam sewn : old.seams()) {
            seams.add(new Seam(side(sewn.join()), side(sewn.to()), sewn.easeFrom(), sewn.easeTo(), sewn.reversed()));
        }
        seams.add(Seam.of(new EdgeRef(one.name(), seam), new EdgeRef(other.name(), seam)));
        Construction now = old.withSeams(seams).withOpenings(openings(old.openings()));
        for (Map.Entry<String, Length> allowance :
                new LinkedHashMap<>(old.allowances().byName()).entrySet()) {
            Optional<EdgeRef> moved = moved(allowance.getKey());
            if (moved.isPresent()) {
                now = now.withAllowance(moved.get(), allowance.getValue());
            }
        }
        for (Map.Entry<EdgeRef, String> finish : old.finishes().entrySet()) {
            Optional<EdgeRef> moved = moved(finish.getKey().toString());
            if (moved.isPresent()) {
                now = now.withFinish(moved.get(), finish.getValue());
            }
        }
        return now.withLabelsOf(whole.name(), other.name(), edge -> !one.hasEdge(edge) && other.hasEdge(edge));
    }

    /** The same edge on the new piece, where that has it. */
    private Optional<EdgeRef> moved(String name) {
        return Optional.of(name)
                .filter(key -> key.startsWith(whole.name() + "/"))
                .map(key -> key.substring(whole.name().length() + 1))
                .filter(other::hasEdge)
                .map(edge -> new EdgeRef(other.name(), edge));
    }

    private List<EdgeRef> side(List<EdgeRef> edges) {
        List<EdgeRef> side = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            EdgeRef edge = edges.get(i);
            if (!edge.piece().equals(whole.name())) {
                side.add(edge);
                continue;
            }
            List<Piece> parts = new ArrayList<>(List.of(one, other));
            parts.removeIf(part -> !part.hasEdge(edge.edge()));
            boolean otherFirst = i > 0
                    ? meets(other, edge.edge(), edges.get(i - 1))
                    : i + 1 < edges.size() && meets(one, edge.edge(), edges.get(i + 1));
            if (otherFirst && parts.size() == 2) {
                parts.add(parts.remove(0));
            }
            parts.forEach(part -> side.add(new EdgeRef(part.name(), edge.edge())));
        }
        return side;
    }

    /** Whether a part has the end of the edge at which the run leads on; armholes run over the shoulder rather than under the arm. */
    private boolean meets(Piece part, String edge, EdgeRef next) {
        Piece there = before.piece(next.piece());
        List<EdgeRef> ends = List.of(
                new EdgeRef(there.name(), there.before(next.edge()).name()),
                new EdgeRef(there.name(), there.after(next.edge()).name()));
        Optional<String> lead = Stream.of(
                        whole.before(edge).name(), whole.after(edge).name())
                .filter(neighbour -> ends.stream().anyMatch(end -> isSewn(new EdgeRef(whole.name(), neighbour), end)))
                .min(Comparator.comparing(JoinedEdge::isUnderarm));
        return part.hasEdge(edge)
                && lead.filter(neighbour -> part.before(edge).name().equals(neighbour)
                                || part.after(edge).name().equals(neighbour))
                        .isPresent();
    }

    private boolean isSewn(EdgeRef one, EdgeRef other) {
        return before.seams().stream()
                .anyMatch(seam -> seam.join().contains(one) && seam.to().contains(other)
                        || seam.to().contains(one) && seam.join().contains(other));
    }

    private List<Opening> openings(List<Opening> openings) {
        List<Opening> now = new ArrayList<>();
        for (Opening opening : openings) {
            String edge = opening.edge().edge();
            if (!opening.edge().piece().equals(whole.name())) {
                now.add(opening);
                continue;
            }
            Piece first = startsOn(one, edge, opening.from()) ? one : other;
            Piece second = first == one ? other : one;
            double room = first.sewnLength(edge);
            double rest = opening.length().mm() - room;
            EdgeRef there = new EdgeRef(first.name(), edge);
            if (rest <= 0 || !second.hasEdge(edge)) {
                now.add(new Opening(there, opening.from(), opening.length()));
            } else {
                now.add(new Opening(there, opening.from(), new Length(room)));
                now.add(new Opening(new EdgeRef(second.name(), edge), seam, new Length(rest)));
            }
        }
        return now;
    }

    private static boolean startsOn(Piece part, String edge, String from) {
        return part.hasEdge(edge)
                && (part.before(edge).name().equals(from)
                        || part.after(edge).name().equals(from));
    }
}
