package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A hole seen from above: how far it has gone along its own course in plan, the integral of sin I over depth, and in a straight line
 * from the collar. The two differ as soon as the hole turns or goes back.
 */
public final class PlanCourse {

    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendreHighPrecision(12);
    private static final double ACCURACY = 1e-11;
    private static final double LEAST_PIECE = 1e-6;

    private final HoleTrace trace;
    private final Legs legs;
    private final double[] lengths;

    private PlanCourse(HoleTrace trace) {
        this.trace = trace;
        legs = Legs.of(trace, 0, trace.reach());
        lengths = new double[legs.count() + 1];
        for (int leg = 0; leg < legs.count(); leg++) {
            lengths[leg + 1] = lengths[leg] + length(leg, legs.depth(leg), legs.depth(leg + 1));
        }
    }

    /**
     * The course of a trace in plan.
     *
     * @param trace the trace
     * @return the course, along its whole reach
     */
    public static PlanCourse of(HoleTrace trace) {
        return new PlanCourse(trace);
    }

    /**
     * The length of the course in plan from the collar.
     *
     * @param depth metres along the hole
     * @return metres, within 1e-9 m and 1e-12 of the depth; it never decreases with depth
     * @throws IllegalArgumentException if the trace does not reach that depth
     */
    public double lengthAt(double depth) {
        trace.isExtrapolated(depth);
        int leg = legs.at(depth);
        return lengths[leg] + length(leg, legs.depth(leg), depth);
    }

    /**
     * The straight line in plan from the collar, whose distance is the departure of the hole.
     *
     * @param depth metres along the hole
     * @return distance and bearing
     * @throws IllegalArgumentException if the trace does not reach that depth
     */
    public Closure closureAt(double depth) {
        Displacement way = trace.displacementAt(depth);
        return new Closure(Math.hypot(way.north(), way.east()), Degrees.azimuth(way.east(), way.north()));
    }

    private double length(int leg, double from, double to) {
        if (legs.curvature(leg) == 0) {
            return legs.way(to).minus(legs.way(from)).horizontal();
        }
        return integral(from, to, gauss(from, to));
    }

    /** Halved until the halves agree with the whole, which in the end is about the places where the hole is vertical. */
    private double integral(double from, double to, double whole) {
        double middle = from + (to - from) / 2;
        double upper = gauss(from, middle);
        double lower = gauss(middle, to);
        if (Math.abs(upper + lower - whole) <= ACCURACY || to - from < LEAST_PIECE) {
            return upper + lower;
        }
        return integral(from, middle, upper) + integral(middle, to, lower);
    }

    private double gauss(double from, double to) {
        double half = (to - from) / 2;
        double middle = from + half;
        double[] terms = new double[GAUSS.getNumberOfPoints()];
        for (int i = 0; i < terms.length; i++) {
            Vector tangent = legs.tangent(middle + half * GAUSS.getPoint(i));
            terms[i] = GAUSS.getWeight(i) * tangent.horizontal();
        }
        return half * Arrays.stream(terms).sum();
    }

    /** The trace and its whole course. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f m in plan of the %s", lengths[lengths.length - 1], trace);
    }
}
