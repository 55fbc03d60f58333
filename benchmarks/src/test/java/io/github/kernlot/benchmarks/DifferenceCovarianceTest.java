package io.github.kernlot.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.uncertainty.Covariance;
import io.github.kernlot.survey.uncertainty.SurveyErrorModel;
import io.github.kernlot.survey.uncertainty.SurveyErrorSetup;
import io.github.kernlot.survey.uncertainty.SurveyErrorSource;
import io.github.kernlot.survey.uncertainty.TieIn;
import io.github.kernlot.survey.uncertainty.TraceUncertainty;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The two sides of {@link CovarianceBenchmark} say the same. */
class DifferenceCovarianceTest {

    private static final int STATIONS = 40;
    private static final double SMALL = 1e-3;

    @Test
    void differencesAgreeWithDerivatives() {
        HoleTrace trace = SurveyedHole.of(STATIONS);
        double[] depths = SurveyedHole.depths(STATIONS, 23);
        // small errors, so that a one-sided difference is a derivative
        List<SurveyErrorSource> small = SurveyedHole.model().sources().stream()
                .map(source -> source.withSigma(source.sigma() * SMALL))
                .toList();
        SurveyErrorModel model = new SurveyErrorModel("small", small);
        TraceUncertainty derivatives = TraceUncertainty.of(
                trace, SurveyErrorSetup.of(model, TieIn.MEASURED).with(SurveyedHole.EARTH));
        double[][] differences = new DifferenceCovariance(trace, model, SurveyedHole.EARTH).at(depths);
        for (int i = 0; i < depths.length; i++) {
            Covariance found = derivatives.at(depths[i]).place();
            double unit = found.northNorth() + found.eastEast() + found.downDown();
            double[] expected = differences[i];
            assertEquals(expected[0], found.northNorth(), 1e-4 * unit);
            assertEquals(expected[1], found.eastEast(), 1e-4 * unit);
            assertEquals(expected[2], found.downDown(), 1e-4 * unit);
            assertEquals(expected[3], found.northEast(), 1e-4 * unit);
            assertEquals(expected[4], found.northDown(), 1e-4 * unit);
            assertEquals(expected[5], found.eastDown(), 1e-4 * unit);
        }
    }
}
