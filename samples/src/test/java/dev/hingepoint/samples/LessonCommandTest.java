package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code lesson} as a person calls it. */
class LessonCommandTest extends CalledProgram {
    private static final String ORDER = "patterns/concert-order.yaml";

    @TempDir
    private Path orders;

    private int lesson(String... options) {
        List<String> call = new ArrayList<>(List.of("lesson"));
        call.addAll(List.of(options));
        call.addAll(List.of("--out", folder.toString()));
        return run(call.toArray(String[]::new));
    }

    private String words(String pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(pdf).toFile())) {
            PDFTextStripper words = new PDFTextStripper();
            words.setSortByPosition(true);
            return words.getText(document).replaceAll("\\s+", " ");
        }
    }

    private int sheets(String pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(pdf).toFile())) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void writesAPageAHandoutItsSheetsAnExerciseAndItsAnswer() throws IOException {
        assertEquals(0, lesson(ORDER), err.toString());
        List<String> written = written();
        assertTrue(
                written.containsAll(
                        List.of("lesson.html", "lesson.pdf", "student.pdf", "answers.pdf", "steps/1.1.svg")),
                written.toString());
        // each step's sheet has the step's number
        String third = Files.readString(folder.resolve("steps/3.3.svg"));
        assertTrue(third.contains("Sway back, 3 of 8: Cut"), third.substring(0, 400));
        assertTrue(written.contains("steps/3.8.svg") && !written.contains("steps/3.9.svg"), written.toString());
        assertTrue(
                sheets("lesson.pdf")
                        > written.stream()
                                .filter(file -> file.startsWith("steps/"))
                                .count(),
                "and what is not a step");
        assertTrue(Files.size(folder.resolve("lesson.html")) < 1_500_000);
        String handout = words("lesson.pdf");
        assertTrue(handout.contains("Fold out 12 mm at centre back at the waist, running to nothing at the side seam"));
        assertTrue(handout.contains("Sew a toile before you cut good cloth"));
        assertTrue(handout.contains("What is worse now"));
        assertTrue(handout.contains("A wrong cure"));
        assertTrue(out.toString().contains("off grain"), out.toString());
    }

    /** What changed, and what is worse, is for who has done it. */
    @Test
    void anExerciseDoesNotTellItsAnswer() throws IOException {
        assertEquals(0, lesson(ORDER), err.toString());
        String student = words("student.pdf");
        String answers = words("answers.pdf");
        assertTrue(student.split("\\bline 1\\b", -1).length > 1, "the lines to cut");
        assertTrue(student.contains("1:4"));
        assertTrue(student.contains("back, centre back 1055 mm"), student);
        assertFalse(student.contains("1043 mm"), "the centre back as it will be");
        assertTrue(answers.contains("back, centre back 1055 mm 1043 mm"), answers);
        assertFalse(student.contains("off grain"));
        assertTrue(answers.contains("off grain"));
        assertTrue(answers.contains("as drawn"), "the lines as they were");
    }

    private String exercise(String alteration, String... options) throws IOException {
        for (String part : List.of("larkfield.yaml", "larkfield.svg")) {
            Files.copy(Path.of("patterns", part), orders.resolve(part), StandardCopyOption.REPLACE_EXISTING);
        }
        String order = "pattern: larkfield.yaml\nsize: \"40\"\nalterations:\n  - " + alteration;
        Path file = Files.writeString(orders.resolve("order.yaml"), order);
        List<String> call = new ArrayList<>(List.of(file.toString()));
        call.addAll(List.of(options));
        assertEquals(0, lesson(call.toArray(String[]::new)), err.toString());
        return words("student.pdf");
    }

    /**
     * What is redrawn is told by how far. Derived from the pattern itself: the hips of the two sizes, shared among four quarters.
     */
    @Test
    void anExerciseTellsHowFarALineIsRedrawn() throws IOException {
        Pattern larkfield = PatternFiles.read(Path.of("patterns/larkfield.yaml"));
        Draft own = larkfield.in("40");
        double quarter = (larkfield.in("44").girth("hip") - own.girth("hip")) / 4;
        String told = new Length(quarter).tenths().toString();
        String student = exercise("hip blend: {hip: \"44\"}");
        assertTrue(student.contains("On the front: Redraw the side seam"), student);
        assertEquals(2, student.split("at the hip " + told + " outwards", -1).length - 1, told + ": " + student);
        assertTrue(student.contains("at the corner of side seam and hem " + told + " outwards"), student);
        assertTrue(student.contains("at the waist nothing"), student);
        String inches = exercise("hip blend: {hip: \"44\"}", "--unit", "in");
        assertTrue(inches.contains("at the hip " + new Length(quarter).inInches() + " outwards"), inches);
    }

    /** An apex and its dart are marks: no line of a step tells where they go. */
    @Test
    void anExerciseTellsWhereMarksGo() throws IOException {
        String student = exercise("move apex: {lower: 15 mm}");
        assertTrue(student.contains("Mark on the front anew: the bust apex 15 mm down"), student);
        assertTrue(student.contains("the tip of the side bust dart 15 mm down"), student);
    }

    /** On paper that an earlier task has drawn anew no line can be printed. */
    @ParameterizedTest
    @ValueSource(strings = {"full seat: {wedge: 15 mm}", "large abdomen: {wedge: 15 mm}"})
    void anExerciseSaysWhereToDrawALineThatIsNotPrinted(String alteration) throws IOException {
        String student = exercise(alteration);
        assertFalse(student.contains("line 1 is drawn"), student);
        assertTrue(student.indexOf("draw a line from the centre") > 0, student);
        assertTrue(student.indexOf("draw a line from the centre") < student.indexOf("Cut along the line"), student);
    }

    @Test
    void anExerciseSaysWhereThePaperHangsTogether() throws IOException {
        String student = exercise("full bust: {spread: 20 mm}");
        assertTrue(student.matches(".*up to but not through [^:]*the armhole: .*"), student);
        assertTrue(student.contains("clip the seam allowance to the hinge at the armhole"), student);
        assertTrue(student.split("\\bhinge\\b", -1).length > 3, "in the task, and marked on the piece");
    }

    @Test
    void anExerciseAsksForGirths() throws IOException {
        String student = exercise("full bust: {spread: 20 mm}");
        String answers = words("answers.pdf");
        long before = Math.round(
                PatternFiles.read(Path.of("patterns/larkfield.yaml")).in("40").girth("bust"));
        assertTrue(student.contains("bust round the body " + before + " mm"), student);
        assertTrue(answers.contains("bust round the body " + before + " mm " + (before + 40) + " mm"), answers);
    }

    @Test
    void aHandoutTellsPromisesApartFromWhatDidNotChange() throws IOException {
        exercise("sway back: {wedge: 12 mm}");
        String handout = words("lesson.pdf");
        int unchanged = handout.indexOf("What did not change");
        int held = handout.indexOf("What it was held to");
        assertTrue(unchanged > 0 && unchanged < held, handout);
        assertTrue(handout.substring(unchanged, held).contains("back: neckline, shoulder"), handout);
        assertFalse(handout.substring(unchanged, held).contains("keeps"), handout);
        assertTrue(handout.substring(held).contains("It keeps"), handout);
        exercise("hip blend: {hip: \"44\"}");
        assertTrue(words("lesson.pdf").contains("Nothing that was checked is worse than before."));
    }

    @Test
    void tellsInchesOnLetterPaperAtAHalf() throws IOException {
        assertEquals(0, lesson(ORDER, "--unit", "in", "--paper", "letter", "--scale", "1:2"), err.toString());
        String handout = words("lesson.pdf");
        assertTrue(handout.contains("Fold out 1/2 in at centre back"), handout);
        assertFalse(handout.replaceAll("(wedge|spread|hip): [0-9]+ mm", "").matches("(?s).*[0-9] mm\\b.*"), handout);
        try (PDDocument document = Loader.loadPDF(folder.resolve("lesson.pdf").toFile())) {
            assertEquals(612, document.getPage(0).getMediaBox().getWidth(), 0.01);
        }
        assertTrue(words("student.pdf").contains("1:2"));
    }

    @Test
    void theSameOrderWritesTheSameBytes() throws IOException {
        assertEquals(0, lesson(ORDER), err.toString());
        List<byte[]> first = new ArrayList<>();
        for (String file : written()) {
            first.add(Files.readAllBytes(folder.resolve(file)));
        }
        assertEquals(0, lesson(ORDER), err.toString());
        for (int i = 0; i < written().size(); i++) {
            assertArrayEquals(
                    first.get(i),
                    Files.readAllBytes(folder.resolve(written().get(i))),
                    written().get(i));
        }
    }

    @Test
    void allListsEveryAlterationWithASmallPicture() throws IOException {
        assertEquals(0, lesson("--all", "patterns/larkfield.yaml", "--size", "42"), err.toString());
        String index = Files.readString(folder.resolve("index.html"));
        assertEquals(Catalogue.all().size(), index.split("<svg", -1).length - 1, "a small picture each");
        for (Alteration alteration : Catalogue.all()) {
            String page = alteration.name().replace(' ', '-') + "/lesson.html";
            assertTrue(index.contains("href=\"" + page + "\""), page);
            assertTrue(written().contains(page), page);
        }
        assertTrue(index.contains("size 42"));
    }

    /** The shell has no sleeve and no bust dart: what needs them is named, with the reason. */
    @Test
    void allSaysWhatAPatternHasNoLinesFor() throws IOException {
        assertEquals(0, lesson("--all", "patterns/back-block.yaml"), err.toString());
        String index = Files.readString(folder.resolve("index.html"));
        assertTrue(index.contains("Not on this pattern"), index.substring(0, 500));
        assertTrue(index.contains("<dt>Full bust</dt>"), "a back has no bust");
        assertFalse(Files.exists(folder.resolve("full-bust")));
    }

    /** One that alter would refuse, since another size is made up in its own way: a lesson makes nothing up, and is not refused once it is written. */
    @Test
    void aPatternThatIsMadeUpInOneSizeIsTaughtInAnother() throws IOException {
        assertEquals(0, run("alter", "patterns/sleeveless-order.yaml", "--out", folder.toString()), err.toString());
        Path order = Files.writeString(
                folder.resolve("order.yaml"),
                "pattern: altered.yaml\nsize: \"44\"\nalterations:\n  - sway back: {wedge: 12 mm}\n");
        assertEquals(0, lesson(order.toString()), err.toString());
        assertEquals("", err.toString());
        assertTrue(Files.exists(folder.resolve("lesson.html")));
    }

    @Test
    void aSeamThatNoLongerMatchesIsToldByTheExitCodeAsWell() throws IOException {
        Path order = folder.resolve("order.yaml");
        for (String file : List.of("larkfield.yaml", "larkfield.svg")) {
            Files.copy(Path.of("patterns", file), folder.resolve(file));
        }
        Files.writeString(order, "pattern: larkfield.yaml\nsize: \"40\"\nalterations:\n  - armhole: {lower: 10 mm}\n");
        assertEquals(1, lesson(order.toString()), err.toString());
        assertTrue(Files.exists(folder.resolve("lesson.html")));
        assertTrue(out.toString().contains("no longer match"), out.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "patterns/concert-order.yaml --unit cm | mm or in",
                "patterns/concert-order.yaml --paper a5 | no paper 'a5'",
                "patterns/concert-order.yaml --paper 200x250 | at least 210 mm x 279 mm",
                "patterns/concert-order.yaml --scale 1:1 | 1:2 and 1:4 would work",
                "patterns/concert-order.yaml --scale 1:3 | no scale '1:3'",
                "patterns/concert-order.yaml --size 40 | --size goes with --all",
                "patterns/larkfield.yaml | larkfield.yaml",
                "patterns/nothing.yaml | no such file",
                "--all patterns/concert-order.yaml | concert-order.yaml",
                "--all patterns/larkfield.yaml --size 99 | 99",
                "patterns/concert-order.yaml --all patterns/larkfield.yaml | one of the two",
                "--unit in | one of the two"
            })
    void whatIsWrongIsToldInOneLineAndNothingIsWritten(String call, String told) throws IOException {
        assertEquals(2, lesson(call.split(" ")));
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(told == null || err.toString().contains(told), err.toString());
        assertEquals(List.of(), written());
    }
}
