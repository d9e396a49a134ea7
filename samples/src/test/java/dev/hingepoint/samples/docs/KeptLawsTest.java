package dev.hingepoint.samples.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.check.Law;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.samples.draft.Larkfield;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One line for equal sentences, and none lost. */
class KeptLawsTest {
    private static final Draft DRESS = Larkfield.dress().in("40");

    @Test
    void equalSentencesOfPiecesAndLevelsBecomeOne() {
        List<Law> laws = List.of(
                Law.keepsWidth("front", "bust", 0.5),
                Law.keepsWidth("front", "high hip", 0.5),
                Law.keepsWidth("front", "hip", 0.5),
                Law.keepsWidth("back", "bust", 0.5),
                Law.keepsWidth("back", "high hip", 0.5),
                Law.keepsWidth("back", "hip", 0.5));
        assertEquals(
                List.of(new KeptLaws.Line("front and back", "keeps the width at the bust, high hip and hip", "0.5 mm")),
                KeptLaws.of(laws));
    }

    @Test
    void severalThatStayAreToldInThePlural() {
        List<Law> laws = List.of(Law.keepsPlace("back", "neckline"), Law.keepsPlace("back", "shoulder"));
        assertEquals(
                List.of(new KeptLaws.Line("back", "leaves the neckline and shoulder where they were", "exactly")),
                KeptLaws.of(laws));
        assertEquals(
                List.of(new KeptLaws.Line("front and sleeve", "leaves the front and sleeve as they were", "exactly")),
                KeptLaws.of(Law.keepsOthers(DRESS, List.of("back"))));
    }

    @Test
    void otherTolerancesAndOtherPiecesStayApart() {
        List<Law> laws = List.of(
                Law.keepsLength("front", "armhole", 0.1),
                Law.keepsLength("front", "shoulder", 0.3),
                Law.keepsLength("back", "neckline", 0.1));
        assertEquals(3, KeptLaws.of(laws).size());
    }

    @Test
    void aSeamIsNamedByItsSentence() {
        Law law = Law.keepsDifference(
                List.of(new EdgeRef("front", "side seam")), List.of(new EdgeRef("back", "side seam")), 0.5);
        assertEquals(List.of(new KeptLaws.Line("", law.sentence(), "0.5 mm")), KeptLaws.of(List.of(law)));
    }

    /** Every law's piece and edge or level is still told of in a line with its first words. */
    @Test
    void noLawOfTheCatalogueIsLost() {
        for (Alteration alteration : Catalogue.all()) {
            List<Law> laws = Catalogue.alter(DRESS, new AlterationRequest(alteration.name(), alteration.example()))
                    .laws();
            List<KeptLaws.Line> lines = KeptLaws.of(laws);
            for (Law law : laws) {
                String verb = law.sentence().substring(0, law.sentence().indexOf(' '));
                String name = law.where().edge().or(() -> law.where().mark()).orElse("");
                boolean isTold = lines.stream()
                        .filter(line -> line.sentence().startsWith(verb))
                        .filter(line -> line.sentence().equals(law.sentence())
                                || line.sentence().contains(name))
                        .anyMatch(line -> line.pieces().isEmpty()
                                || line.pieces().contains(law.where().piece().orElseThrow()));
                assertTrue(isTold, alteration.name() + " " + law.sentence() + ": " + lines);
            }
        }
    }
}
