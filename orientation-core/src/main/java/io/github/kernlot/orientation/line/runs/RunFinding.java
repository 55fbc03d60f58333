package io.github.kernlot.orientation.line.runs;

import java.util.Locale;

/**
 * What a run log says against a run, or against a mark.
 *
 * @param depth where, metres along the hole
 * @param kind what kind of finding it is
 * @param text the finding in one sentence
 */
public record RunFinding(double depth, Kind kind, String text) {

    /** What a run log can say against a run. */
    public enum Kind {
        /** The tool was read before the rods were still. */
        READ_WHILE_TURNING,
        /** Another tool was read than was run. */
        OTHER_TOOL,
        /** The tool was not prepared since its last run, or only after it was read. */
        NOT_PREPARED,
        /** The core was marked before the tool was read. */
        MARKED_BEFORE_READ,
        /** The run does not advance the hole, or was read before one above it. */
        NO_ADVANCE,
        /** The run begins above the end of one that began above it. */
        OVERLAP,
        /** Less core was recovered than was drilled, so that depths in the run are uncertain by as much. */
        CORE_LOSS,
        /** More core was recovered than was drilled, so that the driller's depth is wrong or core of another run came up. */
        CORE_GAIN,
        /** A mark lies in no run. */
        NO_RUN
    }

    /** The finding in one line. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f m: %s", depth, text);
    }
}
