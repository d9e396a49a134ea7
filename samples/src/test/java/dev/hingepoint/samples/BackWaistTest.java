package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.PlanLine;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.samples.draft.Larkfield;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each cause of folds at the back waist, or of a short back, and what a fitter says to it (several trade sources; common practice). */
class BackWaistTest {
    private static final Pattern DRESS = Larkfield.dress();
    private static final String ON_SIZE_40 = "unit: cm\nupper bust: 87.1\nfull bust: 92.1\nwaist: 74.9\nhip: 100.1\n";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "folds run: back only, back hem: level | 15 mm | 15 mm out of centre back",
                "folds run: all round, back hem: level | - | shorten front and back alike by 15 mm",
                "folds run: back only, back hem: rides up | - | a full seat: 15 mm let in over the seat",
                "folds run: back only, back hem: drops | - | a flat seat: 15 mm folded out",
                "folds run: below the seat, back hem: level | - | no wedge at the waist",
                "back hem: level | - | look whether the folds run round the back only",
                "folds run: back only | - | look what the back hem does",
                "folds run: back only, back hem: level, seen on: altered | 15 mm | 15 mm out of centre back"
            })
    void foldsHaveTheirCause(String seen, String wedge, String says) {
        Plan plan = plan(ON_SIZE_40 + "observed: {folds at back waist: 15 mm, " + seen + "}\n");
        assertWedge(wedge, plan);
        assertSays(says, plan);
    }

    @ParameterizedTest
    @CsvSource({"98.0, 3, 15 mm out of centre back", "104.8, 15, the hip is", "98.0, 15, take another cloth"})
    void tightHipAndDroppingClothComeBeforeASwayBack(double hip, int stretchDown, String says) {
        String body = ON_SIZE_40.replace("hip: 100.1", "hip: " + hip)
                + "observed: {folds at back waist: 15 mm, folds run: back only, back hem: level}\n"
                + "cloth: {stretch across: 0 %, stretch down: " + (stretchDown == 3 ? 0 : stretchDown) + " %}\n";
        Plan plan = plan(body);
        assertSays(says, plan);
        assertWedge(says.startsWith("15 mm") ? "15 mm" : "-", plan);
    }

    /** The chart of size 40 has back 40.5, front 44.5 and side 18.3 cm from the waist up. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "39.0 | 44.5 | 18.3 | 15 mm | a sway back",
                "38.5 | 42.5 | 16.3 | - | shorten front and back alike by 20 mm",
                "37.3 | 42.5 | 16.3 | 12 mm | shorten front and back alike by 20 mm",
                "42.5 | 46.5 | 20.3 | - | lengthen front and back alike by 20 mm",
                "39.0 | 44.5 | - | - | it is side length that decides",
                "39.0 | - | - | - | it is front waist length and side length that decides",
                "40.3 | 44.7 | 18.1 | - | ",
                "39.0 | 42.5 | 18.3 | - | each in its own way"
            })
    void aShortWaistIsToldFromASwayBack(String back, String front, String side, String wedge, String says) {
        Plan plan = plan(ON_SIZE_40
                + given("back waist length", back)
                + given("front waist length", front)
                + given("side length", side));
        assertWedge(wedge, plan);
        if (says == null) {
            assertEquals("", told(plan));
        } else {
            assertSays(says, plan);
        }
    }

    /** What one alteration says by a length, the pattern that it leaves has: the waist lies where the body's does. */
    @ParameterizedTest
    @CsvSource({"folds run: all round, -15, 0", "folds run: 'back only', 0, 15"})
    void lengthsAndSeatsAreDoneAtOnce(String run, double atWaist, double atHem) {
        Plan plan = plan(ON_SIZE_40 + "observed: {folds at back waist: 15 mm, " + run.replace("'", "")
                + ", back hem: rides up}\n");
        assertTrue(plan.holdsUp(), plan.problems().toString());
        Piece drawn = DRESS.in("40").piece("back");
        Piece back = Fitting.of(DRESS, plan.order()).after().piece("back");
        double waist = back.levelFrame("waist").origin().y()
                - drawn.levelFrame("waist").origin().y();
        assertEquals(atWaist, waist, 0.01);
        double centreBack = back.sewnLength("centre back") - drawn.sewnLength("centre back");
        assertEquals(atWaist + atHem, centreBack, 0.3);
    }

    /** On a chart with a column for it, in cm. */
    @ParameterizedTest
    @CsvSource({"13.5, broad shoulders", "10.5, narrow shoulders", "12.8, -"})
    void aShoulderFarFromTheChartIsAltered(double shoulder, String alteration, @TempDir Path folder)
            throws IOException {
        Pattern dress = withColumn("shoulder: 12", folder);
        Body body = BodyReader.readWithNotes("body", ON_SIZE_40 + "shoulder: " + shoulder + "\n")
                .body();
        Plan plan = Planner.plan(dress, body);
        List<String> ordered =
                plan.alterations().stream().map(AlterationRequest::name).toList();
        assertEquals(alteration.equals("-") ? List.of() : List.of(alteration), ordered);
        Fitting fitting = Fitting.of(dress, plan.order());
        double was = dress.in("40").piece("front").sewnLength("shoulder");
        double is = fitting.after().piece("front").sewnLength("shoulder");
        assertEquals(alteration.equals("-") ? was : was + 10 * (shoulder - 12), is, 0.6);
        assertEquals(List.of(), Planner.plan(fitting.after().pattern(), body).alterations());
    }

    /** On a chart with a column for it, in cm: the bust point is moved before the bust is spread, and the spread starts from there. */
    @ParameterizedTest
    @CsvSource({
        "shoulder to bust point, 25, 27, lower, 20 mm",
        "shoulder to bust point, 25, 23.5, raise, 15 mm",
        "bust point to bust point, 19, 21, out, 10 mm",
        "bust point to bust point, 19, 19.8, -, -"
    })
    void aBustPointFarFromTheChartIsMovedFirst(
            String measure, double charted, double measured, String way, String by, @TempDir Path folder)
            throws IOException {
        Pattern dress = withColumn(measure + ": " + charted, folder);
        String fuller = ON_SIZE_40.replace("full bust: 92.1", "full bust: 96.1");
        Body body = BodyReader.readWithNotes("body", fuller + measure + ": " + measured + "\n")
                .body();
        Plan plan = Planner.plan(dress, body);
        assertEquals(
                way.equals("-") ? List.of("full bust", "hip blend") : List.of("move apex", "full bust", "hip blend"),
                plan.alterations().stream().map(AlterationRequest::name).toList());
        if (!way.equals("-")) {
            assertEquals(by, plan.alterations().get(0).options().get(way));
        }
        Fitting fitting = Fitting.of(dress, plan.order());
        assertEquals(List.of(), Planner.plan(fitting.after().pattern(), body).alterations());
    }

    private static Pattern withColumn(String column, Path folder) throws IOException {
        for (Map.Entry<String, String> file :
                PatternFiles.contents(DRESS, "dress").entrySet()) {
            String text = file.getValue().replace("{upper bust", "{" + column + ", upper bust");
            Files.writeString(folder.resolve(file.getKey()), text);
        }
        return PatternFiles.read(folder.resolve("dress.yaml"));
    }

    private static String given(String name, String value) {
        return value.equals("-") ? "" : name + ": " + value + "\n";
    }

    private static Plan plan(String body) {
        return Planner.plan(DRESS, BodyReader.readWithNotes("body", body).body());
    }

    private static void assertWedge(String wedge, Plan plan) {
        String planned = plan.alterations().stream()
                .filter(request -> request.name().equals("sway back"))
                .map(request -> request.options().get("wedge").toString())
                .findFirst()
                .orElse("-");
        assertEquals(wedge, planned, told(plan));
    }

    private static void assertSays(String says, Plan plan) {
        assertTrue(told(plan).contains(says), told(plan));
    }

    private static String told(Plan plan) {
        return plan.lines().stream()
                .filter(line -> line.topic() == PlanLine.Topic.BACK_WAIST || line.topic() == PlanLine.Topic.LENGTHS)
                .map(line -> line.amount() + "; " + line.rule())
                .collect(Collectors.joining("\n"));
    }
}
