package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A structure as it was measured on the core: a plane, a plane with a line, or a line alone.
 *
 * @param depth metres along the hole, 0 or more
 * @param kind what it is, in the log's own word: bedding, joint, vein
 * @param alpha acute angle between the plane and the core axis, degrees in [0, 90]; empty of a line alone
 * @param beta as it was read, in the convention of the log, degrees in [0, 360); empty where it was not measured
 * @param gamma of a line in the structure, in the plane, clockwise looking down-hole from the down-hole end of the ellipse's long
 *     axis, degrees in [0, 360); empty where there is no such line
 * @param coreLine a line through the core by itself; empty where there is none
 * @param sense the end of the hole to which the line's arrow points or, where there is no line, the side to which the plane faces; empty
 *     where there is no arrow
 * @param extra further columns of the log, which are carried along as they are, in their order
 */
public record Structure(
        double depth,
        String kind,
        OptionalDouble alpha,
        OptionalDouble beta,
        OptionalDouble gamma,
        Optional<CoreLineReading> coreLine,
        Optional<HoleSense> sense,
        Map<String, String> extra) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the depth is negative, alpha lies outside [0, 90], beta or gamma outside [0, 360]; if
     *     gamma is given at alpha 90, where it cannot be read, or beside a line through the core; if there is no alpha, but beta or
     *     gamma or no line through the core; or if a sense is given where the line through the core or the pole of the plane stands at
     *     right angles to the core axis; 360 becomes 0
     */
    public Structure {
        depth = Require.notNegative("depth", depth, "m");
        alpha = alpha.isPresent()
                ? OptionalDouble.of(Require.inRange("alpha", alpha.getAsDouble(), 0, 90, "degrees"))
                : alpha;
        beta = azimuth("beta", beta);
        gamma = azimuth("gamma", gamma);
        extra = Collections.unmodifiableMap(new LinkedHashMap<>(extra));
        if (alpha.isEmpty() && (beta.isPresent() || gamma.isPresent() || coreLine.isEmpty())) {
            throw new IllegalArgumentException(
                    "alpha is empty; expected a number within [0, 90] degrees, or a line through the core alone");
        }
        if (gamma.isPresent() && alpha.orElseThrow() == 90) {
            throw new IllegalArgumentException(
                    "gamma is given at alpha 90 degrees; expected none, because the ellipse has no long axis there");
        }
        if (gamma.isPresent() && coreLine.isPresent()) {
            throw new IllegalArgumentException(
                    "gamma is given beside a line through the core; expected one line of a structure");
        }
        if (sense.isPresent() && isSquare(alpha, gamma, coreLine)) {
            throw new IllegalArgumentException("sense is given of "
                    + (coreLine.isPresent()
                            ? "a line at right angles to the core axis, which points"
                            : "a plane at alpha 0 degrees, which faces")
                    + " neither down-hole nor up-hole; expected none");
        }
    }

    /**
     * A plane, or a plane with a line in it, without an arrow.
     *
     * @param depth metres along the hole, 0 or more
     * @param kind what it is
     * @param alpha degrees in [0, 90]
     * @param beta as it was read, degrees in [0, 360]; may be empty
     * @param gamma of a line in the plane, degrees in [0, 360]; may be empty
     * @param extra further columns of the log
     * @throws IllegalArgumentException if a number lies outside its range, or gamma is given at alpha 90
     */
    public Structure(
            double depth,
            String kind,
            double alpha,
            OptionalDouble beta,
            OptionalDouble gamma,
            Map<String, String> extra) {
        this(depth, kind, OptionalDouble.of(alpha), beta, gamma, Optional.empty(), Optional.empty(), extra);
    }

    private static OptionalDouble azimuth(String name, OptionalDouble angle) {
        return angle.isPresent() ? OptionalDouble.of(Require.azimuth(name, angle.getAsDouble())) : angle;
    }

    /**
     * Whether what an arrow would be of, the line or else the pole of the plane, stands at right angles to the axis. Which gamma does so is
     * for the convention to tell.
     */
    private static boolean isSquare(OptionalDouble alpha, OptionalDouble gamma, Optional<CoreLineReading> coreLine) {
        if (coreLine.isPresent()) {
            return coreLine.get().axisAngle() == 90;
        }
        return gamma.isEmpty() && alpha.orElseThrow() == 0;
    }

    /**
     * A plane.
     *
     * @param depth metres along the hole, 0 or more
     * @param kind what it is
     * @param alpha degrees in [0, 90]
     * @param beta as it was read, degrees in [0, 360]
     * @return the structure
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static Structure of(double depth, String kind, double alpha, double beta) {
        return new Structure(depth, kind, alpha, OptionalDouble.of(beta), OptionalDouble.empty(), Map.of());
    }

    /**
     * A line through the core alone.
     *
     * @param depth metres along the hole, 0 or more
     * @param kind what it is
     * @param line the line as it was read
     * @return the structure
     * @throws IllegalArgumentException if the depth lies outside its range
     */
    public static Structure ofLine(double depth, String kind, CoreLineReading line) {
        return new Structure(
                depth,
                kind,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(line),
                Optional.empty(),
                Map.of());
    }

    /**
     * The same structure with a line through the core.
     *
     * @param line the line as it was read
     * @return the structure
     * @throws IllegalArgumentException if the structure has a line by its gamma, or has a sense and the line stands at right angles to
     *     the core axis
     */
    public Structure withCoreLine(CoreLineReading line) {
        return new Structure(depth, kind, alpha, beta, gamma, Optional.of(line), sense, extra);
    }

    /**
     * The same structure with an arrow.
     *
     * @param end the end of the hole to which the line's arrow points or, where there is no line, the side to which the plane faces
     * @return the structure
     * @throws IllegalArgumentException if the line or, where there is none, the pole of the plane stands at right angles to the core axis
     */
    public Structure withSense(HoleSense end) {
        return new Structure(depth, kind, alpha, beta, gamma, coreLine, Optional.of(end), extra);
    }

    /** Whether a line is measured, in the plane or through the core. */
    boolean hasLine() {
        return gamma.isPresent() || coreLine.isPresent();
    }

    /** Whether a plane was measured that the reference line orients: at alpha 90 none is needed. */
    boolean hasPlaneByLine() {
        return alpha.isPresent() && alpha.getAsDouble() < 90 && beta.isPresent();
    }

    /** Whether a line through the core was measured that the reference line orients: along the axis none is needed. */
    boolean hasCoreLineByLine() {
        return coreLine.isPresent() && coreLine.get().axisAngle() > 0;
    }

    /** As it is written in a log: {@code bedding at 91.40 m, alpha 41.0, beta 213.0}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(String.format(Locale.ROOT, "%s at %.2f m", kind, depth));
        if (alpha.isPresent()) {
            text.append(", alpha ").append(Degrees.text(alpha.getAsDouble()));
            text.append(beta.isPresent() ? ", beta " + Degrees.azimuthText(beta.getAsDouble()) : ", no beta");
        }
        gamma.ifPresent(angle -> text.append(", gamma ").append(Degrees.azimuthText(angle)));
        coreLine.ifPresent(line -> text.append(", ").append(line));
        sense.ifPresent(end -> text.append(hasLine() ? ", pointing " : ", facing ")
                .append(end == HoleSense.DOWN_HOLE ? "down-hole" : "up-hole"));
        return text.toString();
    }
}
