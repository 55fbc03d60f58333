package io.github.kernlot.survey.table;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.RawSurvey;
import io.github.kernlot.survey.check.SurveyChecks;
import io.github.kernlot.survey.check.SurveyLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the checks of a survey say of the rows of one hole. */
final class SurveyFindings {

    private final SurveyChecks checks;
    private final OptionalDouble end;

    SurveyFindings(JobSettings settings, OptionalDouble end) {
        checks = SurveyChecks.assumed()
                .with(SurveyLimit.EXTRAPOLATION, settings.trace().extrapolationLimit());
        this.end = end;
    }

    /** The findings on stations in the order of their rows. */
    List<Finding> of(List<SurveyStation> recorded) {
        RawSurvey survey = RawSurvey.ofStations(recorded);
        return checks.findings(end.isPresent() ? survey.withEnd(end.getAsDouble()) : survey);
    }

    /** The findings on a branch: its rows are held against its parent's stations, of which nothing is said again. */
    List<Finding> ofBranch(HoleTrace parent, double kickOff, List<SurveyStation> recorded) {
        List<SurveyStation> whole = new ArrayList<>();
        for (HoleTrace hole = parent; ; hole = hole.parent().get()) {
            double from = hole.kickOffDepth().orElse(-1);
            List<SurveyStation> own = hole.survey().stations().stream()
                    .filter(station -> station.depth() < kickOff && station.depth() > from)
                    .toList();
            whole.addAll(0, own);
            if (hole.parent().isEmpty()) {
                break;
            }
        }
        whole.add(new SurveyStation(kickOff, parent.directionAt(kickOff)));
        whole.addAll(recorded);
        return of(whole).stream()
                .filter(finding -> finding.depth().isEmpty() || finding.depth().getAsDouble() > kickOff)
                .toList();
    }
}
