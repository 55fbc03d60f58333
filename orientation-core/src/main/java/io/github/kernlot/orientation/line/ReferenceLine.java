package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HolePath;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** The reference line of one hole, reconciled: what {@link LineModel} gives. */
public final class ReferenceLine {

    private final LineModel model;
    private final HolePath path;
    private final Breaks breaks;
    private final DrawnLines drawn;
    private final List<Join> recorded;
    private final List<Sighting> sightings;
    private final List<Sighting> witnesses;
    private final List<List<Join>> wholeJoins;
    private final List<Optional<LinePiece>> pieces = new ArrayList<>();
    private final List<MarkPosterior> marks;
    private final List<JoinPosterior> joins;

    ReferenceLine(LineModel model, HolePath path, List<OrientationMark> marks, List<Join> recorded, DrawnLines drawn) {
        this(model, path, marks, recorded, drawn, List.of());
    }

    private ReferenceLine(
            LineModel model,
            HolePath path,
            List<OrientationMark> marks,
            List<Join> recorded,
            DrawnLines drawn,
            List<Sighting> witnesses) {
        this.witnesses = witnesses;
        this.model = model;
        this.path = path;
        this.drawn = drawn;
        this.recorded = List.copyOf(recorded);
        List<Join> sorted = drawn.withGaps(recorded).stream()
                .sorted(Comparator.comparingDouble(Join::depth))
                .toList();
        this.breaks = new Breaks(sorted);
        this.sightings = Sighting.all(marks, path, model.side(), model.noise());
        this.wholeJoins = breaks.divide(
                sorted.stream().filter(join -> join.fit() != JoinFit.BROKEN).toList(), Join::depth);
        List<List<Sighting>> used = used(sightings);
        for (int i = 0; i < used.size(); i++) {
            pieces.add(used.get(i).isEmpty() ? Optional.empty() : Optional.of(piece(used, i)));
        }
        this.marks = judged();
        this.joins = sorted.stream().map(this::judged).toList();
    }

    private List<List<Sighting>> used(List<Sighting> all) {
        return breaks.divide(
                Stream.concat(all.stream().filter(Sighting::isUsed), witnesses.stream())
                        .sorted(Comparator.comparingDouble(Sighting::depth))
                        .toList(),
                Sighting::depth);
    }

    private LinePiece piece(List<List<Sighting>> used, int number) {
        return new LinePiece(model, used.get(number), wholeJoins.get(number), drawn);
    }

    private Optional<LinePiece> pieceAt(double depth) {
        return pieces.get(breaks.above(depth));
    }

    private List<MarkPosterior> judged() {
        List<MarkPosterior> judged = new ArrayList<>();
        int[] next = new int[pieces.size()];
        for (Sighting sighting : sightings) {
            int number = breaks.above(sighting.depth());
            if (sighting.isUsed()) {
                LinePiece piece = pieces.get(number).orElseThrow();
                while (piece.isWitness(next[number])) {
                    next[number]++;
                }
                judged.add(piece.mark(next[number]++));
            } else {
                judged.add(leftOut(sighting, pieces.get(number)));
            }
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
     * @return the line; empty where it was not drawn, or is unanchored because no used mark and no witness is on this piece of core
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    public Optional<LinePosterior> at(double depth) {
        CoreFrame carried = path.carriedFrameAt(depth);
        return pieceAt(depth)
                .filter(piece -> drawn.isDrawnAt(depth))
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
     * The same line with structures of a known fabric as witnesses beside the marks. They can anchor core on which no mark is, and
     * they draw the structures of their set towards its mean: compare with the line without them before they are trusted.
     *
     * @param readings the structures, in any order
     * @return the line by marks and witnesses; verdicts on marks take the witnesses into account too
     * @throws IllegalArgumentException if the path does not reach a structure
     */
    public ReferenceLine withWitnesses(List<FabricReading> readings) {
        List<Sighting> speaking = readings.stream()
                .filter(reading -> drawn.isDrawnAt(reading.depth()))
                .map(reading -> reading.sighting(path))
                .toList();
        List<OrientationMark> all = sightings.stream().map(Sighting::mark).toList();
        return new ReferenceLine(model, path, all, recorded, drawn, speaking);
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
     * Where the line was drawn.
     *
     * @return the lines
     */
    public DrawnLines drawn() {
        return drawn;
    }

    /**
     * What was found of each join.
     *
     * @return the joins in the order of depth, with one for each gap where the line was not drawn on core that is not broken
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

    /** The evidence that the marks would have if some were changed, without a change of their depth. */
    double logEvidenceWith(UnaryOperator<OrientationMark> change) {
        List<OrientationMark> changed =
                sightings.stream().map(Sighting::mark).map(change).toList();
        List<List<Sighting>> before = used(sightings);
        List<List<Sighting>> after = used(Sighting.all(changed, path, model.side(), model.noise()));
        double sum = 0;
        for (int i = 0; i < pieces.size(); i++) {
            if (!after.get(i).isEmpty()) {
                LinePiece piece =
                        before.get(i).equals(after.get(i)) ? pieces.get(i).orElseThrow() : piece(after, i);
                sum += piece.logEvidence();
            }
        }
        return sum;
    }

    /** The same hole with some marks changed, without a change of their depth. */
    ReferenceLine with(UnaryOperator<OrientationMark> change) {
        List<OrientationMark> changed =
                sightings.stream().map(Sighting::mark).map(change).toList();
        return new ReferenceLine(model, path, changed, recorded, drawn, witnesses);
    }

    /** How much better each used mark agrees with all others when it is read the other way. */
    List<MirroredMark> mirrored() {
        List<MirroredMark> mirrored = new ArrayList<>();
        List<List<Sighting>> used = used(sightings);
        for (int number = 0; number < pieces.size(); number++) {
            for (int i = 0; i < used.get(number).size(); i++) {
                if (!used.get(number).get(i).isWitness()) {
                    double odds = pieces.get(number).orElseThrow().logMirrorOdds(i);
                    mirrored.add(new MirroredMark(used.get(number).get(i).mark(), odds));
                }
            }
        }
        return mirrored;
    }

    /** How many of the marks are sound. */
    @Override
    public String toString() {
        long sound = marks.stream()
                .filter(mark -> mark.verdict() == MarkPosterior.Verdict.SOUND)
                .count();
        return "reference line: " + sound + " of " + marks.size() + " marks are sound";
    }
}
