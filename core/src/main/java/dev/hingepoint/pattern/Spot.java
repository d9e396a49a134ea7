package dev.hingepoint.pattern;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;

/**
 * A place on the stitching line of one piece.
 *
 * @param position on the edge's path as drawn
 */
public record Spot(String edge, Position position, Point point) {}
