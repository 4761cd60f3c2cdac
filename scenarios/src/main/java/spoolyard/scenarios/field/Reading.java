package spoolyard.scenarios.field;

import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.read.Node;

/**
 * What one reading of a scenario collects. Not thread-safe.
 *
 * @param faults faults and warnings
 * @param keys the keys that were asked for
 */
public record Reading(Faults faults, KeyLedger keys) {
    /**
     * A fresh reading.
     *
     * @return with no faults and no keys
     */
    public static Reading begin() {
        return new Reading(new Faults(), new KeyLedger());
    }

    /**
     * Adds a fault about a written value.
     *
     * @param kind what sort of fault
     * @param node the value
     * @param allowed what may stand there, as sentences
     * @param mend how to put it right
     */
    public void fault(FaultKind kind, Node node, String allowed, String mend) {
        faults.add(new Fault(kind, node.origin(), node.shown(), allowed, mend));
    }

    /**
     * Adds a fault about a value that is not there.
     *
     * @param origin where it should be
     * @param allowed what should stand there
     * @param mend how to put it right
     * @return the fault
     */
    public Fault missing(Origin origin, String allowed, String mend) {
        Fault fault = new Fault(FaultKind.MISSING_VALUE, origin, "(not given)", allowed, mend);
        faults.add(fault);
        return fault;
    }
}
