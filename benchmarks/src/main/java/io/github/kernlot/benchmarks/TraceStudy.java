package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.TraceColumns;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * How far the library and the baseline of {@link TraceBenchmark} are apart, and the least time of the processor that each took: on a
 * machine that is not quiet it says more than a mean of the clock does.
 */
public final class TraceStudy {

    private static final int ROUNDS = 200;
    private static final int BUILDS = 50;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private TraceStudy() {}

    /**
     * Prints a line for each number of stations and order of depths.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        for (int stations : new int[] {10, 100, 1000}) {
            for (String order : new String[] {"sorted", "unsorted"}) {
                TraceBenchmark run = new TraceBenchmark();
                run.stations = stations;
                run.order = order;
                run.drill();
                tell(run);
            }
            Survey survey = TraceBenchmark.survey(stations);
            double build = least(() -> {
                double sum = 0;
                for (int i = 0; i < BUILDS; i++) {
                    sum += TraceColumns.of(HoleTrace.minimumCurvature(TraceBenchmark.COLLAR, survey))
                            .hashCode();
                }
                return sum;
            });
            print("%d stations: built in %.1f us%n", stations, build / BUILDS / 1000);
        }
    }

    private static void tell(TraceBenchmark run) {
        double perRow = 1.0 / TraceBenchmark.ROWS;
        double plainPlaces = perRow * least(() -> plainPlaces(run));
        double places = perRow * least(run::positions);
        double plainBoth = perRow * least(() -> plainBoth(run));
        double both = perRow * least(run::positionsAndDirections);
        print(
                "%d stations, %s: places %.1f ns against %.1f (%.1f times), with directions %.1f against %.1f (%.1f times)%n",
                run.stations, run.order, places, plainPlaces, plainPlaces / places, both, plainBoth, plainBoth / both);
        double farthest = 0;
        double widest = 0;
        for (int i = 0; i < TraceBenchmark.ROWS; i++) {
            PlainTrace.Answer answer = run.plain.answerAt(run.depths[i]);
            Position place = new Position(run.easting[i], run.northing[i], run.elevation[i]);
            farthest = Math.max(farthest, answer.position().minus(place).length());
            HoleDirection direction = new HoleDirection(run.inclination[i], run.azimuth[i]);
            widest = Math.max(widest, answer.direction().angleTo(direction));
        }
        print("    at most %.1e m and %.1e degrees apart%n", farthest, widest);
    }

    private static double plainPlaces(TraceBenchmark run) {
        double sum = 0;
        for (double depth : run.depths) {
            sum += run.plain.positionAt(depth).easting();
        }
        return sum;
    }

    private static double plainBoth(TraceBenchmark run) {
        double sum = 0;
        for (double depth : run.depths) {
            PlainTrace.Answer answer = run.plain.answerAt(depth);
            sum += answer.position().easting() + answer.direction().azimuth();
        }
        return sum;
    }

    /** The least time of the processor for one call, nanoseconds. */
    private static double least(DoubleSupplier work) {
        double least = Double.POSITIVE_INFINITY;
        double kept = 0;
        for (int i = 0; i < ROUNDS; i++) {
            long before = THREADS.getCurrentThreadCpuTime();
            kept += work.getAsDouble();
            least = Math.min(least, (double) (THREADS.getCurrentThreadCpuTime() - before));
        }
        // what is never looked at would not be worked out
        return Double.isNaN(kept) ? Double.NaN : least;
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
