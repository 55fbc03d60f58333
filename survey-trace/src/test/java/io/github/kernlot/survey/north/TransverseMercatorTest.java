package io.github.kernlot.survey.north;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TransverseMercatorTest {

    private static GeographicPlace place(double latitude, double longitude) {
        return GeographicPlace.ofLatitudeLongitude(latitude, longitude);
    }

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "convergences.csv", useHeadersInDisplayName = true)
    void convergenceAndScaleAreThoseOfAGeneralLibrary(
            double latitude,
            double longitude,
            double centralMeridian,
            double convergence,
            double scale,
            String source) {
        TransverseMercator grid = TransverseMercator.of(Ellipsoid.WGS84, centralMeridian, 0.9996);

        assertEquals(convergence, grid.convergenceAt(place(latitude, longitude)), 1e-12, source);
        assertEquals(scale, grid.scaleAt(place(latitude, longitude)), 1e-12, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "projections.csv", useHeadersInDisplayName = true)
    void theSeriesIsTheProjectionItself(
            String name,
            double radius,
            double inverseFlattening,
            double latitude,
            double east,
            double northing,
            double easting,
            double convergence,
            double scale,
            String source) {
        TransverseMercator grid =
                TransverseMercator.of(Ellipsoid.ofInverseFlattening(name, radius, inverseFlattening), 0, 1);
        GeographicPlace place = place(latitude, east);

        assertEquals(convergence, grid.convergenceAt(place), 1e-12, source);
        assertEquals(scale, grid.scaleAt(place), 1e-14, source);
        assertEquals(easting, grid.positionOf(place).easting(), 1e-8, source);
        assertEquals(northing, grid.positionOf(place).northing(), 1e-8, source);
        GeographicPlace back = grid.placeOf(Position.ofEastingNorthingElevation(easting, northing, 0));
        assertEquals(latitude, back.latitude(), 1e-12, source);
        assertEquals(east, back.longitude(), 1e-12 / Math.cos(Math.toRadians(latitude)), source);
    }

    /** Seen: jerrymahun.com, chapter XIII-L, longitude 89 43 53.76403 W, central meridian 87 W: -1 51 37.6; its latitude was not, near 43 N is assumed. */
    @Test
    void aPublishedConvergenceIsMetAsFarAsItsPlaceIsKnown() {
        TransverseMercator grid = TransverseMercator.of(Ellipsoid.GRS80, -87, 1);

        double longitude = -(89 + 43 / 60.0 + 53.76403 / 3600);
        assertEquals(-(1 + 51 / 60.0 + 37.6 / 3600), grid.convergenceAt(place(43, longitude)), 0.005);
    }

    /** The spherical formula of textbooks: tan C = tan(longitude - central meridian) sin(latitude). */
    @ParameterizedTest
    @CsvSource({"43, -2.7", "-60, 3", "10, 12", "89, -30", "-1e-3, 1e-3"})
    void onASphereTheConvergenceIsThatOfTextbooks(double latitude, double east) {
        TransverseMercator grid = TransverseMercator.of(new Ellipsoid("sphere", 6_371_000, 0), 0, 1);

        double expected =
                Math.toDegrees(Math.atan(Math.tan(Math.toRadians(east)) * Math.sin(Math.toRadians(latitude))));
        assertEquals(expected, grid.convergenceAt(place(latitude, east)), 1e-13);
    }

    @ParameterizedTest
    @CsvSource({"90, 30, 30", "90, -75, -75", "-90, 30, -30", "90, 0, 0"})
    void atAPoleTheConvergenceIsTheLimitAlongTheMeridian(double latitude, double east, double convergence) {
        TransverseMercator grid = TransverseMercator.utmNorth(31);

        assertEquals(convergence, grid.convergenceAt(place(latitude, 3 + east)), 1e-12);
        assertEquals(0.9996, grid.scaleAt(place(latitude, 3 + east)), 1e-14);
        assertEquals(500_000, grid.positionOf(place(latitude, 3 + east)).easting(), 1e-8);
    }

    @Test
    void onTheCentralMeridianGridNorthIsTrueNorth() {
        for (double latitude = -90; latitude <= 90; latitude += 7.5) {
            assertEquals(0, TransverseMercator.utmOf(place(latitude, 117)).convergenceAt(place(latitude, 117)));
            assertEquals(0.9996, TransverseMercator.utmNorth(50).scaleAt(place(latitude, 117)), 1e-15);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-180, 1, -177",
        "180, 1, -177",
        "-174, 2, -171",
        "-0.1, 30, -3",
        "0, 31, 3",
        "121.5, 51, 123",
        "179.9, 60, 177",
        "353, 29, -9"
    })
    void zonesAreSixDegreesEachFromTheDateLine(double longitude, int zone, double meridian) {
        assertEquals(zone, TransverseMercator.utmZone(longitude));
        assertEquals(meridian, TransverseMercator.utmOf(place(10, longitude)).centralMeridian());
    }

    @Test
    void theHemispheresDifferByTheNorthingOfTheEquator() {
        GeographicPlace south = place(-31.4, 121.5);
        Position onSouth = TransverseMercator.utmOf(south).positionOf(south);
        Position onNorth = TransverseMercator.utmNorth(51).positionOf(south);

        assertEquals("UTM zone 51S", TransverseMercator.utmOf(south).toString());
        assertEquals(10_000_000, onSouth.northing() - onNorth.northing(), 1e-8);
        assertEquals(onNorth.easting(), onSouth.easting());
        assertEquals(
                TransverseMercator.utmNorth(51).convergenceAt(south),
                TransverseMercator.utmSouth(51).convergenceAt(south));
    }

    @Test
    void anOriginShiftsCoordinatesAndNothingElse() {
        TransverseMercator plain = TransverseMercator.of(Ellipsoid.GRS80, 15, 0.9999);
        TransverseMercator grid = plain.withOrigin(52, 150_000, -20_000);
        GeographicPlace place = place(52.3, 14.1).withHeight(77);

        assertEquals(150_000, grid.positionOf(place(52, 15)).easting(), 1e-9);
        assertEquals(-20_000, grid.positionOf(place(52, 15)).northing(), 1e-8);
        assertEquals(plain.convergenceAt(place), grid.convergenceAt(place));
        assertEquals(plain.scaleAt(place), grid.scaleAt(place));
        assertEquals(77, grid.positionOf(place).elevation());
        assertEquals(52.3, grid.placeOf(grid.positionOf(place)).latitude(), 1e-13);
        assertEquals(77, grid.placeOf(grid.positionOf(place)).height());
    }

    @Test
    void aPlaceTooFarAwayIsRefused() {
        TransverseMercator grid = TransverseMercator.utmNorth(31);

        assertTrue(refusal(() -> grid.convergenceAt(place(0, 60))).contains("UTM zone 31N; expected at most 3,900 km"));
        assertTrue(refusal(() -> grid.scaleAt(place(45, -120))).contains("too far"));
        assertTrue(refusal(() -> grid.placeOf(Position.ofEastingNorthingElevation(5e6, 0, 0)))
                .startsWith("easting from the central meridian is "));
        assertTrue(refusal(() -> grid.placeOf(Position.ofEastingNorthingElevation(5e5, 1.1e7, 0)))
                .startsWith("northing from the equator is "));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 61, -3})
    void thereAreSixtyZones(int zone) {
        assertTrue(refusal(() -> TransverseMercator.utmNorth(zone)).contains("[1, 60]"));
        assertTrue(refusal(() -> TransverseMercator.utmSouth(zone)).contains("[1, 60]"));
    }

    @Test
    void oddGridsAreRefused() {
        assertTrue(refusal(() -> TransverseMercator.of(Ellipsoid.WGS84, 361, 1)).startsWith("central meridian is "));
        assertTrue(refusal(() -> TransverseMercator.of(Ellipsoid.WGS84, 9, 0)).startsWith("scale on the "));
        assertTrue(refusal(() -> TransverseMercator.utmNorth(3).withOrigin(91, 0, 0))
                .startsWith("latitude of "));
        assertTrue(refusal(() -> Ellipsoid.ofInverseFlattening("flat", 6_378_137, 0.003))
                .startsWith("inverse"));
        assertTrue(refusal(() -> new Ellipsoid("none", 0, 0)).startsWith("equatorial radius"));
    }

    @Test
    void gridsPrintTheirNames() {
        assertEquals(
                "transverse Mercator grid of central meridian 13.5 E",
                TransverseMercator.of(Ellipsoid.GRS80, 13.5, 1).toString());
        assertEquals(
                "transverse Mercator grid of central meridian 87 W",
                TransverseMercator.of(Ellipsoid.GRS80, 273, 1).toString());
        assertEquals(
                "GRS80",
                TransverseMercator.of(Ellipsoid.GRS80, 13.5, 1).ellipsoid().toString());
    }
}
