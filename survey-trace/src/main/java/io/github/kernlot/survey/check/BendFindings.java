package io.github.kernlot.survey.check;

import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the directions of a survey say: doglegs, the azimuth's part in them, signs of the dip, stations that stand out. */
final class BendFindings {

    private final SurveyLimits limits;
    private final List<SurveyStation> stations = new ArrayList<>();
    private final List<Bend> bends = new ArrayList<>();
    private final List<Finding> found = new ArrayList<>();

    /** Of rows at one depth the first counts; the others are told elsewhere. */
    BendFindings(RawSurvey survey, SurveyLimits limits) {
        this.limits = limits;
        for (SurveyShot shot : survey.byDepth()) {
            SurveyStation before = stations.isEmpty() ? null : stations.get(stations.size() - 1);
            if (before == null || shot.depth() > before.depth()) {
                if (before != null) {
                    bends.add(new Bend(before, shot.station()));
                }
                stations.add(shot.station());
            }
        }
    }

    List<Finding> all() {
        bends.forEach(this::dogleg);
        bends.forEach(this::azimuth);
        signs();
        outlying().forEach(this::outlier);
        return found;
    }

    List<OutlyingStation> outlying() {
        return limits.of(SurveyLimit.OUTLIER)
                .map(threshold ->
                        OutlierSearch.in(stations, threshold.value(), limits.value(SurveyLimit.OUTLIER_FLOOR, 0)))
                .orElse(List.of());
    }

    private void dogleg(Bend bend) {
        Optional<Measurement> impossible =
                limits.exceeded(SurveyLimit.DOGLEG_GREATEST, "dogleg from the station above", bend.dogleg());
        if (impossible.isPresent()) {
            found.add(at(bend, Level.ERROR, "no hole bends like this").measured(impossible.get()));
            return;
        }
        if (bend.dogleg() < limits.value(SurveyLimit.DOGLEG_LEAST, 0)) {
            return;
        }
        String what = String.format(
                Locale.ROOT,
                "the hole bends by %.2f degrees in %.2f m (%.2f degrees per 30 m)",
                bend.dogleg(),
                bend.length(),
                bend.severity(30));
        limits.exceeded(SurveyLimit.DOGLEG_ERROR, "dogleg severity", bend.severity(10))
                .map(at(bend, Level.ERROR, what)::measured)
                .or(() -> limits.exceeded(SurveyLimit.DOGLEG_WARNING, "dogleg severity", bend.severity(10))
                        .map(at(bend, Level.WARNING, what)::measured))
                .ifPresent(found::add);
    }

    private void azimuth(Bend bend) {
        limits.exceeded(SurveyLimit.AZIMUTH_JUMP, "turn of the azimuth times sin I", bend.azimuthShare())
                .map(at(
                        bend,
                        Level.WARNING,
                        "the azimuth jumps from " + bend.upper().direction() + " to "
                                + bend.lower().direction())::measured)
                .ifPresent(found::add);
    }

    private static Finding at(Bend bend, Level level, String what) {
        return Finding.at(bend.lower().depth(), level, what);
    }

    private void signs() {
        long up = stations.stream().filter(BendFindings::isUpward).count();
        if (up > 0 && up == stations.size()) {
            found.add(Finding.ofHole(
                    Level.INFO, "every station points upward: a hole drilled upward, or dips written positive down"));
        }
        bends.stream().filter(this::isMixed).findFirst().ifPresent(bend -> {
            Finding finding = at(
                    bend,
                    Level.ERROR,
                    String.format(
                            Locale.ROOT,
                            "the hole turns from %s to %s, and %d of %d stations point upward: the signs of the dips are mixed",
                            bend.upper().direction(),
                            bend.lower().direction(),
                            up,
                            stations.size()));
            found.add(limits.exceeded(SurveyLimit.SIGN_CHANGE, "step of the dip", step(bend))
                    .map(finding::measured)
                    .orElse(finding));
        });
    }

    /** A step through horizontal that would be a smaller bend with the other sign. */
    private boolean isMixed(Bend bend) {
        Bend mirrored = new Bend(
                bend.upper(),
                new SurveyStation(
                        bend.lower().depth(),
                        StationSlip.MIRRORED_DIP.undone(bend.lower().direction())));
        return isUpward(bend.upper()) != isUpward(bend.lower())
                && mirrored.dogleg() < bend.dogleg()
                && limits.exceeded(SurveyLimit.SIGN_CHANGE, "step of the dip", step(bend))
                        .isPresent();
    }

    private static double step(Bend bend) {
        return Math.abs(
                bend.lower().direction().dip() - bend.upper().direction().dip());
    }

    private static boolean isUpward(SurveyStation station) {
        return station.direction().dip() > 0;
    }

    private void outlier(OutlyingStation one) {
        String why = one.slip()
                .map(slip -> "; " + slip + " would explain it")
                .orElse(one.end() ? "; a bend of the hole there would look the same" : "");
        Limit limit = new Limit(
                one.limit(),
                "degrees",
                limits.of(SurveyLimit.OUTLIER).map(Limit::standing).orElse(Limit.Standing.ASSUMED),
                "");
        found.add(Finding.at(
                        one.station().depth(),
                        Level.WARNING,
                        "the station stands out: " + one.station().direction() + " where the others say "
                                + one.predicted() + why)
                .measured(new Measurement("angle between the two", one.angle(), limit)));
    }
}
