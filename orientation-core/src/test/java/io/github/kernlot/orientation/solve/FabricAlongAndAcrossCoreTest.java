package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.Fabric;
import io.github.kernlot.orientation.line.FabricReading;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where a fabric tells the line but for half a turn, and where it tells nothing of it. */
class FabricAlongAndAcrossCoreTest {

    @Test
    void alongTheCoreTheLineIsKnownButForHalfATurn() {
        HoleDirection hole = HoleDirection.ofPlunge(60, 90);
        Fabric along = new Fabric(PlaneOrientation.ofDipAndDirection(90, 0), 4, 0.05);
        FabricLine line = FabricLine.of(
                HolePath.straight(hole), List.of(new FabricReading(10, CorePlane.of(1, 30), along, 2, 5)));
        assertEquals(2, line.modes().size());
        assertEquals(FabricLine.Standing.TWO_FOLD, line.standing(15));
        assertEquals(
                180,
                Math.abs(Degrees.wrap180(
                        line.modes().get(0).carriedAngle() - line.modes().get(1).carriedAngle())),
                1);
        assertTrue(line.sigma() > 60);
        assertTrue(line.reason(15).contains("opposite"), line.reason(15));
    }

    /** Wherever the line lies, one of two readings half a turn apart was read by the other end of the pole. */
    @Test
    void ofOppositeReadingsAlongTheCoreOneIsTurned() {
        // by hand: the pole 1 degree off with sigma^2 = 4^2 + 2^2 along, 4^2 + 5^2 round: 0.95 exp(-1 / 40) / (2 pi
        // sqrt(20 41)) = 5.150e-3 a square degree, of strays 0.05 / 20626.5 = 2.424e-6
        double near = 5150 / (5150 + 2.424);
        Fabric along = new Fabric(PlaneOrientation.ofDipAndDirection(90, 0), 4, 0.05);
        List<FabricWitness> witnesses = FabricLine.of(
                        HolePath.straight(HoleDirection.ofPlunge(60, 90)),
                        List.of(
                                new FabricReading(10, CorePlane.of(1, 30), along, 2, 5),
                                new FabricReading(10, CorePlane.of(1, 210), along, 2, 5)))
                .witnesses();
        double[] members = witnesses.stream()
                .mapToDouble(FabricWitness::memberProbability)
                .sorted()
                .toArray();
        double[] turned = witnesses.stream()
                .mapToDouble(FabricWitness::turnedProbability)
                .sorted()
                .toArray();
        assertArrayEquals(new double[] {0, near}, members, 1e-6);
        assertArrayEquals(new double[] {0, near}, turned, 1e-6);
    }

    @Test
    void acrossTheCoreTheFabricSaysNothing() {
        HoleDirection hole = HoleDirection.ofPlunge(60, 90);
        Fabric across = new Fabric(PlaneOrientation.ofDipAndDirection(30, 270), 5, 0);
        FabricLine line = FabricLine.of(
                HolePath.straight(hole), List.of(new FabricReading(10, CorePlane.of(86, 30), across, 2, 5)));
        assertEquals(FabricLine.Standing.UNORIENTED, line.standing(15));
        assertEquals(Double.POSITIVE_INFINITY, line.witnesses().get(0).sigma());
        assertTrue(line.sigma() > 80);
        assertTrue(line.reason(15).contains("90"), line.reason(15));
    }

    @Test
    void acrossTheCoreAlphaAloneTellsAStray() {
        // by hand: 16 degrees off with sigma^2 = 5^2 + 2^2: 0.9 exp(-256 / 58) / (2 pi sqrt(29) 5) = 6.444e-5 a square
        // degree, of strays 0.1 / 20626.5 = 4.848e-6
        HoleDirection hole = HoleDirection.ofPlunge(60, 90);
        Fabric across = new Fabric(PlaneOrientation.ofDipAndDirection(30, 270), 5, 0.1);
        FabricWitness witness = FabricLine.of(
                        HolePath.straight(hole), List.of(new FabricReading(10, CorePlane.of(74, 30), across, 2, 5)))
                .witnesses()
                .get(0);
        assertEquals(6.444 / (6.444 + 0.4848), witness.memberProbability(), 1e-4);
        assertEquals(0, witness.turnedProbability(), 1e-9);
        assertEquals(0.4848 / (6.444 + 0.4848), witness.strayProbability(), 1e-4);
    }
}
