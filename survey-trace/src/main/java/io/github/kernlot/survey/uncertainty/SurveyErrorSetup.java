package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** How a hole was surveyed: its legs with their errors, its tie-in, and what of the place and the tool the errors depend on. */
public final class SurveyErrorSetup {

    private final List<SurveyLeg> legs;
    private final TieIn tieIn;
    private final Linearisation linearisation;
    private final Optional<EarthReference> earth;
    private final DoubleFunction<OptionalDouble> toolfaces;

    private SurveyErrorSetup(
            List<SurveyLeg> legs,
            TieIn tieIn,
            Linearisation linearisation,
            Optional<EarthReference> earth,
            DoubleFunction<OptionalDouble> toolfaces) {
        this.legs = legs;
        this.tieIn = tieIn;
        this.linearisation = linearisation;
        this.earth = earth;
        this.toolfaces = toolfaces;
    }

    /**
     * A hole surveyed in one go.
     *
     * @param model the errors of the survey
     * @param tieIn what is known of the first station
     * @return the setup: derivatives of the arcs, neither toolfaces nor gravity and field known
     */
    public static SurveyErrorSetup of(SurveyErrorModel model, TieIn tieIn) {
        return ofLegs(List.of(new SurveyLeg(0, model)), tieIn);
    }

    /**
     * A hole surveyed in several legs.
     *
     * @param legs at least one, the first from depth 0, each deeper than the one before; a source that they share by name must have one
     *     mode
     * @param tieIn what is known of the first station of the first leg
     * @return the setup: derivatives of the arcs, neither toolfaces nor gravity and field known
     * @throws IllegalArgumentException if there is no leg, the first does not begin at 0, one begins no deeper than the one before, or
     *     two of their sources share a name and not a mode
     */
    public static SurveyErrorSetup ofLegs(List<SurveyLeg> legs, TieIn tieIn) {
        if (legs.isEmpty()) {
            throw new IllegalArgumentException("a survey has no leg; expected at least one");
        }
        if (legs.get(0).from() != 0) {
            throw new IllegalArgumentException(
                    "the first survey leg begins at " + legs.get(0).from() + " m; expected 0");
        }
        Map<String, PropagationMode> modes = new HashMap<>();
        for (int i = 0; i < legs.size(); i++) {
            if (i > 0 && legs.get(i).from() <= legs.get(i - 1).from()) {
                throw new IllegalArgumentException(
                        "a survey leg begins at " + legs.get(i).from() + " m; expected deeper than "
                                + legs.get(i - 1).from() + " m, where the one before begins");
            }
            for (SurveyErrorSource source : legs.get(i).model().sources()) {
                PropagationMode known = modes.putIfAbsent(source.name(), source.mode());
                if (known != null && known != source.mode()) {
                    throw new IllegalArgumentException("the error source " + source.name() + " is " + known
                            + " in one leg and " + source.mode() + " in another; expected one mode");
                }
            }
        }
        return new SurveyErrorSetup(
                List.copyOf(legs), tieIn, Linearisation.ARCS, Optional.empty(), depth -> OptionalDouble.empty());
    }

    /**
     * This setup with other derivatives.
     *
     * @param other the derivatives
     * @return the setup
     */
    public SurveyErrorSetup with(Linearisation other) {
        return new SurveyErrorSetup(legs, tieIn, other, earth, toolfaces);
    }

    /**
     * This setup with gravity and field.
     *
     * @param reference what the tool feels at the place of the hole
     * @return the setup
     */
    public SurveyErrorSetup with(EarthReference reference) {
        return new SurveyErrorSetup(legs, tieIn, linearisation, Optional.of(reference), toolfaces);
    }

    /**
     * This setup with one toolface for all stations.
     *
     * @param toolface clockwise from the high side looking down-hole, degrees, any finite number
     * @return the setup
     * @throws IllegalArgumentException if the angle is not finite
     */
    public SurveyErrorSetup withToolface(double toolface) {
        OptionalDouble known = OptionalDouble.of(Require.finite("toolface", toolface, "degrees"));
        return new SurveyErrorSetup(legs, tieIn, linearisation, earth, depth -> known);
    }

    /**
     * This setup with the toolface of each station.
     *
     * @param byDepth toolfaces by the depths of the stations, clockwise from the high side looking down-hole, degrees
     * @return the setup
     * @throws IllegalArgumentException if an angle is not finite
     */
    public SurveyErrorSetup withToolfaces(Map<Double, Double> byDepth) {
        Map<Double, OptionalDouble> known = new HashMap<>();
        byDepth.forEach((depth, toolface) ->
                known.put(depth, OptionalDouble.of(Require.finite("toolface", toolface, "degrees"))));
        return new SurveyErrorSetup(
                legs, tieIn, linearisation, earth, depth -> known.getOrDefault(depth, OptionalDouble.empty()));
    }

    /**
     * The legs of the survey.
     *
     * @return at least one, by increasing depth
     */
    public List<SurveyLeg> legs() {
        return legs;
    }

    /**
     * What is known of the first station.
     *
     * @return the tie-in
     */
    public TieIn tieIn() {
        return tieIn;
    }

    /**
     * The derivatives in use.
     *
     * @return the linearisation
     */
    public Linearisation linearisation() {
        return linearisation;
    }

    /**
     * Gravity and field.
     *
     * @return the reference, empty where it was not given
     */
    public Optional<EarthReference> earth() {
        return earth;
    }

    OptionalDouble toolfaceAt(double depth) {
        return toolfaces.apply(depth);
    }

    /** The leg to which a station belongs. */
    int legAt(double depth) {
        int leg = 0;
        while (leg + 1 < legs.size() && depth > legs.get(leg + 1).from()) {
            leg++;
        }
        return leg;
    }

    /** The names of all sources, in the order of the legs. */
    List<String> sourceNames() {
        List<String> names = new ArrayList<>();
        for (SurveyLeg leg : legs) {
            for (SurveyErrorSource source : leg.model().sources()) {
                if (!names.contains(source.name())) {
                    names.add(source.name());
                }
            }
        }
        return names;
    }

    /** The legs, the tie-in and the derivatives. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (SurveyLeg leg : legs) {
            text.append("from ")
                    .append(leg.from())
                    .append(" m: ")
                    .append(leg.model().name())
                    .append("; ");
        }
        return text + "tie-in " + tieIn + ", derivatives " + linearisation;
    }
}
