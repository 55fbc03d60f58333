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
            // a code for "not measured" would be taken for an angle too
            boolean isFar = degrees < -360 || degrees > 720;
            tell(
                    row,
                    isFar ? Finding.Level.WARNING : Finding.Level.INFO,
                    column + " " + row.text(column) + " is taken as " + NumberRange.text(wrapped) + " degrees"
                            + (isFar ? "; what was not measured is left blank" : ""));
        }
        return wrapped;
    }

    /** Tells something of a row whose depth is known to be sound. */
    void tell(Row row, Finding.Level level, String what) {
        findings.add(
                Finding.at(depth(row).orElseThrow(), level, row.form().file() + ", line " + row.line() + ": " + what));
    }

    void tell(Finding finding) {
        findings.add(finding);
    }

    static OptionalDouble depth(Row row) {
        return NumberRange.DEPTH.parse(row.text("depth_m"));
    }
}
