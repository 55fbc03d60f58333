package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.solve.PlaneEstimate;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Traces on the cut face and on a cut across, against vectors by Hipparchus with x along the reference line and z down-hole. */
class FacesTest {

    private static Vector3D wall(double angle) {
        return new Vector3D(Math.cos(Math.toRadians(angle)), Math.sin(Math.toRadians(angle)), 0);
    }

    private static Vector3D normal(CorePlane plane) {
        double alpha = Math.toRadians(plane.alpha());
        return new Vector3D(Math.sin(alpha), Vector3D.PLUS_K, -Math.cos(alpha), wall(plane.beta()));
    }

    private static Vector3D line(CoreLine line) {
        double angle = Math.toRadians(line.axisAngle());
        return new Vector3D(Math.cos(angle), Vector3D.PLUS_K, Math.sin(angle), wall(line.delta()));
    }

    private static double apart(Vector3D one, Vector3D other) {
        double angle = Vector3D.angle(one, other);
        return Math.toDegrees(Math.min(angle, Math.PI - angle));
    }

    /** Where a plane meets the face that holds the axis and the edge. */
    private static CoreLine trace(CorePlane plane, double edge) {
        Vector3D met = normal(plane).crossProduct(wall(edge + 90)).normalize();
        Vector3D down = met.getZ() < 0 ? met.negate() : met;
        return CoreLine.ofAxisAngleAndDelta(
                Math.toDegrees(Vector3D.angle(down, Vector3D.PLUS_K)),
                Traces.wrapped(Math.toDegrees(Math.atan2(down.getY(), down.getX()))));
    }

