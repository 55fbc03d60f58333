package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class VonMisesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "bessel-ratio.csv", numLinesToSkip = 1)
    void theMeanLengthIsTheRatioOfBesselFunctions(double concentration, double ratio, String source) {
        assertEquals(ratio, VonMises.meanLength(concentration), 2e-15, source);
        assertEquals(1, VonMises.meanLength(concentration) / ratio, 4e-15, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "concentration.csv", numLinesToSkip = 1)
    void theConcentrationIsTheRoot(double length, double concentration, String source) {
        assertEquals(1, VonMises.concentration(length) / concentration, 1e-10, source);
    }

    @Property
    void theConcentrationIsTheInverseOfTheMeanLength(@ForAll @DoubleRange(min = -8, max = 8) double exponent) {
        double concentration = Math.pow(10, exponent);
        // 1 - A1 has an absolute error of an ulp of 1, and is 1 / 2 kappa
        double lost = 1e-12 + 4e-16 * concentration;
        assertEquals(1, VonMises.concentration(VonMises.meanLength(concentration)) / concentration, 10 * lost);
    }

    @Test
    void theEndsAreZeroAndInfinity() {
        assertEquals(0, VonMises.meanLength(0));
        assertEquals(0, VonMises.concentration(0));
        assertEquals(Double.POSITIVE_INFINITY, VonMises.concentration(1));
    }
}
