package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import java.util.List;

/** All choices of how to make up, by the name they are ordered by. */
public final class Choices {
    private static final List<Alteration> ALL = List.of(
            new Facing(),
            new Binding(),
            new Band(),
            new Sleeveless(),
            new Yoke(),
            new CentreBack(),
            new FinishChoice(),
            new ClothChoice());

    private Choices() {}

    public static List<Alteration> all() {
        return ALL;
    }

    /** @throws Refusal where there is none of that name */
    public static Alteration named(String name) {
        return ALL.stream()
                .filter(choice -> choice.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Unreadable(
                        Message.of(
                                "make.choices.no-such-choice",
                                name,
                                ALL.stream().map(Alteration::name).toList()),
                        Where.UNKNOWN)));
    }

    /**
     * Does one choice and holds its laws against the result.
     *
     * @throws Refusal where it cannot be done, or a law would break
     */
    public static Altered make(Draft draft, AlterationRequest request) {
        return Catalogue.checked(draft, named(request.name()), Options.of(request));
    }
}
