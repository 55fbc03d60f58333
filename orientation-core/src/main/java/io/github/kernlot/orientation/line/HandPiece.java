package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.MarkJudgement.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The marks of one piece of core, between two broken joins or an end of the hole, compared by hand. */
final class HandPiece {

    private final HandMethod method;
    private final Map<Sighting, Verdict> verdicts = new HashMap<>();
    private final List<Run> runs = new ArrayList<>();

    /** Marks that agree, in the order of depth, with their mean in the carried frame. */
    record Run(List<Sighting> members, double angle, double sigma) {

        static Run of(List<Sighting> members) {
            double sine = 0;
            double cosine = 0;
            double weights = 0;
            for (Sighting member : members) {
                double weight = 1 / (member.sigma() * member.sigma());
                sine += weight * Degrees.sin(member.angle());
                cosine += weight * Degrees.cos(member.angle());
                weights += weight;
            }
            double mean = Degrees.azimuth(sine, cosine);
            double squares = 0;
            for (Sighting member : members) {
                double residual = Degrees.wrap180(member.angle() - mean) / member.sigma();
                squares += residual * residual;
            }
            // Birge's ratio: marks that scatter more than their sigmas widen the sigma of the mean
            double scatter = members.size() > 1 ? Math.max(1, squares / (members.size() - 1)) : 1;
            return new Run(List.copyOf(members), mean, Math.sqrt(scatter / weights));
        }

        double from() {
            return members.get(0).depth();
        }

        double to() {
            return members.get(members.size() - 1).depth();
        }
    }

    /** The used marks of a piece, in the order of depth. */
    HandPiece(HandMethod method, List<Sighting> used) {
        this.method = method;
        List<Sighting> agreeing = new ArrayList<>();
        for (int i = 0; i < used.size(); i++) {
            Verdict verdict = verdict(used, i);
            verdicts.put(used.get(i), verdict);
            if (verdict == Verdict.AGREES) {
                agreeing.add(used.get(i));
            }
        }
        int start = 0;
        for (int i = 1; i <= agreeing.size(); i++) {
            if (i == agreeing.size() || !agree(agreeing.get(i - 1), agreeing.get(i))) {
                runs.add(Run.of(agreeing.subList(start, i)));
                start = i;
            }
        }
    }

    private Verdict verdict(List<Sighting> used, int place) {
        int reach = Math.min(method.neighbours(), used.size());
        int from = Math.max(0, place - reach);
        int to = Math.min(used.size(), place + reach + 1);
        if (to - from == 1) {
            return Verdict.ALONE;
        }
        int agreeing = -1;
        for (Sighting neighbour : used.subList(from, to)) {
            agreeing += agree(used.get(place), neighbour) ? 1 : 0;
        }
        return agreeing >= method.neighbours() ? Verdict.AGREES : Verdict.DISAGREES;
    }

    private boolean agree(Sighting one, Sighting other) {
        return Math.abs(Degrees.wrap180(one.angle() - other.angle())) <= method.tolerance();
    }

    /** The run that holds at a depth: the one it lies in, or the nearest beyond the first and the last; between runs none. */
    Optional<Run> runAt(double depth) {
        Optional<Run> above = Optional.empty();
        for (Run run : runs) {
            if (depth <= run.to()) {
                return depth >= run.from() || above.isEmpty() ? Optional.of(run) : Optional.empty();
            }
            above = Optional.of(run);
        }
        return above;
    }

    MarkJudgement judge(Sighting sighting) {
        return new MarkJudgement(
                sighting.mark(),
                sighting.sigma(),
                predicted(sighting),
                verdicts.getOrDefault(sighting, Verdict.LEFT_OUT));
    }

    private OptionalDouble predicted(Sighting sighting) {
        List<Sighting> others =
                new ArrayList<>(runAt(sighting.depth()).map(Run::members).orElse(List.of()));
        others.remove(sighting);
        return others.isEmpty() ? OptionalDouble.empty() : sighting.offsetFor(Run.of(others).angle);
    }
}
