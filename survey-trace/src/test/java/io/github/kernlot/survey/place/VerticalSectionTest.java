package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.kernlot.orientation.Position;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class VerticalSectionTest {

    private static final Position ORIGIN = Position.ofEastingNorthingElevation(0, 0, 0);

    @ParameterizedTest
    @CsvFileSource(resources = "vertical-section.csv", useHeadersInDisplayName = true)
    void verticalSectionsMeetTheirCheckValues(
            double depth, double north, double east, double azimuth, double along, double tolerance, String source) {
        VerticalSection section = VerticalSection.through(ORIGIN, azimuth);

        SectionPoint found = section.project(Position.ofEastingNorthingElevation(east, north, -depth));

        assertEquals(along, found.along(), tolerance, source);
        assertEquals(-depth, found.elevation());
        // the two coordinates and the horizontal distance make a right-angled triangle
        assertEquals(Math.hypot(north, east), Math.hypot(found.along(), found.offset()), 1e-9);
    }

    @Test
    void offsetIsPositiveToTheRight() {
        VerticalSection north = VerticalSection.through(Position.ofEastingNorthingElevation(100, 50, 9), 360);

        SectionPoint found = north.project(Position.ofEastingNorthingElevation(103, 54, 2));

        assertEquals(new SectionPoint(4, 3, 2), found);
        assertEquals("along 4.00, offset 3.00, elevation 2.00 m", found.toString());
        assertEquals("section towards 000.0 from easting 100.00, northing 50.00, elevation 9.00 m", north.toString());
    }

    @Test
    void badNumbersAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> VerticalSection.through(ORIGIN, 361));
        assertThrows(IllegalArgumentException.class, () -> new SectionPoint(0, Double.NaN, 0));
    }

    @Property
    void thePlaceOfAPointOfTheSectionIsThePlace(@ForAll long seed) {
        Random random = new Random(seed);
        VerticalSection section = VerticalSection.through(
                new Position(1000 * random.nextGaussian(), 1000 * random.nextGaussian(), 0), 360 * random.nextDouble());
        Position place =
                new Position(1000 * random.nextGaussian(), 1000 * random.nextGaussian(), 1000 * random.nextGaussian());

        assertEquals(0, section.placeOf(section.project(place)).minus(place).length(), 1e-11);
    }
}
