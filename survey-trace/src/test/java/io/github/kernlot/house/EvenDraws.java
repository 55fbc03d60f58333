package io.github.kernlot.house;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.arbitraries.DoubleArbitrary;
import net.jqwik.api.configurators.ArbitraryConfigurator;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.providers.TypeUsage;

/**
 * Draws a number with a {@link DoubleRange} evenly from its range, and the ends and 0 now and then. Left to itself jqwik draws half of
 * the azimuths below 5 degrees, so that hardly a hole points south.
 */
public final class EvenDraws implements ArbitraryConfigurator {

    private static final int DECIMALS = 9;

    @Override
    @SuppressWarnings("unchecked")
    public <T> Arbitrary<T> configure(Arbitrary<T> arbitrary, TypeUsage type) {
        if (!(arbitrary instanceof DoubleArbitrary doubles)
                || type.findAnnotation(DoubleRange.class).isEmpty()) {
            return arbitrary;
        }
        DoubleArbitrary even = doubles.withDistribution(RandomDistribution.uniform());
        return (Arbitrary<T>) (type.findAnnotation(Scale.class).isPresent() ? even : even.ofScale(DECIMALS));
    }
}
