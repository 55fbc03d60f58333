package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@Domain(CoreDomain.class)
class NotationTest {

    /** Common practice, no source: one plane in every notation. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DIP_AND_DIRECTION | 62.4/118.9",
                "DIRECTION_AND_DIP | 118.9/62.4",
                "STRIKE_RIGHT_HAND | 028.9/62.4",
                "STRIKE_LEFT_HAND  | 208.9/62.4",
                "STRIKE_AND_SIDE   | 028.9/62.4 SE",
                "STRIKE_BEARING    | N28.9E 62.4 SE",
                "POLE              | 27.6/298.9"
            })
    void aPlaneIsWrittenInSevenWays(PlaneNotation notation, String text) {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(62.4, 118.9);
        assertEquals(text, notation.format(plane));
        assertEquals(0, plane.angleTo(notation.parse(text)), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PLUNGE_AND_TREND   | 30.2/149.9",
                "TREND_AND_PLUNGE   | 149.9/30.2",
                "PLUNGE_AND_BEARING | 30.2 S30.1E"
            })
    void aLineIsWrittenInThreeWays(LineNotation notation, String text) {
        LineOrientation line = LineOrientation.ofPlungeAndTrend(30.2, 149.9);
        assertEquals(text, notation.format(line));
        assertEquals(0, line.angleTo(notation.parse(text)), 1e-12);
    }

    @Property
    void aPlaneComesBackFromEveryNotation(@ForAll PlaneOrientation plane, @ForAll PlaneNotation notation) {
        PlaneOrientation back = notation.parse(notation.format(plane, 12));
        assertEquals(0, Rotations.apart(plane, back), 3e-12, () -> notation.format(plane, 12));
    }

    @Property
    void aLineComesBackFromEveryNotation(@ForAll LineOrientation line, @ForAll LineNotation notation) {
        LineOrientation back = notation.parse(notation.format(line, 12));
        assertEquals(0, Rotations.apart(line, back), 3e-12, () -> notation.format(line, 12));
    }

    @Property
    void noNotationIsFurtherOffThanItsDecimals(@ForAll PlaneOrientation plane, @ForAll PlaneNotation notation) {
        PlaneOrientation back = notation.parse(notation.format(plane, 0));
        assertTrue(Rotations.apart(plane, back) <= 0.71, () -> notation.format(plane, 0));
    }

    /** Common practice, no source: a strike may be read from either of its ends and is written from north. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0   | S90W 40 N  | N90E 40 N",
                "10  | S80E 40 N  | N80W 40 N",
                "30  | S60E 40 NE | N60W 40 NE",
                "90  | S0E 40 E   | N0E 40 E",
                "100 | S10W 40 E  | N10E 40 E",
                "180 | N90W 40 S  | N90E 40 S",
                "225 | S45E 40 SW | N45W 40 SW",
                "270 | N0E 40 W   | N0E 40 W",
                "359 | N89E 40 N  | N89E 40 N"
            })
    void theStrikeIsABearingAndTheFallAPoint(double dipDirection, String read, String written) {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(40, dipDirection);
        assertEquals(0, plane.angleTo(PlaneNotation.STRIKE_BEARING.parse(read)), 1e-12);
        assertEquals(0, plane.angleTo(PlaneNotation.STRIKE_BEARING.parse(written)), 1e-12);
        assertEquals(written, PlaneNotation.STRIKE_BEARING.format(plane, 0));
    }

    @ParameterizedTest
    @CsvSource({"0, 10 N0E", "90, 10 N90E", "180, 10 S0E", "270, 10 N90W"})
    void aBearingOfAQuarterIsWrittenFromNorthAndToTheEast(double trend, String written) {
        assertEquals(written, LineNotation.PLUNGE_AND_BEARING.format(LineOrientation.ofPlungeAndTrend(10, trend), 0));
    }

    @Test
    void aSideSixtyDegreesFromTheFallStillNamesIt() {
        assertEquals(30, PlaneNotation.STRIKE_AND_SIDE.parse("300/40 E").dipDirection());
        assertEquals(150, PlaneNotation.STRIKE_AND_SIDE.parse("240/40 E").dipDirection());
    }

    /** A handbook of engineering calculations, Fig. 27-28, Eq. 48-49 (title from memory: Hicks): S61d22'E falls, N28d38'E strikes. */
    @Test
    void theStrikeOfAVeinIsSquareToTheBearingOfItsFall() {
        LineOrientation fall = LineNotation.PLUNGE_AND_BEARING.parse("52.2167 S61.3667E");
        assertEquals(118.6333, fall.trend(), 1e-9);
        PlaneOrientation vein = PlaneOrientation.ofDipAndDirection(fall.plunge(), fall.trend());
        assertEquals("N28.6333E 52.2167 SE", PlaneNotation.STRIKE_BEARING.format(vein, 4));
    }

