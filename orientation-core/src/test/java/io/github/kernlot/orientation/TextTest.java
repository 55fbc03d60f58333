package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Values print as a geologist writes them, in every locale. */
class TextTest {

    private static List<String> everyText() {
        return List.of(
                HoleDirection.ofDip(-60, 90).toString(),
                PlaneOrientation.ofDipAndDirection(62.4, 118.9).toString(),
                LineOrientation.ofPlungeAndTrend(30.2, 49.9).toString(),
                CorePlane.of(41, 213).toString(),
                CorePlane.perpendicular().toString(),
                CorePlane.of(41, 213).line(35).toString(),
                CorePlane.of(41, 213).directedLine(35).toString(),
                CoreLine.ofAxisAngleAndDelta(51.1, 167.4).toString(),
                CoreDiameter.ofMillimetres(63.5).toString(),
                CoreFrame.at(HoleDirection.ofDip(-60, 90), 25).toString(),
                CoreFrame.at(HoleDirection.ofDip(-90, 90), WallReference.azimuth(10), 25)
                        .toString(),
                WallReference.lowSide().toString(),
                WallReference.highSide().toString(),
                WallReference.north().toString(),
                WallReference.azimuth(12.5).toString(),
                Position.ofEastingNorthingElevation(100, 200, 50).toString(),
                BetaConvention.HOUSE.toString(),
                new GammaConvention(
                                BetaConvention.Sense.ANTICLOCKWISE,
                                BetaConvention.View.UP_HOLE,
                                GammaConvention.Zero.SHORT_AXIS_CLOCKWISE)
                        .toString(),
                HolePath.straight(HoleDirection.ofDip(-60, 90)).toString());
    }

    private static final List<String> EXPECTED = List.of(
            "-60.0/090.0 (dip/azimuth)",
            "62.4/118.9 (dip/dip direction)",
            "30.2/049.9 (plunge/trend)",
            "alpha 41.0, beta 213.0",
            "alpha 90.0, no beta",
            "alpha 41.0, beta 213.0, gamma 035.0",
            "alpha 41.0, beta 213.0, arrow at gamma 035.0",
            "axis angle 51.1, delta 167.4",
            "63.5 mm",
            "-60.0/090.0 (dip/azimuth), line 025.0 from low side",
            "-90.0/000.0 (dip/azimuth), line 035.0 from north",
            "low side",
            "high side",
            "north",
            "azimuth 012.5",
            "easting 100.00, northing 200.00, elevation 50.00 m",
            "beta clockwise looking down-hole to the down-hole end",
            "gamma anticlockwise looking up-hole from the clockwise end of the short axis",
            "straight -60.0/090.0 (dip/azimuth)");

    @Test
    void valuesPrintAsTheyAreWritten() {
        assertEquals(EXPECTED, everyText());
    }

    @Test
    void noLocaleChangesAText() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "fr-FR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva", "fa-IR")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(EXPECTED, everyText(), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void anAzimuthThatRoundsToAFullTurnPrintsAsNorth() {
        assertEquals(
                "12.0/000.0 (dip/dip direction)",
                PlaneOrientation.ofDipAndDirection(12, 359.96).toString());
        assertEquals(
                "12.0/359.9 (dip/dip direction)",
                PlaneOrientation.ofDipAndDirection(12, 359.94).toString());
        assertEquals("azimuth 000.0", WallReference.azimuth(359.97).toString());
    }

    @Test
    void aDipThatRoundsToNoughtPrintsWithoutASign() {
        assertEquals("0.0/000.0 (dip/azimuth)", HoleDirection.ofDip(-0.04, 0).toString());
        assertEquals("-0.1/000.0 (dip/azimuth)", HoleDirection.ofDip(-0.06, 0).toString());
        assertEquals(
                "easting 0.00, northing -0.01, elevation 0.00 m",
                Position.ofEastingNorthingElevation(-0.004, -0.006, -0.004).toString());
    }

    @Test
    void halvesAreRoundedAlikeInEveryAngle() {
        assertEquals(
                "12.3/012.3 (dip/dip direction)",
                PlaneOrientation.ofDipAndDirection(12.25, 12.25).toString());
    }

    @Test
    void aFrameInAnUpHolePrintsItsDip() {
        assertEquals(
                "35.0/200.0 (dip/azimuth), line 000.0 from low side",
                CoreFrame.at(HoleDirection.ofDip(35, 200), 0).toString());
    }
}
