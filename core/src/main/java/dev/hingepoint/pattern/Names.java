package dev.hingepoint.pattern;

/** The names of edges, levels and points that alterations look for, as the pattern file fixes them. */
public final class Names {
    public static final String CENTRE_FRONT = "centre front";
    public static final String CENTRE_BACK = "centre back";
    public static final String NECKLINE = "neckline";
    public static final String SHOULDER = "shoulder";
    public static final String ARMHOLE = "armhole";
    public static final String SIDE_SEAM = "side seam";
    public static final String HEM = "hem";
    public static final String CAP = "cap";

    public static final String BUST = "bust";
    public static final String WAIST = "waist";
    public static final String HIGH_HIP = "high hip";
    public static final String HIP = "hip";

    public static final String BUST_APEX = "bust apex";

    private Names() {}
}
