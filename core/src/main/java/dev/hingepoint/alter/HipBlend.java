package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.SideSeamBlend.Joint;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Blends the side seams of front and back alike from one size to another, or by amounts on the whole girth: {@code hip blend: {waist:
 * "42", hip: "44"}}, {@code hip blend: {hip: +40 mm}}.
 *
 * <p>Widths come from the named size, lengths from the chosen size. A blend at the bust takes armhole and sleeve along. Kept: else bust, neckline, shoulder, armhole, centre line and all
 * depths; a level that is not named stays as the piece has it now. From the hip down the seam is the hip size's line. What front and
 * back then differ in length, beyond what they did, is shared at the two hem corners. Source: Central Washington University costume
 * text, ch. 17: an amount is divided by the number of seams.
 */
final class HipBlend implements Alteration {
    static final List<String> LEVELS = List.of(Names.BUST, Names.WAIST, Names.HIP);
    private static final int MOST_SIZES_APART = 2;
    private static final double STEEP = 20;
    private static final double STEEP_WITHIN = 200;

    @Override
    public String name() {
        return "hip blend";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("hip", "44");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        Map<String, Wanted> wanted = wanted(draft, options);
        List<Piece> pieces = draft.piecesWithEdges(Names.SIDE_SEAM);
        if (pieces.isEmpty()) {
            throw new Refusal(new Reason.Missing(
                    Message.of("alter.hip-blend.needs-side-seam"), Where.UNKNOWN.size(draft.size())));
        }
        Map<String, SideSeamBlend> blends = new LinkedHashMap<>();
        pieces.forEach(piece -> blends.put(piece.name(), blend(draft, piece, wanted)));
        List<Seam> armholeSeams = wanted.containsKey(Names.BUST) ? armholeSeams(draft, pieces, options) : List.of();
        Map<String, Double> longer = sharedAtHem(draft, blends);
        Draft blended = draft;
        List<Step> steps = new ArrayList<>();
        for (Piece piece : pieces) {
            SideSeamBlend blend = blends.get(piece.name());
            String caption = caption(piece, wanted);
            Redraw redraw = blend.redraw(caption, longer.getOrDefault(piece.name(), 0.0));
            if (blend.movedAbove() != 0) {
                redraw = redraw.and(UnderarmBlend.armhole(caption, piece, blend.outwards(), blend.movedAbove()));
            }
            Paper paper = Paper.of(piece).then(redraw);
            if (blend.movedAbove() != 0) {
                paper = paper.marked(UnderarmBlend.evenDarts(paper.piece()));
            }
            blended = blended.with(notched(paper.piece(), wanted));
            steps.addAll(paper.steps());
        }
        for (Seam seam : armholeSeams) {
            Paper paper = UnderarmBlend.sleeve(draft, blended, seam, wanted.get(Names.BUST));
            blended = blended.with(paper.piece());
            steps.addAll(paper.steps());
        }
        for (EdgeRef[] pair : pairs(draft, blends.keySet().stream().toList())) {
            blended = PairedNotches.shared(draft, blended, pair[0], pair[1]);
        }
        Altered altered = new Altered(
                blended,
                amounts(options, wanted),
                steps,
                new BlendLaws(draft, wanted, longer).on(pieces, armholeSeams),
                List.of());
        return notes(altered, draft, pieces, wanted);
    }

    private static Map<String, Wanted> wanted(Draft draft, Options options) {
        if (options.has("high hip")) {
            throw options.refuse("alter.hip-blend.high-hip-is-no-joint");
        }
        options.knowing(LEVELS.toArray(String[]::new));
        Map<String, Wanted> wanted = new LinkedHashMap<>();
        for (String level : LEVELS) {
            options.raw(level).ifPresent(value -> wanted.put(level, wanted(draft, options, level, value)));
        }
        if (wanted.containsKey(Names.BUST) && wanted.get(Names.BUST).size().isEmpty()) {
            throw options.refuse("alter.hip-blend.bust-by-size-only");
        }
        if (wanted.isEmpty()) {
            throw options.refuse("alter.hip-blend.needs-level");
        }
        return wanted;
    }

    /** The seams whose sleeves take the bust's size with the armhole. */
    private static List<Seam> armholeSeams(Draft draft, List<Piece> pieces, Options options) {
        List<Seam> seams = UnderarmBlend.armholeSeams(draft, pieces);
        if (seams.isEmpty()) {
            throw options.refuse("alter.hip-blend.bust-needs-sleeve");
        }
        return seams;
    }

    private static Wanted wanted(Draft draft, Options options, String level, Object value) {
        String text = value.toString().strip();
        if (!(value instanceof String)) {
            throw options.refuse("alter.hip-blend.size-or-amount", level, text, text.replaceFirst("^[+-]", ""));
        }
        if (draft.pattern().hasSize(text)) {
            return Wanted.size(text, 1 - options.carried(1));
        }
        if (!text.matches("[+-].*[a-zA-Z\"\u2033]\\s*")) {
            throw options.refuse(
                    "alter.hip-blend.no-such-size", level, text, draft.pattern().sizes());
        }
        double edges = draft.piecesWithEdges(Names.SIDE_SEAM).stream()
                .mapToInt(Piece::widths)
                .sum();
        return Wanted.by(options.carried(Length.parse(text, Unit.MILLIMETRE).mm()) / edges);
    }

    private static Map<String, Object> amounts(Options options, Map<String, Wanted> wanted) {
        Map<String, Object> amounts = new LinkedHashMap<>();
        wanted.forEach((level, line) -> amounts.put(
                level,
                line.size().isPresent()
                        ? line.size().get()
                        : (Object)
                                options.carried(Length.parse(options.text(level).orElseThrow(), Unit.MILLIMETRE)
                                        .mm())));
        return amounts;
    }

