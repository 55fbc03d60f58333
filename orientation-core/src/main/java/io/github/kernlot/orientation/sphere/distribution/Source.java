package io.github.kernlot.orientation.sphere.distribution;

import java.util.random.RandomGenerator;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Where random bits come from. */
final class Source {

    private Source() {}

    /** The generator xoroshiro128++. */
    static UniformRandomProvider of(long seed) {
        return RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    }

    static UniformRandomProvider of(RandomGenerator random) {
        return random::nextLong;
    }
}
