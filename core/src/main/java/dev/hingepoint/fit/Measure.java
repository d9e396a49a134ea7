package dev.hingepoint.fit;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A measurement of the body: its name in a body file, where the tape runs, and between which mm it lies on anybody who sews for herself
 * or another grown person (common practice, no source). Bust and waist girth are run as EN 13402-1 and ISO 8559-1 run them.
 */
public enum Measure {
    UPPER_BUST("upper bust", 550, 1700, "round the body, high under the arms and above the bust, level at the back"),
    FULL_BUST("full bust", 550, 1900, "round the body over the fullest part of the bust, level"),
    WAIST("waist", 400, 1900, "round the body midway between the lowest rib and the top of the hip bone, level"),
    HIGH_HIP("high hip", 450, 2000, "round the body over the hip bones, about 10 cm below the waist, level"),
    HIP("hip", 550, 2100, "round the body over the fullest part of the seat, level"),
    SHOULDER_TO_BUST_POINT("shoulder to bust point", 150, 450, "from the shoulder at the neck down to the bust point"),
    BUST_POINT_TO_BUST_POINT("bust point to bust point", 120, 350, "straight across from one bust point to the other"),
    BACK_WAIST_LENGTH(
            "back waist length", 280, 560, "from the bone at the nape down the middle of the back to the waist"),
    FRONT_WAIST_LENGTH(
            "front waist length", 280, 700, "from the shoulder at the neck over the bust point to the waist"),
    SIDE_LENGTH("side length", 110, 350, "from the armpit straight down to the waist"),
    SHOULDER("shoulder", 70, 220, "from the neck along the shoulder to its end"),
    BACK_WIDTH("back width", 220, 600, "across the back from arm to arm, half way between shoulder and armpit"),
    UPPER_ARM("upper arm", 180, 650, "round the arm at its fullest, arm hanging"),
    ARM_LENGTH("arm length", 400, 800, "from the end of the shoulder over the bent elbow to the wrist bone"),
    HEAD_GIRTH("head girth", 480, 680, "round the head over brow and crown, at its fullest"),
    HEIGHT("height", 1200, 2200, "from the floor to the top of the head, without shoes"),
    WAIST_TO_KNEE("waist to knee", 380, 850, "at the side, from the waist to the middle of the knee");

    private final String words;
    private final double least;
    private final double most;
    private final String runs;

    Measure(String words, double least, double most, String runs) {
        this.words = words;
        this.least = least;
        this.most = most;
        this.runs = runs;
    }

    /** The name in a body file and in a card's chart. */
    public String words() {
        return words;
    }

    /** Where the tape runs. */
    public String runs() {
        return runs;
    }

    /** The least in mm that is plausible. */
    public double least() {
        return least;
    }

    /** The most in mm that is plausible. */
    public double most() {
        return most;
    }

    boolean isPlausible(double mm) {
        return mm >= least && mm <= most;
    }

    public static Optional<Measure> named(String words) {
        return Stream.of(values())
                .filter(measure -> measure.words.equals(words))
                .findFirst();
    }
}
