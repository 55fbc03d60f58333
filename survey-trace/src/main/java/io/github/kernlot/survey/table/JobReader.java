package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.line.audit.ToolCheck;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.HoleLog;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the tables of one folder, hole by hole, and judges at the end whether what is wrong refuses the whole. */
final class JobReader {

    private final Path folder;
    private final FaultList faults = new FaultList();
    private final List<String> notices = new ArrayList<>();
    private final JobSettings settings;
    private final Optional<CsvTable> holes;
    private final Optional<CsvTable> surveys;
    private final Optional<CsvTable> structures;
    private final List<CsvTable> tables;
    private final boolean hasStations;
    private final boolean hasJoins;
    private final Optional<CsvTable> lines;
    private final Optional<CsvTable> checks;

    private JobReader(Path folder) {
        this.folder = folder;
        settings = JobSettings.read(folder, faults, notices);
        holes = CsvTable.read(folder, TableForm.HOLES, faults, notices);
        surveys = CsvTable.read(folder, TableForm.SURVEYS, faults, notices);
        Optional<CsvTable> marks = CsvTable.read(folder, TableForm.MARKS, faults, notices);
        hasStations = surveys.filter(table -> !table.rows().isEmpty()).isPresent();
        hasJoins = TextFile.exists(folder, TableForm.JOINS.file());
        Optional<CsvTable> joins = readIfPresent(TableForm.JOINS);
        structures = CsvTable.read(folder, TableForm.STRUCTURES, faults, notices);
        lines = readIfPresent(TableForm.LINES);
        Optional<CsvTable> runs = readIfPresent(TableForm.RUNS);
        checks = readIfPresent(TableForm.CHECKS);
        tables = Stream.of(holes, surveys, marks, joins, structures, lines, runs)
                .flatMap(Optional::stream)
                .toList();
        Stream.of(holes, surveys).flatMap(Optional::stream).forEach(this::checkRows);
        tellFiles();
    }

    private Optional<CsvTable> readIfPresent(TableForm form) {
        return TextFile.exists(folder, form.file()) ? CsvTable.read(folder, form, faults, notices) : Optional.empty();
    }

    static Job read(Path folder) {
        if (!Files.isDirectory(folder)) {
            String what = Files.exists(folder) ? "is not a folder" : "the folder does not exist";
            throw new TableException(new Fault(folder.toString(), 0, "", "", what + ", expected a folder of tables"));
        }
        return new JobReader(folder).read();
    }

    private void checkRows(CsvTable table) {
        if (table.rows().isEmpty()) {
            faults.add(
                    new Fault(table.form().file(), 1, "hole_id", "", "the table has no rows, expected at least one"));
        }
    }

    private void tellFiles() {
        if (!hasJoins) {
            notices.add("joins.csv: there is none, and nothing is known of how the core fits together");
        }
        Stream.concat(tables.stream(), checks.stream())
                .filter(table -> table.rows().isEmpty())
                .forEach(table -> notices.add(table.form().file() + ": the table has no rows"));
        if (settings.isDipPositiveDown()) {
            notices.add("surveys.csv: dips are taken as positive down (survey.dip_sign)");
        }
        surveys.ifPresent(this::tellUpwardDips);
    }

    private void tellUpwardDips(CsvTable table) {
        List<Double> dips = table.rows().stream()
                .map(row -> NumberRange.DIP.parse(row.text("dip_deg")))
                .flatMap(dip -> dip.stream().boxed())
                .map(dip -> settings.isDipPositiveDown() ? -dip : dip)
                .toList();
        if (dips.stream().anyMatch(dip -> dip > 0) && dips.stream().noneMatch(dip -> dip < 0)) {
            notices.add("surveys.csv: by survey.dip_sign = "
                    + (settings.isDipPositiveDown() ? "positive-down" : "negative-down")
                    + " no hole goes down; if they do, the other sign was meant");
        }
    }

