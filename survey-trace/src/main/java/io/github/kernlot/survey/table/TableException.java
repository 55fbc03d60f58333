package io.github.kernlot.survey.table;

import java.util.List;
import java.util.stream.Collectors;

/** Tables or settings that cannot be used, or results that cannot be written. The message has one line for each fault. */
public final class TableException extends IllegalArgumentException {

    private static final long serialVersionUID = 1;

    private final transient List<Fault> faults;

    TableException(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    TableException(Fault fault) {
        this(List.of(fault));
    }

    /**
     * Everything that is wrong.
     *
     * @return at least one fault, by file and line
     */
    public List<Fault> faults() {
        return faults;
    }
}
