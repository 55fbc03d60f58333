package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.orientation.line.MarkChances;
import io.github.kernlot.orientation.line.MarkJudgement;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.hole.AuditEntry;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import io.github.kernlot.survey.hole.Structure;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * What came of a job, as tables: oriented.csv, marks.csv, trace.csv, findings.csv, audit.csv where it is known who
 * made the marks or tools were checked, and set-aside.csv where rows were set aside.
 * UTF-8 with a header, by RFC 4180; angles and metres have four decimals, numbers that were given as many as they came with.
 */
public final class ResultTables {

    private static final double TRACE_STEP = 10;
    private static final List<String> ORIENTED = List.of(
            "hole_id",
            "depth_m",
            "kind",
            "alpha_deg",
            "beta_deg",
            "gamma_deg",
            "axis_angle_deg",
            "delta_deg",
            "sense",
            "status",
            "line_angle_deg",
            "line_sigma_deg",
            "line_low_deg",
            "line_high_deg",
            "marks_only_line_angle_deg",
            "marks_only_line_sigma_deg",
            "dip_deg",
            "dip_direction_deg",
            "plunge_deg",
            "trend_deg",
            "arrow_plunge_deg",
            "arrow_trend_deg",
            "easting_m",
            "northing_m",
            "elevation_m",
            "horizontal_sigma_m",
            "vertical_sigma_m",
            "note");
    private static final List<String> MARKS_ONLY = List.of("marks_only_line_angle_deg", "marks_only_line_sigma_deg");
    private static final List<String> CORE_LINE = List.of("axis_angle_deg", "delta_deg");
    private static final List<String> SENSE = List.of("sense", "arrow_plunge_deg", "arrow_trend_deg");

    private final Job job;
    private final List<OrientedHole> holes;

    private final List<AuditEntry> audit;

    private ResultTables(Job job, List<OrientedHole> holes) {
        this.job = job;
        this.holes = holes;
        this.audit = AuditEntry.all(holes, job.checks());
    }

    /**
     * The tables of a job.
     *
     * @param job the job
     * @param holes its holes as {@link Job#orient} gives them, or some of them, in the order in which they are to be written
     * @return the tables
     */
    public static ResultTables of(Job job, List<OrientedHole> holes) {
        return new ResultTables(job, List.copyOf(holes));
    }

    /**
     * Writes the tables into a folder, which is made if there is none. Tables of the same names are replaced, and all of them only
     * after each has been written whole; an audit.csv or set-aside.csv of an
     * earlier job is removed where this job has none.
     *
     * @param folder where the tables go; not the folder that the job was read from, whose marks.csv would be lost
     * @return the files that were written
     * @throws TableException if the tables cannot be written there; those of an earlier job are then as they were, unless a whole new
     *     table could not be moved into its place
     */
    public List<Path> write(Path folder) {
        Map<String, List<List<String>>> tables = new LinkedHashMap<>();
        tables.put("oriented.csv", oriented());
        tables.put("marks.csv", marks());
        tables.put("trace.csv", trace());
        tables.put("findings.csv", FindingTable.of(job, holes));
        tables.put("audit.csv", AuditTable.of(audit));
        tables.put("set-aside.csv", job.setAside().isEmpty() ? List.of() : setAside());
        return FolderWriter.write(folder, job.folder(), tables);
    }

    /**
     * What audit.csv says of those who made the marks and of their tools.
     *
     * @return the entries; none where nothing is known of them
     */
    public List<AuditEntry> audit() {
        return audit;
    }

    /** The names under which columns that were carried along come out: their own where those are free. */
    static List<String> carriedNames(List<String> columns) {
        Set<String> taken = new HashSet<>(ORIENTED);
        List<String> names = new ArrayList<>();
        for (String column : columns) {
            String name = column;
            while (!taken.add(name)) {
                name = "logged_" + name;
            }
            names.add(name);
        }
        return names;
    }