    private Job read() {
        Map<String, HoleRows> byHole = HoleRows.byHole(tables);
        List<String> carried = structures.map(CsvTable::unknownColumns).orElse(List.of());
        Map<String, HoleLog> logs = new LinkedHashMap<>();
        Map<String, List<Finding>> findings = new LinkedHashMap<>();
        boolean hasLines = lines.filter(table -> !table.rows().isEmpty()).isPresent();
        boolean hasStrayStations =
                byHole.containsKey("") && !byHole.get("").stations().isEmpty();
        Map<String, HoleReader> readers = new LinkedHashMap<>();
        byHole.forEach((id, rows) -> {
            checkHole(rows, hasStrayStations);
            readers.put(id, new HoleReader(rows, settings, carried));
        });
        readers.values().forEach(reader -> reader.readTrace(readers));
        for (HoleRows rows : byHole.values()) {
            HoleReader reader = Objects.requireNonNull(readers.get(rows.id()));
            Optional<HoleLog> log = reader.read(hasJoins, hasLines);
            if (rows.needed().allMatch(Row::isSound)) {
                log.ifPresent(hole -> logs.put(rows.id(), hole));
            }
            findings.put(rows.id(), reader.findings().all());
        }
        List<Row> checkRows = checks.map(CsvTable::rows).orElse(List.of());
        CheckReader checkReader = new CheckReader(checkRows, notices);
        List<ToolCheck> checked = checkReader.read();
        if (checks.isPresent()) {
            checkReader.tellUnchecked(checked, toolsOf(logs.values()));
        }
        List<Row> bad = Stream.concat(byHole.values().stream().flatMap(HoleRows::all), checkRows.stream())
                .filter(row -> !row.isSound())
                .toList();
        faults.refuse(bad.stream()
                .filter(row -> row.isFatal() || !settings.setsBadRowsAside())
                .flatMap(row -> row.faults().stream())
                .toList());
        List<SetAsideRow> setAside = new ArrayList<>();
        for (HoleRows rows : byHole.values()) {
            List<Finding> found = findings.computeIfAbsent(rows.id(), id -> new ArrayList<>());
            setAside(rows, logs.containsKey(rows.id()), found, setAside);
        }
        for (Row row : checkRows) {
            if (!row.isSound()) {
                SetAsideRow aside = setAside(row);
                setAside.add(aside);
                notices.add(aside.toString());
            }
        }
        setAside.sort(Comparator.comparingInt((SetAsideRow row) -> TableForm.place(row.file()))
                .thenComparingInt(SetAsideRow::line));
        List<Finding> ofNoHole = findings.remove("");
        if (ofNoHole != null) {
            ofNoHole.forEach(finding -> notices.add(finding.what()));
        }
        return new Job(folder, settings.orientation(), logs, notices, findings, setAside, checked);
    }

    private static Set<String> toolsOf(Collection<HoleLog> logs) {
        return logs.stream()
                .flatMap(log -> Stream.concat(
                        log.marks().stream().map(mark -> mark.source().tool()),
                        log.runs().stream()
                                .flatMap(runs -> runs.runs().stream())
                                .flatMap(run -> Stream.of(run.tool(), run.readTool()))))
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
    }

    private static SetAsideRow setAside(Row row) {
        String reason = row.faults().stream().map(Fault::inLine).collect(Collectors.joining("; "));
        return new SetAsideRow(row.form().file(), row.line(), row.text("hole_id"), reason);
    }

    private void checkHole(HoleRows rows, boolean hasStrayStations) {
        if (rows.id().isEmpty()) {
            // of what a lost collar, station or join changes, nobody could say which hole it was
            rows.needed().forEach(Row::cannotBeSetAside);
        } else if (rows.collars().isEmpty()) {
            holes.ifPresent(table -> rows.all().forEach(row -> row.fault("hole_id", "expected a hole of holes.csv")));
        } else if (rows.stations().isEmpty() && hasStations && !hasStrayStations) {
            rows.collars().get(0).fault("hole_id", "the hole has no station, expected one or more in surveys.csv");
        }
    }

    private static void setAside(HoleRows rows, boolean isWorked, List<Finding> findings, List<SetAsideRow> setAside) {
        String ofHole = Stream.concat(rows.needed(), rows.all())
                .flatMap(row -> row.faults().stream())
                .findFirst()
                .map(fault -> "hole is set aside: " + fault)
                .orElse("");
        boolean isHoleSetAside = !isWorked && !rows.id().isEmpty();
        if (isHoleSetAside) {
            findings.add(0, Finding.ofHole(Finding.Level.ERROR, "the " + ofHole));
        }
        rows.all().filter(row -> isHoleSetAside || !row.isSound()).forEach(row -> {
            SetAsideRow aside = row.isSound()
                    ? new SetAsideRow(row.form().file(), row.line(), row.text("hole_id"), "its " + ofHole)
                    : setAside(row);
            setAside.add(aside);
            if (!isHoleSetAside) {
                findings.add(new Finding(HoleFindings.depth(row), Finding.Level.WARNING, aside.toString()));
            }
        });
    }
}
