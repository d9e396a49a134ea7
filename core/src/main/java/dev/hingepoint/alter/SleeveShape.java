package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A sleeve of another length, or another width at its lower end: {@code sleeve: {length: +30 mm, cuff: 240 mm}}. A length with a sign is by so
 * much longer or shorter; without one it is the finished length from the top of the cap to the hem. The cuff is the finished width of the hem.
 *
 * <p>Kept: the cap; the hem's shape and its angle to the underarm seams, which lean from the underarm to its new ends and change alike. Common
 * practice, no source.
 */
final class SleeveShape implements Alteration {
    /** A hand goes through no less without an opening (common practice, no source). */
    private static final double HAND = 210;

    /** So much sleeve is left below the cap. */
    private static final double LEAST_BELOW_CAP = 10;

    private static final double HEM_WITHIN = 0.4;
    private static final int ROUNDS = 12;

    @Override
    public String name() {
        return "sleeve";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("length", "+30 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("length", "cuff");
        if (!options.has("length") && !options.has("cuff")) {
            throw options.refuse("alter.sleeve.needs-amount");
        }
        OptionalDouble cuff = options.length("cuff").stream()
                .mapToDouble(length -> length.mm())
                .findFirst();
        if (cuff.isPresent() && !(cuff.getAsDouble() > 0)) {
            throw options.refuse("alter.sleeve.cuff-not-positive");
        }
        Draft altered = draft;
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        List<Piece> sleeves = new ArrayList<>();
        Map<String, Object> amounts = new LinkedHashMap<>();
        for (EdgeRef cap : Sleeves.caps(draft, name())) {
            Piece sleeve = draft.piece(cap.piece());
            String hem = Sleeves.hem(sleeve, cap.edge())
                    .orElseThrow(() -> new Refusal(
                            new Reason.Missing(Message.of("alter.sleeve.needs-one-piece"), sleeve.where())));
            double longer = options.carried(longer(options, sleeve, cap.edge(), hem));
            OptionalDouble wide = cuff.isPresent() ? carried(options, sleeve, hem, cuff.getAsDouble()) : cuff;
            Paper paper = Paper.of(sleeve).then(redraw(sleeve, cap.edge(), hem, longer, wide));
            altered = altered.with(Sleeves.withDarts(sleeve, paper.piece()));
            steps.addAll(paper.steps());
            sleeves.add(sleeve);
            laws.addAll(laws(draft, cap, hem, longer, wide));
            amounts.put("length", longer);
            wide.ifPresent(width -> amounts.put("cuff", width));
        }
        laws.addAll(Bodice.staying(draft, sleeves));
        Altered done = new Altered(altered, amounts, steps, laws, List.of());
        return cuff.isPresent() && cuff.getAsDouble() < HAND
                ? done.withNote("a cuff of " + Reason.millimetres(cuff.getAsDouble())
                        + " needs an opening: a hand goes through 210 mm and more")
                : done;
    }

    /** On the way from the hem's own width to the one that is wished. */
    private static OptionalDouble carried(Options options, Piece sleeve, String hem, double cuff) {
        double own = sleeve.edge(hem).path().length();
        return OptionalDouble.of(own + options.carried(cuff - own));
    }

    /** By how many mm the sleeve gets longer. */
    private static double longer(Options options, Piece sleeve, String cap, String hem) {
        if (!options.has("length")) {
            return 0;
        }
        double amount = options.length("length").orElseThrow().mm();
        String written = options.text("length").orElseThrow().strip();
        double own = Sleeves.length(sleeve, cap, hem);
        double longer = written.startsWith("+") || written.startsWith("-") ? amount : amount - own;
        Vector down = sleeve.grain().down();
        double below = List.of(sleeve.before(cap).name(), sleeve.after(cap).name()).stream()
                .map(underarm -> sleeve.from(underarm, cap))
                .mapToDouble(seam -> seam.end().minus(seam.start()).dot(down))
                .min()
                .orElseThrow();
        if (below + longer < LEAST_BELOW_CAP) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "alter.sleeve.too-short",
                            Quantity.millimetres(own + longer),
                            Quantity.millimetres(below - LEAST_BELOW_CAP)),
                    sleeve.where()));
        }
        return longer;
    }

    private static Redraw redraw(Piece sleeve, String cap, String hem, double longer, OptionalDouble cuff) {
        String first = sleeve.before(cap).name();
        String last = sleeve.after(cap).name();
        Path own = sleeve.from(hem, first);
        Vector across = sleeve.grain().down().left();
        double scale = 1;
        Path firstSeam = sleeve.from(first, hem);
        Path lastSeam = sleeve.from(last, hem);
        Path drawn = own;
        for (int round = 0; round < ROUNDS; round++) {
            Point middle = own.start().midpoint(own.end());
            Motion motion = Motion.stretch(middle, across, scale)
                    .then(Motion.shift(sleeve.grain().down().times(longer)));
            firstSeam = leaning(sleeve, first, hem, motion.of(own.start()));
            lastSeam = alike(
                    sleeve,
                    last,
                    hem,
                    motion.of(own.end()),
                    firstSeam.length() - sleeve.edge(first).path().length());
            drawn = hem(
                    own.moved(motion),
                    lastSeam.start(),
                    sleeve.from(first, hem),
                    firstSeam,
                    sleeve.from(last, hem),
                    lastSeam);
            scale *= cuff.orElse(own.length()) / drawn.length();
        }
        String caption = "Draw the " + sleeve.name()
                + (longer == 0
                        ? ""
                        : " " + Reason.millimetres(Math.abs(longer)) + (longer > 0 ? " longer" : " shorter"))
                + (longer != 0 && cuff.isPresent() ? " and" : "")
                + (cuff.isPresent() ? " " + Reason.millimetres(cuff.getAsDouble()) + " wide at the hem" : "")
                + "; the underarm seams change alike";
        return Redraw.whole(caption, sleeve, hem, first, drawn)
                .and(Redraw.whole(caption, sleeve, first, hem, firstSeam))
                .and(Redraw.whole(caption, sleeve, last, hem, lastSeam));
    }

    /** An underarm seam from its new end at the hem to the cap. */
    private static Path leaning(Piece sleeve, String underarm, String hem, Point end) {
        Path seam = sleeve.from(underarm, hem);
        Vector across = sleeve.grain().down().left();
        Motion lean = Motion.between(
                seam.end(), across, seam.start().minus(seam.end()), seam.end(), across, end.minus(seam.end()));
        return seam.moved(lean).withStart(end).withEnd(seam.end());
    }

    /** The other underarm seam, its end at the hem so much higher or lower that it gets longer by as much. */
    private static Path alike(Piece sleeve, String underarm, String hem, Point end, double growth) {
        Vector down = sleeve.grain().down();
        double wanted = sleeve.edge(underarm).path().length() + growth;
        Path seam = leaning(sleeve, underarm, hem, end);
        for (int round = 0; round < ROUNDS; round++) {
            seam = leaning(sleeve, underarm, hem, seam.start().plus(down.times(wanted - seam.length())));
        }
        return seam;
    }

    /** The hem, moved, up to its last end, and at its old angles to both seams. */
    private static Path hem(Path moved, Point end, Path wasFirst, Path first, Path wasLast, Path last) {
        Path reaching = moved.reversed().givingWay(end.minus(moved.end()));
        Path one = turned(reaching.reversed(), wasLast, last);
        return turned(one.reversed(), wasFirst, first).reversed();
    }

    private static Path turned(Path hem, Path seam, Path newSeam) {
        double turn = seam.startTangent().angleTo(newSeam.startTangent());
        return Fairing.turnedAtEnd(hem, hem.endTangent().turned(turn), HEM_WITHIN)
                .withEnd(newSeam.start());
    }

    private static List<Law> laws(Draft draft, EdgeRef cap, String hem, double longer, OptionalDouble cuff) {
        List<Law> laws = new ArrayList<>();
        laws.add(Law.keepsPlace(cap.piece(), cap.edge()));
        laws.add(new Law(
                Message.of("alter.sleeve.law.changes-length", Quantity.millimetres(longer)),
                draft.piece(cap.piece()).where(),
                (before, after) -> Sleeves.length(before.piece(cap.piece()), cap.edge(), hem) + longer,
                (before, after) -> Sleeves.length(after.piece(cap.piece()), cap.edge(), hem),
                1));
        double wanted = cuff.orElse(draft.sewnLength(new EdgeRef(cap.piece(), hem)));
        laws.add(Law.changesLength(cap.piece(), hem, wanted - draft.sewnLength(new EdgeRef(cap.piece(), hem)), 0.1));
        Sleeves.underarmSeams(draft, cap).forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.1)));
        return laws;
    }
}
