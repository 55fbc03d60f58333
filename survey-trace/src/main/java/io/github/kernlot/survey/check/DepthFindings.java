package io.github.kernlot.survey.check;

import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the depths of a survey say: order, rows at one depth, spacing, and both ends of the hole. */
final class DepthFindings {

    private final RawSurvey survey;
    private final SurveyLimits limits;
    private final List<SurveyStation> sorted;
    private final List<Finding> found = new ArrayList<>();

    DepthFindings(RawSurvey survey, SurveyLimits limits) {
        this.survey = survey;
        this.limits = limits;
        this.sorted = survey.byDepth().stream().map(SurveyShot::station).toList();
    }

    List<Finding> all() {
        if (sorted.isEmpty()) {
            return List.of(Finding.ofHole(Level.ERROR, "the survey has no shot"));
        }
        if (sorted.size() == 1) {
            found.add(Finding.ofHole(Level.INFO, "the survey has one shot: nothing can be checked against it"));
        }
        order();
        collar();
        boolean vertical = meanFromVertical() <= 3;
        SurveyStation upper = sorted.get(0);
        for (SurveyStation lower : sorted.subList(1, sorted.size())) {
            if (lower.depth() == upper.depth()) {
                repeat(new Bend(upper, lower));
            } else {
                spacing(new Bend(upper, lower), vertical);
                upper = lower;
            }
        }
        end();
        return found;
    }

    private void order() {
        double deepest = 0;
        for (SurveyShot shot : survey.shots()) {
            if (shot.depth() < deepest) {
                found.add(Finding.at(
                        shot.depth(),
                        Level.WARNING,
                        String.format(Locale.ROOT, "the row comes after one at %.2f m: out of order", deepest)));
            }
            deepest = Math.max(deepest, shot.depth());
        }
    }

    private void repeat(Bend repeat) {
        double dips = Math.abs(
                repeat.upper().direction().dip() - repeat.lower().direction().dip());
        Optional<Measurement> dip = limits.exceeded(SurveyLimit.REPEAT_DIP, "difference of dip", dips);
        Optional<Measurement> azimuth =
                limits.exceeded(SurveyLimit.REPEAT_AZIMUTH, "difference of azimuth times sin I", repeat.azimuthShare());
        double depth = repeat.upper().depth();
        String rows = repeat.upper().direction() + " and " + repeat.lower().direction();
        if (dip.isEmpty() && azimuth.isEmpty()) {
            String say = repeat.dogleg() == 0 ? "say the same" : "agree: " + rows;
            found.add(Finding.at(depth, Level.WARNING, "two rows at one depth, an interval of no length; they " + say));
        }
        Finding contradiction = Finding.at(depth, Level.ERROR, "two rows at one depth contradict each other, " + rows);
        dip.map(contradiction::measured).ifPresent(found::add);
        azimuth.map(contradiction::measured).ifPresent(found::add);
    }

    private double meanFromVertical() {
        return sorted.stream()
                .mapToDouble(station -> 90 - Math.abs(station.direction().dip()))
                .map(Math::abs)
                .average()
                .orElse(0);
    }

    private void spacing(Bend bend, boolean vertical) {
        limits.of(SurveyLimit.INTERVAL_LEAST)
                .filter(limit -> bend.length() < limit.value())
                .ifPresent(limit -> found.add(
                        Finding.at(bend.lower().depth(), Level.INFO, "hardly deeper than the station above it")
                                .measured(new Measurement("interval", bend.length(), limit))));
        limits.exceeded(SurveyLimit.SPACING, "spacing", bend.length())
                .or(() -> limits.exceeded(published(bend, vertical), "spacing", bend.length()))
                .map(Finding.at(bend.lower().depth(), Level.WARNING, "far from the station above it")::measured)
                .ifPresent(found::add);
    }

    private SurveyLimit published(Bend bend, boolean vertical) {
        if (vertical) {
            return SurveyLimit.SPACING_VERTICAL;
        }
        return limits.exceeded(SurveyLimit.BENDING, "bend", bend.severity(10)).isPresent()
                ? SurveyLimit.SPACING_BENDING
                : SurveyLimit.SPACING_INCLINED;
    }

    private void collar() {
        double first = sorted.get(0).depth();
        if (first == 0) {
            return;
        }
        String what = "no station at the collar: the direction of the first one is used above it";
        found.add(limits.exceeded(SurveyLimit.EXTRAPOLATION, "depth of the first station", first)
                .map(Finding.at(first, Level.WARNING, what)::measured)
                .orElse(Finding.at(first, Level.INFO, what)));
    }

    private void end() {
        double last = sorted.get(sorted.size() - 1).depth();
        survey.end().ifPresent(end -> {
            for (SurveyStation station : sorted) {
                if (station.depth() > end) {
                    found.add(Finding.at(
                            station.depth(),
                            Level.ERROR,
                            String.format(Locale.ROOT, "below the end of the hole, %.2f m", end)));
                }
            }
            limits.exceeded(SurveyLimit.EXTRAPOLATION, "hole below the last station", Math.max(0, end - last))
                    .map(
                            Finding.at(last, Level.WARNING, "the last station does not reach the end of the hole")
                                    ::measured)
                    .ifPresent(found::add);
        });
    }
}
