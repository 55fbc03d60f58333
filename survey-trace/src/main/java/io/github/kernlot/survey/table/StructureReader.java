package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.CoreLineReading;
import io.github.kernlot.survey.hole.Structure;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the structures of one hole and adds what is wrong with a row to the row. */
final class StructureReader {

    private static final Map<String, HoleSense> SENSES =
            Map.of("down-hole", HoleSense.DOWN_HOLE, "up-hole", HoleSense.UP_HOLE);

    private final List<String> carriedColumns;
    private final GammaConvention gammas;
    private final HoleFindings findings;
    private final Map<List<String>, Integer> seen = new HashMap<>();

    StructureReader(List<String> carriedColumns, GammaConvention gammas, HoleFindings findings) {
        this.carriedColumns = carriedColumns;
        this.gammas = gammas;
        this.findings = findings;
    }

    /** What a row holds; empty where something is wrong with it. */
    Optional<Structure> read(Row row) {
        Optional<String> kind = row.name("kind");
        boolean isLineAlone = row.has("axis_angle_deg") && !row.has("beta_deg") && !row.has("gamma_deg");
        OptionalDouble alpha = isLineAlone
                ? row.optionalNumber("alpha_deg", NumberRange.ALPHA)
                : row.number("alpha_deg", NumberRange.ALPHA);
        OptionalDouble beta = row.optionalNumber("beta_deg", NumberRange.ANY);
        OptionalDouble gamma = row.optionalNumber("gamma_deg", NumberRange.ANY);
        OptionalDouble axisAngle = row.optionalNumber("axis_angle_deg", NumberRange.ALPHA);
        OptionalDouble delta = row.optionalNumber("delta_deg", NumberRange.ANY);
        Optional<HoleSense> sense = row.has("sense") ? row.word("sense", SENSES) : Optional.empty();
        row.form().unusedSigmas().forEach(column -> row.optionalNumber(column, NumberRange.SIGMA));
        if (gamma.isPresent() && is(alpha, 90)) {
            row.fault(
                    "gamma_deg",
                    "expected none at alpha 90, where the ellipse has no long axis to count from; a line is given by"
                            + " axis_angle_deg and delta_deg there");
        }
        checkCoreLine(row, axisAngle);
        checkSense(row, alpha, gamma, axisAngle);
        if (!row.isSound()) {
            return Optional.empty();
        }
        Integer before = seen.putIfAbsent(row.content(), row.line());
        if (before != null) {
            findings.tell(row, Finding.Level.WARNING, "the same structure stands in line " + before + " already");
        }
        Map<String, String> carried = new LinkedHashMap<>();
        carriedColumns.forEach(column -> carried.put(column, row.raw(column)));
        return Optional.of(new Structure(
                HoleFindings.depth(row).orElseThrow(),
                kind.orElseThrow(),
                alpha,
                wrapped(row, "beta_deg", beta),
                wrapped(row, "gamma_deg", gamma),
                axisAngle.isPresent()
                        ? Optional.of(new CoreLineReading(axisAngle.getAsDouble(), wrapped(row, "delta_deg", delta)))
                        : Optional.empty(),
                sense,
                carried));
    }

    private static void checkCoreLine(Row row, OptionalDouble axisAngle) {
        boolean hasAxisAngle = row.has("axis_angle_deg");
        boolean hasDelta = row.has("delta_deg");
        if (row.has("gamma_deg") && (hasAxisAngle || hasDelta)) {
            row.fault(
                    hasAxisAngle ? "axis_angle_deg" : "delta_deg",
                    "gamma_deg is given too, expected one line of a structure");
        } else if (hasDelta && !hasAxisAngle) {
            row.fault("axis_angle_deg", "blank, expected a number within [0, 90] beside delta_deg");
        } else if (!hasDelta && axisAngle.orElse(0) > 0) {
            row.fault("delta_deg", "blank, expected a number beside axis_angle_deg above 0");
        }
    }

    /** Something that stands square to the axis, or a plane along it, has no end or side that is the down-hole one. */
    private void checkSense(Row row, OptionalDouble alpha, OptionalDouble gamma, OptionalDouble axisAngle) {
        if (!row.has("sense")) {
            return;
        }
        boolean hasLine = row.has("gamma_deg") || row.has("axis_angle_deg");
        if (is(axisAngle, 90) || (gamma.isPresent() && isAcross(gamma.getAsDouble()))) {
            row.fault(
                    "sense",
                    "expected none of a line at right angles to the core axis, which points neither down-hole nor up-hole");
        } else if (!hasLine && is(alpha, 0)) {
            row.fault("sense", "expected none of a plane at alpha 0, which faces neither down-hole nor up-hole");
        }
    }

    private boolean isAcross(double gamma) {
        return gammas.toHouse(Degrees.wrap360(gamma)) % 180 == 90;
    }

    private static boolean is(OptionalDouble angle, double value) {
        return angle.isPresent() && angle.getAsDouble() == value;
    }

    private OptionalDouble wrapped(Row row, String column, OptionalDouble angle) {
        return angle.isPresent() ? OptionalDouble.of(findings.wrapped(row, column, angle.getAsDouble())) : angle;
    }
}
