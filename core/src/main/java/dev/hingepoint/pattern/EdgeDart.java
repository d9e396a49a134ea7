package dev.hingepoint.pattern;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;

/**
 * A dart from an edge to a tip.
 *
 * @param first from the edge to the tip
 * @param second from the tip to the edge
 */
public record EdgeDart(String name, Path first, Path second) implements Dart {
    public EdgeDart {
        if (!first.end().equals(second.start())) {
            throw new IllegalArgumentException("the legs of the dart " + name + " must meet at its tip");
        }
    }

    public static EdgeDart of(String name, Point leg, Point tip, Point otherLeg) {
        return new EdgeDart(name, Path.through(leg, tip), Path.through(tip, otherLeg));
    }

    public Point tip() {
        return first.end();
    }

    public Point mouthStart() {
        return first.start();
    }

    public Point mouthEnd() {
        return second.end();
    }

    public Point mouthMiddle() {
        return mouthStart().midpoint(mouthEnd());
    }

    /** The width in mm of the mouth. */
    public double intake() {
        return mouthStart().distanceTo(mouthEnd());
    }

    @Override
    public List<Path> legs() {
        return List.of(first, second);
    }

    @Override
    public List<Path> legsFromTip() {
        return List.of(first.reversed(), second);
    }

    /** The end of the leg that lies farther {@code down}. */
    public Point lowerLegEnd(Vector down) {
        return mouthEnd().minus(mouthStart()).dot(down) > 0 ? mouthEnd() : mouthStart();
    }

    /** The end of the leg that lies less far {@code down}. */
    public Point upperLegEnd(Vector down) {
        return mouthEnd().minus(mouthStart()).dot(down) > 0 ? mouthStart() : mouthEnd();
    }

    @Override
    public EdgeDart moved(Motion motion) {
        return new EdgeDart(name, first.moved(motion), second.moved(motion));
    }
}
