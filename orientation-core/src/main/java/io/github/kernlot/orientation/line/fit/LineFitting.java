package io.github.kernlot.orientation.line.fit;

import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkNoise;
import io.github.kernlot.orientation.line.fit.FittedParameter.Standing;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealMatrix;

/** One fit at work: what can be told is fitted, what turns out not to be told is put back, until the rest stands. */
final class LineFitting {

    /** Below this a mark's sigma in degrees is not looked for, if no width of pencil or transfer is given. */
    private static final double LEAST_SIGMA = 0.3;

    private static final double WORTH_TELLING = 0.8;
    private static final double END = 1.96;

    private final LineModel start;
    private final List<LineParameter> free;
    private final List<PieceEvidence> pieces;
    private final List<PieceEvidence> compared;
    private final int comparisons;
    private final Map<LineParameter, FittedParameter> found = new EnumMap<>(LineParameter.class);
    private int evaluations;

    LineFitting(LineFit fit, List<PieceEvidence> pieces) {
        this.start = fit.start();
        this.free = fit.free().stream().sorted().toList();
        this.pieces = pieces;
        this.compared =
                pieces.stream().filter(piece -> !piece.links().isEmpty()).toList();
        this.comparisons =
                compared.stream().mapToInt(piece -> piece.links().size()).sum();
    }

    FittedModel result() {
        if (comparisons == 0) {
            throw new IllegalArgumentException(
                    "no two used marks lie on one piece of core, so there is nothing to compare");
        }
        List<LineParameter> asked = new ArrayList<>();
        for (LineParameter parameter : free) {
            Optional<String> reason = limitOf(parameter, free) < 0.01
                    ? Optional.of(FitReasons.noRoom(parameter))
                    : FitReasons.beforehand(parameter, compared);
            if (reason.isPresent()) {
                found.put(parameter, unlearnt(parameter, Standing.NOT_TOLD, reason.get()));
            } else {
                asked.add(parameter);
            }
        }
        if (asked.size() > comparisons) {
            throw new IllegalArgumentException("there are " + comparisons + " comparisons of neighbouring marks for "
                    + asked.size() + " free parameters; free fewer, or give more marks");
        }
        double startEvidence = evidence(start);
        LineModel design = start;
        int groups = Integer.MAX_VALUE;
        while (true) {
            List<FitCoordinate> coordinates = coordinates(asked, design);
            if (coordinates.isEmpty()) {
                throw new IllegalArgumentException("the marks tell nothing: "
                        + found.values().stream()
                                .map(told -> told.parameter() + ": " + told.reason())
                                .collect(Collectors.joining("; ")));
            }
            EvidencePeak peak = climb(coordinates);
            List<LineParameter> untold = untold(coordinates, peak);
            LineModel fitted = model(coordinates, peak.best());
            if (!untold.isEmpty()) {
                asked.removeAll(untold);
            } else if (coordinates(asked, fitted).size() < Math.min(coordinates.size(), groups)) {
                // the fitted sigmas make alike what the assumed ones told apart
                design = fitted;
                groups = coordinates.size();
            } else {
                return report(coordinates, peak, fitted, startEvidence);
            }
        }
    }

    private double evidence(LineModel model) {
        evaluations++;
        double sum = 0;
        for (PieceEvidence piece : pieces) {
            sum += piece.logEvidence(model);
        }
        return sum;
    }

    private List<FitCoordinate> coordinates(List<LineParameter> asked, LineModel design) {
        List<FitCoordinate> coordinates = new ArrayList<>();
        List<LineParameter> sigmas =
                asked.stream().filter(parameter -> !parameter.isProbability()).toList();
        for (List<LineParameter> group : new VarianceDesign(compared, design).groups(sigmas)) {
            coordinates.add(sigma(group.stream().sorted().toList(), asked));
        }
        for (LineParameter parameter : asked) {
            if (parameter.isProbability()) {
                coordinates.add(new FitCoordinate(List.of(parameter), List.of(1.0), 0, limitOf(parameter, asked)));
            }
        }
        return coordinates;
    }

