package io.github.kernlot.orientation.bulk;

import io.github.kernlot.orientation.internal.Require;
import java.util.Arrays;

/** The checks of {@link Require} for columns from 0: a status in place of an exception, and the first one counts. */
final class Checks {

    private Checks() {}

    static void begin(int offset, int count, byte[] status) {
        Arrays.fill(status, offset, offset + count, RowStatus.ANSWERED);
    }

    /** Refuses what is outside [low, high]; the positive test refuses NaN too. */
    static void range(double[] angle, double low, double high, byte refusal, int offset, int count, byte[] status) {
        for (int i = 0; i < count; i++) {
            if (!(angle[i] >= low && angle[i] <= high) && status[offset + i] == RowStatus.ANSWERED) {
                status[offset + i] = refusal;
            }
        }
    }

    /** A blank beta is 0 at alpha 90, where there is none, and refused elsewhere. */
    static void blank(double[] alpha, double[] beta, int offset, int count, byte[] status) {
        for (int i = 0; i < count; i++) {
            if (Double.isNaN(beta[i]) && status[offset + i] == RowStatus.ANSWERED) {
                if (alpha[i] == 90) {
                    beta[i] = 0;
                } else {
                    status[offset + i] = RowStatus.NOT_ORIENTED;
                }
            }
        }
    }

    static void longAxis(double[] alpha, int offset, int count, byte[] status) {
        for (int i = 0; i < count; i++) {
            if (alpha[i] == 90 && status[offset + i] == RowStatus.ANSWERED) {
                status[offset + i] = RowStatus.NO_LONG_AXIS;
            }
        }
    }
}
