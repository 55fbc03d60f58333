package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.PlaneOrientation;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;

/**
 * The least time of the processor that each route of {@link BulkBenchmark} took, and how far its planes are from those of the columns: on a
 * machine that is not quiet it says more than a mean of the clock does.
 */
public final class BulkStudy {

    private static final int ROUNDS = 500;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private BulkStudy() {}

    /**
     * Prints a line for each route.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        BulkBenchmark run = new BulkBenchmark();
        run.drill();
        double columns = least(run::columns);
        double[] dip = run.dip.clone();
        double[] dipDirection = run.dipDirection.clone();
        tell(run, "columns", run::columns, columns, dip, dipDirection);
        tell(run, "scalar", run::scalar, columns, dip, dipDirection);
        tell(run, "math", run::math, columns, dip, dipDirection);
        tell(run, "matrices", run::matrices, columns, dip, dipDirection);
        tell(run, "rotations", run::rotations, columns, dip, dipDirection);
        print("%-20s %6.1f ns%n", "columns of one frame", least(run::columnsOfOneFrame));
        print("%-20s %6.1f ns%n", "columns to core", least(run::columnsToCore));
        print("%-20s %6.1f ns%n", "memory alone", least(run::memory));
    }

    private static void tell(
            BulkBenchmark run, String name, Runnable route, double columns, double[] dip, double[] dipDirection) {
        double time = least(route);
        double widest = 0;
        for (int i = 0; i < BulkBenchmark.ROWS; i++) {
            PlaneOrientation found = new PlaneOrientation(run.dip[i], run.dipDirection[i]);
            widest = Math.max(widest, found.angleTo(new PlaneOrientation(dip[i], dipDirection[i])));
        }
        print("%-20s %6.1f ns, %.1f times, at most %.1e degrees apart%n", name, time, time / columns, widest);
    }

    /** The least time of the processor for one row, nanoseconds. */
    private static double least(Runnable work) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ROUNDS; i++) {
            long before = THREADS.getCurrentThreadCpuTime();
            work.run();
            least = Math.min(least, (double) (THREADS.getCurrentThreadCpuTime() - before));
        }
        return least / BulkBenchmark.ROWS;
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