    private FitCoordinate sigma(List<LineParameter> group, List<LineParameter> asked) {
        boolean allZero = group.stream().allMatch(parameter -> parameter.of(start) == 0);
        LineModel shares = allZero ? LineModel.assumed() : start;
        List<Double> bases = group.size() == 1
                ? List.of(1.0)
                : group.stream().map(parameter -> parameter.of(shares)).toList();
        double limit = Double.POSITIVE_INFINITY;
        double least = 0;
        double greatest = 0;
        for (int i = 0; i < bases.size(); i++) {
            double base = bases.get(i);
            limit = Math.min(limit, group.get(i).limit() / base);
            least = Math.max(least, floor(group.get(i), asked));
            greatest = group.get(i).isOfMark() ? Math.max(greatest, base) : greatest;
        }
        least = least > 0 ? least / greatest : 0;
        return new FitCoordinate(group, bases, least, limit);
    }

    /** A mark must keep some sigma: that of its level, or of its sensor, where no other is sure to stay. */
    private double floor(LineParameter parameter, List<LineParameter> asked) {
        MarkNoise noise = start.noise();
        boolean alone =
                switch (parameter) {
                    case LEVEL -> asked.contains(LineParameter.SENSOR) || noise.sensor() == 0;
                    case SENSOR -> !asked.contains(LineParameter.LEVEL) && noise.level() == 0;
                    default -> false;
                };
        double own = parameter.of(start);
        boolean needed = alone && noise.pencilMillimetres() + noise.transferMillimetres() == 0;
        return !needed ? 0 : own > 0 ? Math.min(own, LEAST_SIGMA) : LEAST_SIGMA;
    }

    /** So that the priors of flipped and wrong marks never sum to more than 1. */
    private double limitOf(LineParameter parameter, List<LineParameter> asked) {
        LineParameter other =
                switch (parameter) {
                    case FLIPPED -> LineParameter.WRONG;
                    case WRONG -> LineParameter.FLIPPED;
                    default -> parameter;
                };
        double taken = other == parameter ? 0 : asked.contains(other) ? other.limit() : other.of(start);
        return Math.min(parameter.limit(), 1 - taken);
    }

    private EvidencePeak climb(List<FitCoordinate> coordinates) {
        int size = coordinates.size();
        double[] lowest = new double[size];
        double[] highest = new double[size];
        double[] begin = new double[size];
        double[] assumed = new double[size];
        for (int i = 0; i < size; i++) {
            FitCoordinate coordinate = coordinates.get(i);
            LineParameter first = coordinate.parameters().get(0);
            boolean zero = coordinate.parameters().stream().allMatch(parameter -> parameter.of(start) == 0);
            double value = coordinate.isFactor() ? 1 : first.of(start);
            lowest[i] = coordinate.lowest();
            highest[i] = coordinate.highest();
            assumed[i] = zero ? Math.max(lowest[i], 0) : coordinate.coordinate(value);
            double seed = zero && !coordinate.isFactor() ? first.of(LineModel.assumed()) : value;
            begin[i] = Math.min(Math.max(coordinate.coordinate(seed), lowest[i]), highest[i]);
        }
        return new EvidencePeak(point -> evidence(model(coordinates, point)), lowest, highest, begin, assumed);
    }

    private LineModel model(List<FitCoordinate> coordinates, double[] point) {
        Map<LineParameter, Double> values = new EnumMap<>(LineParameter.class);
        for (int i = 0; i < point.length; i++) {
            coordinates.get(i).put(point[i], values);
        }
        return LineParameter.model(start, parameter -> values.getOrDefault(parameter, parameter.of(start)));
    }

    private List<LineParameter> untold(List<FitCoordinate> coordinates, EvidencePeak peak) {
        List<LineParameter> untold = new ArrayList<>();
        for (int i = 0; i < coordinates.size(); i++) {
            FitCoordinate coordinate = coordinates.get(i);
            double best = peak.best()[i];
            boolean open = best > 0.97 * coordinate.highest()
                    || (best + END * peak.spread(i) > coordinate.highest()
                            && peak.upperEnd(i).isEmpty());
            if (open) {
                for (LineParameter parameter : coordinate.parameters()) {
                    untold.add(parameter);
                    found.put(
                            parameter,
                            unlearnt(parameter, Standing.NOT_TOLD, FitReasons.open(parameter, peak.excludesLeast(i))));
                }
            }
        }
        return untold;
    }

