package io.github.kernlot.orientation.line.fit;

import static io.github.kernlot.orientation.line.fit.LineParameter.LEVEL;
import static io.github.kernlot.orientation.line.fit.LineParameter.LOCKED;
import static io.github.kernlot.orientation.line.fit.LineParameter.SENSOR;
import static io.github.kernlot.orientation.line.fit.LineParameter.WRONG;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.Holes;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.Marks;
import io.github.kernlot.orientation.line.fit.FittedParameter.Standing;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whether standard errors and intervals are as wide as the fits scatter, over simulated holes. */
@Tag("slow")
class LineFitCalibrationTest {

    private static final int FITS = 40;

    @Test
    void standardErrorsAreAsWideAsTheFitsScatter() {
        LineModel truth = Holes.plain(4, 3, 0).withBlunders(new MarkBlunders(0, 0.1));
        LineFit fit = LineFit.of(Holes.plain(2, 1, 0).withBlunders(new MarkBlunders(0, 0.05)))
                .withFree(LEVEL, LOCKED, WRONG);
        double[] sums = new double[3];
        double[] squares = new double[3];
        int[] covered = new int[3];
        List<LineParameter> free = List.of(LEVEL, LOCKED, WRONG);
        for (int seed = 1; seed <= FITS; seed++) {
            FittedModel fitted = fit.to(List.of(Holes.one(
                    truth,
                    Marks.STRAIGHT,
                    Holes.every(1, 200),
                    Holes.joins(JoinFit.LOCKED, Holes.every(3.5, 57)),
                    seed)));
            for (int i = 0; i < 3; i++) {
                FittedParameter found = fitted.parameter(free.get(i));
                assertEquals(Standing.TOLD, found.standing(), found.toString());
                double actual = free.get(i).of(truth);
                double z = (found.value() - actual) / found.standardError().orElseThrow();
                sums[i] += z;
                squares[i] += z * z;
                boolean inside = found.low().orElseThrow() <= actual
                        && actual <= found.high().orElseThrow();
                covered[i] += inside ? 1 : 0;
            }
        }
        for (int i = 0; i < 3; i++) {
            // three standard errors of a mean and of a root mean square of 40 standard normal numbers; 40 of 0.95
            assertEquals(0, sums[i] / FITS, 0.47, free.get(i).toString());
            assertEquals(1, Math.sqrt(squares[i] / FITS), 0.34, free.get(i).toString());
            assertTrue(covered[i] >= 34, free.get(i) + " covered " + covered[i]);
        }
    }

    @Test
    void upperEndsHoldTheTruthWhereItIsNearZero() {
        LineModel truth = Holes.plain(4, 0.3, 0);
        int covered = 0;
        int bound = 0;
        for (int seed = 1; seed <= FITS; seed++) {
            FittedParameter locked = LineFit.of(Holes.plain(2, 1, 0))
                    .withFree(LEVEL, LOCKED)
                    .to(List.of(Holes.one(
                            truth,
                            Marks.STRAIGHT,
                            Holes.every(1, 60),
                            Holes.joins(JoinFit.LOCKED, Holes.every(3.5, 17)),
                            seed)))
                    .parameter(LOCKED);
            bound += locked.standing() == Standing.AT_BOUND ? 1 : 0;
            covered += locked.high().orElseThrow() >= 0.3 ? 1 : 0;
        }
        assertTrue(bound > FITS / 2, "at the bound in " + bound);
        assertTrue(covered >= 36, "covered in " + covered);
    }

    /** The second row of the table in docs/noise.md, with other holes. */
    @Test
    void aHundredMarksTellTheSensorAndSeldomTheLockedJoins() {
        int sensor = 0;
        int wrong = 0;
        int locked = 0;
        for (int seed = 1; seed <= 20; seed++) {
            FittedModel fitted =
                    LineFit.of(LineModel.assumed()).to(Holes.many(LineModel.assumed(), 2, 50, 300 + seed, -60, -85));
            sensor += fitted.parameter(SENSOR).standing() == Standing.TOLD ? 1 : 0;
            wrong += fitted.parameter(WRONG).standing() == Standing.TOLD ? 1 : 0;
            locked += fitted.parameter(LOCKED).standing() == Standing.TOLD ? 1 : 0;
        }
        assertTrue(sensor >= 18, "sensor told in " + sensor);
        assertTrue(wrong >= 13, "wrong told in " + wrong);
        assertTrue(locked <= 7, "locked join told in " + locked);
    }
}
