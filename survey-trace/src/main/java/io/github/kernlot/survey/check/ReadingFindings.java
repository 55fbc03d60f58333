package io.github.kernlot.survey.check;

import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What the tool's other readings say of the shots. */
final class ReadingFindings {

    private static final String DISTURBED = "the magnetic field is disturbed: the azimuth cannot be relied on";

    private final RawSurvey survey;
    private final SurveyLimits limits;
    private final List<Finding> found = new ArrayList<>();

    ReadingFindings(RawSurvey survey, SurveyLimits limits) {
        this.survey = survey;
        this.limits = limits;
    }

    List<Finding> all() {
        List<SurveyShot> shots = survey.byDepth();
        for (SurveyShot shot : shots) {
            against(
                    shot,
                    ToolReadings::gravityTotal,
                    SurveyLimit.GRAVITY_TOTAL,
                    "total gravity from expected",
                    "the tool moved or its accelerometers are off: neither dip nor azimuth can be relied on");
            against(shot, ToolReadings::fieldTotal, SurveyLimit.FIELD_TOTAL, "total field from expected", DISTURBED);
            against(shot, ToolReadings::fieldDip, SurveyLimit.FIELD_DIP, "dip of the field from expected", DISTURBED);
        }
        OptionalDouble before = OptionalDouble.empty();
        for (SurveyShot shot : shots) {
            OptionalDouble now = shot.readings().fieldDip();
            if (now.isPresent()) {
                if (before.isPresent()) {
                    tell(
                            shot,
                            SurveyLimit.FIELD_DIP_STEP,
                            "dip of the field from the shot above",
                            now.getAsDouble() - before.getAsDouble(),
                            DISTURBED);
                }
                before = now;
            }
        }
        return found;
    }

    private void against(
            SurveyShot shot,
            Function<ToolReadings, OptionalDouble> reading,
            SurveyLimit limit,
            String quantity,
            String what) {
        OptionalDouble read = reading.apply(shot.readings());
        OptionalDouble expected = reading.apply(survey.expected());
        if (read.isPresent() && expected.isPresent()) {
            tell(shot, limit, quantity, read.getAsDouble() - expected.getAsDouble(), what);
        }
    }

    private void tell(SurveyShot shot, SurveyLimit limit, String quantity, double value, String what) {
        limits.exceeded(limit, quantity, value)
                .map(Finding.at(shot.depth(), Level.WARNING, what)::measured)
                .ifPresent(found::add);
    }
}