    private FittedParameter unlearnt(LineParameter parameter, Standing standing, String reason) {
        double value = parameter.of(start);
        return new FittedParameter(
                parameter,
                value,
                value,
                standing,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                reason);
    }

    private FittedModel report(
            List<FitCoordinate> coordinates, EvidencePeak peak, LineModel fitted, double startEvidence) {
        int[] inside = IntStream.range(0, coordinates.size())
                .filter(peak::excludesLeast)
                .toArray();
        RealMatrix covariance = peak.covariance(inside);
        for (int i = 0; i < coordinates.size(); i++) {
            FitCoordinate coordinate = coordinates.get(i);
            int place = IntStream.of(inside).boxed().toList().indexOf(i);
            Interval interval = place < 0
                    ? Interval.below(coordinate, peak, i)
                    : Interval.about(coordinate, peak.best()[i], Math.sqrt(covariance.getEntry(place, place)));
            for (LineParameter parameter : coordinate.parameters()) {
                found.put(parameter, told(parameter, coordinate, fitted, interval));
            }
        }
        List<FittedParameter> all = new ArrayList<>();
        for (LineParameter parameter : LineParameter.values()) {
            FittedParameter known = found.get(parameter);
            all.add(known != null ? known : unlearnt(parameter, Standing.HELD, ""));
        }
        int marks = pieces.stream().mapToInt(piece -> piece.marks().size()).sum();
        List<ParameterCorrelation> correlations = correlations(coordinates, inside, covariance);
        return new FittedModel(
                fitted, start, all, correlations, peak.height(), startEvidence, marks, comparisons, evaluations);
    }

    private FittedParameter told(
            LineParameter parameter, FitCoordinate coordinate, LineModel fitted, Interval interval) {
        boolean bound = interval.error.isEmpty();
        Standing standing = coordinate.isFactor() ? Standing.TOGETHER : bound ? Standing.AT_BOUND : Standing.TOLD;
        String reason = coordinate.isFactor()
                ? FitReasons.together(parameter, coordinate, compared, interval.value, interval.error, interval.high)
                : bound ? FitReasons.atBound(parameter, coordinate.least()) : "";
        boolean ends = !coordinate.isFactor();
        return new FittedParameter(
                parameter,
                parameter.of(start),
                parameter.of(fitted),
                standing,
                ends ? interval.error : OptionalDouble.empty(),
                ends ? OptionalDouble.of(interval.low) : OptionalDouble.empty(),
                ends ? OptionalDouble.of(interval.high) : OptionalDouble.empty(),
                reason);
    }

    /** A coordinate's value with its standard error and 95 % interval. */
    private record Interval(double value, OptionalDouble error, double low, double high) {

        static Interval about(FitCoordinate coordinate, double best, double sigma) {
            return new Interval(
                    coordinate.value(best),
                    OptionalDouble.of(coordinate.slope(best) * sigma),
                    coordinate.value(Math.max(best - END * sigma, coordinate.lowest() < 0 ? 0 : coordinate.lowest())),
                    coordinate.value(Math.min(best + END * sigma, coordinate.highest())));
        }

        static Interval below(FitCoordinate coordinate, EvidencePeak peak, int index) {
            double end = peak.upperEnd(index).orElse(coordinate.highest());
            return new Interval(
                    coordinate.value(peak.best()[index]),
                    OptionalDouble.empty(),
                    coordinate.least(),
                    coordinate.value(end));
        }
    }

    private static List<ParameterCorrelation> correlations(
            List<FitCoordinate> coordinates, int[] inside, RealMatrix covariance) {
        List<ParameterCorrelation> pairs = new ArrayList<>();
        for (int i = 0; i < inside.length; i++) {
            for (int j = 0; j < i; j++) {
                double correlation =
                        covariance.getEntry(i, j) / Math.sqrt(covariance.getEntry(i, i) * covariance.getEntry(j, j));
                if (Math.abs(correlation) >= WORTH_TELLING) {
                    pairs.add(new ParameterCorrelation(
                            coordinates.get(inside[j]).parameters().get(0),
                            coordinates.get(inside[i]).parameters().get(0),
                            correlation));
                }
            }
        }
        return pairs;
    }
}
