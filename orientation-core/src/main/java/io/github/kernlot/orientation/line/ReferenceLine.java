package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HolePath;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The reference line of one hole, reconciled: what {@link LineModel} gives. */
public final class ReferenceLine {

    private final LineModel model;
    private final HolePath path;
    private final Breaks breaks;
    private final List<Optional<LinePiece>> pieces = new ArrayList<>();
    private final List<MarkPosterior> marks;
    private final List<JoinPosterior> joins;

    ReferenceLine(LineModel model, HolePath path, List<OrientationMark> marks, List<Join> joins) {
        this.model = model;
        this.path = path;
        this.breaks = new Breaks(joins);
        List<Join> sorted =
                joins.stream().sorted(Comparator.comparingDouble(Join::depth)).toList();
        List<Sighting> sightings = Sighting.all(marks, path, model.side(), model.noise());
        List<List<Sighting>> used =
                breaks.divide(sightings.stream().filter(Sighting::isUsed).toList(), Sighting::depth);
        List<List<Join>> whole = breaks.divide(
                sorted.stream().filter(join -> join.fit() != JoinFit.BROKEN).toList(), Join::depth);
        for (int i = 0; i < used.size(); i++) {
            pieces.add(
                    used.get(i).isEmpty()
                            ? Optional.empty()
                            : Optional.of(new LinePiece(model, used.get(i), whole.get(i))));
        }
        this.marks = judged(sightings);
        this.joins = sorted.stream().map(this::judged).toList();
    }

    private Optional<LinePiece> pieceAt(double depth) {
        return pieces.get(breaks.above(depth));
    }

    private List<MarkPosterior> judged(List<Sighting> sightings) {
        List<MarkPosterior> judged = new ArrayList<>();
        int[] next = new int[pieces.size()];
        for (Sighting sighting : sightings) {
            int number = breaks.above(sighting.depth());
            judged.add(
                    sighting.isUsed()
                            ? pieces.get(number).orElseThrow().mark(next[number]++)
                            : leftOut(sighting, pieces.get(number)));
        }
        return List.copyOf(judged);
    }

    private static MarkPosterior leftOut(Sighting sighting, Optional<LinePiece> piece) {
        OptionalDouble predicted = piece.map(known -> known.predicted(sighting)).orElse(OptionalDouble.empty());
        return new MarkPosterior(sighting.mark(), sighting.sigma(), predicted, Optional.empty());
    }

    private JoinPosterior judged(Join join) {
        return new JoinPosterior(
                join,
                switch (join.fit()) {
                    case LOCKED -> 0;
                    case BROKEN -> 1;
                    case DOUBTFUL ->
                        pieceAt(join.depth())
                                .map(piece -> piece.slip(join))
                                .orElse(model.drift().slip());
                });
    }

    /**
     * The line at a depth.
     *
     * @param depth metres along the hole
     * @return the line; empty where it is unanchored, because no used mark is on this piece of core
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    public Optional<LinePosterior> at(double depth) {
        CoreFrame carried = path.carriedFrameAt(depth);
        return pieceAt(depth)
                .map(piece -> new LinePosterior(carried, model.side().countedFrom(), piece.at(depth)));
    }

    /**
     * What each mark is worth for the line at a depth.
     *
     * @param depth metres along the hole
     * @return the used marks of the piece of core at that depth, in the order of depth; none where the line is unanchored
     */
    public List<MarkInfluence> influences(double depth) {
        return pieceAt(depth).map(piece -> piece.influences(depth)).orElse(List.of());
    }

    /**
     * What is assumed of the marks and of the line between them.
     *
     * @return the model
     */
    public LineModel model() {
        return model;
    }

    /**
     * What was found of each mark.
     *
     * @return the marks in the order of depth, those left out among them
     */
    public List<MarkPosterior> marks() {
        return marks;
    }

    /**
     * What was found of each join.
     *
     * @return the joins in the order of depth
     */
    public List<JoinPosterior> joins() {
        return joins;
    }

    /**
     * The evidence: the logarithm of the probability density of all used marks under the model, per degree each, without the bias
     * that they share.
     *
     * @return the natural logarithm; 0 without a mark
     */
    public double logEvidence() {
        return pieces.stream()
                .flatMap(Optional::stream)
                .mapToDouble(LinePiece::logEvidence)
                .sum();
    }
}
