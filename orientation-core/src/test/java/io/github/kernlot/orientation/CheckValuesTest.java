package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Worked examples. The column {@code source} of each file says where a row's numbers come from. */
class CheckValuesTest {

    /** Half a unit in the third decimal, in which most of the computed values are written, and a little. */
    private static final double PRINTED = 0.0006;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "core-spin.csv", useHeadersInDisplayName = true)
    void coreThatIsSpunTurnsThePlaneIntoAnother(
            String id,
            double trend,
            double plunge,
            double dip,
            double dipDirection,
            double spin,
            double alpha,
            @Nullable Double beta,
            double spunDip,
            double spunDipDirection,
            @Nullable Double publishedDip,
            @Nullable Double publishedDipDirection,
            @Nullable Double publishedTolerance) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofPlunge(plunge, trend), 0);
        CorePlane onCore = frame.toCore(PlaneOrientation.ofDipAndDirection(dip, dipDirection));
        assertEquals(alpha, onCore.alpha(), PRINTED);
        if (beta != null) {
            assertEquals(beta, onCore.beta(), PRINTED);
        }
        PlaneOrientation spun = frame.turned(spin).toGeographic(onCore);
        assertPlane(spunDip, spunDipDirection, spun, PRINTED);
        if (publishedDip != null && publishedDipDirection != null && publishedTolerance != null) {
            assertTrue(spun.angleTo(PlaneOrientation.ofDipAndDirection(publishedDip, publishedDipDirection))
                    <= publishedTolerance);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "plane-in-hole.csv", useHeadersInDisplayName = true)
    void aPlaneInTheGroundShowsOnTheCore(
            String id,
            double azimuth,
            double plunge,
            double dip,
            double dipDirection,
            double alpha,
            @Nullable Double beta,
            double tolerance) {
        CorePlane onCore = CoreFrame.at(HoleDirection.ofPlunge(plunge, azimuth), 0)
                .toCore(PlaneOrientation.ofDipAndDirection(dip, dipDirection));
        assertEquals(alpha, onCore.alpha(), tolerance);
        if (beta != null) {
            assertEquals(beta, onCore.beta(), tolerance);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "plane-from-core.csv", useHeadersInDisplayName = true)
    void alphaAndBetaMakeAPlaneInTheGround(
            String id,
            double azimuth,
            double plunge,
            String reference,
            double alpha,
            double beta,
            double dip,
            double dipDirection,
            double polePlunge,
            double poleTrend) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofPlunge(plunge, azimuth), side(reference), 0);
        PlaneOrientation plane = frame.toGeographic(CorePlane.of(alpha, beta));
        assertPlane(dip, dipDirection, plane, PRINTED);
        assertLine(polePlunge, poleTrend, plane.pole(), PRINTED);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "line-in-plane.csv", useHeadersInDisplayName = true)
    void alphaBetaAndGammaMakeALineInTheGround(
            String id,
            double azimuth,
            double plunge,
            String reference,
            double alpha,
            double beta,
            double gamma,
            double linePlunge,
            double lineTrend,
            double rake,
            double axisAngle,
            double delta) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofPlunge(plunge, azimuth), side(reference), 0);
        CorePlane plane = CorePlane.of(alpha, beta);
        LineInPlane measured = plane.line(gamma);
        LineOrientation line = frame.toGeographic(measured);
        assertLine(linePlunge, lineTrend, line, PRINTED);

        CoreLine byItself = measured.toCoreLine();
        assertEquals(axisAngle, byItself.axisAngle(), PRINTED);
        assertEquals(delta, byItself.delta(), PRINTED);
        assertLine(linePlunge, lineTrend, frame.toGeographic(byItself), PRINTED);

        assertEquals(rake, frame.toGeographic(plane).rake(line), PRINTED);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "line-to-pole.csv", useHeadersInDisplayName = true)
    void aLineStandsAtThatAngleToThePoleOfAPlane(
            String id,
            double plunge,
            double trend,
            double dip,
            double dipDirection,
            double expected,
            double tolerance) {
        LineOrientation line = LineOrientation.ofPlungeAndTrend(plunge, trend);
        LineOrientation pole =
                PlaneOrientation.ofDipAndDirection(dip, dipDirection).pole();
        assertEquals(expected, line.angleTo(pole), tolerance);
        assertEquals(expected, pole.angleTo(line), tolerance);
        assertEquals(90 - expected, line.angleTo(PlaneOrientation.ofDipAndDirection(dip, dipDirection)), tolerance);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "strike-and-pole.csv", useHeadersInDisplayName = true)
    void aPlaneHasItsStrikeAndItsPole(
            String id, double dip, double dipDirection, double strike, double polePlunge, double poleTrend) {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(dip, dipDirection);
        assertEquals(strike, plane.strike(), 1e-9);
        assertLine(polePlunge, poleTrend, plane.pole(), 1e-9);
        assertPlane(dip, dipDirection, PlaneOrientation.ofStrikeRightHand(strike, dip), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "line-turned-about-axis.csv", useHeadersInDisplayName = true)
    void aLineTurnsAboutAnAxisAsCoreDoesInItsHole(
            String id,
            double axisPlunge,
            double axisTrend,
            double plunge,
            double trend,
            double turn,
            double turnedPlunge,
            double turnedTrend) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofPlunge(axisPlunge, axisTrend), 0);
        CoreLine onCore = frame.toCore(LineOrientation.ofPlungeAndTrend(plunge, trend));
        assertLine(turnedPlunge, turnedTrend, frame.turned(turn).toGeographic(onCore), PRINTED);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "beta-conventions.csv", useHeadersInDisplayName = true)
    void aBetaReadByAnotherConventionIsAnotherPlane(
            String id,
            double azimuth,
            double plunge,
            Sense sense,
            View view,
            Apex apex,
            String lineSide,
            double alpha,
            double beta,
            double dip,
            double dipDirection) {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofPlunge(plunge, azimuth), side(lineSide + " side"), 0);
        double house = new BetaConvention(sense, view, apex).toHouse(beta);
        assertPlane(dip, dipDirection, frame.toGeographic(CorePlane.of(alpha, house)), 0.006);
    }

    private static WallReference side(String name) {
        return switch (name) {
            case "low side" -> WallReference.lowSide();
            case "high side" -> WallReference.highSide();
            default -> WallReference.azimuth(Double.parseDouble(name.substring("azimuth ".length())));
        };
    }

    /** Both angles of a plane; the other name of a vertical plane counts too. */
    private static void assertPlane(double dip, double dipDirection, PlaneOrientation plane, double tolerance) {
        assertEquals(dip, plane.dip(), tolerance, () -> "dip of " + plane);
        double apart = around(dipDirection, plane.dipDirection(), plane.isVertical());
        assertEquals(0, apart * Math.sin(Math.toRadians(dip)), tolerance, () -> "dip direction of " + plane);
    }

    /** Both angles of a line; the other end of a horizontal line counts too. */
    private static void assertLine(double plunge, double trend, LineOrientation line, double tolerance) {
        assertEquals(plunge, line.plunge(), tolerance, () -> "plunge of " + line);
        double apart = around(trend, line.trend(), line.plunge() == 0);
        assertEquals(0, apart * Math.cos(Math.toRadians(plunge)), tolerance, () -> "trend of " + line);
    }

    private static double around(double expected, double found, boolean axial) {
        return Math.IEEEremainder(found - expected, axial ? 180 : 360);
    }
}
