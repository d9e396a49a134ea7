package dev.hingepoint.svg.page;

/** What belongs together on paper, and can be shown or hidden as one where a reader of the file can do that. */
public enum Layer {
    /** Parts of the paper, under everything else. */
    PARTS("parts"),
    GRID("grid"),
    ORIGINAL("original lines"),
    STITCHING("stitching lines"),
    MARKS("darts, notches, levels and grain"),
    CUTTING("cutting lines"),
    /** What is done to the paper in one step: slashes, hinges, ways that parts go. */
    STEP("the step"),
    FIGURE("figures"),
    LABELS("labels"),
    /** Test squares, and what a page says of itself: its name, how it is joined. */
    PAGE("pages and how they join");

    private final String words;

    Layer(String words) {
        this.words = words;
    }

    /** Its name, for a person. */
    public String words() {
        return words;
    }

    /** Its name in a file, as one word: "stitching-lines". */
    public String id() {
        return words.replaceAll("[^a-z]+", "-");
    }
}
