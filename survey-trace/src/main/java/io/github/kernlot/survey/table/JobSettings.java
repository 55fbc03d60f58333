package io.github.kernlot.survey.table;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.LineDrift;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkNoise;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.TraceSettings;
import io.github.kernlot.survey.combine.DirectionSigma;
import io.github.kernlot.survey.hole.FabricSettings;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.uncertainty.SurveySigmas;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The settings of a job, with the presets where nothing is given. */
final class JobSettings {

    private static final List<String> MARK_CAUSES =
            List.of("mark.sensor_sigma_deg", "mark.level_sigma_deg", "mark.pencil_sigma_mm", "mark.transfer_sigma_mm");

    private final Map<String, PropertyLine> given;
    private final boolean isSound;

    private JobSettings(Map<String, PropertyLine> given, boolean isSound) {
        this.given = given;
        this.isSound = isSound;
    }

    /** The settings of a folder; where one is refused a fault is added and its preset stands. */
    static JobSettings read(Path folder, FaultList faults, List<String> notices) {
        FaultList wrong = new FaultList();
        Map<String, PropertyLine> given =
                TextFile.exists(folder, TableForm.SETTINGS) ? PropertyLine.read(folder, wrong) : Map.of();
        new JobSettings(given, wrong.isEmpty()).checkTogether(wrong);
        wrong.found().forEach(faults::add);
        JobSettings settings = new JobSettings(given, wrong.isEmpty());
        settings.tell(notices);
        return settings;
    }

    private void checkTogether(FaultList wrong) {
        if (number("mark.prior_flipped") + number("mark.prior_wrong") > 1) {
            wrong.add(last(List.of("mark.prior_flipped", "mark.prior_wrong"))
                    .fault("expected mark.prior_flipped and mark.prior_wrong to sum to at most 1"));
        }
        if (!(MARK_CAUSES.stream().mapToDouble(this::number).max().orElse(0) >= NumberRange.SIGMA.low())) {
            wrong.add(last(MARK_CAUSES)
                    .fault("expected one of " + String.join(", ", MARK_CAUSES) + " to be "
                            + NumberRange.text(NumberRange.SIGMA.low()) + " or more"));
        }
    }

    /** The last line that gives one of a few keys. */
    private PropertyLine last(List<String> keys) {
        return given.values().stream()
                .filter(line -> keys.contains(line.key()))
                .reduce((earlier, later) -> later)
                .orElseThrow();
    }

    private void tell(List<String> notices) {
        tell(notices, "checked and not used yet: ", given.keySet().stream().filter(key -> !isUsed(key(key))));
        tell(
                notices,
                "assumed, because not given: ",
                JobKey.ALL.values().stream()
                        .filter(key -> isUsed(key) && key.range().isPresent() && !given.containsKey(key.name()))
                        .map(key -> key.name() + " = " + key.preset()));
    }

    private static void tell(List<String> notices, String what, Stream<String> keys) {
        String list = keys.collect(Collectors.joining(", "));
        if (!list.isEmpty()) {
            notices.add(TableForm.SETTINGS + ": " + what + list);
        }
    }

    private boolean isUsed(JobKey key) {
        return key.isUsed() && (!key.isOfFabric() || !value(FabricWord.KEY).isBlank());
    }

    private static JobKey key(String name) {
        return Objects.requireNonNull(JobKey.ALL.get(name));
    }

    private String value(String name) {
        PropertyLine line = given.get(name);
        return line == null ? key(name).preset() : line.value();
    }

    private double number(String name) {
        return Double.parseDouble(value(name));
    }

    private <T> T word(String name, Map<String, T> words) {
        return Objects.requireNonNull(words.get(value(name).toLowerCase(Locale.ROOT)));
    }

    /** Whether every setting was accepted, so that what depends on several tables can be judged. */
    boolean isSound() {
        return isSound;
    }

    North surveyNorth() {
        return word("survey.north", JobKey.NORTHS);
    }

