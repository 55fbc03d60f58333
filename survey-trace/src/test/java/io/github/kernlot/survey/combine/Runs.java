package io.github.kernlot.survey.combine;

import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.Arrays;
import java.util.List;

/** Runs for tests. */
final class Runs {

    private Runs() {}

    /** Rows written as depth, dip and azimuth: {@code 0 -60 90; 30 -60 90}. */
    static SurveyRun of(String name, String rows) {
        return of(
                name,
                Arrays.stream(rows.split(";"))
                        .map(text -> text.strip().split(" "))
                        .map(row -> SurveyStation.ofDip(
                                Double.parseDouble(row[0]), Double.parseDouble(row[1]), Double.parseDouble(row[2])))
                        .toList());
    }

    static SurveyRun of(String name, List<SurveyStation> stations) {
        return SurveyRun.of(name, Survey.of(stations, NorthReference.grid()));
    }
}
