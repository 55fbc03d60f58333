package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.survey.HoleTrace;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How well place and direction of a hole are known at any depth, to first order in the errors of its survey. Built in one pass over
 * stations and sources; each depth then costs the same, wherever it lies.
 *
 * <p>The place is counted from the collar, whose own error is not in it. Between two stations it is that of the arc, and a depth
 * there shares the depth errors of both in proportion. Beyond the last station the hole goes on straight.
 */
public final class TraceUncertainty {

    private final HoleTrace trace;
    private final StationChain chain;
    private final List<SourceTrack> sources;

    private TraceUncertainty(HoleTrace trace, SurveyErrorSetup setup) {
        this.trace = trace;
        this.chain = new StationChain(trace, setup);
        this.sources = setup.sourceNames().stream()
                .map(name -> new SourceTrack(chain, name))
                .toList();
    }

    /**
     * The uncertainty of a trace.
     *
     * @param trace the hole; whatever its method, errors are propagated along arcs of minimum curvature
     * @param setup how it was surveyed
     * @return the uncertainty
     * @throws IllegalArgumentException if a source depends on something that is not known: a toolface, the magnetic azimuth (a
     *     survey with declination and convergence has it), gravity and field
     */
    public static TraceUncertainty of(HoleTrace trace, SurveyErrorSetup setup) {
        return new TraceUncertainty(trace, setup);
    }

    /**
     * The trace.
     *
     * @return the hole
     */
    public HoleTrace trace() {
        return trace;
    }

    /**
     * How the hole was surveyed.
     *
     * @return the setup
     */
    public SurveyErrorSetup setup() {
        return chain.setup;
    }

    /**
     * The uncertainty at a depth.
     *
     * @param depth metres along the hole
     * @return the covariances there
     * @throws IllegalArgumentException if the trace does not reach the depth
     */
    public PointUncertainty at(double depth) {
        Place place = chain.at(depth);
        double[][] joint = new double[SourceTrack.SIZE][SourceTrack.SIZE];
        sources.forEach(source -> source.addTo(joint, place));
        return new PointUncertainty(depth, trace.directionAt(depth), joint);
    }

    /**
     * What each source by itself makes of a depth; the covariances sum to those of {@link #at}.
     *
     * @param depth metres along the hole
     * @return the uncertainty by the name of the source, in the order of the model
     * @throws IllegalArgumentException if the trace does not reach the depth
     */
    public Map<String, PointUncertainty> bySource(double depth) {
        Place place = chain.at(depth);
        Map<String, PointUncertainty> parts = new LinkedHashMap<>();
        for (SourceTrack source : sources) {
            double[][] joint = new double[SourceTrack.SIZE][SourceTrack.SIZE];
            source.addTo(joint, place);
            parts.put(source.name, new PointUncertainty(depth, trace.directionAt(depth), joint));
        }
        return parts;
    }

    /** The trace and the setup. */
    @Override
    public String toString() {
        return "uncertainty of " + trace + "; " + setup();
    }
}
