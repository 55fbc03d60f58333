package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;

/** Holes that fall and rise and planes of every kind, more of them at the edges than in between. */
class SolveDomain extends DomainContextBase {

    @Provide
    Arbitrary<HoleDirection> holes() {
        return Combinators.combine(angles(180), angles(360)).as(HoleDirection::ofInclination);
    }

    @Provide
    Arbitrary<PlaneOrientation> planes() {
        return Combinators.combine(angles(90), angles(360)).as(PlaneOrientation::ofDipAndDirection);
    }

    private static Arbitrary<Double> angles(int limit) {
        Arbitrary<Double> anywhere =
                Arbitraries.doubles().between(0, limit).ofScale(9).withDistribution(RandomDistribution.uniform());
        Arbitrary<Double> special =
                Arbitraries.integers().between(0, limit / 30).map(thirds -> 30.0 * thirds);
        return Arbitraries.oneOf(anywhere, special, anywhere).withoutEdgeCases();
    }
}
