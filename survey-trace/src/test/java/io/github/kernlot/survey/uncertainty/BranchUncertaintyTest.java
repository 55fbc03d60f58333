package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.Traces;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A branch errs with the stations of its parent down to the kick-off, and with its own. */
class BranchUncertaintyTest {

    private static HoleTrace branch(HoleTrace parent, double kickOff, String stations) {
        return HoleTrace.branch(parent, kickOff, Survey.of(Traces.stations(stations), NorthReference.grid()));
    }

    @ParameterizedTest
    @CsvSource({"100, 0 60 90; 100 60 90; 200 60 95; 260 62 99", "60, 0 60 90; 60 60 90; 200 60 95; 260 62 99"})
    void aBranchIsOneHoleWithAStationAtItsKickOff(double kickOff, String whole) {
        HoleTrace parent = Traces.of("0 60 90; 100 60 90; 200 60 90; 300 60 90");
        HoleTrace branch = branch(parent, kickOff, "200 60 95; 260 62 99");
        SurveyErrorModel model = SurveySigmas.assumed().model().with(SurveyErrorTerms.depthRandom(0.3));
        TraceUncertainty found = Models.of(branch, model);
        TraceUncertainty expected = Models.of(Traces.of(whole), model);
        for (double depth : new double[] {0, 30, 60, 80, 100, 150, 230, 260, 280}) {
            double[][] one = expected.at(depth).joint();
            double[][] other = found.at(depth).joint();
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    assertEquals(one[i][j], other[i][j], 1e-12, depth + " m");
                }
            }
        }
        assertTrue(TraceMonteCarlo.of(found).withDraws(2000).at(250).placeDiscrepancy() < 3);
    }

    @ParameterizedTest
    @ValueSource(doubles = {150, 250})
    void holesWithAStretchInCommonAreNotComparedAsStrangers(double depth) {
        HoleTrace parent = Traces.of("0 60 90; 100 60 90; 200 60 90; 300 60 90");
        TraceUncertainty trunk = Models.of(parent, SurveySigmas.assumed().model());
        TraceUncertainty branch = Models.of(
                branch(parent, 100, "200 60 95; 260 62 99"),
                SurveySigmas.assumed().model());
        String told = assertThrows(IllegalArgumentException.class, () -> trunk.between(depth, branch, depth))
                .getMessage();
        assertTrue(told.contains("share a stretch"), told);
        assertThrows(IllegalArgumentException.class, () -> branch.between(depth, trunk, depth));
    }
}