    private List<List<String>> oriented() {
        List<Structure> structures =
                holes.stream().flatMap(hole -> hole.log().structures().stream()).toList();
        List<String> carried = structures.stream()
                .flatMap(structure -> structure.extra().keySet().stream())
                .distinct()
                .toList();
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(ORIENTED);
        header.addAll(carriedNames(carried));
        rows.add(header);
        for (OrientedHole hole : holes) {
            for (OrientedStructure structure : hole.structures()) {
                List<String> row = new ArrayList<>(row(hole, structure));
                carried.forEach(column -> row.add(structure.structure().extra().getOrDefault(column, "")));
                rows.add(row);
            }
        }
        Set<String> unused = new HashSet<>();
        if (holes.stream().allMatch(hole -> hole.lineWithoutFabric().isEmpty())) {
            unused.addAll(MARKS_ONLY);
        }
        if (structures.stream().allMatch(structure -> structure.gamma().isEmpty())) {
            unused.add("gamma_deg");
        }
        if (structures.stream().allMatch(structure -> structure.coreLine().isEmpty())) {
            unused.addAll(CORE_LINE);
        }
        if (structures.stream().allMatch(structure -> structure.sense().isEmpty())) {
            unused.addAll(SENSE);
        }
        return without(unused, rows);
    }

    private static List<List<String>> without(Set<String> columns, List<List<String>> rows) {
        List<String> header = rows.get(0);
        return rows.stream()
                .map(row -> IntStream.range(0, header.size())
                        .filter(i -> !columns.contains(header.get(i)))
                        .mapToObj(row::get)
                        .toList())
                .toList();
    }

    private static List<String> row(OrientedHole hole, OrientedStructure oriented) {
        Structure structure = oriented.structure();
        Position position = oriented.position();
        Optional<LinePosterior> marksOnly = hole.lineWithoutFabric().flatMap(line -> line.at(structure.depth()));
        return List.of(
                hole.log().id(),
                Cells.given(structure.depth()),
                structure.kind(),
                Cells.given(structure.alpha()),
                Cells.given(structure.beta()),
                Cells.given(structure.gamma()),
                structure.coreLine().map(line -> Cells.given(line.axisAngle())).orElse(""),
                structure.coreLine().map(line -> Cells.given(line.delta())).orElse(""),
                structure.sense().map(ResultTables::word).orElse(""),
                oriented.isOriented() ? "oriented" : "unoriented",
                angle(oriented.line(), LinePosterior::mean),
                oriented.line().map(line -> Cells.number(line.sigma())).orElse(""),
                angle(oriented.line(), LinePosterior::low95),
                angle(oriented.line(), LinePosterior::high95),
                angle(marksOnly, LinePosterior::mean),
                marksOnly.map(line -> Cells.number(line.sigma())).orElse(""),
                oriented.plane().map(plane -> Cells.number(plane.dip())).orElse(""),
                oriented.plane()
                        .map(plane -> Cells.azimuth(plane.dipDirection()))
                        .orElse(""),
                oriented.lineation().map(line -> Cells.number(line.plunge())).orElse(""),
                oriented.lineation().map(line -> Cells.azimuth(line.trend())).orElse(""),
                oriented.arrow().map(arrow -> Cells.number(arrow.plunge())).orElse(""),
                oriented.arrow().map(arrow -> Cells.azimuth(arrow.trend())).orElse(""),
                Cells.number(position.easting()),
                Cells.number(position.northing()),
                Cells.number(position.elevation()),
                Cells.number(oriented.covariance().horizontalSigma()),
                Cells.number(oriented.covariance().verticalSigma()),
                oriented.note());
    }

    private static String word(HoleSense sense) {
        return sense == HoleSense.DOWN_HOLE ? "down-hole" : "up-hole";
    }

    private static String angle(Optional<LinePosterior> line, ToDoubleFunction<LinePosterior> what) {
        return line.filter(LinePosterior::hasMean)
                .map(known -> Cells.azimuth(what.applyAsDouble(known)))
                .orElse("");
    }

