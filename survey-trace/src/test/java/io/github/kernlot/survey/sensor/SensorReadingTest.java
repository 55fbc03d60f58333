package io.github.kernlot.survey.sensor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.uncertainty.EarthReference;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SensorReadingTest {

    private static final EarthReference EARTH = new EarthReference(9.80665, 50_000, 60);
    private static final SensorSigmas SIGMAS = SensorSigmas.of(0.01, 100);

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/io/github/kernlot/survey/gravity-inclinations.csv", useHeadersInDisplayName = true)
    void inclinationsAreThoseOfTheirCheckValues(
            double across1, double across2, double along, double inclination, double tolerance, String source) {
        GravityReading reading = GravityReading.ofStandardGravity(across1, across2, along);

        assertEquals(inclination, reading.inclination(), tolerance, source);
        assertEquals(inclination, reading.negated().negated().inclination(), tolerance, source);
    }

    /** Computed from the readings of the example of petrosmartacademy.com, 2025/12, which prints 1.0. */
    @Test
    void theTotalOfTheExampleIsThatOfItsReadings() {
        assertEquals(
                0.99984299,
                GravityReading.ofStandardGravity(0.383, 0.321, 0.866).totalInStandardGravity(),
                5e-9);
    }

    /** By the definition of the axes. */
    @ParameterizedTest
    @CsvSource({
        "0, -0.5, 0, 180", // y up: the high side
        "0, 0.5, 180, 0", // y down: the low side
        "-0.5, 0, 90, 270", // x up, and y 90 degrees clockwise of it
        "0.5, 0, 270, 90"
    })
    void theRollIsWhereYLies(double x, double y, double fromHigh, double fromLow) {
        GravityReading reading = GravityReading.ofStandardGravity(x, y, 0.8);

        assertEquals(fromHigh, reading.roll());
        assertEquals(fromLow, reading.rollFromLowSide());
    }

    /** In a vertical hole a tool whose y axis points east has that roll from north, whichever azimuth the hole was given. */
    @ParameterizedTest
    @CsvSource({"0, 90", "90, 0", "200, -110", "30, 60"})
    void aVerticalToolIsToldFromNorth(double azimuth, double roll) {
        SensorReading reading = SensorReading.simulated(HoleDirection.ofInclination(0, azimuth), roll, EARTH);

        assertEquals(90, reading.rollFromNorth(), 1e-12);
        assertEquals(90, reading.frame().lineAngle(WallReference.north()), 1e-12);
        assertEquals(0, reading.direction().inclination());
        assertTrue(reading.gravity().isVertical());
        assertTrue(refusal(reading::roll).contains("rollFromNorth"));
        assertTrue(refusal(reading::rollFromLowSide).contains("no high side"));
    }

    @Test
    void aVerticalToolIsKnownAsAWholeAndItsAzimuthIsNot() {
        AttitudeUncertainty uncertainty = SensorReading.simulated(HoleDirection.ofInclination(0, 0), 33, EARTH)
                .uncertainty(SIGMAS);

        double tilt = 0.01 / 9.80665;
        assertEquals(Math.toDegrees(tilt), uncertainty.inclinationSigma(), 1e-12);
        assertEquals(Math.toDegrees(tilt), uncertainty.sidewaysSigma(), 1e-12);
        assertEquals(tilt * tilt, uncertainty.tangent().northNorth(), 1e-18);
        assertEquals(tilt * tilt, uncertainty.tangent().eastEast(), 1e-18);
        assertEquals(0, uncertainty.tangent().downDown(), 1e-18);
        assertEquals(Double.POSITIVE_INFINITY, uncertainty.azimuthSigma());
        assertEquals(Double.POSITIVE_INFINITY, uncertainty.rollSigma());
        assertEquals(
                Math.toDegrees(Math.hypot(Math.tan(Math.toRadians(60)) * tilt, 100 / 25_000.0)),
                uncertainty.rollFromNorthSigma(),
                1e-9);
        assertEquals(Double.POSITIVE_INFINITY, GravityReading.of(0, 0, 9.8).rollSigma(SIGMAS));
        assertEquals(
                "inclination sigma 0.058, azimuth sigma unbounded, roll sigma unbounded degrees",
                uncertainty.toString());
    }

    @Test
    void sensorsWithoutErrorMakeNone() {
        AttitudeUncertainty uncertainty = SensorReading.simulated(HoleDirection.ofInclination(0, 0), 33, EARTH)
                .uncertainty(SensorSigmas.of(0, 0));

        assertEquals(0, uncertainty.azimuthSigma());
        assertEquals(0, uncertainty.rollSigma());
        assertEquals(0, uncertainty.rollFromNorthSigma());
        assertEquals(0, GravityReading.of(0, 0, 9.8).rollSigma(SensorSigmas.of(0, 5)));
    }

    /** Derived: a roll is the angle of a vector of length G sin I. */
    @ParameterizedTest
    @ValueSource(doubles = {90, 60, 30, 10, 1, 0.1})
    void theSigmaOfARollGrowsAsTheHoleSteepens(double inclination) {
        GravityReading reading = GravityReading.simulated(HoleDirection.ofInclination(inclination, 0), 77, 9.8);

        double expected = Math.toDegrees(0.01 / 9.8 / Math.sin(Math.toRadians(inclination)));
        assertEquals(1, reading.rollSigma(SIGMAS) / expected, 1e-12);
        assertEquals(Math.toDegrees(0.01 / 9.8), reading.inclinationSigma(SIGMAS), 1e-12);
    }

    /** 200,000 draws: a standard deviation is known within 0.16 %, so 1 % is 6 of its own. */
    @ParameterizedTest
    @CsvSource({"30, 70, 20, 60", "85, 200, 140, -35", "120, 310, 300, 72"})
    void sigmasAreWhatDrawnReadingsSpread(double inclination, double azimuth, double roll, double dip) {
        SensorReading truth = SensorReading.simulated(
                HoleDirection.ofInclination(inclination, azimuth), roll, new EarthReference(9.8, 50_000, dip));
        SensorSigmas sigmas = new SensorSigmas(0.01, 0.02, 60, 120);
        Random random = new Random(20250101);
        int draws = 200_000;
        double[] squares = new double[4];
        for (int i = 0; i < draws; i++) {
            GravityReading g = truth.gravity();
            FieldReading b = truth.field();
            SensorReading drawn = SensorReading.of(
                    GravityReading.of(
                            g.x() + 0.01 * random.nextGaussian(),
                            g.y() + 0.01 * random.nextGaussian(),
                            g.z() + 0.02 * random.nextGaussian()),
                    FieldReading.of(
                            b.x() + 60 * random.nextGaussian(),
                            b.y() + 60 * random.nextGaussian(),
                            b.z() + 120 * random.nextGaussian()));
            squares[0] += Math.pow(drawn.direction().inclination() - inclination, 2);
            squares[1] += Math.pow(drawn.direction().azimuth() - azimuth, 2);
            squares[2] += Math.pow(drawn.roll() - roll, 2);
            squares[3] += Math.pow(Math.IEEEremainder(drawn.rollFromNorth() - truth.rollFromNorth(), 360), 2);
        }
        AttitudeUncertainty uncertainty = truth.uncertainty(sigmas);

        assertEquals(1, Math.sqrt(squares[0] / draws) / uncertainty.inclinationSigma(), 0.01);
        assertEquals(1, Math.sqrt(squares[1] / draws) / uncertainty.azimuthSigma(), 0.01);
        assertEquals(1, Math.sqrt(squares[2] / draws) / uncertainty.rollSigma(), 0.01);
        assertEquals(1, Math.sqrt(squares[3] / draws) / uncertainty.rollFromNorthSigma(), 0.01);
    }

    @Test
    void aVerticalHoleWandersByItsTangentAsDrawnReadingsDo() {
        SensorReading truth = SensorReading.simulated(HoleDirection.ofInclination(0, 0), 40, EARTH);
        Random random = new Random(7);
        int draws = 200_000;
        double north = 0;
        double east = 0;
        for (int i = 0; i < draws; i++) {
            GravityReading g = truth.gravity();
            HoleDirection drawn = SensorReading.of(
                            GravityReading.of(
                                    g.x() + 0.01 * random.nextGaussian(),
                                    g.y() + 0.01 * random.nextGaussian(),
                                    g.z() + 0.01 * random.nextGaussian()),
                            truth.field())
                    .direction();
            north += drawn.north() * drawn.north();
            east += drawn.east() * drawn.east();
        }

        AttitudeUncertainty uncertainty = truth.uncertainty(SensorSigmas.of(0.01, 0));
        assertEquals(1, north / draws / uncertainty.tangent().northNorth(), 0.02);
        assertEquals(1, east / draws / uncertainty.tangent().eastEast(), 0.02);
    }

    @Test
    void aHoleAlongMagneticNorthIsToldFromItsHighSide() {
        SensorReading reading = SensorReading.of(GravityReading.of(0, -9.8, 0), FieldReading.of(0, -40_000, 20_000));

        assertEquals(HoleDirection.ofInclination(90, 0), reading.direction());
        assertTrue(refusal(reading::rollFromNorth).contains("high side"));
        assertEquals(0, reading.roll());
        assertEquals(180, reading.frame().lineAngle());
        assertEquals(Double.POSITIVE_INFINITY, reading.uncertainty(SIGMAS).rollFromNorthSigma());
    }

    @Test
    void aStationIsThatOfTheReading() {
        SensorReading reading = SensorReading.simulated(HoleDirection.ofInclination(30, 75), 10, EARTH);

        SurveyStation station = reading.station(120);
        assertEquals(120, station.depth());
        assertEquals(30, station.direction().inclination(), 1e-13);
        assertEquals(75, station.direction().azimuth(), 1e-12);
    }

    @Test
    void aToolThatCountsTheOtherWayIsPutRight() {
        assertEquals(GravityReading.of(1, -2, 3), GravityReading.of(-1, 2, -3).negated());
        assertEquals(FieldReading.of(1, -2, 3), FieldReading.of(-1, 2, -3).negated());
    }

    @Test
    void readingsThatTellNothingAreRefused() {
        assertTrue(refusal(() -> GravityReading.of(0, 0, 0)).startsWith("total of the accelerometers"));
        assertTrue(refusal(() -> GravityReading.of(Double.NaN, 0, 1)).startsWith("accelerometer x"));
        assertTrue(refusal(() -> FieldReading.of(0, 0, 0)).startsWith("total of the magnetometers"));
        assertTrue(
                refusal(() -> FieldReading.of(0, 0, Double.POSITIVE_INFINITY)).startsWith("magnetometer z"));
        assertTrue(refusal(() -> SensorReading.of(GravityReading.of(0, 3, 4), FieldReading.of(0, -3, -4)))
                .contains("lies along gravity"));
        assertTrue(refusal(() -> SensorReading.simulated(HoleDirection.ofDip(-60, 0), Double.NaN, EARTH))
                .startsWith("roll"));
        assertTrue(refusal(() -> GravityReading.simulated(HoleDirection.ofDip(-60, 0), 0, 0))
                .startsWith("gravity"));
        assertTrue(refusal(() -> new SensorSigmas(-1, 0, 0, 0)).startsWith("sigma of the accelerometers across"));
        assertTrue(refusal(() -> new SensorSigmas(0, Double.NaN, 0, 0)).startsWith("sigma of the accelerometer along"));
        assertTrue(refusal(() -> new SensorSigmas(0, 0, -1, 0)).startsWith("sigma of the magnetometers across"));
        assertTrue(refusal(() -> new SensorSigmas(0, 0, 0, -1)).startsWith("sigma of the magnetometer along"));
    }

    @Test
    void readingsPrint() {
        SensorReading reading =
                SensorReading.of(GravityReading.of(0, -4.9, 8.5), FieldReading.of(1000, 2000, 45_000.25));

        assertEquals("0.0000, -4.9000, 8.5000 m/s2", reading.gravity().toString());
        assertEquals("1000.0, 2000.0, 45000.3 nT", reading.field().toString());
        assertEquals(reading.direction() + " from magnetic north", reading.toString());
        assertEquals(
                "accelerometers 0.01 across and 0.01 along m/s2, magnetometers 100.0 across and 100.0 along nT",
                SIGMAS.toString());
    }
}
