package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.runs.RunLog;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.uncertainty.SurveyErrorSetup;
import io.github.kernlot.survey.uncertainty.SurveySigmas;
import io.github.kernlot.survey.uncertainty.TieIn;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was recorded of one hole.
 *
 * @param id the hole's name
 * @param trace the path of the hole
 * @param marks the orientation marks as they were read, in any order
 * @param joins the joins between pieces of core, in any order; empty where nobody recorded how the pieces fit, which is not the
 *     same as an empty list, with which all core fits
 * @param structures the structures, in the order in which they are to be reported
 * @param drawn where the reference line was drawn, and which way its arrows point
 * @param runs the log of the core runs; empty where there is none
 * @param surveyErrors how well the path is known
 */
public record HoleLog(
        String id,
        HoleTrace trace,
        List<OrientationMark> marks,
        Optional<List<Join>> joins,
        List<Structure> structures,
        DrawnLines drawn,
        Optional<RunLog> runs,
        SurveyErrorSetup surveyErrors) {

    private static final SurveyErrorSetup ASSUMED =
            SurveyErrorSetup.of(SurveySigmas.assumed().model(), TieIn.MEASURED);

    /** Copies the lists. */
    public HoleLog {
        marks = List.copyOf(marks);
        joins = joins.map(List::copyOf);
        structures = List.copyOf(structures);
    }

    /**
     * A hole without a log of its runs, whose line was drawn everywhere with its arrows down-hole and whose survey has the assumed sigmas.
     *
     * @param id the hole's name
     * @param trace the path of the hole
     * @param marks the orientation marks, in any order
     * @param joins the joins between pieces of core; empty where nobody recorded them
     * @param structures the structures, in the order in which they are to be reported
     */
    public HoleLog(
            String id,
            HoleTrace trace,
            List<OrientationMark> marks,
            Optional<List<Join>> joins,
            List<Structure> structures) {
        this(id, trace, marks, joins, structures, DrawnLines.everywhere(), Optional.empty(), ASSUMED);
    }

    /**
     * The same hole with its lines as they were drawn.
     *
     * @param lines where the reference line was drawn
     * @return the log
     */
    public HoleLog withDrawn(DrawnLines lines) {
        return new HoleLog(id, trace, marks, joins, structures, lines, runs, surveyErrors);
    }

    /**
     * The same hole with a log of its runs.
     *
     * @param log the runs
     * @return the log
     */
    public HoleLog withRuns(RunLog log) {
        return new HoleLog(id, trace, marks, joins, structures, drawn, Optional.of(log), surveyErrors);
    }

    /**
     * The same hole with other errors of its survey.
     *
     * @param setup how well the path is known
     * @return the log
     */
    public HoleLog withSurveyErrors(SurveyErrorSetup setup) {
        return new HoleLog(id, trace, marks, joins, structures, drawn, runs, setup);
    }

    /** The hole with how far its survey goes and how much was recorded: {@code QB-01: surveyed to 186.00 m, 41 marks, joins not recorded, 82 structures}. */
    @Override
    public String toString() {
        List<SurveyStation> stations = trace.survey().stations();
        double last = stations.get(stations.size() - 1).depth();
        return String.format(Locale.ROOT, "%s: surveyed to %.2f m, ", id, last)
                + counted(marks.size(), "mark")
                + joins.map(known -> ", " + counted(known.size(), "join")).orElse(", joins not recorded")
                + ", " + counted(structures.size(), "structure")
                + drawn.recorded()
                        .map(lines -> ", " + counted(lines.size(), "drawn line"))
                        .orElse("")
                + runs.map(log -> ", " + counted(log.runs().size(), "run")).orElse("");
    }

    private static String counted(int number, String thing) {
        return number + " " + thing + (number == 1 ? "" : "s");
    }
}
