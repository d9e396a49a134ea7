package dev.hingepoint.allowance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.valid.IsValidOp;

/** What we rely on in JTS 1.20.0: a newer version that behaves otherwise must fail here first. */
class JtsBehaviourTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static Polygon polygon(double... c) {
        Coordinate[] ring = new Coordinate[c.length / 2];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(c[2 * i], c[2 * i + 1]);
        }
        return FACTORY.createPolygon(ring);
    }

    @Test
    void aBowTieIsInvalidAndSaysWhere() {
        Polygon bowTie = polygon(0, 0, 10, 10, 10, 0, 0, 10, 0, 0);
        var error = new IsValidOp(bowTie).getValidationError();
        assertEquals(5, error.getCoordinate().x, 1e-12);
        assertFalse(bowTie.isValid());
    }

    /** jts 1109: the buffer of a polygon honours the mitre, OffsetCurve does not, so the oracle is the buffer. */
    @Test
    void aMitredBufferOfASquareHasFourCorners() {
        BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 10);
        mitred.setSimplifyFactor(0);
        var grown = new BufferOp(polygon(0, 0, 100, 0, 100, 100, 0, 100, 0, 0), mitred).getResultGeometry(10);
        assertEquals(5, grown.getNumPoints());
        assertEquals(120 * 120, grown.getArea(), 1e-9);
        assertTrue(grown.isValid());
    }
}
