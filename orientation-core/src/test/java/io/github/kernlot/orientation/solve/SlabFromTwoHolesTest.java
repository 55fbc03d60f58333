package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SlabFromTwoHolesTest {

    private static Position pierced(
            double east, double north, double up, double azimuth, double plunge, double where, String givenAs) {
        double depth = givenAs.equals("altitudes") ? (up - where) / Math.sin(Math.toRadians(plunge)) : where;
        Displacement way =
                HolePath.straight(HoleDirection.ofPlunge(plunge, azimuth)).displacementAt(depth);
        return Position.ofEastingNorthingElevation(east, north, up).plus(way);
    }

    private static Intercept intercept(Position top, Position base, double sigma) {
        return Intercept.of(ContactPoint.of(top, sigma), ContactPoint.of(base, sigma));
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "two-skew-holes.csv", useHeadersInDisplayName = true)
    void twoHolesThroughASlabGiveItsPlaneAndThickness(
            String id,
            double eastA,
            double northA,
            double upA,
            double azimuthA,
            double plungeA,
            double topA,
            double baseA,
            double eastB,
            double northB,
            double upB,
            double azimuthB,
            double plungeB,
            double topB,
            double baseB,
            String givenAs,
            double dip,
            double dipDirection,
            double thickness,
            double alphaA,
            double alphaB,
            double lengthA,
            double lengthB) {
        Position topInA = pierced(eastA, northA, upA, azimuthA, plungeA, topA, givenAs);
        Position baseInA = pierced(eastA, northA, upA, azimuthA, plungeA, baseA, givenAs);
        Position topInB = pierced(eastB, northB, upB, azimuthB, plungeB, topB, givenAs);
        Position baseInB = pierced(eastB, northB, upB, azimuthB, plungeB, baseB, givenAs);
        SlabFromTwoHoles slab = SlabFromTwoHoles.of(intercept(topInA, baseInA, 0), intercept(topInB, baseInB, 0));
        assertEquals(dip, slab.plane().dip(), 0.0006);
        assertEquals(dipDirection, slab.plane().dipDirection(), 0.0006);
        assertEquals(thickness, slab.thickness(), 0.0006);
        assertEquals(0, slab.thicknessSigma());
        assertEquals(0, slab.estimate().greatestSigma());
        assertEquals(lengthA, baseInA.minus(topInA).length(), 0.0006);
        assertEquals(lengthB, baseInB.minus(topInB).length(), 0.0006);
        assertEquals(alphaA, Grid.alpha(slab.plane(), HoleDirection.ofPlunge(plungeA, azimuthA)), 0.0006);
        assertEquals(alphaB, Grid.alpha(slab.plane(), HoleDirection.ofPlunge(plungeB, azimuthB)), 0.0006);
        // the other hole shows the same thickness
        SlabFromTwoHoles turned = SlabFromTwoHoles.of(intercept(topInB, baseInB, 0), intercept(topInA, baseInA, 0));
        assertEquals(slab.thickness(), turned.thickness(), 1e-9);
    }

    @Test
    void theSigmasAreThoseOfSimulatedPoints() {
        double sigma = 0.5;
        Position[] places = {
            pierced(0, 0, 125, 45, 65, 105, "altitudes"),
            pierced(0, 0, 125, 45, 65, 40, "altitudes"),
            pierced(125, 0, 130, 225, 50, 85, "altitudes"),
            pierced(125, 0, 130, 225, 50, 70, "altitudes")
        };
        SlabFromTwoHoles slab =
                SlabFromTwoHoles.of(intercept(places[0], places[1], sigma), intercept(places[2], places[3], sigma));
        Vector withDip = Poles.withDip(slab.plane());
        Vector withDirection = Poles.withDipDirection(slab.plane());
        Random random = new Random(2);
        int runs = 20_000;
        double dip = 0;
        double strike = 0;
        double both = 0;
        double thick = 0;
        for (int run = 0; run < runs; run++) {
            Position[] noisy = new Position[4];
            for (int i = 0; i < 4; i++) {
                noisy[i] = Position.ofEastingNorthingElevation(
                        places[i].easting() + sigma * random.nextGaussian(),
                        places[i].northing() + sigma * random.nextGaussian(),
                        places[i].elevation() + sigma * random.nextGaussian());
            }
            SlabFromTwoHoles found =
                    SlabFromTwoHoles.of(intercept(noisy[0], noisy[1], 0), intercept(noisy[2], noisy[3], 0));
            Vector pole = Poles.normal(found.plane());
            double onDip = Math.toDegrees(pole.dot(withDip));
            double onStrike = Math.toDegrees(pole.dot(withDirection));
            dip += onDip * onDip / runs;
            strike += onStrike * onStrike / runs;
            both += onDip * onStrike / runs;
            thick += Math.pow(found.thickness() - slab.thickness(), 2) / runs;
        }
        assertEquals(Math.sqrt(dip), slab.estimate().dipSigma(), 0.03 * Math.sqrt(dip));
        assertEquals(Math.sqrt(strike), slab.estimate().strikeSigma(), 0.03 * Math.sqrt(strike));
        assertEquals(both / Math.sqrt(dip * strike), slab.estimate().correlation(), 0.03);
        assertEquals(Math.sqrt(thick), slab.thicknessSigma(), 0.03 * Math.sqrt(thick));
    }

    @Test
    void aSlabPrintsItsThickness() {
        // level: tops at 0, bases at -20, the lines from hole to hole crossing
        Position[] places = {
            Position.ofEastingNorthingElevation(0, 0, 0), Position.ofEastingNorthingElevation(0, 50, -20),
            Position.ofEastingNorthingElevation(100, 0, 0), Position.ofEastingNorthingElevation(0, 150, -20)
        };
        assertEquals(
                "0.0/000.0 (dip/dip direction), 20.00 m thick",
                SlabFromTwoHoles.of(intercept(places[0], places[1], 0), intercept(places[2], places[3], 0))
                        .toString());
        String uncertain = SlabFromTwoHoles.of(intercept(places[0], places[1], 1), intercept(places[2], places[3], 1))
                .toString();
        assertTrue(
                uncertain.matches(".* 20\\.00 m thick \\+- \\d\\.\\d\\d m, sigma of the pole up to 0\\.8"), uncertain);
    }

    @Test
    void parallelLinesFromHoleToHoleAreRefused() {
        Position a = Position.ofEastingNorthingElevation(0, 0, 0);
        Position b = Position.ofEastingNorthingElevation(100, 0, 10);
        Position below = Position.ofEastingNorthingElevation(0, 0, -20);
        Position belowB = Position.ofEastingNorthingElevation(100, 0, -10);
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> SlabFromTwoHoles.of(intercept(a, below, 1), intercept(b, belowB, 1)))
                .getMessage();
        assertTrue(message.startsWith("the line from top to top is parallel to that from base to base"), message);
        assertThrows(
                IllegalArgumentException.class,
                () -> SlabFromTwoHoles.of(intercept(a, below, 1), intercept(a, belowB, 1)));
    }
}