    North outputNorth() {
        return word("output.north", JobKey.NORTHS);
    }

    boolean isDipPositiveDown() {
        return value("survey.dip_sign").equalsIgnoreCase("positive-down");
    }

    boolean setsBadRowsAside() {
        return value("input.bad_rows").equalsIgnoreCase("set-aside");
    }

    double extrapolationLimit() {
        return number("survey.extrapolation_limit_m");
    }

    SurveySigmas surveySigmas() {
        return SurveySigmas.of(
                number("survey.azimuth.sigma_deg"),
                number("survey.dip.sigma_deg"),
                number("survey.azimuth.bias_sigma_deg"),
                number("survey.dip.bias_sigma_deg"));
    }

    /** How far one station misses by chance, to weigh surveys by; a weight needs some error. */
    DirectionSigma stationSigma() {
        return new DirectionSigma(
                Math.max(NumberRange.SIGMA.low(), number("survey.dip.sigma_deg")), number("survey.azimuth.sigma_deg"));
    }

    boolean weighsSurveys() {
        return value("survey.several").equalsIgnoreCase("weighted-mean");
    }

    /** The place of a survey among those of a hole: those that are not listed come after those that are. */
    int surveyPriority(String survey) {
        List<String> listed =
                Stream.of(value(JobKey.PRIORITY).split(",")).map(String::strip).toList();
        int place = listed.indexOf(survey);
        return place < 0 || survey.isEmpty() ? listed.size() : place;
    }

    TraceSettings trace() {
        return TraceSettings.assumed()
                .withMethod(word("survey.method", JobKey.METHODS))
                .withExtrapolationLimit(extrapolationLimit())
                .withBeyondLast(word("survey.beyond_last", JobKey.BEYOND));
    }

    CoreDiameter coreDiameter() {
        return CoreDiameter.ofMillimetres(number("core.diameter_mm"));
    }

    WallReference markSide() {
        return word("mark.side", JobKey.SIDES);
    }

    OrientationSettings orientation() {
        MarkNoise noise = new MarkNoise(
                number("mark.sensor_sigma_deg"),
                number("mark.level_sigma_deg"),
                number("mark.pencil_sigma_mm"),
                number("mark.transfer_sigma_mm"),
                number("mark.bias_sigma_deg"));
        LineModel model = new LineModel(
                markSide(),
                noise,
                new MarkBlunders(number("mark.prior_flipped"), number("mark.prior_wrong")),
                new LineDrift(
                        number("line.wander_sigma_deg"),
                        number("join.locked_sigma_deg"),
                        number("join.doubtful_sigma_deg"),
                        number("join.doubtful_prior_slip")));
        return new OrientationSettings(
                new BetaConvention(
                        word("beta.sense", JobKey.SENSES),
                        BetaConvention.View.DOWN_HOLE,
                        word("beta.apex", JobKey.APEXES)),
                gamma(),
                model,
                number("hand.tolerance_deg"),
                (int) number("hand.neighbours"),
                number("line.sigma_limit_deg"),
                outputNorth(),
                fabric(),
                number("run.finding_prior_factor"),
                number("depth.sigma_m"));
    }

    GammaConvention gamma() {
        return new GammaConvention(
                word("gamma.sense", JobKey.SENSES),
                BetaConvention.View.DOWN_HOLE,
                word("gamma.zero", JobKey.GAMMA_ZEROS));
    }

    private FabricSettings fabric() {
        double stray = number("fabric.prior_stray");
        FabricSettings fabric = new FabricSettings(
                Map.of(),
                stray,
                number("fabric.anchor_sigma_deg"),
                number("alpha.sigma_deg"),
                number("beta.sigma_deg"));
        for (FabricWord word : FabricWord.list(value("fabric.kinds"))) {
            fabric = word.fabric(stray).isPresent()
                    ? fabric.with(word.kind(), word.fabric(stray).get())
                    : fabric.with(word.kind());
        }
        return fabric;
    }
}