    /** 3PT-EX3, a course worksheet: strike 276.566 with the letter W. The plane falls to 186.6; W lies along the strike. */
    @Test
    void lettersThatLieAlongTheStrikeTellNoSide() {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> PlaneNotation.STRIKE_AND_SIDE.parse("276.566/5.646 W"))
                .getMessage();
        assertEquals("side W lies along the strike 276.6; expected the side to which the plane falls", message);
        PlaneOrientation plane = PlaneNotation.STRIKE_AND_SIDE.parse("276.566/5.646 S");
        assertEquals(186.566, plane.dipDirection(), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(PlaneNotation.class)
    void whatIsNotWrittenSoIsRefused(PlaneNotation notation) {
        for (String text :
                new String[] {"", "40", "40/", "40/a", "-40/50", "40/50/60", "NaN/3", "40/361 XX", "1e2/3"}) {
            assertThrows(IllegalArgumentException.class, () -> notation.parse(text), text);
        }
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(40, 50);
        assertThrows(IllegalArgumentException.class, () -> notation.format(plane, -1));
        assertThrows(IllegalArgumentException.class, () -> notation.format(plane, 13));
    }

    @Test
    void anAngleOutOfItsRangeIsRefusedByName() {
        assertEquals(
                "dip is 118.9 degrees; expected within [0, 90]",
                assertThrows(IllegalArgumentException.class, () -> PlaneNotation.DIP_AND_DIRECTION.parse("118.9/62.4"))
                        .getMessage());
        assertEquals(
                "'62.4' is not written as dip and direction; expected such as 62.4/118.9",
                assertThrows(IllegalArgumentException.class, () -> PlaneNotation.DIP_AND_DIRECTION.parse("62.4"))
                        .getMessage());
        assertEquals(
                "'060/40 N' is not written as strike right hand; expected such as 028.9/62.4",
                assertThrows(IllegalArgumentException.class, () -> PlaneNotation.STRIKE_RIGHT_HAND.parse("060/40 N"))
                        .getMessage());
        assertEquals(
                "bearing is 95 degrees; expected within [0, 90]",
                assertThrows(IllegalArgumentException.class, () -> LineNotation.PLUNGE_AND_BEARING.parse("30 N95E"))
                        .getMessage());
    }

    @Test
    void spacesAndDegreeSignsDoNotMatter() {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(62, 119);
        assertEquals(plane, PlaneNotation.DIP_AND_DIRECTION.parse(" 62\u00b0 / 119\u00b0 "));
        assertEquals(plane, PlaneNotation.STRIKE_AND_SIDE.parse("29/62SE"));
        assertEquals(plane, PlaneNotation.STRIKE_BEARING.parse("N 29 E  62 SE"));
        assertEquals(plane, PlaneNotation.DIP_AND_DIRECTION.parse("062.0/119.00"));
    }

    @Test
    void roundingNeverWritesAFullTurn() {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(12, 359.97);
        assertEquals("12.0/000.0", PlaneNotation.DIP_AND_DIRECTION.format(plane));
        assertEquals("12/000", PlaneNotation.DIP_AND_DIRECTION.format(plane, 0));
        assertEquals("12.00/359.97", PlaneNotation.DIP_AND_DIRECTION.format(plane, 2));
        assertEquals("000/30", LineNotation.TREND_AND_PLUNGE.format(LineOrientation.ofPlungeAndTrend(30, 359.6), 0));
    }
}
