package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.line.audit.ToolCheck;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.hole.OrientedHole;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The tables of a folder, read and checked: what was recorded of each hole, how holes are to be oriented, and what the reader was
 * told on the way.
 *
 * <p>holes.csv, surveys.csv, marks.csv and structures.csv are required; of the last two a header without rows says that there are
 * none. Without joins.csv nobody has said how the core fits together.
 * lines.csv, runs.csv and checks.csv are read where they are present. Without job.properties every setting has its preset.
 */
public final class Job {

    private final Path folder;
    private final OrientationSettings settings;
    private final Map<String, HoleLog> holes;
    private final List<String> notices;
    private final Map<String, List<Finding>> findings;
    private final List<SetAsideRow> setAside;
    private final List<ToolCheck> checks;

    Job(
            Path folder,
            OrientationSettings settings,
            Map<String, HoleLog> holes,
            List<String> notices,
            Map<String, List<Finding>> findings,
            List<SetAsideRow> setAside,
            List<ToolCheck> checks) {
        this.folder = folder;
        this.settings = settings;
        this.holes = new LinkedHashMap<>(holes);
        this.notices = List.copyOf(notices);
        this.findings = new LinkedHashMap<>();
        findings.forEach((hole, found) -> this.findings.put(hole, List.copyOf(found)));
        this.setAside = List.copyOf(setAside);
        this.checks = List.copyOf(checks);
    }

    /**
     * Reads the tables of a folder.
     *
     * @param folder where holes.csv and the other tables are
     * @return the job; every hole of it can be oriented
     * @throws TableException if anything in the tables or the settings cannot be used, with every fault of every table; where
     *     {@code input.bad_rows} is {@code set-aside}, only for faults that are not those of single rows
     */
    public static Job read(Path folder) {
        return JobReader.read(folder);
    }

    Path folder() {
        return folder;
    }

    /**
     * How the holes are to be oriented.
     *
     * @return the settings of job.properties
     */
    public OrientationSettings settings() {
        return settings;
    }

    /**
     * What was recorded of each hole.
     *
     * @return the holes in the order of holes.csv, without those that were set aside
     */
    public List<HoleLog> holes() {
        return List.copyOf(holes.values());
    }

    /**
     * What was recorded of one hole.
     *
     * @param id its name as holes.csv writes it
     * @return the hole
     * @throws IllegalArgumentException if there is no such hole, or it was set aside
     */
    public HoleLog hole(String id) {
        HoleLog hole = holes.get(id);
        if (hole == null) {
            throw new IllegalArgumentException(
                    findings.containsKey(id)
                            ? id + ": " + findings(id).get(0).what()
                            : "there is no hole " + id + "; expected one of " + holes.keySet());
        }
        return hole;
    }

    /**
     * Orients every hole by the settings.
     *
     * @return the holes in the order of holes.csv, without those that were set aside
     */
    public List<OrientedHole> orient() {
        return OrientedHole.orientAll(holes(), settings);
    }

    /**
     * Orients one hole by the settings; the fabric of a set of structures, where it is asked for, is estimated from this hole alone.
     *
     * @param id its name as holes.csv writes it
     * @return the hole
     * @throws IllegalArgumentException if there is no such hole, or it was set aside
     */
    public OrientedHole orient(String id) {
        return OrientedHole.orient(hole(id), settings);
    }

    /**
     * What the reader was told of the job as a whole: what is not used, what was assumed.
     *
     * @return one sentence each
     */
    public List<String> notices() {
        return notices;
    }

    /**
     * The names of all holes that something is told of, those that were set aside among them.
     *
     * @return the holes in the order of holes.csv, then names that do not stand there
     */
    List<String> named() {
        return List.copyOf(findings.keySet());
    }

    /**
     * What the reader was told of each hole, those that were set aside among them.
     *
     * @return the findings by the name of the hole, in the order of holes.csv, then names that do not stand there
     */
    public Map<String, List<Finding>> findings() {
        return Collections.unmodifiableMap(findings);
    }

    /**
     * What the reader was told of one hole: angles taken modulo 360, rows set aside.
     *
     * @param hole its name
     * @return the findings; none for a hole without any
     * @throws IllegalArgumentException if no table names such a hole
     */
    public List<Finding> findings(String hole) {
        List<Finding> found = findings.get(hole);
        if (found == null) {
            throw new IllegalArgumentException("there is no hole " + hole + "; expected one of " + findings.keySet());
        }
        return found;
    }

    /**
     * The rows that were not used because {@code input.bad_rows} is {@code set-aside}.
     *
     * @return the rows by table and line
     */
    public List<SetAsideRow> setAside() {
        return setAside;
    }

    /**
     * The checks of tools in a cradle.
     *
     * @return the checks of checks.csv in the order of its rows
     */
    public List<ToolCheck> checks() {
        return checks;
    }

    /** The number of holes, of their structures and of rows set aside. */
    @Override
    public String toString() {
        int structures = holes.values().stream()
                .mapToInt(hole -> hole.structures().size())
                .sum();
        return holes.size() + " holes with " + structures + " structures from " + folder
                + (setAside.isEmpty() ? "" : ", " + setAside.size() + " rows set aside");
    }
}
