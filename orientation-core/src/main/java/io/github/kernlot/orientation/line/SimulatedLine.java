package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** A hole with its truth: what {@link LineSimulation} draws. */
public final class SimulatedLine {

    private final LineSimulation simulation;
    private final List<OrientationMark> marks;
    private final List<MarkPosterior.Verdict> kinds;
    private final List<Join> slipped;
    private final SortedMap<Double, Double> truth;

    SimulatedLine(
            LineSimulation simulation,
            List<OrientationMark> marks,
            List<MarkPosterior.Verdict> kinds,
            List<Join> slipped,
            SortedMap<Double, Double> truth) {
        this.simulation = simulation;
        this.marks = List.copyOf(marks);
        this.kinds = List.copyOf(kinds);
        this.slipped = List.copyOf(slipped);
        this.truth = new TreeMap<>(truth);
    }

    /**
     * The marks as a geologist would read them.
     *
     * @return the marks in the order of depth
     */
    public List<OrientationMark> marks() {
        return marks;
    }

    /**
     * What the marks truly are.
     *
     * @return sound, flipped or wrong, in the order of {@link #marks}
     */
    public List<MarkPosterior.Verdict> kinds() {
        return kinds;
    }

    /**
     * The joins at which the core truly slipped.
     *
     * @return the broken joins and some of the doubtful ones, in the order of depth
     */
    public List<Join> slipped() {
        return slipped;
    }

    /**
     * The core in the ground with its line where it truly lies.
     *
     * @param depth a depth of the simulation's marks or truth depths, metres along the hole
     * @return the frame
     * @throws IllegalArgumentException if the truth was not drawn at that depth
     */
    public CoreFrame frameAt(double depth) {
        Double angle = truth.get(depth);
        if (angle == null) {
            throw new IllegalArgumentException(
                    "depth is " + depth + " m; expected one of the simulation's mark or truth depths");
        }
        return simulation.path().carriedFrameAt(depth).turned(angle);
    }
}