    private List<List<String>> marks() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "hole_id",
                "depth_m",
                "offset_deg",
                "predicted_deg",
                "residual_deg",
                "p_sound",
                "p_flipped",
                "p_wrong",
                "verdict",
                "by_hand"));
        for (OrientedHole hole : holes) {
            List<MarkPosterior> marks = hole.line().marks();
            List<MarkJudgement> byHand = hole.handLine().marks();
            for (int i = 0; i < marks.size(); i++) {
                rows.add(row(hole.log().id(), marks.get(i), byHand.get(i)));
            }
        }
        return rows;
    }

    private static List<String> row(String hole, MarkPosterior mark, MarkJudgement byHand) {
        OptionalDouble predicted = mark.predicted();
        OptionalDouble residual = mark.residual();
        Optional<MarkChances> chances = mark.chances();
        return List.of(
                hole,
                Cells.given(mark.mark().depth()),
                Cells.azimuth(mark.mark().offset()),
                predicted.isPresent() ? Cells.azimuth(predicted.getAsDouble()) : "",
                residual.isPresent() ? Cells.difference(residual.getAsDouble()) : "",
                chances.map(known -> Cells.number(known.sound())).orElse(""),
                chances.map(known -> Cells.number(known.flipped())).orElse(""),
                chances.map(known -> Cells.number(known.wrong())).orElse(""),
                Cells.word(mark.verdict()),
                Cells.word(byHand.verdict()));
    }

    private List<List<String>> trace() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "hole_id",
                "depth_m",
                "easting_m",
                "northing_m",
                "elevation_m",
                "azimuth_deg",
                "dip_deg",
                "scribe_turn_deg",
                "horizontal_sigma_m",
                "vertical_sigma_m"));
        holes.forEach(hole -> addTrace(hole, rows));
        return rows;
    }

    private void addTrace(OrientedHole hole, List<List<String>> rows) {
        HoleLog log = hole.log();
        HoleTrace trace = hole.trace();
        double toOutput = trace.survey().north().toAdd(job.settings().output());
        OptionalDouble turnsFrom = OptionalDouble.empty();
        for (double depth : depths(log)) {
            Position position = trace.positionAt(depth);
            HoleDirection direction = trace.directionAt(depth);
            Covariance covariance = hole.uncertainty().at(depth).place();
            if (turnsFrom.isEmpty() && !direction.isVertical()) {
                turnsFrom = OptionalDouble.of(depth);
            }
            rows.add(List.of(
                    log.id(),
                    Cells.given(depth),
                    Cells.number(position.easting()),
                    Cells.number(position.northing()),
                    Cells.number(position.elevation()),
                    Cells.azimuth(direction.withAzimuthTurned(toOutput).azimuth()),
                    Cells.number(direction.dip()),
                    direction.isVertical() ? "" : Cells.number(trace.scribeTurn(turnsFrom.orElse(depth), depth)),
                    Cells.number(covariance.horizontalSigma()),
                    Cells.number(covariance.verticalSigma())));
        }
    }

    private static Iterable<Double> depths(HoleLog log) {
        TreeSet<Double> depths = new TreeSet<>();
        log.trace().survey().stations().forEach(station -> depths.add(station.depth()));
        log.marks().stream().map(OrientationMark::depth).forEach(depths::add);
        log.structures().stream().map(Structure::depth).forEach(depths::add);
        double deepest = depths.last();
        TreeSet<Double> listed = new TreeSet<>();
        log.trace().survey().stations().forEach(station -> listed.add(station.depth()));
        double from = log.trace().kickOffDepth().orElse(0);
        listed.add(from);
        for (double depth = TRACE_STEP * Math.ceil(from / TRACE_STEP); depth <= deepest; depth += TRACE_STEP) {
            listed.add(depth);
        }
        listed.add(deepest);
        return listed;
    }

    private List<List<String>> setAside() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("file", "line", "hole_id", "reason"));
        job.setAside()
                .forEach(row -> rows.add(List.of(row.file(), Integer.toString(row.line()), row.hole(), row.reason())));
        return rows;
    }
}
