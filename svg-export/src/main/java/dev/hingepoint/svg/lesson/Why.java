package dev.hingepoint.svg.lesson;

/** What on a body calls for an alteration. */
public record Why(String calledForBy) {}
