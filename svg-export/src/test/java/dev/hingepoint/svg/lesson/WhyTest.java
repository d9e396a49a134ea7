package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.svg.figure.FigurePicture;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WhyTest {
    /** The sources that were read, and what is said where there is none. */
    private static final Set<String> SEEN = Set.of(
            "US Department of Agriculture, Fitting Dresses",
            "USDA Home Economics Research Report No. 32, Pattern Alteration (1965)",
            "Cooperative Extension leaflet, Principles of Pattern Alteration",
            "Central Washington University costume text",
            "Burton, School Sewing",
            "Woman's Institute (1920s)",
            "a pattern-making text",
            "Liechty, Pottberg & Rasband, Fitting & Pattern Alteration (1992), as reported by a fitting page",
            "Threads (2021), Set-in Sleeve Solutions",
            "sewing schools",
            "a sewing-school article",
            "a sewing-school article on the small bust",
            "articles on darts",
            "several trade sources",
            "common practice, no source",
            "derived");

    /** People read lengths, and no body is at fault. */
    private static final List<String> NOT_SAID = List.of("degree", "°", "fault", "defect", "normal", "ideal", "flaw");

    static List<String> alterations() {
        return Catalogue.all().stream().map(Alteration::name).toList();
    }

    @Test
    void everyAlterationOfTheCatalogueHasOneAndNothingElseHas() {
        assertEquals(new TreeSet<>(alterations()), new TreeSet<>(Whys.names()));
        assertEquals(Optional.empty(), Why.of("an alteration of your own"));
        assertEquals(Optional.empty(), Why.of("sources"));
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void everythingIsWrittenInWholeSentences(String alteration) {
        Why why = Why.of(alteration).orElseThrow();
        assertFalse(why.confusedWith().isEmpty());
        Stream.of(
                        Stream.of(
                                why.calledForBy(),
                                why.withoutIt(),
                                why.right().does(),
                                why.wrong().does()),
                        why.confusedWith().stream().map(Why.Confusion::tell),
                        Stream.of(
                                        why.without(),
                                        why.right().picture(),
                                        why.wrong().picture())
                                .map(FigurePicture::describes))
                .flatMap(sentences -> sentences)
                .forEach(WhyTest::assertSentence);
        assertFalse(why.right().name().equals(why.wrong().name()));
        why.confusedWith().forEach(other -> assertFalse(other.cause().isBlank()));
    }

    private static void assertSentence(String words) {
        assertTrue(words.matches("(?s)[A-Z].*[.]"), words);
        NOT_SAID.forEach(word -> assertFalse(words.toLowerCase(Locale.ROOT).contains(word), words));
        for (String sentence : words.split("[.:;] ")) {
            // plain words, short sentences: common advice is 25 words at most (from memory)
            assertTrue(sentence.split(" ").length <= 25, sentence);
        }
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void everySourceIsOneThatWasReadOrSaysThatThereIsNone(String alteration) {
        List<Why.Source> sources = Why.of(alteration).orElseThrow().sources();
        assertFalse(sources.isEmpty());
        for (Why.Source source : sources) {
            assertTrue(SEEN.contains(source.name()), source.name());
            assertFalse(source.grade().isBlank());
            assertFalse(source.says().isBlank());
        }
        assertEquals(
                sources.size(),
                sources.stream()
                        .map(Why.Source::name)
                        .collect(Collectors.toSet())
                        .size());
    }

    /** US Department of Agriculture, "Fitting Dresses"; several trade sources: the tight hip comes first. */
    @Test
    void aSwayBackIsHeldAgainstATightHipFirst() {
        Why why = Why.of("sway back").orElseThrow();
        assertEquals("a tight hip", why.confusedWith().get(0).cause());
        assertEquals("The wedge on a tight hip", why.wrong().name());
    }
}
