package io.github.kernlot.orientation.line;

import java.util.Optional;

/**
 * Who made a mark and with what, by which marks are grouped when they are audited.
 *
 * @param tool the tool that found the side; empty where nobody noted it
 * @param crew who drilled and marked; empty where nobody noted it
 * @param grade how good the mark was thought to be, in the log's own word; empty where nobody noted it
 */
public record MarkSource(Optional<String> tool, Optional<String> crew, Optional<String> grade) {

    /**
     * A source of which nothing was noted.
     *
     * @return the source
     */
    public static MarkSource unknown() {
        return new MarkSource(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
