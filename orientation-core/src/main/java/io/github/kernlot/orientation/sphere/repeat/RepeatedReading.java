package io.github.kernlot.orientation.sphere.repeat;

import io.github.kernlot.orientation.CorePlane;

/**
 * One reading of one structure by one reader.
 *
 * @param structure what tells the structure from others, such as hole and depth; not blank
 * @param reader who read it; not blank
 * @param plane what was read, in the house convention
 */
public record RepeatedReading(String structure, String reader, CorePlane plane) {

    /**
     * Checks the names.
     *
     * @throws IllegalArgumentException if one is blank
     */
    public RepeatedReading {
        requireName("structure", structure);
        requireName("reader", reader);
    }

    private static void requireName(String what, String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("the " + what + " is blank; expected a name");
        }
    }

    /** The reading in words: {@code QB-01 at 91.40 by reader A: alpha 41.0, beta 213.0}. */
    @Override
    public String toString() {
        return structure + " by " + reader + ": " + plane;
    }
}
