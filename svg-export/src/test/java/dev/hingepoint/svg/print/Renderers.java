package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * Programs of the machine that draw or print what the library writes. A test that needs one is skipped on a machine without it, and
 * fails there where {@code HINGEPOINT_RENDERERS=required} says that it is meant to be there.
 */
public final class Renderers {
    private static final int DPI = 300;

    private Renderers() {}

    public static void need(String... programs) {
        for (String program : programs) {
            boolean isThere = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
            if ("required".equals(System.getenv("HINGEPOINT_RENDERERS"))) {
                assertTrue(isThere, program + " is not installed");
            }
            assumeTrue(isThere, program + " is not installed: this check is left out");
        }
    }

    /** @return what the program printed */
    public static String run(String... command) throws IOException, InterruptedException {
        Path log = Files.createTempFile("renderer", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = process.waitFor(120, TimeUnit.SECONDS);
        process.destroyForcibly();
        String said = Files.readString(log);
        Files.delete(log);
        assertTrue(ended && process.exitValue() == 0, List.of(command) + ": " + said);
        return said;
    }

    /** What a browser prints of a page. */
    static Path printedByChromium(Path svg) throws IOException, InterruptedException {
        Path pdf = svg.resolveSibling(svg.getFileName() + ".pdf");
        Path profile = Files.createTempDirectory("profile");
        run(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + profile,
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                svg.toUri().toString());
        delete(profile);
        return pdf;
    }

    /** With all that is in it. */
    public static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** The first page of a PDF at 300 dpi. */
    static BufferedImage drawnByPoppler(Path pdf) throws IOException, InterruptedException {
        String stem = pdf.toString().replaceFirst("\\.pdf$", "");
        run("pdftoppm", "-r", "" + DPI, "-png", "-singlefile", pdf.toString(), stem);
        return ImageIO.read(Path.of(stem + ".png").toFile());
    }

    static BufferedImage drawnByLibrsvg(Path svg) throws IOException, InterruptedException {
        Path png = svg.resolveSibling(svg.getFileName() + ".png");
        run(
                "rsvg-convert",
                "--dpi-x=" + DPI,
                "--dpi-y=" + DPI,
                "--background-color=white",
                svg.toString(),
                "-o",
                png.toString());
        return ImageIO.read(png.toFile());
    }

    /** What part of the dark dots of one picture has no dot within 3 of it (0.25 mm) in the other that is not white. */
    static double inkBeyond(BufferedImage one, BufferedImage other) {
        int reach = 3;
        long dark = 0;
        long beyond = 0;
        for (int y = reach; y < Math.min(one.getHeight(), other.getHeight()) - reach; y++) {
            for (int x = reach; x < Math.min(one.getWidth(), other.getWidth()) - reach; x++) {
                if (ink(one.getRGB(x, y)) > 200) {
                    dark++;
                    beyond += hasInk(other, x, y, reach) ? 0 : 1;
                }
            }
        }
        assertTrue(dark > 100, "nothing is drawn");
        return (double) beyond / dark;
    }

    private static boolean hasInk(BufferedImage image, int x, int y, int reach) {
        for (int i = x - reach; i <= x + reach; i++) {
            for (int j = y - reach; j <= y + reach; j++) {
                if (ink(image.getRGB(i, j)) > 50) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double ink(int rgb) {
        return 255 - ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 3.0;
    }

    /** How far apart in mm two upright strokes stand that should be at {@code left} and {@code right} mm, on the row at {@code y} mm. */
    static double across(BufferedImage image, double left, double right, double y) {
        return strokeAt(image, right, y, true) - strokeAt(image, left, y, true);
    }

    /** How far apart in mm two level strokes stand that should be at {@code top} and {@code bottom} mm, on the column at {@code x} mm. */
    static double down(BufferedImage image, double top, double bottom, double x) {
        return strokeAt(image, bottom, x, false) - strokeAt(image, top, x, false);
    }

    /** The middle of the ink within 2 mm, in mm along the row or column, weighted by its darkness. */
    private static double strokeAt(BufferedImage image, double expected, double beside, boolean isRow) {
        double sum = 0;
        double weighted = 0;
        for (int i = pixel(expected - 2); i <= pixel(expected + 2); i++) {
            int rgb = isRow ? image.getRGB(i, pixel(beside)) : image.getRGB(pixel(beside), i);
            double ink = ink(rgb);
            sum += ink;
            weighted += ink * (i + 0.5);
        }
        assertTrue(sum > 100, "no stroke near " + expected + " mm");
        return weighted / sum * 25.4 / DPI;
    }

    private static int pixel(double mm) {
        return (int) Math.floor(mm / 25.4 * DPI);
    }
}
