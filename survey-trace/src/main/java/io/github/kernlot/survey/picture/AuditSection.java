package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.audit.BlunderRate;
import io.github.kernlot.orientation.line.audit.GroupBias;
import io.github.kernlot.survey.hole.AuditEntry;
import java.util.List;
import java.util.Locale;

/** The table of an audit on a report page: who and what made the marks, and what is to be thought of them. */
final class AuditSection {

    private static final String HEADING =
            "<h2>Audit of marks and tools</h2>\n<p>Bias is by how much a group reads too much: marks"
                    + " against all other marks of the same cores, which cannot tell which of the two is off; checks against the cradle.</p>\n";

    private final List<AuditEntry> audit;

    AuditSection(List<AuditEntry> audit) {
        this.audit = audit;
    }

    /** Writes nothing where there is nothing to be audited. */
    void write(StringBuilder out, int most, String file) {
        if (audit.isEmpty()) {
            return;
        }
        HtmlTable table = new HtmlTable(
                "*by",
                "*group",
                "number",
                "spread",
                "bias",
                "95 % interval",
                "p of no bias",
                "blunders",
                "log10 odds of mirrored reading");
        for (AuditEntry entry : audit) {
            table.row(
                    entry.kind(),
                    entry.group(),
                    String.valueOf(entry.count()),
                    entry.residuals()
                            .map(sample -> Degrees.text(sample.standardDeviation()))
                            .orElse(""),
                    entry.bias().map(bias -> Degrees.text(bias.degrees())).orElse(""),
                    entry.bias().map(AuditSection::interval).orElse(""),
                    entry.bias()
                            .map(bias -> String.format(Locale.ROOT, "%.4f", bias.probabilityOfNone()))
                            .orElse(""),
                    entry.blunders().map(AuditSection::percent).orElse(""),
                    entry.logMirrorOdds().isPresent()
                            ? Degrees.text(entry.logMirrorOdds().getAsDouble() / Math.log(10))
                            : "");
        }
        out.append(HEADING);
        table.write(out, most, file);
    }

    private static String interval(GroupBias bias) {
        return Degrees.text(bias.low95()) + " to " + Degrees.text(bias.high95());
    }

    private static String percent(BlunderRate rate) {
        return String.format(
                Locale.ROOT, "%.0f (%.0f to %.0f) %%", 100 * rate.rate(), 100 * rate.low95(), 100 * rate.high95());
    }
}
