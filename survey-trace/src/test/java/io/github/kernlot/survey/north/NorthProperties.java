package io.github.kernlot.survey.north;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class NorthProperties {

    /** A line to the north of the earth has the grid azimuth 0 - C. */
    @Property
    void convergenceAndScaleAreWhatTheCoordinatesDo(
            @ForAll @DoubleRange(min = -85, max = 85) double latitude,
            @ForAll @DoubleRange(min = -20, max = 20) double east) {
        TransverseMercator grid = TransverseMercator.of(Ellipsoid.GRS80, 20, 0.9996);
        GeographicPlace place = GeographicPlace.ofLatitudeLongitude(latitude, 20 + east);
        double step = 1e-3;
        Position south = grid.positionOf(GeographicPlace.ofLatitudeLongitude(latitude - step, 20 + east));
        Position north = grid.positionOf(GeographicPlace.ofLatitudeLongitude(latitude + step, 20 + east));

        double across = north.easting() - south.easting();
        double along = north.northing() - south.northing();

        assertEquals(-Math.toDegrees(Math.atan2(across, along)), grid.convergenceAt(place), 1e-7);
        double square = Ellipsoid.GRS80.flattening() * (2 - Ellipsoid.GRS80.flattening());
        double meridian = Ellipsoid.GRS80.equatorialRadius()
                * (1 - square)
                / Math.pow(1 - square * Math.pow(Math.sin(Math.toRadians(latitude)), 2), 1.5);
        assertEquals(Math.hypot(across, along) / (2 * Math.toRadians(step) * meridian), grid.scaleAt(place), 1e-8);
    }

    @Property
    void coordinatesLeadBackToTheirPlace(
            @ForAll @DoubleRange(min = -89.9, max = 89.9) double latitude,
            @ForAll @DoubleRange(min = -30, max = 30) double east,
            @ForAll @IntRange(min = 1, max = 60) int zone) {
        TransverseMercator grid = TransverseMercator.utmSouth(zone);
        double longitude = Math.IEEEremainder(grid.centralMeridian() + east, 360);
        GeographicPlace place = GeographicPlace.ofLatitudeLongitude(latitude, longitude);

        GeographicPlace back = grid.placeOf(grid.positionOf(place));

        double metre = 180 / Math.PI / 6.37e6;
        assertEquals(latitude, back.latitude(), 1e-8 * metre);
        double turned = Math.IEEEremainder(back.longitude() - place.longitude(), 360);
        assertEquals(0, turned * Math.cos(Math.toRadians(latitude)), 1e-8 * metre);
    }

    @Property
    void gridAzimuthIsMagneticPlusDeclinationLessConvergence(
            @ForAll @DoubleRange(min = -80, max = 80) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll @IntRange(min = 0, max = 1825) int day) {
        GeographicPlace place = GeographicPlace.ofLatitudeLongitude(latitude, longitude);
        LocalDate date = LocalDate.of(2025, 1, 1).plusDays(day);
        TransverseMercator zone = TransverseMercator.utmOf(place);

        NorthReference reference = WorldMagneticModel.wmm2025().northReference(place, date, zone);

        double declination = WorldMagneticModel.wmm2025().at(place, date).declination();
        assertEquals(declination - zone.convergenceAt(place), reference.toAdd(North.GRID), 1e-12);
        assertEquals(declination, reference.toAdd(North.TRUE), 1e-12);
        assertEquals(North.MAGNETIC, reference.north());
    }
}
