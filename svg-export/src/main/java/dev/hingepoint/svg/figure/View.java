package dev.hingepoint.svg.figure;

/** From where a figure is seen. */
enum View {
    FRONT,
    BACK,
    /** From the side, the back to the labels. */
    SIDE_BACK,
    /** From the side, the front to the labels. */
    SIDE_FRONT;

    boolean isSide() {
        return this == SIDE_BACK || this == SIDE_FRONT;
    }
}
