package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.survey.HoleTrace;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

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
     * @param trace the hole; whatever its method, errors are propagated along arcs of minimum curvature. Of a branch the stations of
     *     its parent down to the kick-off err too, and the kick-off counts as one of them
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

    /**
     * The way from one depth of this hole to another, with its uncertainty: what both share cancels.
     *
     * @param depth where the way begins, metres along the hole
     * @param other where it ends, metres along the hole
     * @return the separation
     * @throws IllegalArgumentException if the trace does not reach a depth
     */
    public Separation between(double depth, double other) {
        Place from = chain.at(depth);
        Place to = chain.at(other);
        double[][] sum = new double[3][3];
        for (SourceTrack source : sources) {
            addDifference(sum, source.byGroup(from), source.byGroup(to));
        }
        return new Separation(trace.positionAt(other).minus(trace.positionAt(depth)), Covariance.corner(sum, 0));
    }

    /**
     * The way from a depth of this hole to one of another hole, with its uncertainty: global sources of one name are shared, all
     * others are not. The errors of the two collars are not in it.
     *
     * @param depth where the way begins, metres along this hole
     * @param other the uncertainty of another hole; it is taken as another hole even where it is this one
     * @param otherDepth where the way ends, metres along the other hole
     * @return the separation
     * @throws IllegalArgumentException if a trace does not reach a depth, a source is global in one hole alone, or one hole is a
     *     branch of the other or of the same parent, which share more than this
     */
    public Separation between(double depth, TraceUncertainty other, double otherDepth) {
        if (trunk(trace) == trunk(other.trace) && trace != other.trace) {
            throw new IllegalArgumentException(
                    "the two holes share a stretch, which is not covered here; expected holes with no stretch in common");
        }
        double[][] sum = new double[3][3];
        addAlone(sum, depth, other);
        other.addAlone(sum, otherDepth, this);
        for (SourceTrack source : sources) {
            SourceTrack twin = other.named(source.name);
            if (twin != null && (source.mode == PropagationMode.GLOBAL) != (twin.mode == PropagationMode.GLOBAL)) {
                throw new IllegalArgumentException("the error source " + source.name + " is " + source.mode
                        + " in one hole and " + twin.mode + " in the other; expected both or neither GLOBAL");
            }
            if (twin != null && source.mode == PropagationMode.GLOBAL) {
                addDifference(sum, source.byGroup(chain.at(depth)), twin.byGroup(other.chain.at(otherDepth)));
            }
        }
        return new Separation(
                other.trace.positionAt(otherDepth).minus(trace.positionAt(depth)), Covariance.corner(sum, 0));
    }

    private static HoleTrace trunk(HoleTrace trace) {
        return trace.parent().map(TraceUncertainty::trunk).orElse(trace);
    }

    /** Adds the covariance of what a depth does not share with another hole. */
    private void addAlone(double[][] sum, double depth, TraceUncertainty other) {
        Place place = chain.at(depth);
        for (SourceTrack source : sources) {
            if (source.mode != PropagationMode.GLOBAL || other.named(source.name) == null) {
                double[] groups = source.byGroup(place);
                addDifference(sum, groups, new double[groups.length]);
            }
        }
    }

    private @Nullable SourceTrack named(String name) {
        return sources.stream()
                .filter(source -> source.name.equals(name))
                .findFirst()
                .orElse(null);
    }

    private static void addDifference(double[][] sum, double[] from, double[] to) {
        for (int i = 0; i < from.length; i += SourceTrack.DRAWN) {
            Outer.add(sum, new double[] {to[i] - from[i], to[i + 1] - from[i + 1], to[i + 2] - from[i + 2]});
        }
    }

    /**
     * What each independent draw of one sigma does at a depth. Whatever follows from places and directions at several depths has its
     * covariance from this: that of any two depths is {@code factor(a)} times {@code factor(b)} transposed.
     *
     * @param depth metres along the hole
     * @return seven rows: place north, east, down in metres; unit vector along the hole north, east, down; and how far the carried frame
     *     twists, clockwise looking down-hole, radians, against the smallest rotation from the direction as measured, with no twist
     *     at the first station. A column for each draw, source by source, the same at all depths
     * @throws IllegalArgumentException if the trace does not reach the depth
     */
    public double[][] factor(double depth) {
        Place place = chain.at(depth);
        int draws = sources.stream().mapToInt(SourceTrack::groups).sum();
        double[][] factor = new double[SourceTrack.DRAWN][draws];
        int column = 0;
        for (SourceTrack source : sources) {
            double[] loads = source.byGroup(place);
            for (int i = 0; i < loads.length; i++) {
                factor[i % SourceTrack.DRAWN][column + i / SourceTrack.DRAWN] = loads[i];
            }
            column += source.groups();
        }
        return factor;
    }

    /**
     * The standard deviation of the turn of a straight scribe from the low side ({@link HoleTrace#scribeTurn}), to first order: what
     * the survey adds to the doubt of a line on core that is carried from one depth to another.
     *
     * @param from depth where the scribe begins, metres along the hole
     * @param to depth where it ends, metres along the hole
     * @return degrees
     * @throws IllegalArgumentException if the trace does not reach a depth, or the hole is vertical at one of the two
     */
    public double scribeTurnSigma(double from, double to) {
        trace.scribeTurn(from, to);
        double[] turn = scribeTurns(to);
        double[] before = scribeTurns(from);
        double variance = 0;
        for (int i = 0; i < turn.length; i++) {
            variance += (turn[i] - before[i]) * (turn[i] - before[i]);
        }
        return Math.toDegrees(Math.sqrt(variance));
    }

    /** By each draw, how far a scribe carried from the first station turns from the low side: the twist less cos I dA. */
    private double[] scribeTurns(double depth) {
        HoleDirection direction = trace.directionAt(depth);
        double[][] factor = factor(depth);
        double sine = Degrees.sin(direction.inclination());
        double north = -Degrees.sin(direction.azimuth());
        double east = Degrees.cos(direction.azimuth());
        double[] turns = new double[factor[0].length];
        for (int i = 0; i < turns.length; i++) {
            double azimuth = (north * factor[3][i] + east * factor[4][i]) / sine;
            turns[i] = factor[SourceTrack.SIZE][i] - Degrees.cos(direction.inclination()) * azimuth;
        }
        return turns;
    }

    StationChain chain() {
        return chain;
    }

    List<SourceTrack> sources() {
        return sources;
    }

    /** The trace and the setup. */
    @Override
    public String toString() {
        return "uncertainty of " + trace + "; " + setup();
    }
}
