package dev.hingepoint.svg.print;

import dev.hingepoint.svg.file.Numbers;

/** Lengths as cloth is measured. */
final class Centimetres {
    private Centimetres() {}

    /** "140 cm", "91.4 cm": at most one decimal. */
    static String of(double mm) {
        return Numbers.of(mm / 10, 1) + " cm";
    }
}
