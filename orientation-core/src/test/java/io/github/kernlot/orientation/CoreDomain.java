package io.github.kernlot.orientation;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.Tuple;
import net.jqwik.api.domains.DomainContextBase;

/** Holes, planes, lines and frames of every kind, more of them at the edges than in between. */
class CoreDomain extends DomainContextBase {

    /** Angles round a circle, [0, 360]. */
    @Provide
    Arbitrary<Double> turns() {
        return angles(360);
    }

    @Provide
    Arbitrary<HoleDirection> holes() {
        return Combinators.combine(angles(180), turns()).as(HoleDirection::ofInclination);
    }

    @Provide
    Arbitrary<PlaneOrientation> planes() {
        return Combinators.combine(angles(90), turns()).as(PlaneOrientation::ofDipAndDirection);
    }

    @Provide
    Arbitrary<LineOrientation> lines() {
        return Combinators.combine(angles(90), turns()).as(LineOrientation::ofPlungeAndTrend);
    }

    @Provide
    Arbitrary<DirectedLine> directedLines() {
        return Combinators.combine(angles(180), turns())
                .as((fromUp, trend) -> DirectedLine.ofPlungeAndTrend(fromUp - 90, trend));
    }

    @Provide
    Arbitrary<DirectedCoreLine> directedCoreLines() {
        return Combinators.combine(angles(180), turns()).as(DirectedCoreLine::ofAxisAngleAndDelta);
    }

    @Provide
    Arbitrary<CorePlane> corePlanes() {
        return Combinators.combine(angles(90), turns()).as(CorePlane::of);
    }

    @Provide
    Arbitrary<CoreLine> coreLines() {
        return Combinators.combine(angles(90), turns()).as(CoreLine::ofAxisAngleAndDelta);
    }

    @Provide
    Arbitrary<LineInPlane> linesInPlanes() {
        return Combinators.combine(corePlanes().filter(CorePlane::hasBeta), turns())
                .as(LineInPlane::new);
    }

    @Provide
    Arbitrary<WallReference> references() {
        return Arbitraries.oneOf(
                Arbitraries.of(WallReference.lowSide(), WallReference.highSide(), WallReference.north()),
                turns().map(WallReference::azimuth));
    }

    @Provide
    Arbitrary<CoreFrame> frames() {
        return Combinators.combine(holes(), references(), turns())
                .as(Tuple::of)
                .filter(parts -> parts.get2().existsIn(parts.get1()))
                .map(parts -> CoreFrame.at(parts.get1(), parts.get2(), parts.get3()));
    }

    /** Angles in [0, limit]: anywhere, at a special angle, or 1e-6 to 1e-15 degrees beside one. */
    private static Arbitrary<Double> angles(int limit) {
        Arbitrary<Double> anywhere =
                Arbitraries.doubles().between(0, limit).ofScale(9).withDistribution(RandomDistribution.uniform());
        Arbitrary<Double> special =
                Arbitraries.integers().between(0, limit / 30).map(thirds -> 30.0 * thirds);
        Arbitrary<Double> quarter =
                Arbitraries.integers().between(0, limit / 90).map(quarters -> 90.0 * quarters);
        Arbitrary<Double> beside = Combinators.combine(
                        quarter,
                        Arbitraries.integers().between(6, 15),
                        Arbitraries.doubles().between(-9.9, 9.9))
                .as((edge, power, digits) -> edge + digits * Math.pow(10, -power))
                .map(angle -> Math.min(Math.max(angle, 0), limit));
        return Arbitraries.oneOf(anywhere, special, quarter, beside, anywhere).withoutEdgeCases();
    }
}