    /** The joints on one piece: the level before the first named one, the named ones, and, where the hip is not named, the hip as it is. */
    private static SideSeamBlend blend(Draft draft, Piece piece, Map<String, Wanted> wanted) {
        String first = wanted.keySet().iterator().next();
        List<Joint> joints = new ArrayList<>();
        // a blend at the bust takes all above it along; any other leaves the bust and what is above it
        double atBust = wanted.containsKey(Names.BUST)
                ? wanted.get(Names.BUST).line(draft, piece).width(Names.BUST)
                        + wanted.get(Names.BUST).beyond(draft, piece, Names.BUST)
                        - piece.width(Names.BUST)
                : 0;
        int start = Math.max(0, LEVELS.indexOf(first) - 1);
        joints.add(new Joint(LEVELS.get(start), piece, atBust));
        for (String level : LEVELS.subList(start + 1, LEVELS.size())) {
            if (!wanted.containsKey(level) && !piece.hasLevel(level)) {
                continue;
            }
            Wanted line = wanted.getOrDefault(level, Wanted.AS_IT_IS);
            joints.add(new Joint(
                    level, line.line(draft, piece), piece.hasLevel(level) ? line.beyond(draft, piece, level) : 0));
        }
        return new SideSeamBlend(piece, joints);
    }

    /** How much longer, in mm, each side seam is drawn at its hem corner, so that front and back differ as they did. */
    private static Map<String, Double> sharedAtHem(Draft draft, Map<String, SideSeamBlend> blends) {
        Map<String, Double> longer = new LinkedHashMap<>();
        for (EdgeRef[] pair : pairs(draft, blends.keySet().stream().toList())) {
            double more = blends.get(pair[0].piece()).growth()
                    - blends.get(pair[1].piece()).growth();
            longer.put(pair[0].piece(), -more / 2);
            longer.put(pair[1].piece(), more / 2);
        }
        return longer;
    }

    /** The side seams that are sewn to each other. */
    static List<EdgeRef[]> pairs(Draft draft, List<String> pieces) {
        List<EdgeRef[]> pairs = new ArrayList<>();
        for (Seam seam : draft.seams()) {
            if (seam.join().size() == 1
                    && seam.to().size() == 1
                    && isSide(seam.join().get(0), pieces)
                    && isSide(seam.to().get(0), pieces)) {
                pairs.add(new EdgeRef[] {seam.join().get(0), seam.to().get(0)});
            }
        }
        return pairs;
    }

    private static boolean isSide(EdgeRef edge, List<String> pieces) {
        return edge.edge().equals(Names.SIDE_SEAM) && pieces.contains(edge.piece());
    }

    private static String caption(Piece piece, Map<String, Wanted> wanted) {
        List<String> told = wanted.entrySet().stream()
                .map(entry -> entry.getValue().told(entry.getKey()))
                .toList();
        return "Redraw the side seam of the " + piece.name() + " " + String.join(", ", told);
    }

    /** A notch on the side seam at each named level, where none is near. */
    private static Piece notched(Piece piece, Map<String, Wanted> wanted) {
        Piece notched = piece;
        for (String level : wanted.keySet().stream()
                .filter(level -> !level.equals(Names.BUST))
                .toList()) {
            Point end = notched.levelFrame(level).outerEnd();
            boolean isThere =
                    notched.marks(Notch.class).anyMatch(notch -> notch.at().isCloseTo(end, Notch.DEPTH));
            if (!isThere) {
                Path side = notched.edge(Names.SIDE_SEAM).path();
                Position at = side.nearest(end);
                notched = notched.withMark(Notch.on(notched, Names.SIDE_SEAM, at, level, 1));
            }
        }
        return notched;
    }

    private static Altered notes(Altered altered, Draft draft, List<Piece> pieces, Map<String, Wanted> wanted) {
        Altered told = altered;
        List<String> sizes = draft.pattern().sizes();
        String above = draft.size();
        for (Map.Entry<String, Wanted> entry : wanted.entrySet()) {
            String level = entry.getKey();
            double girth = altered.draft().girth(level) - draft.girth(level);
            told = told.withNote("the " + level + " changes by " + Reason.millimetres(girth) + " round the body");
            String here = entry.getValue().size().orElse(draft.size());
            int apart = Math.abs(sizes.indexOf(here) - sizes.indexOf(above));
            if (apart > MOST_SIZES_APART) {
                told = told.withNote("the " + level + " is " + apart
                        + " sizes away from the level above it: sew a toile before cutting good cloth");
            }
            above = here;
        }
        for (Piece piece : pieces) {
            if (isSteep(piece, altered.draft().piece(piece.name()))) {
                told = told.withNote("the side seam of the " + piece.name() + " moves by more than "
                        + Reason.millimetres(STEEP) + " within " + Reason.millimetres(STEEP_WITHIN)
                        + " of its length: sew a toile before cutting good cloth");
            }
        }
        return told;
    }

    private static boolean isSteep(Piece before, Piece after) {
        List<String> levels = before.marks(Level.class).map(Level::name).toList();
        Map<String, Double> moved = new LinkedHashMap<>();
        levels.forEach(level -> moved.put(level, after.width(level) - before.width(level)));
        return levels.stream()
                .anyMatch(one -> levels.stream()
                        .anyMatch(other -> Math.abs(moved.get(one) - moved.get(other)) > STEEP
                                && apart(before, one, other) <= STEEP_WITHIN));
    }

    private static double apart(Piece piece, String one, String other) {
        return piece.levelFrame(one)
                .outerEnd()
                .distanceTo(piece.levelFrame(other).outerEnd());
    }
}
