package dev.hingepoint.alter;

import static dev.hingepoint.pattern.Names.NECKLINE;
import static dev.hingepoint.pattern.Names.SHOULDER;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.check.Measurements;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Draws the neckline of front and back anew: {@code neckline: {lower: 20 mm, widen: 15 mm}}, or along a line that is drawn for it, {@code neckline: {to:
 * scoop}}.
 *
 * <p>{@code lower} goes down the centre front, {@code lower back} down the centre back, {@code widen} along each shoulder seam, front and back alike, so that
 * they walk with the ease they had; negative amounts raise and narrow it. The neckline is its old self, scaled: it meets the centre line as it did, square to a fold, and a
 * curve meets the shoulder as it did. A drawn line runs from centre line to shoulder; a piece without one is widened by as much. Where the line comes within {@value
 * #NEARLY} degrees of square to the centre line it is trued to that, else it makes a point there, and a note says so.
 *
 * <p>Kept: all else. What is sewn to the neckline is named, since it must change with it.
 */
final class Neckline implements Alteration {
    private static final double NEARLY = 10;

    /** Two drawn lines that reach the shoulder seam this near to each other in mm are meant to meet. */
    private static final double MEET = 1;

    @Override
    public String name() {
        return "neckline";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("lower", "20 mm", "widen", "15 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("lower", "lower back", "widen", "to");
        List<Piece> pieces = pieces(draft);
        List<String> notes = new ArrayList<>();
        List<NeckEdge> edges = (options.has("to") ? drawn(pieces, options, notes) : scaled(pieces, options))
                .stream().filter(NeckEdge::isChanged).toList();
        List<EdgeRef> changed = new ArrayList<>();
        edges.stream()
                .filter(edge -> edge.widen() != 0)
                .forEach(edge -> changed.add(new EdgeRef(edge.piece().name(), SHOULDER)));
        edges.stream()
                .flatMap(edge -> edge.problem().stream())
                .min(Comparator.comparingDouble(
                        refusal -> refusal.reason().limit().orElse(0)))
                .ifPresent(refusal -> {
                    throw refusal;
                });
        SewnTogether.requireBothSides(draft, changed, Message.of("alter.sewn-together.widen-neckline"));
        Draft done = draft;
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>(SewnTogether.keepDifference(draft, changed, Tolerance.COINCIDENT));
        for (NeckEdge edge : edges) {
            Paper paper = edge.paper();
            done = done.with(withoutLine(paper.piece(), options));
            steps.addAll(paper.steps());
            laws.addAll(edge.laws());
        }
        laws.addAll(Law.keepsOthers(
                draft, edges.stream().map(edge -> edge.piece().name()).toList()));
        notes.add(longer(draft, done, pieces.stream().map(Piece::name).toList()));
        return openings(new Altered(done, amounts(edges, options), steps, laws, notes), edges);
    }

    /** The pieces that the neck opening runs along: from the centre line to a shoulder. */
    private static List<Piece> pieces(Draft draft) {
        List<Piece> pieces = draft.piecesWithEdges(NECKLINE, SHOULDER).stream()
                .filter(piece -> piece.centre().isPresent())
                .toList();
        if (pieces.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("alter.neckline.needs-edges"), Where.UNKNOWN.size(draft.size())));
        }
        for (Piece piece : pieces) {
            Path neckline = piece.edge(NECKLINE).path();
            if (piece.marks(EdgeDart.class).anyMatch(dart -> SewnEdge.isOn(neckline, dart))) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("alter.neckline.dart-opens-in-it"),
                        piece.where().edge(NECKLINE)));
            }
        }
        return pieces;
    }

    private static boolean isBack(Piece piece) {
        return piece.hasEdge(Names.CENTRE_BACK);
    }

    private static List<NeckEdge> scaled(List<Piece> pieces, Options options) {
        double lower = mm(options, "lower");
        double back = mm(options, "lower back");
        double widen = mm(options, "widen");
        if (lower == 0 && back == 0 && widen == 0) {
            throw options.refuse("alter.neckline.needs-amount");
        }
        return pieces.stream()
                .map(piece -> new NeckEdge(piece, isBack(piece) ? back : lower, widen, Optional.empty()))
                .toList();
    }

    private static double mm(Options options, String name) {
        return options.amount(name).map(Length::mm).orElse(0.0);
    }

    private static List<NeckEdge> drawn(List<Piece> pieces, Options options, List<String> notes) {
        if (options.names().size() > 1) {
            throw options.refuse("alter.neckline.line-says-all");
        }
        String name = options.text("to").orElseThrow();
        List<NeckEdge> along = new ArrayList<>();
        for (Piece piece : pieces) {
            piece.find(DrawnLine.class, name).ifPresent(line -> along.add(along(piece, line, notes)));
        }
        if (along.isEmpty()) {
            throw new Refusal(new Reason.Missing(
                    Message.of("alter.neckline.no-such-line", name),
                    Where.UNKNOWN.size(pieces.get(0).size())));
        }
        double widen = along.get(0).widen();
        for (NeckEdge edge : along) {
            if (Math.abs(edge.widen() - widen) > MEET) {
                throw new Refusal(new Reason.Unsound(
                        Message.of(
                                "alter.neckline.lines-do-not-meet",
                                Quantity.millimetres(edge.widen()),
                                along.get(0).piece().name(),
                                Quantity.millimetres(widen)),
                        edge.piece().where().mark(name)));
            }
        }
        List<NeckEdge> edges = new ArrayList<>();
        for (Piece piece : pieces) {
            edges.add(along.stream()
                    .filter(edge -> edge.piece() == piece)
                    .findFirst()
                    // a line drawn for the whole of it draws no part of it: that is scaled as an amount is
                    .map(edge -> options.isPartOnly()
                            ? new NeckEdge(
                                    piece, options.carried(edge.lower()), options.carried(widen), Optional.empty())
                            : new NeckEdge(piece, edge.lower(), widen, edge.drawn()))
                    .orElseGet(() -> new NeckEdge(piece, 0, options.carried(widen), Optional.empty())));
        }
        return edges;
    }

    /** The drawn line, from the centre line, and how far down that and along the shoulder it ends. */
    private static NeckEdge along(Piece piece, DrawnLine line, List<String> notes) {
        String centre = new NeckEdge(piece, 0, 0, Optional.empty()).centre();
        boolean asDrawn = piece.edge(centre).path().distanceTo(line.path().start())
                <= piece.edge(centre).path().distanceTo(line.path().end());
        Path path = asDrawn ? line.path() : line.path().reversed();
        double lower = reached(piece, centre, path.start(), line);
        double widen = reached(piece, SHOULDER, path.end(), line);
        Path down = piece.from(centre, NECKLINE);
        Path rest = down.part(lower, down.length());
        Vector left = rest.startTangent().left();
        Vector square = left.dot(path.startTangent()) > 0 ? left : left.negated();
        boolean isPoint = Math.abs(path.startTangent().angleTo(square)) > StrictMath.toRadians(NEARLY);
        if (isPoint) {
            notes.add("the line is not square to the " + centre + ": the neckline of the " + piece.name()
                    + " makes a point there");
        }
        return new NeckEdge(piece, lower, widen, Optional.of(isPoint ? path : path.withStartTangent(square)));
    }

    /** How far in mm along an edge from the neckline a drawn line ends. */
    private static double reached(Piece piece, String edge, Point end, DrawnLine line) {
        Path path = piece.from(edge, NECKLINE);
        double off = path.distanceTo(end);
        if (off > Tolerance.LEVEL_REACH) {
            throw new Refusal(new Reason.Unsound(
                    Message.of("alter.neckline.line-ends-off", Quantity.millimetres(off), edge),
                    piece.where().mark(line.name())));
        }
        double along = path.distanceAlong(path.nearest(end));
        return along <= Tolerance.COINCIDENT ? 0 : along;
    }

    private static Piece withoutLine(Piece piece, Options options) {
        return piece.withMarks(piece.marks().stream()
                .filter(mark -> !(mark instanceof DrawnLine
                        && options.text("to").filter(mark.name()::equals).isPresent()))
                .toList());
    }

    private static Map<String, Object> amounts(List<NeckEdge> edges, Options options) {
        Map<String, Object> amounts = new LinkedHashMap<>();
        edges.forEach(edge -> {
            amounts.put(isBack(edge.piece()) ? "lower back" : "lower", edge.lower());
            amounts.put("widen", edge.widen());
        });
        options.text("to").ifPresent(to -> amounts.put("to", to));
        return amounts;
    }

    private static String longer(Draft before, Draft after, List<String> pieces) {
        double was = Measurements.girth(before, NECKLINE).orElse(0);
        double is = Measurements.girth(after, NECKLINE).orElse(0);
        List<EdgeRef> edges =
                pieces.stream().map(name -> new EdgeRef(name, NECKLINE)).toList();
        List<String> sewnTo = before.seams().stream()
                .filter(seam -> edges.stream().anyMatch(seam::joins))
                .map(seam -> Seam.nameOf(edges.stream().anyMatch(seam.join()::contains) ? seam.to() : seam.join()))
                .toList();
        return "the neckline is " + Reason.millimetres(Math.rint(Math.abs(is - was)))
                + (is < was ? " shorter" : " longer")
                + " round the neck, " + Reason.millimetres(Math.rint(is)) + " now; "
                + (sewnTo.isEmpty() ? "whatever finishes it" : String.join(" and ", sewnTo)) + " must change with it";
    }

    /** An opening from the neckline ends at its notch still. */
    private static Altered openings(Altered altered, List<NeckEdge> edges) {
        Draft draft = altered.draft();
        List<Opening> openings = new ArrayList<>();
        Altered told = altered;
        for (Opening opening : draft.openings()) {
            double lower = edges.stream()
                    .filter(edge -> opening.from().equals(NECKLINE)
                            && opening.edge().equals(new EdgeRef(edge.piece().name(), edge.centre())))
                    .mapToDouble(NeckEdge::lower)
                    .sum();
            if (lower < opening.length().mm()) {
                openings.add(opening.withLength(opening.length().mm() - lower));
            }
            if (lower != 0) {
                told = told.withNote("the opening in " + opening.edge() + " is "
                        + Reason.millimetres(Math.max(0, opening.length().mm() - lower)) + " long now");
            }
        }
        return told.withDraft(draft.with(draft.construction().withOpenings(openings)));
    }
}
