package io.github.kernlot.survey.north;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorldMagneticModelTest {

    private static final WorldMagneticModel MODEL = WorldMagneticModel.wmm2025();
    private static final GeographicPlace PLACE = GeographicPlace.ofLatitudeLongitude(52, 20);

    private static GeographicPlace place(double latitude, double longitude, double kilometres) {
        return GeographicPlace.ofLatitudeLongitude(latitude, longitude).withHeight(1000 * kilometres);
    }

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "wmm2025-values-12.csv", useHeadersInDisplayName = true)
    void thePublishedTableIsMetToItsPrintedDigits(
            double year,
            double kilometres,
            double latitude,
            double longitude,
            double north,
            double east,
            double down,
            double horizontal,
            double total,
            double dip,
            double declination,
            String source) {
        MagneticField field =
                MODEL.at(place(latitude, longitude, kilometres), year).field();

        assertEquals(north, field.north(), 0.05, source);
        assertEquals(east, field.east(), 0.05, source);
        assertEquals(down, field.down(), 0.05, source);
        assertEquals(horizontal, field.horizontal(), 0.05, source);
        assertEquals(total, field.total(), 0.05, source);
        assertEquals(dip, field.dip(), 0.005, source);
        assertEquals(declination, field.declination(), 0.005, source);
    }

    /**
     * East and down to the printed digits. The table's component towards north is off by up to 0.0007 nT, and its horizontal and total
     * field with it: the gradient of the potential says so ({@link #theFieldIsTheGradientOfThePotential}).
     */
    @ParameterizedTest
    @CsvFileSource(resources = "wmm2025-values-100.csv", useHeadersInDisplayName = true)
    void theHundredPublishedTestValuesAreMet(
            double year,
            double kilometres,
            double latitude,
            double longitude,
            double north,
            double east,
            double down,
            double horizontal,
            double total,
            double dip,
            double declination,
            String source) {
        MagneticField field =
                MODEL.at(place(latitude, longitude, kilometres), year).field();

        assertEquals(east, field.east(), 5e-6, source);
        assertEquals(down, field.down(), 5e-6, source);
        assertEquals(north, field.north(), 8e-4, source);
        assertEquals(horizontal, field.horizontal(), 8e-4, source);
        assertEquals(total, field.total(), 8e-4, source);
        assertEquals(dip, field.dip(), 0.005, source);
        assertEquals(declination, field.declination(), 0.005, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "wmm2025-values-100.csv", useHeadersInDisplayName = true)
    void theFieldIsTheGradientOfThePotential(double year, double kilometres, double latitude, double longitude)
            throws IOException {
        GeographicPlace place = place(latitude, longitude, kilometres);

        double[] expected = new Potential().field(place, year - 2025);

        MagneticField field = MODEL.at(place, year).field();
        assertEquals(expected[0], field.north(), 1e-6);
        assertEquals(expected[1], field.east(), 1e-6);
        assertEquals(expected[2], field.down(), 1e-6);
    }

    @Test
    void allCoefficientsOfDegreeAndOrderTwelveAreThere() throws IOException {
        assertEquals(12 * 14 / 2 + 6, new Potential().size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, -90})
    void atAPoleTheFieldIsOneVectorWhateverTheLongitudeItIsToldAlong(double latitude) {
        MagneticField along0 = MODEL.at(place(latitude, 0, 0), 2026).field();

        for (double longitude = -180; longitude <= 180; longitude += 30) {
            MagneticField field = MODEL.at(place(latitude, longitude, 0), 2026).field();
            double turn = Math.signum(latitude) * longitude;
            assertEquals(along0.horizontal(), field.horizontal(), 1e-9);
            assertEquals(along0.down(), field.down(), 1e-9);
            assertEquals(0, Math.IEEEremainder(along0.declination() + turn - field.declination(), 360), 1e-9);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, -90})
    void thePoleIsTheLimitAlongAMeridian(double latitude) {
        MagneticField beside = MODEL.at(place(latitude - Math.signum(latitude) * 1e-7, 73, 0), 2026)
                .field();
        MagneticField pole = MODEL.at(place(latitude, 73, 0), 2026).field();

        assertEquals(beside.north(), pole.north(), 1e-3);
        assertEquals(beside.east(), pole.east(), 1e-3);
        assertEquals(beside.down(), pole.down(), 1e-3);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "wmm2025-values-12.csv", useHeadersInDisplayName = true)
    void theYearlyChangeIsWhatTheFieldDoes(double year, double kilometres, double latitude, double longitude) {
        GeographicPlace place = place(latitude, longitude, kilometres);
        double step = 1e-3;
        MagneticField before = MODEL.at(place, 2026 - step).field();
        MagneticField after = MODEL.at(place, 2026 + step).field();

        MagneticChange change = MODEL.at(place, 2026).yearlyChange();

        assertEquals((after.north() - before.north()) / (2 * step), change.north(), 1e-6);
        assertEquals((after.east() - before.east()) / (2 * step), change.east(), 1e-6);
        assertEquals((after.down() - before.down()) / (2 * step), change.down(), 1e-6);
        assertEquals((after.horizontal() - before.horizontal()) / (2 * step), change.horizontal(), 1e-6);
        assertEquals((after.total() - before.total()) / (2 * step), change.total(), 1e-6);
        assertEquals((after.dip() - before.dip()) / (2 * step), change.dip(), 1e-8);
        assertEquals((after.declination() - before.declination()) / (2 * step), change.declination(), 1e-8);
    }

    @Test
    void theDateLineIsOnePlace() {
        assertEquals(
                MODEL.at(place(-45, 180, 0), 2027).field(),
                MODEL.at(place(-45, -180, 0), 2027).field());
        assertEquals(
                MODEL.at(place(-45, 350, 0), 2027).field(),
                MODEL.at(place(-45, -10, 0), 2027).field());
    }

    /** Days that went by over the days of the year: the convention of the model's publishers, from memory. */
    @ParameterizedTest
    @CsvSource({
        "2025-01-01, 2025",
        "2027-07-01, 2027.495890410958904",
        "2028-07-01, 2028.497267759562842",
        "2028-12-31, 2028.997267759562842",
        "2029-12-31, 2029.997260273972603",
        "2030-01-01, 2030"
    })
    void aDateIsAShareOfItsYear(LocalDate date, double expected) {
        assertEquals(expected, MODEL.at(PLACE, date).decimalYear(), 1e-12);
        assertEquals(
                MODEL.at(PLACE, expected).declination(), MODEL.at(PLACE, date).declination(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2024.999, 2030.001, Double.NaN, Double.POSITIVE_INFINITY})
    void aDateForWhichTheModelDoesNotHoldIsRefused(double year) {
        String message = refusal(() -> MODEL.at(PLACE, year));

        assertTrue(message.startsWith("the date is "), message);
        assertTrue(message.contains("[2025.0, 2030.0], for which WMM2025 holds"), message);
    }

    @Test
    void theDaysBesideTheModelsYearsAreRefused() {
        refusal(() -> MODEL.at(PLACE, LocalDate.of(2024, 12, 31)));
        refusal(() -> MODEL.at(PLACE, LocalDate.of(2030, 1, 2)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-10_001, 850_001})
    void aHeightThatTheModelDoesNotReachIsRefused(double height) {
        assertTrue(refusal(() -> MODEL.at(PLACE.withHeight(height), 2026)).startsWith("height is "));
    }

    @ParameterizedTest
    @CsvSource({"90.1, 0, latitude", "-90.1, 0, latitude", "NaN, 0, latitude", "0, 361, longitude", "0, NaN, longitude"
    })
    void aPlaceOffTheEarthIsRefused(double latitude, double longitude, String what) {
        assertTrue(refusal(() -> GeographicPlace.ofLatitudeLongitude(latitude, longitude))
                .startsWith(what + " is "));
    }

    /** The error model as its technical report is cited (westphae/geomag, pull request 8). */
    @Test
    void theSigmasArePublished() {
        MagneticReference reference = MODEL.at(PLACE, 2026);

        double horizontal = reference.field().horizontal();
        assertEquals(
                Math.sqrt(0.26 * 0.26 + (5417 / horizontal) * (5417 / horizontal)),
                reference.declinationSigma(),
                1e-12);
        assertEquals(137, reference.northSigma());
        assertEquals(89, reference.eastSigma());
        assertEquals(141, reference.downSigma());
        assertEquals(133, reference.horizontalSigma());
        assertEquals(138, reference.totalSigma());
        assertEquals(0.20, reference.dipSigma());
    }

    @Test
    void aSteepFieldIsTold() {
        assertEquals(CompassReach.SOUND, new MagneticField(6000, 0, 1).compass());
        assertEquals(CompassReach.CAUTION, new MagneticField(0, 5999.9, 1).compass());
        assertEquals(CompassReach.CAUTION, new MagneticField(2000, 0, 1).compass());
        assertEquals(CompassReach.BLACKOUT, new MagneticField(-1999.9, 0, 1).compass());
        String provenance = MODEL.at(place(86, -170, 0), 2026)
                .northReference(TransverseMercator.utmNorth(2))
                .declinationSource();
        assertTrue(provenance.endsWith("where a compass is not to be relied on"), provenance);
    }

    @Test
    void nothingIsNotANumberWhereTheFieldIsVertical() {
        MagneticField vertical = new MagneticField(0, 0, 60_000);
        MagneticChange change = new MagneticChange(vertical, 3, 4, 5);

        assertEquals(0, vertical.declination());
        assertEquals(90, vertical.dip());
        assertEquals(0, change.declination());
        assertEquals(5, change.horizontal());
        assertEquals(180, new MagneticField(-1, -0.0, 0).declination());
        assertEquals(-90, new MagneticField(-0.0, -1, 0).declination());
    }

    @Test
    void valuesPrint() {
        assertEquals("WMM2025, valid from 2025.0 to 2030.0", MODEL.toString());
        assertEquals(
                "30.00000 S 10.50000 W, 120 m",
                GeographicPlace.ofLatitudeLongitude(-30, 349.5).withHeight(120).toString());
        assertEquals(
                "5000 nT horizontal, 13000 nT total, dip -67.38, declination 53.13",
                new MagneticField(3000, 4000, -12000).toString());
        assertEquals(
                "declination +1.146, dip +0.000 degrees a year",
                new MagneticChange(new MagneticField(1000, 0, 0), 0, 20, 0).toString());
    }
}
