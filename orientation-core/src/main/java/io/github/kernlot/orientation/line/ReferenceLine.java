package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The reference line of one hole, reconciled: what {@link LineModel} gives. */
public final class ReferenceLine {

    private final LineModel model;
    private final HolePath path;
    private final double[] breaks;
    private final List<Optional<LinePiece>> pieces;
    private final List<MarkPosterior> marks;
    private final List<JoinPosterior> joins;

    ReferenceLine(LineModel model, HolePath path, List<OrientationMark> marks, List<Join> joins) {
        this.model = model;
        this.path = path;
        List<Join> sorted =
                joins.stream().sorted(Comparator.comparingDouble(Join::depth)).toList();
        breaks = Breaks.of(sorted);
        List<Sighting> sightings = Sighting.all(marks, path, model.side(), model.noise());
        pieces = new ArrayList<>();
        for (int piece = 0; piece <= breaks.length; piece++) {
            int wanted = piece;
            List<Sighting> used = sightings.stream()
                    .filter(sighting -> sighting.isUsed() && Breaks.above(breaks, sighting.depth()) == wanted)
                    .toList();
            List<Join> inside = sorted.stream()
                    .filter(join -> join.fit() != JoinFit.BROKEN && Breaks.above(breaks, join.depth()) == wanted)
                    .toList();
            pieces.add(used.isEmpty() ? Optional.empty() : Optional.of(new LinePiece(model, used, inside)));
        }
        this.marks = judged(sightings);
        this.joins = sorted.stream().map(this::judged).toList();
    }

    private List<MarkPosterior> judged(List<Sighting> sightings) {
        List<MarkPosterior> judged = new ArrayList<>();
        int[] next = new int[pieces.size()];
        for (Sighting sighting : sightings) {
            int number = Breaks.above(breaks, sighting.depth());
            Optional<LinePiece> piece = pieces.get(number);
            judged.add(sighting.isUsed() ? piece.orElseThrow().mark(next[number]++) : leftOut(sighting, piece));
        }
        return List.copyOf(judged);
    }

    private static MarkPosterior leftOut(Sighting sighting, Optional<LinePiece> piece) {
        OptionalDouble predicted = piece.map(known -> known.predicted(sighting)).orElse(OptionalDouble.empty());
        return new MarkPosterior(sighting.mark(), sighting.sigma(), predicted, Double.NaN, Double.NaN, Double.NaN);
    }

    private JoinPosterior judged(Join join) {
        return new JoinPosterior(
                join,
                switch (join.fit()) {
                    case LOCKED -> 0;
                    case BROKEN -> 1;
                    case DOUBTFUL ->
                        pieces.get(Breaks.above(breaks, join.depth()))
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
        var carried = path.carriedFrameAt(depth);
        return pieces.get(Breaks.above(breaks, depth))
                .map(piece -> new LinePosterior(carried, reference(), piece.at(depth)));
    }

    /**
     * What each mark is worth for the line at a depth.
     *
     * @param depth metres along the hole
     * @return the used marks of the piece of core at that depth, in the order of depth; none where the line is unanchored
     */
    public List<MarkInfluence> influences(double depth) {
        return pieces.get(Breaks.above(breaks, depth))
                .map(piece -> piece.influences(depth))
                .orElse(List.of());
    }

    /** The line angle is counted from the low side whether the marks stand for the low or the high side. */
    private WallReference reference() {
        return model.side().equals(WallReference.highSide()) ? WallReference.lowSide() : model.side();
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
     * The evidence: the logarithm of the probability density of all used marks under the model, per degree each.
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
