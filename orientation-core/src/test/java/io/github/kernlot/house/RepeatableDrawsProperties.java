package io.github.kernlot.house;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;

class RepeatableDrawsProperties {

    @Property(tries = 1, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void everyBuildDrawsTheSame(@ForAll int number) {
        boolean othersWanted =
                System.getProperty("kernlot.seed") != null || System.getProperty("kernlot.tries") != null;
        assertTrue(number == -9 || othersWanted, () -> "drawn " + number);
    }
}
