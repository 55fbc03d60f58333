package io.github.kernlot.survey.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Faults as they are found, of files as wholes or such that nothing but refusal answers them. */
final class FaultList {

    private final List<Fault> faults = new ArrayList<>();

    void ofFile(String file, String what) {
        add(new Fault(file, 0, "", "", what));
    }

    void add(Fault fault) {
        faults.add(fault);
    }

    boolean isEmpty() {
        return faults.isEmpty();
    }

    List<Fault> found() {
        return faults;
    }

    /** Refuses what was read if there is a fault among these and the ones given. */
    void refuse(List<Fault> further) {
        List<Fault> all = new ArrayList<>(faults);
        all.addAll(further);
        if (!all.isEmpty()) {
            all.sort(Comparator.comparingInt((Fault fault) -> TableForm.place(fault.file()))
                    .thenComparing(Fault::file)
                    .thenComparingInt(Fault::line));
            throw new TableException(all);
        }
    }
}
