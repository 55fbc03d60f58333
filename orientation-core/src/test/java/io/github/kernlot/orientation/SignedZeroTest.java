package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** A negative zero neither comes out nor chooses a side. */
class SignedZeroTest {

    @Test
    void aNegativeZeroThatGoesInComesOutAsZero() {
        allZero(
                HoleDirection.ofInclination(-0.0, -0.0).inclination(),
                HoleDirection.ofInclination(-0.0, -0.0).azimuth(),
                HoleDirection.ofDip(-0.0, 0).dip(),
                HoleDirection.ofPlunge(-0.0, 0).plunge(),
                PlaneOrientation.ofDipAndDirection(-0.0, -0.0).dip(),
                PlaneOrientation.ofDipAndDirection(-0.0, -0.0).dipDirection(),
                LineOrientation.ofPlungeAndTrend(-0.0, -0.0).plunge(),
                LineOrientation.ofPlungeAndTrend(-0.0, -0.0).trend(),
                LineOrientation.ofPlungeAndTrend(0, 10).apparentPlunge(190),
                CorePlane.of(-0.0, -0.0).alpha(),
                CorePlane.of(-0.0, -0.0).beta(),
                CorePlane.of(30, 0).line(-0.0).gamma(),
                CoreLine.ofAxisAngleAndDelta(-0.0, -0.0).axisAngle(),
                CoreLine.ofAxisAngleAndDelta(-0.0, -0.0).delta(),
                BetaConvention.HOUSE.toHouse(-0.0),
                new BetaConvention(
                                BetaConvention.Sense.ANTICLOCKWISE,
                                BetaConvention.View.DOWN_HOLE,
                                BetaConvention.Apex.DOWN_HOLE)
                        .toHouse(0),
                new Displacement(-0.0, -0.0, -0.0).north(),
                new Displacement(-0.0, -0.0, -0.0).east(),
                new Displacement(-0.0, -0.0, -0.0).down(),
                Position.ofEastingNorthingElevation(-0.0, -0.0, -0.0).easting(),
                Position.ofEastingNorthingElevation(-0.0, -0.0, -0.0).northing(),
                Position.ofEastingNorthingElevation(-0.0, -0.0, -0.0).elevation(),
                CoreDiameter.ofMillimetres(63.5).toDegrees(-0.0),
                CoreDiameter.ofMillimetres(63.5).toMillimetres(-0.0));
    }

    @Test
    void theComponentsOfADirectionAreNeverNegativeZero() {
        for (double azimuth : new double[] {0, 90, 180, 200, 270, 359}) {
            allZero(
                    HoleDirection.ofInclination(0, azimuth).north(),
                    HoleDirection.ofInclination(0, azimuth).east(),
                    HoleDirection.ofInclination(180, azimuth).north(),
                    HoleDirection.ofInclination(180, azimuth).east(),
                    HoleDirection.ofInclination(90, azimuth).down());
        }
    }

    @Test
    void aVerticalVectorHasAzimuthNoughtWhateverTheSignsOfItsZeros() {
        for (double zero : new double[] {0.0, -0.0}) {
            assertEquals(HoleDirection.ofInclination(0, 0), HoleDirection.ofVector(zero, -0.0, 7));
            assertEquals(HoleDirection.ofInclination(180, 0), HoleDirection.ofVector(-0.0, zero, -7));
        }
    }

    @Test
    void theAzimuthOfAVerticalHoleLeavesNoTraceInAFrame() {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(0, 0), WallReference.north(), 20);
        for (double azimuth : new double[] {90, 180, 200, 270}) {
            CoreFrame same = CoreFrame.at(HoleDirection.ofInclination(0, azimuth), WallReference.north(), 20);
            assertEquals(frame, same);
            assertEquals(frame.hashCode(), same.hashCode());
            assertEquals(0.0, same.direction().azimuth());
        }
    }

    private static void allZero(double... values) {
        DoubleStream.of(values).forEach(value -> assertEquals(0.0, value)); // tells 0.0 from -0.0
    }
}
