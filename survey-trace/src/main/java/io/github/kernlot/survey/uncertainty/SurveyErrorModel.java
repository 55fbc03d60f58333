package io.github.kernlot.survey.uncertainty;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The errors of one way of surveying.
 *
 * @param name what was surveyed with
 * @param sources the causes of error, no two of one name
 */
public record SurveyErrorModel(String name, List<SurveyErrorSource> sources) {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if two sources have one name
     */
    public SurveyErrorModel {
        sources = List.copyOf(sources);
        Set<String> seen = new HashSet<>();
        for (SurveyErrorSource source : sources) {
            if (!seen.add(source.name())) {
                throw new IllegalArgumentException("two error sources of " + name + " are called " + source.name()
                        + "; expected names that differ");
            }
        }
    }

    /**
     * A magnetic tool on rods without corrections, as the published framework of 2000 has it: magnitudes <em>from memory</em> (H. S.
     * Williamson, Accuracy prediction for directional measurement while drilling, SPE Drilling and Completion 15, 2000), not read in
     * the paper, since revised, and no statement about the tool of any hole. It depends on toolfaces, the magnetic azimuth and
     * gravity and field.
     *
     * @return the model
     */
    public static SurveyErrorModel basicMagneticTool() {
        List<SurveyErrorSource> sources = new ArrayList<>();
        for (ToolAxis axis : ToolAxis.values()) {
            sources.add(SurveyErrorTerms.accelerometerBias(axis, 0.004));
            sources.add(SurveyErrorTerms.accelerometerScale(axis, 0.0005));
            sources.add(SurveyErrorTerms.magnetometerBias(axis, 70));
            sources.add(SurveyErrorTerms.magnetometerScale(axis, 0.0016));
        }
        sources.add(SurveyErrorTerms.misalignment(ToolAxis.X, 0.06));
        sources.add(SurveyErrorTerms.misalignment(ToolAxis.Y, 0.06));
        return new SurveyErrorModel("basic magnetic tool, from memory", withCommon(sources));
    }

    /**
     * {@link #basicMagneticTool} freed of toolfaces: biases and misalignment keep their place in the hole, scale errors are
     * averaged over all toolfaces.
     *
     * @return the model
     */
    public static SurveyErrorModel basicMagneticToolAtAnyToolface() {
        List<SurveyErrorSource> sources = new ArrayList<>();
        sources.addAll(SurveyErrorTerms.accelerometerBiasAcross(0.004));
        sources.addAll(SurveyErrorTerms.accelerometerScaleAcross(0.0005));
        sources.addAll(SurveyErrorTerms.magnetometerBiasAcross(70));
        sources.addAll(SurveyErrorTerms.magnetometerScaleAcross(0.0016));
        sources.add(SurveyErrorTerms.accelerometerBias(ToolAxis.Z, 0.004));
        sources.add(SurveyErrorTerms.accelerometerScale(ToolAxis.Z, 0.0005));
        sources.add(SurveyErrorTerms.magnetometerBias(ToolAxis.Z, 70));
        sources.add(SurveyErrorTerms.magnetometerScale(ToolAxis.Z, 0.0016));
        sources.addAll(SurveyErrorTerms.misalignmentAcross(0.06));
        return new SurveyErrorModel("basic magnetic tool at any toolface, from memory", withCommon(sources));
    }

    private static List<SurveyErrorSource> withCommon(List<SurveyErrorSource> sources) {
        return Stream.concat(
                        sources.stream(),
                        Stream.of(
                                SurveyErrorTerms.depthRandom(0.35),
                                SurveyErrorTerms.depthScale(2.4e-4),
                                SurveyErrorTerms.depthStretch(2.2e-7),
                                SurveyErrorTerms.axialInterferenceConstant(0.25),
                                SurveyErrorTerms.axialInterferenceVariable(0.60),
                                SurveyErrorTerms.sag(0.2),
                                SurveyErrorTerms.declination(0.36),
                                SurveyErrorTerms.declinationByField(5000)))
                .toList();
    }

    /**
     * This model with one more source, or with another in place of the one of its name.
     *
     * @param source the source
     * @return the model
     */
    public SurveyErrorModel with(SurveyErrorSource source) {
        Stream<SurveyErrorSource> others =
                sources.stream().filter(one -> !one.name().equals(source.name()));
        return new SurveyErrorModel(
                name, Stream.concat(others, Stream.of(source)).toList());
    }

    /** The name and a line for each source. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(name);
        sources.forEach(source -> text.append("\n  ").append(source));
        return text.toString();
    }
}
