package io.github.kernlot.survey.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Rounded values along an axis: a step of 1, 2 or 5 times a power of ten. */
record Ticks(BigDecimal step, List<BigDecimal> values) {

    /** The rounded values from low to high, with the smallest step that makes no more than the count. */
    static Ticks between(double low, double high, int count) {
        BigDecimal step = step((high - low) / count);
        List<BigDecimal> values = new ArrayList<>();
        BigDecimal first =
                BigDecimal.valueOf(Math.ceil(low / step.doubleValue() - 1e-9)).multiply(step);
        for (BigDecimal value = first; value.doubleValue() <= high + 1e-9 * (high - low); value = value.add(step)) {
            values.add(value);
        }
        return new Ticks(step, List.copyOf(values));
    }

    private static BigDecimal step(double least) {
        int power = (int) Math.floor(Math.log10(least));
        for (int factor : new int[] {1, 2, 5}) {
            BigDecimal step = BigDecimal.valueOf(factor).scaleByPowerOfTen(power);
            if (step.doubleValue() >= least * (1 - 1e-9)) {
                return step;
            }
        }
        return BigDecimal.ONE.scaleByPowerOfTen(power + 1);
    }

    static String text(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
