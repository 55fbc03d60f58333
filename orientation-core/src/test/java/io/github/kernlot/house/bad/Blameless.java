package io.github.kernlot.house.bad;

import java.util.List;

/** Does all that a public value may. */
public record Blameless(double dip, List<double[]> columns) {
    private static final double LIMIT = 90;

    /** Refuses, and overrides a getter of the JDK. */
    public static final class BlamelessException extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        @Override
        public String getMessage() {
            return "above " + LIMIT;
        }
    }

    /** Sealed. */
    public abstract static sealed class BlamelessShape {}

    /** The one shape. */
    public static final class BlamelessCircle extends BlamelessShape {}
}
