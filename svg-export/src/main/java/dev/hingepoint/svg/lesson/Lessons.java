package dev.hingepoint.svg.lesson;

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

/** Writes lessons: a page for a browser, handouts, and exercises with their answers. */
public final class Lessons {
    private Lessons() {}

    /**
     * How lessons are written.
     *
     * @param unit in which lengths are told: mm or inches
     * @param paper of handouts and exercises: A4 or Letter
     * @param scale of the exercises: a half or a quarter
     */
    public record Form(Unit unit, Paper paper, Scale scale) {
        /** In mm, on A4, exercises at a quarter. */
        public static final Form USUAL = new Form(Unit.MILLIMETRE, Paper.A4, Scale.QUARTER);
    }

    /**
     * Every file by its name: {@code lesson.html}, {@code lesson.pdf}, {@code steps/1.1.svg} and so on, {@code student.pdf}, {@code answers.pdf}.
     *
     * @param lessons at least one
     */
    public static Map<String, byte[]> files(List<Lesson> lessons, Form form) {
        List<Page> handout = new ArrayList<>();
        List<Page> student = new ArrayList<>();
        List<Page> answers = new ArrayList<>();
        for (int i = 0; i < lessons.size(); i++) {
            Lesson lesson = lessons.get(i);
            handout.addAll(Handout.pages(lesson, i + 1, form.paper(), form.unit()));
            Exercise exercise = new Exercise(lesson, i + 1, form.paper(), form.scale(), form.unit());
            student.addAll(exercise.student());
            answers.addAll(exercise.answer());
        }
        Map<String, String> texts = new LinkedHashMap<>();

        handout.forEach(page -> texts.put("steps/" + page.name() + ".svg", SvgPage.write(page)));
        Map<String, byte[]> files = new LinkedHashMap<>(WholeFiles.encoded(texts));
        String title = lessons.get(0).pattern();
        files.put("lesson.pdf", PdfPages.write(handout, title + ", lesson"));
        files.put("student.pdf", PdfPages.write(student, title + ", exercises"));
        files.put("answers.pdf", PdfPages.write(answers, title + ", answers"));
        return files;
    }

    /**
     * Writes all of them, or nothing.
     *
     * @throws dev.hingepoint.Refusal where the folder cannot be written to
     */
    public static void write(List<Lesson> lessons, Form form, Path folder) {
        Map<String, byte[]> files = files(lessons, form);
        WholeFiles.writeBytes(folder, files);
        // a step of an earlier lesson would be handed out with these
        WholeFiles.deleteOthers(folder, "steps", "[0-9]+\\.[0-9]+\\.svg", files.keySet());
    }
}
