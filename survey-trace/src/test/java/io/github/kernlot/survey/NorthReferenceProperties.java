package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class NorthReferenceProperties {

    @Property
    void thereAndBackIsNoChange(
            @ForAll North from,
            @ForAll North to,
            @ForAll @DoubleRange(min = -180, max = 180) double declination,
            @ForAll @DoubleRange(min = -180, max = 180) double convergence) {
        NorthReference reference =
                NorthReference.magnetic(declination, convergence).with(from);

        assertEquals(0, reference.toAdd(to) + reference.with(to).toAdd(from), 0);
        assertEquals(0, reference.toAdd(from), 0);
    }

    @Property
    void byWayOfAThirdNorthIsTheSame(
            @ForAll North from,
            @ForAll North by,
            @ForAll North to,
            @ForAll @DoubleRange(min = -180, max = 180) double declination,
            @ForAll @DoubleRange(min = -180, max = 180) double convergence) {
        NorthReference reference =
                NorthReference.magnetic(declination, convergence).with(from);

        assertEquals(
                reference.toAdd(to), reference.toAdd(by) + reference.with(by).toAdd(to), 1e-12);
    }
}
