package spoolyard.scenarios.check;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Times;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.shiftsystem.ShiftSystem;

/**
 * The keys that choose a shift system. What the system stands for was merged under the other keys before.
 *
 * @param r the part {@code shifts}
 */
record SystemKeys(MappingReader r) {
    /** Reads them; false if the shifts could not be made, so that what is missing is no further fault. */
    boolean areSound() {
        List<String> labels = ShiftSystem.labels();
        int before = r.reading().faults().count();
        Optional<ShiftSystem> system =
                r.optional("system", Words.oneOf(labels.toArray(String[]::new))).flatMap(ShiftSystem::of);
        Optional<LocalTime> start = r.optional("first_start", Times.timeOfDay());
        boolean isClean = r.reading().faults().count() == before;
        if (isClean && start.isPresent()) {
            check(system, start.get());
        }
        return r.reading().faults().count() == before;
    }

    private void check(Optional<ShiftSystem> system, LocalTime start) {
        Node node = r.raw("first_start").orElseThrow();
        if (system.isEmpty()) {
            r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must stand beside a system, whose shifts it moves.",
                            "name a system, or delete the key and give each shift its start");
        } else if (start.isAfter(system.get().latestFirstStart())) {
            r.reading()
                    .fault(
                            FaultKind.OUT_OF_RANGE,
                            node,
                            "Must be 00:00 to " + system.get().latestFirstStart()
                                    + ", so that all shifts start on their own day.",
                            "enter a time in this range");
        }
    }
}
