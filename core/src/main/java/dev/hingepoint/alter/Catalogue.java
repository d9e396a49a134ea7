package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.locationtech.jts.geom.TopologyException;

/**
 * All alterations, by the name they are ordered by, in a fitter's usual order: lengths, shoulders, bust, waist and hip, back waist, sleeve, neckline and hem.
 *
 * <p><a href="doc-files/alterations.html">Each of them</a> as a picture, with an example and what it keeps.
 */
public final class Catalogue {
    private static final List<Alteration> ALL = List.of(
            LengthenOrShorten.lengthen(),
            LengthenOrShorten.shorten(),
            ShoulderSlope.square(),
            ShoulderSlope.sloping(),
            ShoulderWidth.broad(),
            ShoulderWidth.narrow(),
            new ForwardShoulder(),
            new RoundBack(),
            new MoveApex(),
            new FullBust(),
            new MoveDart(),
            new HipBlend(),
            CentreFullness.fullSeat(),
            CentreFullness.flatSeat(),
            CentreFullness.largeAbdomen(),
            new SwayBack(),
            new ArmholeDepth(),
            UpperArm.full(),
            UpperArm.slim(),
            new SleeveShape(),
            new Neckline(),
            new Hem());

    private Catalogue() {}

    public static List<Alteration> all() {
        return ALL;
    }

    /** @throws Refusal where there is none of that name */
    public static Alteration named(String name) {
        return named(name, List.of());
    }

    /** The same among alterations of your own, and then the catalogue's. */
    public static Alteration named(String name, List<Alteration> own) {
        List<Alteration> known = Stream.concat(own.stream(), ALL.stream()).toList();
        return known.stream()
                .filter(alteration -> alteration.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Unreadable(
                        Message.of(
                                "alter.catalogue.no-such-alteration",
                                name,
                                known.stream().map(Alteration::name).toList()),
                        Where.UNKNOWN)));
    }

    /**
     * Does one ordered alteration and holds its laws against the result.
     *
     * @throws Refusal where the order cannot be done, or a law would break
     */
    public static Altered alter(Draft draft, AlterationRequest request) {
        return alter(draft, request, Map.of());
    }

    /** The same for a body of which measurements are known. */
    public static Altered alter(Draft draft, AlterationRequest request, Map<String, Length> body) {
        return checked(draft, named(request.name()), Options.of(request, body));
    }

    /** The same for an alteration that is at hand, of the catalogue or of your own. */
    public static Altered checked(Draft draft, Alteration alteration, Options options) {
        return altered(draft, alteration, options).lawful(draft);
    }

    /** A piece of a shape that no fitter would draw can defeat the geometry; that is the drawing's fault, and is told as such, the geometry's own words left to the cause. */
    private static Altered altered(Draft draft, Alteration alteration, Options options) {
        try {
            return alteration.alter(draft, options);
        } catch (IllegalArgumentException | TopologyException wrong) {
            throw new Refusal(
                    new Reason.Unsound(
                            Message.of("alter.catalogue.cannot-be-laid", alteration.name()),
                            Where.UNKNOWN.size(draft.size())),
                    wrong);
        }
    }
}
