package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.check.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is told of one hole while its rows are read. */
final class HoleFindings {

    private final List<Finding> findings = new ArrayList<>();

    List<Finding> all() {
        return findings;
    }

    /** An angle in [0, 360), told where it was written otherwise; the row's depth is known to be sound. */
    double wrapped(Row row, String column, double degrees) {
        double wrapped = Degrees.wrap360(degrees);
        if (wrapped != degrees) {
            findings.add(Finding.at(
                    depth(row).orElseThrow(),
                    Finding.Level.INFO,
                    row.form().file() + ", line " + row.line() + ": " + column + " " + row.text(column)
                            + " is taken as " + NumberRange.text(wrapped) + " degrees"));
        }
        return wrapped;
    }

    static OptionalDouble depth(Row row) {
        return NumberRange.DEPTH.parse(row.text("depth_m"));
    }
}
