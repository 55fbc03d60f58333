package io.github.kernlot.orientation.line.fit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Why marks do not tell a parameter, in a geologist's words. */
final class FitReasons {

    private FitReasons() {}

    /** What the places of marks and joins alone rule out. */
    static Optional<String> beforehand(LineParameter parameter, List<PieceEvidence> compared) {
        LineParameter moves = parameter == LineParameter.SLIP ? LineParameter.DOUBTFUL : parameter;
        boolean ofMark = parameter.isOfMark() || (parameter.isProbability() && parameter != LineParameter.SLIP);
        boolean told = mean(compared, ofMark, moves) > 0;
        return switch (parameter) {
            case SENSOR, LEVEL -> unless(told, "every mark that can be compared has a sigma of its own");
            case LOCKED -> unless(told, "no locked join lies between two marks");
            case DOUBTFUL, SLIP -> unless(told, "no doubtful join lies between two marks");
            case WANDER -> unless(told, "no line was drawn between marks that can be compared");
            case FLIPPED, WRONG -> unless(told, "every mark that can be compared has priors of its own");
        };
    }

    /** Where the other prior of blunders, which is held, takes all there is. */
    static String noRoom(LineParameter parameter) {
        return (parameter == LineParameter.FLIPPED ? LineParameter.WRONG : LineParameter.FLIPPED)
                + " marks leave it no room";
    }

    private static Optional<String> unless(boolean told, String reason) {
        return told ? Optional.empty() : Optional.of(reason);
    }

    /** By how much a parameter's square counts, on the average, at a mark or between two. */
    private static double mean(List<PieceEvidence> compared, boolean ofMark, LineParameter parameter) {
        return ofMark
                ? mean(
                        compared.stream()
                                .flatMap(piece -> piece.marks().stream())
                                .toList(),
                        mark -> mark.weight(parameter))
                : mean(
                        compared.stream()
                                .flatMap(piece -> piece.links().stream())
                                .toList(),
                        link -> link.weight(parameter));
    }

    private static <T> double mean(List<T> things, ToDoubleFunction<T> weight) {
        return things.stream().mapToDouble(weight).average().orElse(0);
    }

    /** Why there is no upper end. */
    static String open(LineParameter parameter, boolean excludesZero) {
        return (excludesZero ? "too few marks to bound it" : "the evidence is all but the same for any value")
                + String.format(Locale.ROOT, " up to %s", parameter.limit())
                + (parameter.isProbability() ? "" : " " + parameter.unit());
    }

    /** Why there is no standard error. */
    static String atBound(LineParameter parameter, double least) {
        if (least > 0) {
            return String.format(Locale.ROOT, "no less than %.2f is considered", least);
        }
        return parameter == LineParameter.LEVEL
                ? "0 is not excluded beside what pencil, transfer and sensor are assumed to do"
                : "0 is not excluded";
    }

    /** Why one factor stands for several, and what is known of them together. */
    static String together(
            LineParameter parameter,
            FitCoordinate factor,
            List<PieceEvidence> compared,
            double value,
            OptionalDouble error,
            double high) {
        String others = factor.parameters().stream()
                .filter(other -> other != parameter)
                .map(LineParameter::toString)
                .collect(Collectors.joining(" and "));
        boolean ofMarks = factor.parameters().stream().allMatch(LineParameter::isOfMark);
        boolean ofLine = factor.parameters().stream().noneMatch(LineParameter::isOfMark);
        String why = ofMarks
                ? "all marks have about the same sin I"
                : ofLine ? "joins are spaced too evenly along the core" : "too few marks lie on each piece of core";
        double square = 0;
        for (int i = 0; i < factor.bases().size(); i++) {
            LineParameter one = factor.parameters().get(i);
            square += Math.pow(factor.bases().get(i), 2)
                    * mean(compared, one.isOfMark(), one)
                    * (one.isOfMark() && !ofMarks ? 2 : 1);
        }
        double unit = Math.sqrt(square);
        String size = error.isPresent()
                ? String.format(Locale.ROOT, "%.2f +- %.2f degrees", unit * value, unit * error.getAsDouble())
                : String.format(Locale.ROOT, "below %.2f degrees (95 %%)", unit * high);
        return "not told apart from " + others + ", because " + why + "; together " + size
                + (ofMarks ? " for an average mark" : " from one mark to the next");
    }
}
