package dev.hingepoint.svg.figure;

/** A place that a label names. Those of one view are not all those of another. */
enum Place {
    NECK,
    SHOULDER,
    SHOULDER_TIP,
    CAP,
    ARMHOLE,
    UNDERARM,
    UPPER_ARM,
    ELBOW,
    WRIST,
    CHEST,
    DART_TIP,
    BUST,
    SIDE,
    UPPER_BACK,
    WAIST,
    BACK_WAIST,
    ABDOMEN,
    HIP,
    SEAT,
    UNDER_SEAT,
    SIDE_SEAM,
    KNEE,
    HEM,
    FRONT_HEM,
    BACK_HEM
}
