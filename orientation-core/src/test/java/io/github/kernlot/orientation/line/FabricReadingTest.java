package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FabricReadingTest {

    private static final HolePath PATH = HolePath.straight(HoleDirection.ofDip(-60, 90));
    private static final LineModel MODEL = LineModel.assumed();
    private static final PlaneOrientation BEDDING = PlaneOrientation.ofDipAndDirection(55, 120);
    private static final Fabric FABRIC = new Fabric(BEDDING, 4, Fabric.ASSUMED_STRAY);
    private static final CoreDiameter CORE = CoreDiameter.ofMillimetres(63.5);
    private static final double LINE = 70;

    private static FabricReading reading(double depth, PlaneOrientation plane, Fabric fabric) {
        CorePlane read = CoreFrame.at(PATH.directionAt(depth), LINE).toCore(plane);
        return new FabricReading(depth, read, fabric, 2, 5);
    }

    /** Structures of the set, scattered as much as the set says, read without error. */
    private static List<FabricReading> readings(int count, Random random) {
        List<FabricReading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(
                    55 + 4 * random.nextGaussian(), 120 + 4 * random.nextGaussian() / Math.sin(Math.toRadians(55)));
            readings.add(reading(10 + i, plane, FABRIC));
        }
        return readings;
    }

    private static OrientationMark mark(double depth, double lineAngle) {
        return OrientationMark.of(depth, Degrees.wrap360(-lineAngle), CORE);
    }

    @Test
    void aReadingPrintsWithItsSet() {
        assertEquals(
                "alpha 41.0, beta 213.0 at 10.00 m of the set 55.0/120.0 (dip/dip direction), scatter 4.0, stray 10 %",
                new FabricReading(10, CorePlane.of(41, 213), FABRIC, 2, 5).toString());
    }

    @Test
    void aKnownFabricOrientsCoreWithoutAMark() {
        ReferenceLine bare = MODEL.reconcile(PATH, List.of(), List.of());
        assertTrue(bare.at(20).isEmpty());

        LinePosterior line =
                bare.withWitnesses(readings(20, new Random(4))).at(20).orElseThrow();

        assertEquals(LINE, line.mean(), 3 * line.sigma());
        assertTrue(line.sigma() < 4, line.toString());
    }

    @Test
    void aFabricTellsWhichOfTwoOppositeMarksIsFlipped() {
        List<OrientationMark> marks = List.of(mark(10, LINE), mark(12, LINE + 180));
        ReferenceLine bare = MODEL.reconcile(PATH, marks, List.of());
        assertEquals(2, bare.at(11).orElseThrow().modes().size());

        ReferenceLine witnessed = bare.withWitnesses(readings(5, new Random(2)));

        assertEquals(MarkPosterior.Verdict.SOUND, witnessed.marks().get(0).verdict());
        assertEquals(MarkPosterior.Verdict.FLIPPED, witnessed.marks().get(1).verdict());
        assertEquals(2, witnessed.marks().size());
        assertEquals(2, witnessed.influences(11).size());
    }

    @Test
    void theLikelihoodIsThatOfPolesScatteredOnTheSphere() {
        // one reading without error of reading: the fabric's density at the pole that each line angle gives
        CorePlane read = CorePlane.of(38, 25);
        Fabric fabric = new Fabric(BEDDING, 4, 0);
        LinePosterior line = MODEL.withNoise(new MarkNoise(1, 1, 1, 1, 0))
                .reconcile(PATH, List.of(), List.of())
                .withWitnesses(List.of(new FabricReading(30, read, fabric, 0, 0)))
                .at(30)
                .orElseThrow();
        double cosine = 0;
        double sine = 0;
        for (double angle = 0; angle < 360; angle += 0.25) {
            double apart =
                    CoreFrame.at(PATH.directionAt(30), angle).toGeographic(read).angleTo(BEDDING);
            double weight = Math.exp(-apart * apart / (2 * 16));
            cosine += weight * Degrees.cos(angle);
            sine += weight * Degrees.sin(angle);
        }
        assertEquals(0, Degrees.wrap180(line.mean() - Degrees.azimuth(sine, cosine)), 0.2);
    }

    @Test
    void aStructureNearlySquareToTheCoreSaysNothing() {
        HolePath along = HolePath.straight(HoleDirection.ofDip(-35, 300));
        Fabric square = new Fabric(BEDDING, 4, 0.1);
        ReferenceLine bare = MODEL.reconcile(along, List.of(mark(10, 20), mark(12, 22)), List.of());
        CorePlane read = CorePlane.of(89.9, 200);

        LinePosterior witnessed = bare.withWitnesses(List.of(new FabricReading(11, read, square, 2, 5)))
                .at(11)
                .orElseThrow();

        assertEquals(bare.at(11).orElseThrow().mean(), witnessed.mean(), 1e-6);
        assertEquals(bare.at(11).orElseThrow().sigma(), witnessed.sigma(), 1e-3);
    }

    @Test
    void aStructureAlongTheCoreLeavesTwoOppositeAngles() {
        HolePath strike = HolePath.straight(HoleDirection.ofDip(0, 30));
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(55, 120);
        CorePlane read = CoreFrame.at(strike.directionAt(5), LINE).toCore(plane);
        assertEquals(0, read.alpha(), 1e-9);

        List<LineMode> modes = MODEL.reconcile(strike, List.of(), List.of())
                .withWitnesses(List.of(new FabricReading(5, read, new Fabric(plane, 4, 0.1), 2, 5)))
                .at(5)
                .orElseThrow()
                .modes();

        assertEquals(modes.get(0).weight(), modes.get(1).weight(), 1e-6);
        assertEquals(
                180,
                Math.abs(Degrees.wrap180(modes.get(0).angle() - modes.get(1).angle())),
                0.1);
    }

    @Test
    void aStrayWithAnotherAlphaIsNotBelieved() {
        ReferenceLine bare = MODEL.reconcile(PATH, List.of(mark(10, LINE), mark(12, LINE)), List.of());
        CorePlane read = CoreFrame.at(PATH.directionAt(11), LINE).toCore(BEDDING);
        CorePlane stray = CorePlane.of(Math.min(90, read.alpha() + 35), (read.beta() + 60) % 360);

        LinePosterior witnessed = bare.withWitnesses(List.of(new FabricReading(11, stray, FABRIC, 2, 5)))
                .at(11)
                .orElseThrow();

        assertEquals(bare.at(11).orElseThrow().mean(), witnessed.mean(), 0.01);
    }

    @Test
    void aFabricIsEstimatedFromOrientedPlanes() {
        List<PlaneOrientation> planes = List.of(
                PlaneOrientation.ofDipAndDirection(60, 100),
                PlaneOrientation.ofDipAndDirection(50, 100),
                PlaneOrientation.ofDipAndDirection(55, 100 + 5 / Math.sin(Math.toRadians(55))),
                PlaneOrientation.ofDipAndDirection(55, 100 - 5 / Math.sin(Math.toRadians(55))));

        Fabric fabric = Fabric.of(planes, 0.05);

        assertEquals(0, fabric.mean().angleTo(PlaneOrientation.ofDipAndDirection(55, 100)), 0.2);
        // each of two directions has the mean square (25 + 25) / 4
        assertEquals(Math.sqrt(12.5), fabric.sigma(), 0.05);
        assertEquals("54.9/100.0 (dip/dip direction), scatter 3.5, stray 5 %", fabric.toString());
        assertThrows(IllegalArgumentException.class, () -> Fabric.of(planes.subList(0, 2), 0.05));
        assertEquals(0.5, Fabric.of(List.of(BEDDING, BEDDING, BEDDING), 0).sigma());
    }

    @Test
    void whatCannotBeAWitnessIsRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new FabricReading(5, CorePlane.perpendicular(), FABRIC, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> new FabricReading(5, CorePlane.of(40, 0), FABRIC, -1, 5));
        assertThrows(IllegalArgumentException.class, () -> new Fabric(BEDDING, 0, 0.1));
        assertThrows(IllegalArgumentException.class, () -> new Fabric(BEDDING, 4, 1));
    }
}
