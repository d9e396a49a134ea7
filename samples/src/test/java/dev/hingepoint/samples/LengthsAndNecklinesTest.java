package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.samples.draft.Larkfield;
import dev.hingepoint.samples.draft.LarkfieldShell;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths and necklines on the Larkfield patterns, before and after other alterations: every seam that walked walks still, and the pieces can be printed. */
class LengthsAndNecklinesTest {
    private static final AlterationRequest BUST = request("full bust: spread=20 mm");
    private static final AlterationRequest SWAY = request("sway back: wedge=12 mm");

    /** "hem: by=-40 mm, slit=200 mm". */
    private static AlterationRequest request(String text) {
        String[] parts = text.split(": ");
        Map<String, Object> options = new LinkedHashMap<>();
        for (String option : parts[1].split(", ")) {
            String[] pair = option.split("=");
            options.put(pair[0], pair[1]);
        }
        return new AlterationRequest(parts[0], options);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lengthen: by=30 mm, at=waist",
                "lengthen: by=30 mm",
                "lengthen: by=15 mm, above=waist",
                "lengthen: by=30 mm, above=hip",
                "shorten: by=20 mm, at=waist",
                "shorten: by=40 mm, at=lengthen or shorten",
                "shorten: by=25 mm, above=waist",
                "shorten: by=20 mm, above=high hip",
                "hem: by=-60 mm",
                "hem: by=80 mm, slit=300 mm",
                "hem: length=1000 mm",
                "hem: to=knee, below=40 mm",
                "neckline: lower=20 mm, widen=15 mm",
                "neckline: lower=60 mm, lower back=80 mm, widen=40 mm",
                "neckline: lower=-10 mm, widen=-8 mm"
            })
    void onTheDressEverySeamWalks(String text) {
        AlterationRequest request = request(text);
        for (List<AlterationRequest> order : List.of(
                List.of(request),
                List.of(request, BUST),
                List.of(BUST, request),
                List.of(SWAY, request),
                List.of(request, BUST, SWAY))) {
            holdsUp(Larkfield.dress(), order);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lengthen: by=30 mm, above=waist",
                "shorten: by=25 mm",
                "hem: by=-60 mm",
                "hem: by=60 mm, slit=100 mm",
                "neckline: lower=30 mm, widen=20 mm"
            })
    void onTheShellEverySeamWalks(String text) {
        holdsUp(LarkfieldShell.shell(), List.of(request(text)));
    }

    private static void holdsUp(Pattern pattern, List<AlterationRequest> order) {
        Map<String, Length> body = Map.of("waist to knee", Length.ofMillimetres(590));
        Fitting fitting = Fitting.of(pattern, new Order("40", Optional.empty(), order, body));
        assertEquals(List.of(), fitting.brokenSeams(), order::toString);
        assertTrue(Printing.print(fitting.after(), PrintOptions.of(Paper.named("a0")))
                        .pages()
                        .size()
                > 0);
    }
}
