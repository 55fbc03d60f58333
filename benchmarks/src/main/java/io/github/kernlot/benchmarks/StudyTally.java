package io.github.kernlot.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** What one way of reconciling got right over many holes. */
final class StudyTally {

    private final List<Double> errors = new ArrayList<>();
    private int asked;
    private int covered;
    private int intervals;
    private int found;
    private int claimed;
    private int blunders;
    private double flipSquares;
    private double wrongSquares;
    private int judged;
    private double slipSquares;
    private int doubtful;

    /** A structure that should have a line, and got none. */
    void missed() {
        asked++;
    }

    /** A structure that should have a line, with its error and half the width of its 95 % interval, degrees. */
    void line(double error, double radius95) {
        asked++;
        errors.add(Math.abs(error));
        intervals++;
        covered += Math.abs(error) <= radius95 ? 1 : 0;
    }

    /** A mark that is called a blunder or not, and is one or not. */
    void verdict(boolean called, boolean is) {
        claimed += called ? 1 : 0;
        blunders += is ? 1 : 0;
        found += called && is ? 1 : 0;
    }

    /** The probabilities that were given to a mark, and what it is. */
    void chances(double flipped, double wrong, boolean isFlipped, boolean isWrong) {
        judged++;
        flipSquares += square(flipped - (isFlipped ? 1 : 0));
        wrongSquares += square(wrong - (isWrong ? 1 : 0));
    }

    /** The probability that was given to a slip at a doubtful join, and whether it slipped. */
    void slip(double probability, boolean slipped) {
        doubtful++;
        slipSquares += square(probability - (slipped ? 1 : 0));
    }

    private static double square(double value) {
        return value * value;
    }

    double rms() {
        return Math.sqrt(
                errors.stream().mapToDouble(StudyTally::square).average().orElse(Double.NaN));
    }

    double median() {
        List<Double> sorted = new ArrayList<>(errors);
        Collections.sort(sorted);
        return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
    }

    /** How many structures should have had a line. */
    int asked() {
        return asked;
    }

    /** The cells of a row: structures with a line, rms and median of their errors, coverage. */
    String lines() {
        return String.format(
                Locale.ROOT,
                "%d of %d | %.2f | %.2f | %.1f %%",
                errors.size(),
                asked,
                rms(),
                median(),
                100.0 * covered / intervals);
    }

    /** The cells of a row: F1 of blunders, Brier scores of flips, wrong marks and slips. */
    String verdicts() {
        String f1 = String.format(Locale.ROOT, "%.3f", 2.0 * found / (claimed + blunders));
        return judged == 0
                ? f1 + " | | |"
                : String.format(
                        Locale.ROOT,
                        "%s | %.5f | %.5f | %.4f",
                        f1,
                        flipSquares / judged,
                        wrongSquares / judged,
                        slipSquares / doubtful);
    }
}
