package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.line.Fabric;
import io.github.kernlot.orientation.line.FabricReading;
import io.github.kernlot.orientation.line.LineAngle;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.orientation.line.MarkNoise;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FabricLineTest {

    private static final HoleDirection HOLE = HoleDirection.ofPlunge(62, 215);
    private static final HolePath PATH = HolePath.straight(HOLE);
    private static final PlaneOrientation MEAN = PlaneOrientation.ofDipAndDirection(68, 74);

    private static FabricReading reading(Fabric fabric, double alpha, double beta) {
        return new FabricReading(100, CorePlane.of(alpha, beta), fabric, 2, 5);
    }

    /** A reading of a structure of a fabric on core whose line lies at an angle from the low side of a straight hole. */
    private static FabricReading simulated(Fabric fabric, HoleDirection hole, double line, Random random) {
        Vector pole = Poles.normal(fabric.mean());
        Vector off = Poles.withDip(fabric.mean())
                .times(Math.toRadians(fabric.sigma()) * random.nextGaussian())
                .plus(Poles.withDipDirection(fabric.mean())
                        .times(Math.toRadians(fabric.sigma()) * random.nextGaussian()));
        CorePlane shown = CoreFrame.at(hole, line).toCore(Poles.plane(pole.plus(off)));
        double alpha = shown.alpha() + 2 * random.nextGaussian();
        double beta = shown.beta() + 5 * random.nextGaussian();
        double folded = alpha > 90 ? 180 - alpha : Math.abs(alpha);
        double turn = alpha < 0 || alpha > 90 ? 180 : 0;
        return new FabricReading(
                100, CorePlane.of(Math.min(folded, 89.999), Degrees.wrap360(beta + turn)), fabric, 2, 5);
    }

    @Test
    void aFabricOrientsTheVeinBesideIt() {
        // source: derived and checked numerically by another program: hole 215/62, fabric 074/68 (alpha 41.993, beta
        // 51.728), readings
        // 42/265 and 45/97: offset 146.728, vein 310.01/39.53
        FabricLine line = FabricLine.of(PATH, List.of(reading(new Fabric(MEAN, 5, 0), 42, 265)));
        CorePlane shown = CoreFrame.at(HOLE, 0).toCore(MEAN);
        assertEquals(41.993, shown.alpha(), 0.0006);
        assertEquals(51.728, shown.beta(), 0.0006);
        assertEquals(146.728, line.lineAt(100, WallReference.lowSide()).mean(), 0.0006);
        PlaneOrientation vein = line.frameAt(100).toGeographic(CorePlane.of(45, 97));
        assertEquals(39.53, vein.dip(), 0.006);
        assertEquals(310.01, vein.dipDirection(), 0.006);
        FabricWitness witness = line.witnesses().get(0);
        assertEquals(0.007, witness.alphaMisfit(), 0.0006);
        assertEquals(0, witness.residual(), 1e-6);
        assertEquals(Math.hypot(5 / Math.cos(Math.toRadians(41.993)), 5), witness.sigma(), 1e-4);
        assertEquals(1, witness.memberProbability(), 1e-9);
        assertEquals(FabricLine.Standing.ORIENTED, line.standing(15));
        assertEquals(FabricLine.Standing.UNORIENTED, line.standing(5));
    }

    @ParameterizedTest
    @CsvSource({"5, 2", "15, 2", "30, 2", "30, 5"})
    void anErrorOfBetaTurnsThePoleRoundTheCoreHoweverWide(double betaSigma, double scatter) {
        // what a rotation by a normal error leaves of one reading whose alpha is that of the fabric: hypot(scatter /
        // cos(alpha), beta sigma)
        double alpha = CoreFrame.at(HOLE, 0).toCore(MEAN).alpha();
        FabricReading reading =
                new FabricReading(100, CorePlane.of(alpha, 265), new Fabric(MEAN, scatter, 0), 1, betaSigma);
        double expected = Math.hypot(scatter / Math.cos(Math.toRadians(alpha)), betaSigma);
        assertEquals(expected, FabricLine.of(PATH, List.of(reading)).sigma(), 1e-3 * expected);
    }

    @Test
    void placesThatUnderflowAreNoPlaces() {
        Fabric fabric = new Fabric(MEAN, 3, 0);
        List<FabricReading> readings = List.of(
                new FabricReading(100, CorePlane.of(45, 60), fabric, 1, 2),
                new FabricReading(101, CorePlane.of(41, 55), fabric, 1, 2));
        List<FabricLineMode> modes = FabricLine.of(PATH, readings).modes();
        assertEquals(1, modes.size(), modes::toString);
        assertEquals(1, modes.get(0).weight(), 1e-9);
    }

    @Test
    void aTopThatIsLevelAcrossNorthHidesNoOtherPlace() {
        // by the symmetry of a vertical hole all lines turn with beta; at 0.125 the line is as probable at 0 as at
        // 359.75
        HolePath vertical = HolePath.straight(HoleDirection.ofInclination(0, 0));
        Fabric fabric = new Fabric(PlaneOrientation.ofDipAndDirection(88, 0), 5, 0.1);
        List<FabricLineMode> level = FabricLine.of(
                        vertical, List.of(new FabricReading(1, CorePlane.of(2, 0.125), fabric, 1, 2)))
                .modes();
        List<FabricLineMode> turned = FabricLine.of(
                        vertical, List.of(new FabricReading(1, CorePlane.of(2, 10.125), fabric, 1, 2)))
                .modes();
        assertEquals(2, level.size());
        assertEquals(2, turned.size());
        for (int i = 0; i < 2; i++) {
            assertEquals(turned.get(i).weight(), level.get(i).weight(), 1e-6);
            assertEquals(turned.get(i).sigma(), level.get(i).sigma(), 1e-3);
        }
    }

    /**
     * The same readings as witnesses of a line without a mark: that sums alphas and betas apart, this scatters poles on the sphere. Where
     * the fabric is tight and not near alpha 0 or 90 both must say the same.
     */
    @ParameterizedTest
    @CsvSource({"1, 25", "1, 45", "1, 60", "12, 25", "12, 45", "12, 60"})
    void aLineWithoutAMarkIsOrientedAlike(int count, double alpha) {
        Random random = new Random(11);
        Fabric fabric = new Fabric(CoreFrame.at(HOLE, 40).toGeographic(CorePlane.of(alpha, 200)), 3, 0.05);
        List<FabricReading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            readings.add(simulated(fabric, HOLE, 130, random));
        }
        LineAngle sphere = FabricLine.of(PATH, readings).lineAt(100, WallReference.lowSide());
        // no error that marks share
        LinePosterior line = LineModel.assumed()
                .withNoise(new MarkNoise(1, 2, 0.5, 1, 0))
                .reconcile(PATH, List.of(), List.of())
                .withWitnesses(readings)
                .at(100)
                .orElseThrow();
        assertEquals(0, Degrees.wrap180(sphere.mean() - line.mean()), 0.1 * line.sigma());
        assertEquals(sphere.sigma(), line.sigma(), 0.05 * line.sigma());
    }

    @Test
    void theSigmaIsThatOfTheScatterOverTheCosineOfAlpha() {
        FabricLine line = FabricLine.of(PATH, List.of(reading(new Fabric(MEAN, 2, 0), 42, 265)));
        assertEquals(line.witnesses().get(0).sigma(), line.sigma(), 0.02 * line.sigma());
    }

    @Test
    void severalReadingsCountByTheirPrecision() {
        // two fabrics: the one that lies along the core says more of the line
        Fabric sharp = new Fabric(PlaneOrientation.ofDipAndDirection(62, 215), 4, 0);
        Fabric blunt = new Fabric(MEAN, 4, 0);
        double alpha = CoreFrame.at(HOLE, 0).toCore(sharp.mean()).alpha();
        double beta = CoreFrame.at(HOLE, 0).toCore(sharp.mean()).beta();
        CorePlane other = CoreFrame.at(HOLE, 0).toCore(MEAN);
        double first = Math.pow(Math.hypot(4 / Math.cos(Math.toRadians(alpha)), 5), -2);
        double second = Math.pow(Math.hypot(4 / Math.cos(Math.toRadians(other.alpha())), 5), -2);
        FabricLine line = FabricLine.of(
                PATH,
                List.of(
                        reading(sharp, alpha, Degrees.wrap360(beta - 50)),
                        reading(blunt, other.alpha(), Degrees.wrap360(other.beta() - 54))));
        assertEquals(
                (50 * first + 54 * second) / (first + second),
                line.lineAt(100, WallReference.lowSide()).mean(),
                0.05);
        assertEquals(1 / Math.sqrt(first + second), line.modes().get(0).sigma(), 0.1);
    }

    @Test
    void theErrorOfTheFabricItselfDoesNotAverageOut() {
        Fabric fabric = new Fabric(MEAN, 3, 0);
        List<FabricReading> many = Collections.nCopies(400, reading(fabric, 42, 265));
        double alone = FabricLine.of(PATH, many).sigma();
        double shared = FabricLine.of(PATH, many, 2).sigma();
        assertTrue(alone < 0.4);
        assertEquals(Math.hypot(alone, 2 / Math.cos(Math.toRadians(41.993))), shared, 1e-3);
    }

    /** Two must be strays, whichever: the places weigh as exp(-z^2 / 2) of their alphas, 3 and 5 degrees off with sigma^2 = 3^2 + 2^2. */
    @Test
    void readingsThatContradictEachOtherLeaveOnePlaceEach() {
        Fabric fabric = new Fabric(MEAN, 3, 0.001);
        CorePlane shown = PATH.carriedFrameAt(100).toCore(MEAN);
        List<FabricReading> readings = List.of(
                reading(fabric, shown.alpha() - 5, Degrees.wrap360(shown.beta() - 20)),
                reading(fabric, shown.alpha(), Degrees.wrap360(shown.beta() - 140)),
                reading(fabric, shown.alpha() + 3, Degrees.wrap360(shown.beta() - 260)));
        FabricLine line = FabricLine.of(PATH, readings);
        List<FabricLineMode> modes = line.modes();
        double off3 = Math.exp(-9 / 26.0);
        double off5 = Math.exp(-25 / 26.0);
        double[] angles = {140, 260, 20};
        double[] weights = {1, off3, off5};
        assertEquals(3, modes.size());
        for (int i = 0; i < 3; i++) {
            assertEquals(angles[i], modes.get(i).carriedAngle(), 0.1);
            assertEquals(weights[i] / (1 + off3 + off5), modes.get(i).weight(), 0.01);
            assertEquals(line.witnesses().get(0).sigma(), modes.get(i).sigma(), 0.5);
        }
        assertEquals(1, modes.stream().mapToDouble(FabricLineMode::weight).sum(), 1e-9);
        assertEquals(FabricLine.Standing.UNORIENTED, line.standing(15));
        assertEquals("the readings leave several places for the line", line.reason(15));
    }

    @Test
    void alphasThatDoNotFitAreTold() {
        FabricLine line = FabricLine.of(PATH, List.of(reading(new Fabric(MEAN, 3, 0.1), 75, 265)));
        assertTrue(line.witnesses().get(0).alphaMisfitSigmas() > 3);
        assertTrue(line.witnesses().get(0).strayProbability() > 0.9);
        assertEquals(FabricLine.Standing.UNORIENTED, line.standing(15));
        assertTrue(line.reason(15).contains("1 of 1 alphas"), line.reason(15));
    }

    @Test
    void aStrayIsOutvoted() {
        Fabric fabric = new Fabric(MEAN, 3, 0.1);
        FabricLine line = FabricLine.of(
                PATH,
                List.of(
                        reading(fabric, 41, 263),
                        reading(fabric, 43, 266),
                        reading(fabric, 42, 264),
                        reading(fabric, 44, 130)));
        assertEquals(146.728, line.lineAt(100, WallReference.lowSide()).mean(), 3);
        assertEquals(FabricLine.Standing.ORIENTED, line.standing(15));
        assertTrue(line.witnesses().get(3).strayProbability() > 0.99);
    }

    @Test
    void theLineIsWithinItsSigmaAsOftenAsItShould() {
        Random random = new Random(6);
        HoleDirection hole = HoleDirection.ofPlunge(-40, 300);
        Fabric fabric = new Fabric(PlaneOrientation.ofDipAndDirection(50, 200), 5, 0);
        int within = 0;
        int runs = 400;
        for (int run = 0; run < runs; run++) {
            double truth = 360 * random.nextDouble();
            List<FabricReading> readings = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                readings.add(simulated(fabric, hole, truth, random));
            }
            FabricLine line = FabricLine.of(HolePath.straight(hole), readings);
            double off = Math.abs(
                    Degrees.wrap180(line.lineAt(100, WallReference.lowSide()).mean() - truth));
            within += off < 1.96 * line.sigma() ? 1 : 0;
        }
        assertEquals(0.95, within / (double) runs, 0.035);
    }

    @Test
    void theFrameFollowsTheCarriedFrameOfTheHole() {
        FabricLine line = FabricLine.of(PATH, List.of(reading(new Fabric(MEAN, 5, 0), 42, 265)));
        assertEquals(line.frameAt(100), line.frameAt(3));
        assertEquals(line.modes().get(0).carriedAngle(), line.frameAt(50).turnFrom(PATH.carriedFrameAt(50)), 1e-9);
    }

    /** A hole that keeps its inclination and turns by 0.3 degrees a metre, so that a scribe turns on it. */
    private record TurningPath(double inclination) implements HolePath {

        @Override
        public HoleDirection directionAt(double depth) {
            return HoleDirection.ofInclination(inclination, 90 + 0.3 * depth);
        }

        @Override
        public CoreFrame carriedFrameAt(double depth) {
            CoreFrame frame = CoreFrame.carriedTo(directionAt(0));
            for (int i = 1; i <= 400; i++) {
                frame = frame.carriedAlong(directionAt(depth * i / 400));
            }
            return frame;
        }

        @Override
        public Displacement displacementAt(double depth) {
            return Displacement.ZERO;
        }

        @Override
        public double scribeTurn(double from, double to) {
            return -Math.cos(Math.toRadians(inclination)) * 0.3 * (to - from);
        }
    }

    @Test
    void theLineIsCarriedFromReadingToReading() {
        TurningPath path = new TurningPath(30);
        Fabric fabric = new Fabric(MEAN, 4, 0);
        List<FabricReading> readings = new ArrayList<>();
        for (double depth : new double[] {10, 60, 110}) {
            CorePlane shown = path.carriedFrameAt(depth).turned(77).toCore(MEAN);
            readings.add(new FabricReading(depth, shown, fabric, 2, 5));
        }
        FabricLine line = FabricLine.of(path, readings);
        assertEquals(77, line.modes().get(0).carriedAngle(), 1e-3);
        double turned = line.lineAt(110, WallReference.lowSide()).mean()
                - line.lineAt(10, WallReference.lowSide()).mean();
        assertEquals(0, Degrees.wrap180(turned - path.scribeTurn(10, 110)), 0.01);
        assertTrue(Math.abs(path.scribeTurn(10, 110)) > 20);
    }

    @Test
    void turningTheNorthLeavesTheLineFromTheLowSide() {
        List<FabricReading> readings =
                List.of(reading(new Fabric(MEAN, 5, 0.1), 42, 265), reading(new Fabric(MEAN, 5, 0.1), 39, 262));
        Fabric turned = new Fabric(MEAN.withAzimuthTurned(123), 5, 0.1);
        double first =
                FabricLine.of(PATH, readings).lineAt(1, WallReference.lowSide()).mean();
        double second = FabricLine.of(
                        HolePath.straight(HOLE.withAzimuthTurned(123)),
                        List.of(reading(turned, 42, 265), reading(turned, 39, 262)))
                .lineAt(1, WallReference.lowSide())
                .mean();
        assertEquals(first, second, 1e-6);
    }

    @Test
    void aFabricWithoutScatterAndStraysGivesNumbers() {
        FabricLine line = FabricLine.of(
                PATH, List.of(new FabricReading(1, CorePlane.of(10, 3), new Fabric(MEAN, 1e-200, 0), 0, 0)));
        assertTrue(line.sigma() >= 0);
        FabricWitness witness = line.witnesses().get(0);
        assertEquals(1, witness.memberProbability() + witness.turnedProbability() + witness.strayProbability(), 1e-9);
    }

    @Test
    void sigmasWithoutBoundsSayNothingAndGiveNumbers() {
        for (double wide : new double[] {1e7, 1e160, 1e300}) {
            Fabric vague = new Fabric(MEAN, wide, 0.5);
            FabricReading reading = new FabricReading(100, CorePlane.of(42, 265), vague, wide, wide);
            FabricLine line = FabricLine.of(PATH, List.of(reading), wide);
            assertEquals(FabricLine.Standing.UNORIENTED, line.standing(90));
            assertTrue(line.sigma() > 100, line.toString());
            // by itself the circle is even but for rounding; a node counted twice would leave 208
            double alone = FabricLine.of(PATH, List.of(reading)).sigma();
            assertTrue(alone > 300, () -> alone + " degrees");
            FabricWitness witness = line.witnesses().get(0);
            double all = witness.memberProbability() + witness.turnedProbability() + witness.strayProbability();
            assertEquals(1, all, 1e-9);
        }
    }

    @Test
    void nothingToReadIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> FabricLine.of(PATH, List.of()));
        List<FabricReading> one = List.of(reading(new Fabric(MEAN, 5, 0), 42, 265));
        assertThrows(IllegalArgumentException.class, () -> FabricLine.of(PATH, one, -1));
        assertThrows(
                IllegalArgumentException.class, () -> FabricLine.of(PATH, one).standing(Double.NaN));
    }

    @Test
    void readsWithItsWeight() {
        FabricLine line = FabricLine.of(PATH, List.of(reading(new Fabric(MEAN, 2, 0), 42, 265)));
        assertTrue(line.toString().endsWith("in the carried frame, weight 1.00, sigma 5.7"), line.toString());
        LineAngle first = line.lineAt(line.witnesses().get(0).reading().depth(), WallReference.lowSide());
        assertTrue(line.toString().startsWith(first + ", at "), line.toString());
        assertEquals(
                "alpha 42.0, beta 265.0: alpha off by 0.0, line off by 0.0 +- 5.7",
                line.witnesses().get(0).toString());
    }
}
