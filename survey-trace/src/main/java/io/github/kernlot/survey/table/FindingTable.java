package io.github.kernlot.survey.table;

import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Limit;
import io.github.kernlot.survey.check.Measurement;
import io.github.kernlot.survey.hole.OrientedHole;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The rows of findings.csv. */
final class FindingTable {

    private static final List<String> COLUMNS =
            List.of("hole_id", "depth_m", "level", "what", "measured", "limit", "unit", "limit_standing");

    private FindingTable() {}

    /** What is told of the job stands first and names no hole; a hole has what the reader found before what orienting found. */
    static List<List<String>> of(Job job, List<OrientedHole> holes) {
        Map<String, List<OrientedHole>> byName =
                holes.stream().collect(Collectors.groupingBy(hole -> hole.log().id()));
        List<List<String>> rows = new ArrayList<>();
        rows.add(COLUMNS);
        job.notices().forEach(notice -> rows.add(row("", Finding.ofHole(Finding.Level.INFO, notice))));
        for (String name : job.named()) {
            Stream.concat(
                            job.findings(name).stream(),
                            byName.getOrDefault(name, List.of()).stream().flatMap(hole -> hole.findings().stream()))
                    .forEach(found -> rows.add(row(name, found)));
        }
        return rows;
    }

    private static List<String> row(String hole, Finding finding) {
        Optional<Limit> limit = finding.measurement().map(Measurement::limit);
        return List.of(
                hole,
                Cells.given(finding.depth()),
                finding.level().name().toLowerCase(Locale.ROOT),
                finding.what(),
                finding.measurement()
                        .map(measurement -> Cells.number(measurement.value()))
                        .orElse(""),
                limit.map(held -> Cells.given(sixDigits(held.value()))).orElse(""),
                limit.map(Limit::unit).orElse(""),
                limit.map(held -> held.standing() + (held.source().isEmpty() ? "" : ": " + held.source()))
                        .orElse(""));
    }

    /** A limit may be worked out from sigmas, and then has more digits than it means. */
    private static double sixDigits(double limit) {
        return new BigDecimal(limit).round(new MathContext(6)).doubleValue();
    }
}
