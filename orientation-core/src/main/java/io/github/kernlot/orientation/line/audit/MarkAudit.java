package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.MarkChances;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.MirroredMark;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.ReferenceLine;
import io.github.kernlot.orientation.sphere.CircularSample;
import io.github.kernlot.orientation.sphere.CircularTrend;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * What the marks of some holes say of those who made them and of their tools. Groups are compared with the marks of all others: what
 * all marks share no comparison of marks shows, a check of a tool in a cradle does.
 */
public final class MarkAudit {

    private final List<ReferenceLine> lines;

    private MarkAudit(List<ReferenceLine> lines) {
        this.lines = lines;
    }

    /**
     * An audit.
     *
     * @param lines the reference lines of one hole or more
     * @return the audit
     */
    public static MarkAudit of(List<ReferenceLine> lines) {
        return new MarkAudit(List.copyOf(lines));
    }

    /**
     * The marks in groups.
     *
     * @param key by what they are grouped; marks that were left out count in no group
     * @return the groups in the order of their names
     */
    public List<MarkGroup> by(MarkKey key) {
        TreeSet<String> names = new TreeSet<>();
        for (ReferenceLine line : lines) {
            for (MarkPosterior mark : line.marks()) {
                if (mark.chances().isPresent()) {
                    key.of(line, mark.mark()).ifPresent(names::add);
                }
            }
        }
        return names.stream().map(name -> new Group(name, key).audited()).toList();
    }

    /**
     * The marks that were probably read by one who looked the other way.
     *
     * @param odds how many times as probable the mark must be read the other way, above 0; the priors of blunders bound what can be
     *     reached, to a few hundred with the assumed ones
     * @return the marks with at least such odds, the most certain first
     */
    public List<MirroredMark> mirrored(double odds) {
        return lines.stream()
                .flatMap(line -> line.mirrored().stream())
                .filter(mark -> mark.logOdds() >= Math.log(odds))
                .sorted(Comparator.comparingDouble(MirroredMark::logOdds).reversed())
                .toList();
    }

    /** One group being audited. */
    private final class Group {
        private final String name;
        private final MarkKey key;
        private final List<ReferenceLine> holes = new ArrayList<>();
        private final List<MarkPosterior> marks = new ArrayList<>();

        private Group(String name, MarkKey key) {
            this.name = name;
            this.key = key;
            for (ReferenceLine line : lines) {
                List<MarkPosterior> own = line.marks().stream()
                        .filter(mark -> mark.chances().isPresent() && holds(line, mark.mark()))
                        .toList();
                marks.addAll(own);
                if (!own.isEmpty()) {
                    holes.add(line);
                }
            }
        }

        private boolean holds(ReferenceLine line, OrientationMark mark) {
            return key.of(line, mark).filter(name::equals).isPresent();
        }

        private UnaryOperator<OrientationMark> only(ReferenceLine line, UnaryOperator<OrientationMark> change) {
            return mark -> holds(line, mark) && mark.leftOut().isEmpty() ? change.apply(mark) : mark;
        }

        private MarkGroup audited() {
            List<MarkPosterior> sound = marks.stream()
                    .filter(mark -> mark.verdict() == MarkPosterior.Verdict.SOUND
                            && mark.residual().isPresent())
                    .toList();
            double[] residuals = sound.stream()
                    .mapToDouble(mark -> mark.residual().orElseThrow())
                    .toArray();
            return new MarkGroup(
                    name,
                    marks.size(),
                    residuals.length == 0 ? Optional.empty() : Optional.of(CircularSample.of(residuals)),
                    bias(),
                    trend(sound, residuals),
                    blunders(),
                    logEvidence(OrientationMark::mirrored) - logEvidence(UnaryOperator.identity()));
        }

        private Optional<CircularTrend> trend(List<MarkPosterior> sound, double[] residuals) {
            double[] depths =
                    sound.stream().mapToDouble(mark -> mark.mark().depth()).toArray();
            boolean several =
                    sound.stream().map(mark -> mark.mark().depth()).distinct().count() > 1;
            return residuals.length >= 3 && several
                    ? Optional.of(CircularTrend.of(residuals, depths))
                    : Optional.empty();
        }

        private Optional<BlunderRate> blunders() {
            double expected = 0;
            int predicted = 0;
            for (MarkPosterior mark : marks) {
                if (mark.predicted().isPresent()) {
                    predicted++;
                    expected += 1 - mark.chances().map(MarkChances::sound).orElse(1.0);
                }
            }
            return predicted == 0
                    ? Optional.empty()
                    : Optional.of(new BlunderRate(Math.max(0, Math.min(expected, predicted)), predicted));
        }

        private double logEvidence(UnaryOperator<OrientationMark> change) {
            return holes.stream()
                    .mapToDouble(line -> line.withMarks(only(line, change)).logEvidence())
                    .sum();
        }

        private Optional<GroupBias> bias() {
            OptionalDouble apart = apartFromOthers();
            return apart.isEmpty()
                    ? Optional.empty()
                    : BiasSearch.find(
                            by -> logEvidence(mark -> mark.withOffset(Degrees.wrap360(mark.offset() - by))),
                            apart.getAsDouble());
        }

        /** The median of offset minus what the marks of others predict. */
        private OptionalDouble apartFromOthers() {
            double[] apart =
                    holes.stream().flatMapToDouble(this::apartFromOthers).toArray();
            return apart.length == 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(CircularSample.of(apart).median().middle());
        }

        private DoubleStream apartFromOthers(ReferenceLine line) {
            Set<OrientationMark> used = line.marks().stream()
                    .map(MarkPosterior::mark)
                    .filter(mark -> mark.leftOut().isEmpty() && holds(line, mark))
                    .map(mark -> mark.leftOutFor(""))
                    .collect(Collectors.toSet());
            return line.withMarks(only(line, mark -> mark.leftOutFor(""))).marks().stream()
                    .filter(mark -> used.contains(mark.mark()))
                    .flatMapToDouble(mark -> mark.residual().stream());
        }
    }
}
