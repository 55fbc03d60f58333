package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.MarkJudgement.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The reference line of one hole as it is reconciled by hand: what {@link HandMethod} gives. */
public final class HandLine {

    private final HandMethod method;
    private final HolePath path;
    private final double[] breaks;
    private final List<Run> runs;
    private final List<MarkJudgement> marks;

    /** A mark with the angle of the drawn line in the carried frame, as this mark has it. */
    private record Sighting(OrientationMark mark, int piece, double angle, double sigma) {
        double depth() {
            return mark.depth();
        }

        boolean isUsed() {
            return mark.leftOut().isEmpty();
        }
    }

    /** Marks of one piece that agree, in the order of depth, with their mean in the carried frame. */
    private record Run(List<Sighting> members, double angle, double sigma) {

        static Run of(List<Sighting> members) {
            double sine = 0;
            double cosine = 0;
            double weights = 0;
            for (Sighting member : members) {
                double weight = 1 / (member.sigma * member.sigma);
                sine += weight * Degrees.sin(member.angle);
                cosine += weight * Degrees.cos(member.angle);
                weights += weight;
            }
            double mean = Degrees.azimuth(sine, cosine);
            double squares = 0;
            for (Sighting member : members) {
                double residual = Degrees.wrap180(member.angle - mean) / member.sigma;
                squares += residual * residual;
            }
            // Birge's ratio: marks that scatter more than their sigmas widen the sigma of the mean
            double scatter = members.size() > 1 ? Math.max(1, squares / (members.size() - 1)) : 1;
            return new Run(List.copyOf(members), mean, Math.sqrt(scatter / weights));
        }

        int piece() {
            return members.get(0).piece;
        }

        double from() {
            return members.get(0).depth();
        }

        double to() {
            return members.get(members.size() - 1).depth();
        }
    }

    HandLine(HandMethod method, HolePath path, List<OrientationMark> marks, List<Join> joins) {
        this.method = method;
        this.path = path;
        this.breaks = joins.stream()
                .filter(join -> join.fit() == JoinFit.BROKEN)
                .mapToDouble(Join::depth)
                .sorted()
                .distinct()
                .toArray();
        List<Sighting> sightings = marks.stream()
                .filter(mark -> mark.leftOut().isEmpty() || hasSide(mark))
                .map(this::sighting)
                .sorted(Comparator.comparingDouble(Sighting::depth).thenComparingDouble(Sighting::angle))
                .toList();
        List<Verdict> verdicts = verdicts(sightings);
        this.runs = runs(sightings, verdicts);
        List<MarkJudgement> judgements = new ArrayList<>();
        for (int i = 0; i < sightings.size(); i++) {
            Sighting sighting = sightings.get(i);
            judgements.add(new MarkJudgement(sighting.mark, sighting.sigma, predicted(sighting), verdicts.get(i)));
        }
        marks.stream()
                .filter(mark -> mark.leftOut().isPresent() && !hasSide(mark))
                .map(mark ->
                        new MarkJudgement(mark, Double.POSITIVE_INFINITY, OptionalDouble.empty(), Verdict.LEFT_OUT))
                .forEach(judgements::add);
        judgements.sort(Comparator.comparingDouble(judgement -> judgement.mark().depth()));
        this.marks = List.copyOf(judgements);
    }

    private boolean hasSide(OrientationMark mark) {
        return method.side().existsIn(path.directionAt(mark.depth()));
    }

    private Sighting sighting(OrientationMark mark) {
        // the mark stands for the side, so the drawn line lies -offset from that side
        HoleDirection direction = path.directionAt(mark.depth());
        if (!method.side().existsIn(direction)) {
            throw new IllegalArgumentException(mark + ": there is no " + method.side() + " in a hole of " + direction
                    + "; use a mark of another side (WallReference.north() in a vertical hole) or leave it out");
        }
        CoreFrame asMarked = CoreFrame.at(direction, method.side(), -mark.offset());
        double sigma = mark.sigma().orElseGet(() -> method.noise().sigma(direction, method.side(), mark.diameter()));
        return new Sighting(mark, piece(mark.depth()), asMarked.turnFrom(path.carriedFrameAt(mark.depth())), sigma);
    }

    /** The number of breaks above a depth; at the depth of a break the core belongs to the piece above it. */
    private int piece(double depth) {
        int found = Arrays.binarySearch(breaks, depth);
        return found >= 0 ? found : -found - 1;
    }

    private List<Verdict> verdicts(List<Sighting> sightings) {
        List<Sighting> used = sightings.stream().filter(Sighting::isUsed).toList();
        List<Verdict> verdicts = new ArrayList<>();
        int place = 0;
        for (Sighting sighting : sightings) {
            verdicts.add(sighting.isUsed() ? verdict(used, place++) : Verdict.LEFT_OUT);
        }
        return verdicts;
    }

    private Verdict verdict(List<Sighting> used, int place) {
        Sighting sighting = used.get(place);
        int reach = Math.min(method.neighbours(), used.size());
        int compared = 0;
        int agreeing = 0;
        for (int i = Math.max(0, place - reach); i <= Math.min(used.size() - 1, place + reach); i++) {
            if (i != place && used.get(i).piece == sighting.piece) {
                compared++;
                agreeing += agree(sighting, used.get(i)) ? 1 : 0;
            }
        }
        if (compared == 0) {
            return Verdict.ALONE;
        }
        return agreeing >= method.neighbours() ? Verdict.AGREES : Verdict.DISAGREES;
    }

    private boolean agree(Sighting one, Sighting other) {
        return Math.abs(Degrees.wrap180(one.angle - other.angle)) <= method.tolerance();
    }

    private List<Run> runs(List<Sighting> sightings, List<Verdict> verdicts) {
        List<Run> found = new ArrayList<>();
        List<Sighting> members = new ArrayList<>();
        for (int i = 0; i < sightings.size(); i++) {
            if (verdicts.get(i) == Verdict.AGREES) {
                Sighting next = sightings.get(i);
                if (!members.isEmpty() && !continues(members.get(members.size() - 1), next)) {
                    found.add(Run.of(members));
                    members.clear();
                }
                members.add(next);
            }
        }
        if (!members.isEmpty()) {
            found.add(Run.of(members));
        }
        return List.copyOf(found);
    }

    private boolean continues(Sighting before, Sighting next) {
        return before.piece == next.piece && agree(before, next);
    }

    private OptionalDouble predicted(Sighting sighting) {
        Optional<Run> run = runAt(sighting.depth());
        List<Sighting> others = new ArrayList<>(run.map(Run::members).orElse(List.of()));
        others.remove(sighting);
        return others.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Degrees.wrap360(sighting.mark.offset() + sighting.angle - Run.of(others).angle));
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
        return runAt(depth)
                .map(run -> new LineAngle(
                        carried.turned(run.angle),
                        reference(),
                        Math.hypot(run.sigma, method.noise().bias())));
    }

    /** The line angle is counted from the low side whether the marks stand for the low or the high side. */
    private WallReference reference() {
        return method.side().equals(WallReference.highSide()) ? WallReference.lowSide() : method.side();
    }

    private Optional<Run> runAt(double depth) {
        int piece = piece(depth);
        Optional<Run> above = Optional.empty();
        for (Run run : runs) {
            if (run.piece() == piece && run.from() > depth) {
                boolean between = above.isPresent() && above.get().to() < depth;
                return between ? Optional.empty() : above.or(() -> Optional.of(run));
            }
            above = run.piece() == piece ? Optional.of(run) : above;
        }
        return above;
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
}
