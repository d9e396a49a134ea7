package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.PatternFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What works as a whole is taught, though a part of it be refused. */
class CarriedPastRefusalTest {
    private static final Draft DRESS =
            PatternFiles.read(Path.of("../samples/patterns/larkfield.yaml")).in("40");
    private static final Alteration SWAY_BACK = Catalogue.named("sway back");
    private static final Options TWELVE =
            Options.of(new AlterationRequest("sway back", Map.of("wedge", "12 mm", "at", "waist")));

    /** A sway back that refuses amounts between two, in mm. */
    private record Choosy(double from, double to) implements Alteration {
        @Override
        public String name() {
            return "sway back";
        }

        @Override
        public Map<String, Object> example() {
            return SWAY_BACK.example();
        }

        @Override
        public Altered alter(Draft draft, Options options) {
            double wedge = options.amount("wedge").orElseThrow().mm();
            if (wedge > from && wedge < to) {
                throw options.refuse("not by so much");
            }
            return SWAY_BACK.alter(draft, options);
        }
    }

    private static List<Carry.Frame> frames(Alteration alteration) {
        return Lesson.of(DRESS, alteration, TWELVE, Unit.MILLIMETRE).carry().frames();
    }

    @Test
    void whereAPartIsRefusedTheLastThatWorksStandsInItsPlace() {
        List<Carry.Frame> all = frames(SWAY_BACK);
        List<Carry.Frame> frames = frames(new Choosy(3.5, 6.5));
        assertEquals(13, frames.size());
        assertEquals(all.subList(0, 4), frames.subList(0, 4));
        for (int i = 4; i <= 6; i++) {
            assertEquals(all.get(3), frames.get(i));
        }
        assertEquals(all.subList(7, 13), frames.subList(7, 13));
    }

    /** A sway back whose parts come out with a seam allowance that no piece has room for. */
    private record Crowded() implements Alteration {
        @Override
        public String name() {
            return "sway back";
        }

        @Override
        public Map<String, Object> example() {
            return SWAY_BACK.example();
        }

        @Override
        public Altered alter(Draft draft, Options options) {
            Altered altered = SWAY_BACK.alter(draft, options);
            Draft done = altered.draft();
            return options.carried(12) == 12
                    ? altered
                    : altered.withDraft(done.with(done.construction()
                            .withAllowance(new EdgeRef("back", "armhole"), Length.ofMillimetres(5000))));
        }
    }

    @Test
    void aPartThatCannotBeCutOutIsPassedOverAsWell() {
        List<Carry.Frame> frames = frames(new Crowded());
        assertEquals(13, frames.size());
        assertEquals(frames.get(0), frames.get(11));
        assertEquals(1, frames.get(12).fraction());
    }

    @Test
    void whereEveryPartIsRefusedItGoesFromNothingToAll() {
        List<Carry.Frame> frames = frames(new Choosy(0, 12));
        assertEquals(13, frames.size());
        for (int i = 1; i < 12; i++) {
            assertEquals(frames.get(0), frames.get(i));
        }
        assertEquals(1, frames.get(12).fraction());
        assertTrue(
                frames.get(12).told().contains("12 mm of 12 mm"), frames.get(12).told());
    }
}
