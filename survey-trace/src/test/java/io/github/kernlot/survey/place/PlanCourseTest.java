package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;

class PlanCourseTest {

    /** An arc in plan is a piece of an ellipse: R E(phi, sin^2 of the tilt), by Hipparchus. */
    private static double ellipse(SurveyStation upper, SurveyStation lower) {
        Vector3D from = Traces.vector(upper.direction());
        Vector3D to = Traces.vector(lower.direction());
        double dogleg = Vector3D.angle(from, to);
        double length = lower.depth() - upper.depth();
        if (dogleg < 1e-4) {
            // too short an ellipse for a difference of integrals; Simpson's rule on sin I is within dogleg^4
            Vector3D middle = from.add(to).normalize();
            return length * (across(from) + 4 * across(middle) + across(to)) / 6;
        }
        Vector3D axis = from.crossProduct(to).normalize();
        // down on the arc is w sin(s - s0), w the sine of the axis' tilt: sin I = sqrt(1 - w^2 sin^2)
        double square = axis.getX() * axis.getX() + axis.getY() * axis.getY();
        Vector3D level = new Vector3D(axis.getY(), -axis.getX(), 0).normalize();
        Vector3D across = axis.crossProduct(level);
        double start = Math.atan2(from.dotProduct(across), from.dotProduct(level));
        double end = start + dogleg;
        return length
                / dogleg
                * (LegendreEllipticIntegral.bigE(end, square) - LegendreEllipticIntegral.bigE(start, square));
    }

    private static double across(Vector3D tangent) {
        return Math.hypot(tangent.getX(), tangent.getY());
    }

    @Property(tries = 200)
    void theLengthInPlanIsThatOfEllipses(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations =
                random.nextBoolean() ? Traces.drifting(random, 12, 1) : Traces.wandering(random, 12);
        PlanCourse course = PlanCourse.of(Traces.of(stations));
        double expected = 0;
        double lost = 1e-8;
        for (int i = 1; i < stations.size(); i++) {
            SurveyStation upper = stations.get(i - 1);
            SurveyStation lower = stations.get(i);
            expected += ellipse(upper, lower);
            // the difference of two elliptic integrals has lost the more digits the smaller the dogleg is
            double dogleg = Vector3D.angle(Traces.vector(upper.direction()), Traces.vector(lower.direction()));
            lost += 3e-13 * (lower.depth() - upper.depth()) / Math.max(1e-4, dogleg);
            assertEquals(expected, course.lengthAt(lower.depth()), lost);
        }
    }

    @Property(tries = 100)
    void theStraightLineIsTheShorterOne(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, 8);
        HoleTrace trace = Traces.of(stations);
        PlanCourse course = PlanCourse.of(trace);
        double before = 0;
        for (int i = 0; i <= 20; i++) {
            double depth = Traces.lastDepth(stations) * i / 20;
            double length = course.lengthAt(depth);
            assertTrue(course.closureAt(depth).distance() <= length + 1e-9);
            assertTrue(length >= before && length <= depth + 1e-9);
            before = length;
        }
    }

    @Test
    void aHoleThatPassesThroughVerticalHasGoneThereAndBack() {
        // ten degrees on a circle of R: out by R (1 - cos 5), and back
        PlanCourse course = PlanCourse.of(Traces.of("0 5 0; 100 5 180"));
        double radius = 100 / Math.toRadians(10);

        assertEquals(2 * radius * (1 - Math.cos(Math.toRadians(5))), course.lengthAt(100), 1e-9);
        assertEquals(0, course.closureAt(100).distance(), 1e-9);
        assertEquals(0, Traces.apart(0, course.closureAt(50).bearing()), 1e-9);
    }

    /** Closure = hypot(N, E) and atan2(E, N), on the textbook's position. */
    @Test
    void theClosureIsTheTextbooks() {
        HoleTrace trace = Traces.of("3500 15 20; 3600 25 45");
        Displacement way = trace.displacementAt(3600);

        Closure closure = PlanCourse.of(trace).closureAt(3600);

        assertEquals(Math.hypot(way.north(), way.east()), closure.distance(), 1e-12);
        assertEquals(Math.toDegrees(Math.atan2(way.east(), way.north())), closure.bearing(), 1e-12);
        assertTrue(closure.toString().contains(" m towards 0"), closure.toString());
    }

    @Test
    void aVerticalHoleGoesNowhereInPlan() {
        PlanCourse course = PlanCourse.of(Traces.of("0 0 0; 100 0 50"));

        assertEquals(0, course.lengthAt(80));
        assertEquals(new Closure(0, 0), course.closureAt(80));
        assertEquals("0.00 m", course.closureAt(80).toString());
        assertTrue(course.toString().startsWith("0.00 m in plan of the trace"), course.toString());
        assertThrows(IllegalArgumentException.class, () -> course.lengthAt(-1));
        assertThrows(IllegalArgumentException.class, () -> course.lengthAt(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> course.closureAt(1e7));
        assertThrows(IllegalArgumentException.class, () -> new Closure(-1, 0));
    }
}