    @Property(tries = 300)
    void theCutFaceLeavesAlphaOpenBelowTheApparentAngle(
            @ForAll @DoubleRange(min = 1, max = 89) double alpha,
            @ForAll @DoubleRange(max = 360) double beta,
            @ForAll @DoubleRange(max = 360) double edge) {
        CorePlane plane = CorePlane.of(alpha, beta);
        CoreLine seen = trace(plane, edge);
        FaceTrace face = FaceTrace.of(seen.axisAngle(), seen.delta());
        assertTrue(alpha <= face.apparentAngle() + 1e-9);
        Assume.that(Math.abs(Math.cos(Math.toRadians(beta - edge))) > 1e-3);
        assertEquals(alpha, face.alphaAt(plane.beta()).orElseThrow(), 1e-6);
        if (face.apparentAngle() - alpha > 1e-6) {
            List<Double> betas = face.betasAt(alpha);
            assertTrue(
                    betas.stream().anyMatch(each -> Math.abs(Math.IEEEremainder(each - beta, 360)) < 1e-5),
                    () -> beta + " in " + betas);
        }
        for (CorePlane other : face.planes(7)) {
            assertEquals(90, apart(normal(other), line(face.line())), 1e-6);
            assertTrue(other.alpha() <= face.apparentAngle() + 1e-9);
        }
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 215), 40);
        List<PlaneOrientation> ground = face.toGeographic(frame, 7);
        assertEquals(7, ground.size());
        for (PlaneOrientation each : ground) {
            assertEquals(0, each.angleTo(frame.toGeographic(face.line())), 1e-6);
        }
    }

    @ParameterizedTest
    @CsvSource({"40, 30, 0, 40", "40, 30, 90, 0", "40, 30, -90, 0", "90, 30, 0, 90", "0, 30, 20, 0", "90, 30, 60, 30"})
    void aPlaneTurnedAboutTheTrace(double apparent, double edge, double turn, double alpha) {
        assertEquals(alpha, FaceTrace.of(apparent, edge).planeAt(turn).alpha(), 1e-9);
    }

    @Test
    void aTurnClockwiseOfTheEdgeGivesABetaClockwiseOfIt() {
        FaceTrace face = FaceTrace.of(40, 350);
        for (double turn : new double[] {-60, -20, 20, 60}) {
            CorePlane plane = face.planeAt(turn);
            double beyond = Math.IEEEremainder(plane.beta() - 350, 360);
            assertEquals(Math.signum(turn), Math.signum(beyond));
            assertEquals(face.alphaAt(plane.beta()).orElseThrow(), plane.alpha(), 1e-9);
        }
    }

    @Test
    void theEndsOfWhatAFaceTells() {
        FaceTrace face = FaceTrace.of(40, 30);
        assertEquals(List.of(30.0), face.betasAt(40));
        assertEquals(List.of(300.0, 120.0), face.betasAt(0));
        assertEquals(List.of(), face.betasAt(40.1));
        assertEquals(List.of(), FaceTrace.of(0, 30).betasAt(0));
        assertEquals(List.of(), FaceTrace.of(90, 30).betasAt(90));
        assertTrue(face.alphaAt(210).isEmpty());
        assertEquals(40, face.alphaAt(30).orElseThrow(), 1e-12);
        assertEquals(0, face.alphaAt(120).orElseThrow(), 1e-12);
        assertTrue(FaceTrace.of(90, 30).alphaAt(120).isEmpty());
        assertEquals(90, FaceTrace.of(90, 30).alphaAt(100).orElseThrow(), 1e-9);
        assertEquals("apparent angle 40.0 towards 030.0, alpha 40.0 at most", face.toString());
        assertThrows(IllegalArgumentException.class, () -> FaceTrace.of(90.1, 0));
        assertThrows(IllegalArgumentException.class, () -> FaceTrace.of(10, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> face.planeAt(91));
        assertThrows(IllegalArgumentException.class, () -> face.planes(0));
        assertThrows(IllegalArgumentException.class, () -> face.betasAt(Double.NaN));
    }

    @Property(tries = 300)
    void twoFacesGiveThePlane(
            @ForAll @DoubleRange(min = 1, max = 89) double alpha,
            @ForAll @DoubleRange(max = 360) double beta,
            @ForAll @DoubleRange(max = 360) double edge) {
        CorePlane plane = CorePlane.of(alpha, beta);
        CoreLine seen = trace(plane, edge);
        CoreLineEstimate onFace = CoreLineEstimate.onCutFace(seen.axisAngle(), seen.delta(), 1, 1);
        CoreLineEstimate across = CoreLineEstimate.onCrossCut(Traces.wrapped(beta + 90), 2, 1);
        Vector3D expected = line(onFace.line()).crossProduct(line(across.line()));
        Assume.that(expected.getNorm() > 1e-3);
        CorePlaneEstimate found = CorePlaneEstimate.ofLines(onFace, across);
        assertEquals(0, apart(expected, normal(found.plane())), 1e-6);
        assertEquals(0, apart(normal(plane), normal(found.plane())), 1e-4);
        double greatest = found.greatestSigma();
        assertEquals(greatest, CorePlaneEstimate.ofLines(across, onFace).greatestSigma(), 1e-6 * greatest);
    }

    @ParameterizedTest
    @CsvSource({"40, 30, 100", "70, 200, 310", "10, 30, 120", "85, 0, 45"})
    void theSigmasAreWhatDrawnTracesScatter(double apparent, double edge, double across) {
        CoreLineEstimate one = CoreLineEstimate.onCutFace(apparent, edge, 1, 0.5);
        CoreLineEstimate two = CoreLineEstimate.onCrossCut(across, 1.5, 0.7);
        CorePlaneEstimate estimate = CorePlaneEstimate.ofLines(one, two);
        CorePlane plane = estimate.plane();
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-55, 130), 77);
        PlaneEstimate ground = estimate.toGeographic(frame);
        Vector3D truth = normal(plane);
        Vector3D withAlpha = normal(CorePlane.of(90 - plane.alpha(), Traces.wrapped(plane.beta() + 180)));
        Vector3D withBeta = wall(plane.beta() - 90);
        Random random = new Random(9);
        int draws = 20_000;
        double alpha = 0;
        double round = 0;
        double both = 0;
        double dip = 0;
        double strike = 0;
        double dipAndStrike = 0;
        for (int i = 0; i < draws; i++) {
            double angle = Math.toRadians(apparent + random.nextGaussian());
            Vector3D face = new Vector3D(
                    Math.cos(angle), Vector3D.PLUS_K, Math.sin(angle), wall(edge + 0.5 * random.nextGaussian()));
            double square = Math.toRadians(0.7 * random.nextGaussian());
            Vector3D cross = new Vector3D(
                    Math.cos(square), wall(across + 1.5 * random.nextGaussian()), -Math.sin(square), Vector3D.PLUS_K);
            Vector3D product = face.crossProduct(cross).normalize();
            Vector3D drawn = product.dotProduct(truth) < 0 ? product.negate() : product;
            double byAlpha = Math.toDegrees(drawn.dotProduct(withAlpha));
            double byBeta = Math.toDegrees(drawn.dotProduct(withBeta));
            alpha += byAlpha * byAlpha / draws;
            round += byBeta * byBeta / draws;
            both += byAlpha * byBeta / draws;
            PlaneOrientation inGround = frame.toGeographic(plane(drawn));
            double off = inGround.dip() - ground.plane().dip();
            double along =
                    Math.IEEEremainder(inGround.dipDirection() - ground.plane().dipDirection(), 360)
                            * Math.sin(Math.toRadians(inGround.dip()));
            dip += off * off / draws;
            strike += along * along / draws;
            dipAndStrike += off * along / draws;
        }
        // to first order: an error across of 1.5 degrees at 45 degrees between the traces is 2 % of second order
        assertEquals(Math.sqrt(alpha), estimate.alphaSigma(), 0.04 * estimate.alphaSigma());
        assertEquals(Math.sqrt(round), estimate.roundSigma(), 0.04 * estimate.roundSigma());
        assertEquals(
                both, estimate.correlation() * estimate.alphaSigma() * estimate.roundSigma(), 0.04 * (alpha + round));
        assertEquals(Math.sqrt(dip), ground.dipSigma(), 0.05 * ground.dipSigma());
        assertEquals(Math.sqrt(strike), ground.strikeSigma(), 0.05 * ground.strikeSigma());
        assertEquals(
                dipAndStrike, ground.correlation() * ground.dipSigma() * ground.strikeSigma(), 0.05 * (dip + strike));
        assertEquals(estimate.greatestSigma(), ground.greatestSigma(), 1e-6);
        assertEquals(estimate.leastSigma(), ground.leastSigma(), 1e-6);
    }

    @Test
    void betaHasASigmaFartherThanTwoSigmasFromAlpha90() {
        CorePlaneEstimate read = CorePlaneEstimate.ofAlphaAndBeta(CorePlane.of(85.9, 5), 2, 7);
        assertEquals(7, read.betaSigma().orElseThrow(), 1e-12);
        assertEquals(7 * Math.cos(Math.toRadians(85.9)), read.roundSigma(), 1e-12);
        assertTrue(CorePlaneEstimate.ofAlphaAndBeta(CorePlane.of(86.1, 5), 2, 7)
                .betaSigma()
                .isEmpty());
        assertEquals(
                "alpha 60.0, beta 005.0, sigma 2.0 in alpha and 3.5 round the core",
                CorePlaneEstimate.ofAlphaAndBeta(CorePlane.of(60, 5), 2, 7).toString());
        assertEquals(
                "alpha 60.0, beta 005.0, sigma 2.0 in alpha and 3.0 round the core, degrees of freedom 9",
                new CorePlaneEstimate(CorePlane.of(60, 5), 2, 3, 0, 9).toString());
        assertThrows(
                IllegalArgumentException.class,
                () -> CorePlaneEstimate.ofAlphaAndBeta(CorePlane.of(60, 5), 2, Double.NaN));
    }

    private static CorePlane plane(Vector3D normal) {
        Vector3D down = normal.getZ() < 0 ? normal.negate() : normal;
        return CorePlane.of(
                Math.toDegrees(Math.asin(down.getZ())),
                Traces.wrapped(Math.toDegrees(Math.atan2(-down.getY(), -down.getX()))));
    }

    @Test
    void parallelTracesAreRefused() {
        CoreLineEstimate across = CoreLineEstimate.onCrossCut(30, 1, 1);
        CoreLineEstimate same = CoreLineEstimate.onCutFace(90, 210, 1, 1);
        String message = assertThrows(IllegalArgumentException.class, () -> CorePlaneEstimate.ofLines(across, same))
                .getMessage();
        assertTrue(message.contains("parallel"), message);
        assertThrows(IllegalArgumentException.class, () -> CoreLineEstimate.onCutFace(91, 0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> CoreLineEstimate.onCrossCut(361, 1, 1));
    }
}
