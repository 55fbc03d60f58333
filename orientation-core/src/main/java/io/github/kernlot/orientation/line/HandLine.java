package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HolePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The reference line of one hole as it is reconciled by hand: what {@link HandMethod} gives. */
public final class HandLine {

    private final HandMethod method;
    private final HolePath path;
    private final Breaks breaks;
    private final List<HandPiece> pieces = new ArrayList<>();
    private final List<MarkJudgement> marks;

    HandLine(HandMethod method, HolePath path, List<OrientationMark> marks, List<Join> joins) {
        this.method = method;
        this.path = path;
        this.breaks = new Breaks(joins);
        List<Sighting> sightings = Sighting.all(marks, path, method.side(), method.noise());
        List<List<Sighting>> used =
                breaks.divide(sightings.stream().filter(Sighting::isUsed).toList(), Sighting::depth);
        used.forEach(piece -> pieces.add(new HandPiece(method, piece)));
        this.marks = sightings.stream()
                .map(sighting -> pieceAt(sighting.depth()).judge(sighting))
                .toList();
    }

    private HandPiece pieceAt(double depth) {
        return pieces.get(breaks.above(depth));
    }

    /**
     * The line at a depth.
     *
     * @param depth metres along the hole
     * @return the line; empty where no marks agree on this piece of core, or between two runs that contradict each other
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    public Optional<LineAngle> angleAt(double depth) {
        CoreFrame carried = path.carriedFrameAt(depth);
        return pieceAt(depth)
                .runAt(depth)
                .map(run -> new LineAngle(
                        carried.turned(run.angle()),
                        method.side().countedFrom(),
                        Math.hypot(run.sigma(), method.noise().bias())));
    }

    /**
     * How the marks were reconciled, with the side that they stand for.
     *
     * @return the method
     */
    public HandMethod method() {
        return method;
    }

    /**
     * What was found of each mark. A mark's prediction is the mean of the other marks of the run at its depth, with the runs as
     * they were found.
     *
     * @return the marks in the order of depth, those left out among them
     */
    public List<MarkJudgement> marks() {
        return marks;
    }

    /** How many of the marks agree. */
    @Override
    public String toString() {
        long agreeing = marks.stream()
                .filter(mark -> mark.verdict() == MarkJudgement.Verdict.AGREES)
                .count();
        return "line by hand: " + agreeing + " of " + marks.size() + " marks agree";
    }
}
