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
import org.jspecify.annotations.Nullable;

/** The reference line of one hole, reconciled: what {@link LineModel} gives. */
public final class ReferenceLine {

    private final LineModel model;
    private final HolePath path;
    private final Breaks breaks;
    private final DrawnLines drawn;
    private final List<Join> recorded;
    private final List<Sighting> sightings;
    private final List<Sighting> witnesses;
    private final List<Join> sorted;
    private final List<List<Sighting>> used;
    private final List<Optional<LinePiece>> pieces = new ArrayList<>();

    // judged when they are first asked for, in any thread, always the same
    private @Nullable List<MarkPosterior> marks;
    private @Nullable List<JoinPosterior> joins;

    ReferenceLine(LineModel model, HolePath path, List<OrientationMark> marks, List<Join> recorded, DrawnLines drawn) {
        this(model, path, marks, recorded, drawn, List.of(), Optional.empty());
    }

    private ReferenceLine(
            LineModel model,
            HolePath path,
            List<OrientationMark> marks,
            List<Join> recorded,
            DrawnLines drawn,
            List<Sighting> witnesses,
            Optional<ReferenceLine> former) {
        this.witnesses = witnesses;
        this.model = model;
        this.path = path;
        this.drawn = drawn;
        this.recorded = List.copyOf(recorded);
        this.sorted = drawn.withGaps(recorded).stream()
                .sorted(Comparator.comparingDouble(Join::depth))
                .toList();
        this.breaks = new Breaks(sorted);
        this.sightings = Sighting.all(marks, path, model.side(), model.noise());
        this.used = breaks.divide(
                Stream.concat(sightings.stream().filter(Sighting::isUsed), witnesses.stream())
                        .sorted(Comparator.comparingDouble(Sighting::depth))
                        .toList(),
                Sighting::depth);
        List<List<Join>> whole = breaks.divide(
                sorted.stream().filter(join -> join.fit() != JoinFit.BROKEN).toList(), Join::depth);
        for (int i = 0; i < used.size(); i++) {
            int number = i;
            List<Sighting> own = used.get(i);
            pieces.add(former.filter(line -> line.used.get(number).equals(own))
                    .map(line -> line.pieces.get(number))
                    .orElseGet(() -> own.isEmpty()
                            ? Optional.empty()
                            : Optional.of(new LinePiece(model, own, whole.get(number), drawn))));
        }
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
        return new ReferenceLine(model, path, all, recorded, drawn, speaking, Optional.empty());
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
        List<MarkPosterior> known = marks;
        if (known == null) {
            known = judged();
            marks = known;
        }
        return known;
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
        List<JoinPosterior> known = joins;
        if (known == null) {
            known = sorted.stream().map(this::judged).toList();
            joins = known;
        }
        return known;
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

    /**
     * The same hole with some marks changed and all else as it is: what if they were read the other way, or left out?
     *
     * @param change what becomes of each mark
     * @return the line by the changed marks
     * @throws IllegalArgumentException if the path does not reach a mark, or the side does not exist there
     */
    public ReferenceLine withMarks(UnaryOperator<OrientationMark> change) {
        List<OrientationMark> changed =
                sightings.stream().map(Sighting::mark).map(change).toList();
        return new ReferenceLine(model, path, changed, recorded, drawn, witnesses, Optional.of(this));
    }

    /**
     * How much better each used mark agrees with all others when it is read the other way.
     *
     * @return one for each used mark, in the order of depth
     */
    public List<MirroredMark> mirrored() {
        List<MirroredMark> mirrored = new ArrayList<>();
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
        long sound = marks().stream()
                .filter(mark -> mark.verdict() == MarkPosterior.Verdict.SOUND)
                .count();
        return "reference line: " + sound + " of " + marks().size() + " marks are sound";
    }
}
