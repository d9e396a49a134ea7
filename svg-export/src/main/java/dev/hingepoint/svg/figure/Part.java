package dev.hingepoint.svg.figure;

/** What of a body, or of the dress on it, can differ from the average figure, by how many heads (the head's height is the unit that figures are drawn in). */
enum Part {
    /** Of the body: the tip of the shoulder lies higher. */
    SHOULDER_RISE,
    /** It lies farther out. */
    SHOULDER_BREADTH,
    /** It lies farther forward. */
    SHOULDER_FORWARD,
    /** The upper back is rounder, the neck with it farther forward. */
    UPPER_BACK,
    BUST,
    /** The bust point lies lower. */
    BUST_DROP,
    BACK_HOLLOW,
    /** The waist lies lower. */
    WAIST_DROP,
    ABDOMEN,
    SEAT,
    HIP,
    UPPER_ARM,
    /** Of the dress: the neckline lies lower at the centre. */
    NECK_LOW,
    NECK_WIDE,
    /** The neckline has slipped down the back. */
    NECK_SLIPPED,
    /** The armhole lies farther out than the shoulder's tip. */
    ARMHOLE_OUT,
    /** The armhole lies lower at the underarm. */
    UNDERARM_DROP,
    /** The shoulder seam lies farther back at its tip. */
    SHOULDER_SEAM_BACK,
    /** The side dart lies lower. */
    DART_DROP,
    /** It reaches farther. */
    DART_REACH,
    DART_LEFT_OUT,
    /** There is a dart from the shoulder, of so much. */
    SHOULDER_DART,
    SLEEVE_LENGTH,
    SLEEVE_HEM_WIDTH,
    WAIST_SEAM_DROP,
    /** The side seam stands out at the hip only. */
    HIP_BULGE,
    /** The skirt is wider below the hip than the body. */
    SKIRT_LOOSE,
    SKIRT_WIDTH,
    SKIRT_LENGTH,
    /** The hem is drawn up at the front. */
    HEM_UP_FRONT,
    /** The hem is drawn up at the back. */
    HEM_UP_BACK,
    /** Cloth stands off the back waist in rolls. */
    BACK_ROLLS,
    /** The side seam swings to the back at the hem; to the front where negative. */
    SIDE_SEAM_BACK
}
