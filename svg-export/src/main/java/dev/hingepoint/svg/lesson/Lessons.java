package dev.hingepoint.svg.lesson;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.WholeFiles;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.PdfPages;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.print.Scale;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes lessons: a page for a browser, handouts, and exercises with their answers. */
public final class Lessons {
    private Lessons() {}

    /**
     * How lessons are written.
     *
     * @param paper of handouts and exercises: A4 or Letter
     * @param scale of the exercises: a half or a quarter
     */
    public record Form(Paper paper, Scale scale) {
        /** On A4, exercises at a quarter. */
        public static final Form USUAL = new Form(Paper.A4, Scale.QUARTER);

        /** The least that holds a picture with its words, in mm: as wide as A4 and as high as letter paper. */
        private static final double WIDTH = 210;

        private static final double HEIGHT = 279;

        /** @throws Refusal for a paper or a scale that is none of these */
        public Form {
            if (paper.kind() != Paper.Kind.SHEET || paper.width() < WIDTH || paper.height() < HEIGHT) {
                throw refused(
                        "lesson.paper-too-small",
                        Quantity.millimetres(WIDTH),
                        Quantity.millimetres(HEIGHT),
                        paper.name());
            }
            if (scale == Scale.FULL) {
                throw refused("lesson.scale", scale.words());
            }
        }

        private static Refusal refused(String key, Object... arguments) {
            return new Refusal(Reason.BeyondLimit.of(Message.of(key, arguments), Where.UNKNOWN));
        }
    }

    /**
     * Every file by its name: {@code lesson.html}, {@code lesson.pdf}, {@code steps/1.1.svg} and so on, {@code student.pdf}, {@code answers.pdf}.
     *
     * @throws Refusal for no lessons: where nothing is altered, there is nothing to show
     */
    public static Map<String, byte[]> files(List<Lesson> lessons, Form form) {
        if (lessons.isEmpty()) {
            throw new Refusal(new Reason.Missing(Message.of("lesson.nothing-altered"), Where.UNKNOWN));
        }
        List<Page> handout = new ArrayList<>();
        List<Page> steps = new ArrayList<>();
        List<Page> student = new ArrayList<>();
        List<Page> answers = new ArrayList<>();
        for (int i = 0; i < lessons.size(); i++) {
            Lesson lesson = lessons.get(i);
            Handout.Sheets sheets = Handout.sheets(lesson, i + 1, form.paper());
            handout.addAll(sheets.all());
            steps.addAll(sheets.steps());
            Exercise exercise = new Exercise(lesson, i + 1, form.paper(), form.scale());
            student.addAll(exercise.student());
            answers.addAll(exercise.answer());
        }
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("lesson.html", LessonPage.html(lessons, lessons.get(0).unit()));
        steps.forEach(page -> texts.put("steps/" + page.name() + ".svg", SvgPage.write(page)));
        Map<String, byte[]> files = new LinkedHashMap<>(WholeFiles.encoded(texts));
        String title = lessons.get(0).pattern();
        files.put("lesson.pdf", PdfPages.write(handout, title + ", lesson"));
        files.put("student.pdf", PdfPages.write(student, title + ", exercises"));
        files.put("answers.pdf", PdfPages.write(answers, title + ", answers"));
        return files;
    }

    /**
     * A lesson for each alteration that the catalogue has, by its own example, each in a folder of its own, and {@code index.html} with a small picture of each; those that this
     * pattern has no lines for are named there with the reason.
     *
     * @param unit in which lengths are told: mm or inches
     */
    public static Map<String, byte[]> all(Draft draft, Unit unit, Form form) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        List<LessonIndex.Entry> entries = new ArrayList<>();
        for (Alteration alteration : Catalogue.all()) {
            String folder = alteration.name().replace(' ', '-');
            try {
                AlterationRequest request =
                        new AlterationRequest(alteration.name(), new TreeMap<>(alteration.example()));
                Lesson lesson = Lesson.of(draft, alteration, Options.of(request), unit);
                files(List.of(lesson), form).forEach((name, contents) -> files.put(folder + "/" + name, contents));
                entries.add(LessonIndex.Entry.of(lesson, folder));
            } catch (Refusal refused) {
                entries.add(LessonIndex.Entry.without(
                        alteration.name(), refused.reason().sentence()));
            }
        }
        Map<String, byte[]> all = new LinkedHashMap<>(
                WholeFiles.encoded(Map.of("index.html", LessonIndex.html(draft, entries, new Lengths(unit)))));
        all.putAll(files);
        return all;
    }

    /**
     * Writes all of them, or nothing.
     *
     * @throws dev.hingepoint.Refusal where the folder cannot be written to
     */
    public static void write(List<Lesson> lessons, Form form, Path folder) {
        write(files(lessons, form), folder);
    }

    /**
     * Writes {@linkplain #all a lesson for each alteration}, or nothing.
     *
     * @param unit in which lengths are told: mm or inches
     * @return how many there are
     * @throws dev.hingepoint.Refusal where the folder cannot be written to
     */
    public static int writeAll(Draft draft, Unit unit, Form form, Path folder) {
        Map<String, byte[]> files = all(draft, unit, form);
        write(files, folder);
        return (int) files.keySet().stream()
                .filter(name -> name.endsWith("/lesson.html"))
                .count();
    }

    private static void write(Map<String, byte[]> files, Path folder) {
        WholeFiles.writeBytes(folder, files);
        // a step of an earlier lesson would be handed out with these
        files.keySet().stream()
                .filter(name -> name.endsWith("steps/1.1.svg"))
                .map(name -> name.substring(0, name.lastIndexOf('/')))
                .forEach(steps -> WholeFiles.deleteOthers(folder, steps, "[0-9]+\\.[0-9]+\\.svg", files.keySet()));
    }
}
