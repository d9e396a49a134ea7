package dev.hingepoint.samples;

import dev.hingepoint.fit.Measure;
import dev.hingepoint.svg.file.BodyReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;

/** Asks for a body's measurements, one by one, and reads the answers as a body file is read. */
final class Asking {
    private final PrintWriter out;
    private final BufferedReader in;
    private final StringBuilder yaml = new StringBuilder();

    private Asking(PrintWriter out) {
        this.out = out;
        this.in = new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
    }

    static BodyReader.ReadBody forBody(PrintWriter out, boolean isKnit) {
        Asking asking = new Asking(out);
        out.println("Measurements, one by one; leave empty what you did not measure.");
        String unit = asking.answer("unit", "cm or in; empty for cm");
        asking.yaml.append("unit: ").append(unit.isEmpty() ? "cm" : unit).append('\n');
        for (Measure measure : Measure.values()) {
            asking.ask(measure.words(), measure.runs());
        }
        if (isKnit) {
            String across = asking.answer("stretch across", "of your cloth, in per cent: 10 cm to 12.5 cm is 25 %");
            if (!across.isEmpty()) {
                asking.yaml
                        .append("cloth: {stretch across: ")
                        .append(percent(across))
                        .append("}\n");
            }
        }
        String folds = asking.answer("folds at back waist", "on a toile, how much can be pinched out; empty for none");
        if (!folds.isEmpty()) {
            String run = asking.answer("folds run", "back only, all round, or below the seat");
            String hem = asking.answer("back hem", "level, drops, or rides up");
            asking.yaml
                    .append("observed: {folds at back waist: ")
                    .append(folds)
                    .append(run.isEmpty() ? "" : ", folds run: " + run)
                    .append(hem.isEmpty() ? "" : ", back hem: " + hem)
                    .append("}\n");
        }
        out.println();
        return BodyReader.readWithNotes("your answers", asking.yaml.toString());
    }

    private static String percent(String number) {
        return number.endsWith("%") ? number : number + " %";
    }

    private void ask(String name, String runs) {
        String answer = answer(name, runs);
        if (!answer.isEmpty()) {
            yaml.append(name).append(": ").append(answer).append('\n');
        }
    }

    /** One line; empty at the end of what is typed. */
    private String answer(String name, String hint) {
        out.print(name + " (" + hint + "): ");
        out.flush();
        try {
            String line = in.readLine();
            return line == null ? "" : line.strip();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
