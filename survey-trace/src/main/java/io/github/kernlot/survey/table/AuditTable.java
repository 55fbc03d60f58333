package io.github.kernlot.survey.table;

import io.github.kernlot.survey.hole.AuditEntry;
import java.util.ArrayList;
import java.util.List;

/** The rows of audit.csv. */
final class AuditTable {

    private static final List<String> COLUMNS = List.of(
            "group_kind",
            "group",
            "marks",
            "mean_residual_deg",
            "spread_deg",
            "bias_deg",
            "bias_low_deg",
            "bias_high_deg",
            "p_no_bias",
            "trend_deg_per_100m",
            "trend_sigma",
            "blunder_rate",
            "blunder_low",
            "blunder_high",
            "mirrored_log10_odds");

    private AuditTable() {}

    /** The table with its header; no row at all where there is nothing to be audited. */
    static List<List<String>> of(List<AuditEntry> audit) {
        List<List<String>> rows = new ArrayList<>();
        if (!audit.isEmpty()) {
            rows.add(COLUMNS);
        }
        audit.forEach(entry -> rows.add(row(entry)));
        return rows;
    }

    private static List<String> row(AuditEntry entry) {
        return List.of(
                entry.kind(),
                entry.group(),
                Integer.toString(entry.count()),
                entry.residuals()
                        .filter(sample -> sample.mean().isPresent())
                        .map(sample -> Cells.signed(sample.mean().orElseThrow()))
                        .orElse(""),
                entry.residuals()
                        .filter(sample -> Double.isFinite(sample.standardDeviation()))
                        .map(sample -> Cells.number(sample.standardDeviation()))
                        .orElse(""),
                entry.bias().map(bias -> Cells.signed(bias.degrees())).orElse(""),
                entry.bias().map(bias -> Cells.number(bias.low95())).orElse(""),
                entry.bias().map(bias -> Cells.number(bias.high95())).orElse(""),
                entry.bias().map(bias -> Cells.number(bias.probabilityOfNone())).orElse(""),
                entry.trend().map(trend -> Cells.number(100 * trend.slope())).orElse(""),
                entry.trend()
                        .filter(trend -> Double.isFinite(trend.standardError()))
                        .map(trend -> Cells.number(100 * trend.standardError()))
                        .orElse(""),
                entry.blunders().map(rate -> Cells.number(rate.rate())).orElse(""),
                entry.blunders().map(rate -> Cells.number(rate.low95())).orElse(""),
                entry.blunders().map(rate -> Cells.number(rate.high95())).orElse(""),
                entry.logMirrorOdds().isPresent()
                        ? Cells.number(entry.logMirrorOdds().getAsDouble() / Math.log(10))
                        : "");
    }
}
