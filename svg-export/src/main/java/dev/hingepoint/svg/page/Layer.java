package dev.hingepoint.svg.page;

/** What belongs together on paper, and can be shown or hidden as one where a reader of the file can do that. */
public enum Layer {
    /** Squares of a grid, under everything else. */
    GRID("grid"),
    ORIGINAL("original lines"),
    STITCHING("stitching lines"),
    MARKS("darts, notches, levels and grain"),
    CUTTING("cutting lines"),
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
}
