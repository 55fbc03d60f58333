package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.line.HandLine;
import io.github.kernlot.orientation.line.HandMethod;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.JoinPosterior;
import io.github.kernlot.orientation.line.LineAngle;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.orientation.line.LineSimulation;
import io.github.kernlot.orientation.line.MarkChances;
import io.github.kernlot.orientation.line.MarkJudgement;
import io.github.kernlot.orientation.line.MarkPosterior;
import io.github.kernlot.orientation.line.MarkPosterior.Verdict;
import io.github.kernlot.orientation.line.ReferenceLine;
import io.github.kernlot.orientation.line.SimulatedLine;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How far is the reference line off, in simulated holes whose truth is known: by the library, by brute force on the same holes, by
 * hand, and by the library without the turn of the scribe? Expected: library and brute force within 2 % of each other, the hand
 * method several times worse.
 *
 * <p>Arguments: the file to write, and how many holes (150).
 */
public final class LineStudy {

    private static final int STRUCTURES = 8;
    private static final double SIGMA_LIMIT = 15;
    private static final int ANGLES = 3600;

    /** One tally for each way of reconciling. */
    private record Tallies(StudyTally library, StudyTally dense, StudyTally unturned, StudyTally hand) {

        Tallies() {
            this(new StudyTally(), new StudyTally(), new StudyTally(), new StudyTally());
        }
    }

    private final Tallies all = new Tallies();
    private final Tallies steep = new Tallies();
    private int structures;

    private LineStudy() {}

