package io.github.kernlot.house;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;

class EvenDrawsProperties {

    @Property(tries = 1000)
    void aboutHalfOfTheDrawsLieAboveTheMiddle(@ForAll @DoubleRange(max = 360) double azimuth) {
        Statistics.collect(azimuth > 180);
        Statistics.coverage(drawn -> drawn.check(true).percentage(share -> share > 40 && share < 60));
    }
}