    /**
     * Runs the study.
     *
     * @param arguments the file to write, and how many holes
     * @throws IOException if the file cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments.length > 0 ? arguments[0] : "docs/line-study.md");
        int holes = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 150;
        LineStudy study = new LineStudy();
        for (long number = 0; number < holes; number++) {
            study.run(number);
        }
        try (PrintStream page = new PrintStream(Files.newOutputStream(file), false, StandardCharsets.UTF_8)) {
            study.write(page, holes);
        }
    }

    private void run(long number) {
        LineSimulation simulation = MixedHoles.hole(number, STRUCTURES);
        SimulatedLine hole = simulation.run(number);
        ReferenceLine line = simulation.model().reconcile(simulation.path(), hole.marks(), simulation.joins());
        ReferenceLine unturned =
                simulation.model().reconcile(new UnturnedPath(simulation.path()), hole.marks(), simulation.joins());
        HandLine hand = HandMethod.assumed().reconcile(simulation.path(), hole.marks(), simulation.joins());
        DenseLine dense = DenseLine.windowed(
                ANGLES,
                simulation.model(),
                simulation.path(),
                hole.marks(),
                simulation.joins(),
                simulation.truthDepths());
        List<DenseLine.Answer> answers = dense.answers();
        boolean isSteep = MixedHoles.Kind.of(number) == MixedHoles.Kind.STEEP;
        for (int i = 0; i < simulation.truthDepths().size(); i++) {
            structures++;
            double depth = simulation.truthDepths().get(i);
            Optional<LinePosterior> found = line.at(depth).filter(posterior -> posterior.sigma() <= SIGMA_LIMIT);
            if (found.isPresent()) {
                CoreFrame truth = hole.frameAt(depth);
                add(all, truth, found, unturned.at(depth), hand.angleAt(depth), answers.get(i));
                if (isSteep) {
                    add(steep, truth, found, unturned.at(depth), hand.angleAt(depth), answers.get(i));
                }
            }
        }
        judge(all, hole, line, unturned, hand, dense);
        if (isSteep) {
            judge(steep, hole, line, unturned, hand, dense);
        }
    }

    private static void add(
            Tallies tallies,
            CoreFrame truth,
            Optional<LinePosterior> library,
            Optional<LinePosterior> unturned,
            Optional<LineAngle> hand,
            DenseLine.Answer dense) {
        add(tallies.library(), truth, library);
        add(tallies.unturned(), truth, unturned);
        tallies.dense().line(error(dense.frame(), truth), dense.radius95());
        StudyTally byHand = tallies.hand();
        hand.ifPresentOrElse(angle -> byHand.line(error(angle.frame(), truth), 1.96 * angle.sigma()), byHand::missed);
    }

    private static void add(StudyTally tally, CoreFrame truth, Optional<LinePosterior> line) {
        line.ifPresentOrElse(
                posterior -> tally.line(error(posterior.frame(), truth), posterior.radius95()), tally::missed);
    }

    private static double error(CoreFrame found, CoreFrame truth) {
        return Math.IEEEremainder(found.turnFrom(truth), 360);
    }

    private static void judge(
            Tallies tallies,
            SimulatedLine hole,
            ReferenceLine line,
            ReferenceLine unturned,
            HandLine hand,
            DenseLine dense) {
        judge(tallies.library(), hole, line);
        judge(tallies.unturned(), hole, unturned);
        List<DenseLine.Chances> chances = dense.chances();
        for (int i = 0; i < hole.kinds().size(); i++) {
            Verdict truth = hole.kinds().get(i);
            DenseLine.Chances found = chances.get(i);
            boolean blunder = found.sound() < Math.max(found.flipped(), found.wrong());
            tallies.dense().verdict(blunder, truth != Verdict.SOUND);
            tallies.dense().chances(found.flipped(), found.wrong(), truth == Verdict.FLIPPED, truth == Verdict.WRONG);
            MarkJudgement judgement = hand.marks().get(i);
            tallies.hand().verdict(judgement.verdict() == MarkJudgement.Verdict.DISAGREES, truth != Verdict.SOUND);
        }
        List<Double> slips = dense.slips();
        for (int i = 0; i < slips.size(); i++) {
            Join join = line.joins().get(i).join();
            if (join.fit() == JoinFit.DOUBTFUL) {
                tallies.dense().slip(slips.get(i), hole.slipped().contains(join));
            }
        }
    }

    private static void judge(StudyTally tally, SimulatedLine hole, ReferenceLine line) {
        for (int i = 0; i < hole.kinds().size(); i++) {
            Verdict truth = hole.kinds().get(i);
            MarkPosterior mark = line.marks().get(i);
            MarkChances chances = mark.chances().orElseThrow();
            tally.verdict(mark.verdict() != Verdict.SOUND, truth != Verdict.SOUND);
            tally.chances(chances.flipped(), chances.wrong(), truth == Verdict.FLIPPED, truth == Verdict.WRONG);
        }
        for (JoinPosterior join : line.joins()) {
            if (join.join().fit() == JoinFit.DOUBTFUL) {
                tally.slip(join.slipped(), hole.slipped().contains(join.join()));
            }
        }
    }

    private void write(PrintStream page, int holes) {
        page.printf("""
                # How far the reference line is off

                This page is written by `LineStudy` (DEVELOPERS.md, Benchmarks), and comes out the same each time.

                %d simulated holes of 180 m, in turn inclined (30 degrees from vertical), steep and wandering (about 5 degrees from
                vertical, the azimuth swinging) and upward. Marks every 3 to 6 m, a join at each: 85 in 100 locked, 12 doubtful, 3
                broken. Marks, blunders, joins, the wander of the line and the bias of each hole are drawn from the assumed values of
                `LineModel`, so that the figures say how good the inference is where its model holds, not how good the model is. The
                seeds are the numbers of the holes, from 0 on.

                Of %d structures the library orients %d (sigma of the line at most %.0f degrees). All figures are of these; a way that has
                no line at a structure is not charged for it. Errors are of the line angle, in degrees. The interval by hand is 1.96
                sigma either side.

                """, holes, structures, all.library().asked(), SIGMA_LIMIT);
        write(page, "All holes", all);
        write(page, "Steep and wandering holes alone", steep);
        page.printf("""
                F1 is of blunders, marks that are flipped or wrong and those that are called so; by hand, those that disagree with
                their neighbours. Brier is the mean square of a probability's error. Brute force is a forward-backward pass over every
                angle, with no code in common with the library.
                """);
    }

    private static void write(PrintStream page, String title, Tallies tallies) {
        page.printf("## %s\n\n", title);
        page.print("| | structures | rms error | median error | in the 95 % interval |\n");
        page.print("| --- | --- | --- | --- | --- |\n");
        rows(page, tallies, StudyTally::lines);
        page.print("\n| | F1 of blunders | Brier of flipped | Brier of wrong | Brier of slips |\n");
        page.print("| --- | --- | --- | --- | --- |\n");
        rows(page, tallies, StudyTally::verdicts);
        page.print("\n");
    }

    private static void rows(PrintStream page, Tallies tallies, Function<StudyTally, String> cells) {
        page.printf("| the library | %s |\n", cells.apply(tallies.library));
        page.printf("| brute force, %d angles | %s |\n", ANGLES, cells.apply(tallies.dense));
        page.printf("| by hand | %s |\n", cells.apply(tallies.hand));
        page.printf("| the library without the turn of the scribe | %s |\n", cells.apply(tallies.unturned));
    }
}
