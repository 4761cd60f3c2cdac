package spoolyard.scenarios.field;

import java.util.Optional;
import java.util.function.Function;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.read.Node;

/**
 * A text with a meaning: number, word, date. Immutable.
 *
 * @param parse finds the meaning; empty if there is none
 * @param fault kind of the fault if there is none
 * @param allowed what may stand there, as a sentence
 * @param mend how to put it right
 * @param standIn value to go on with
 * @param <T> type of the meaning
 */
record TextKind<T>(Function<String, Optional<T>> parse, FaultKind fault, String allowed, String mend, T standIn)
        implements Kind<T> {
    @Override
    public T read(Node node, Reading reading) {
        if (node instanceof Node.Nothing) {
            reading.fault(FaultKind.MISSING_VALUE, node, allowed, mend);
            return standIn;
        }
        if (!(node instanceof Node.Text text)) {
            reading.fault(FaultKind.WRONG_SHAPE, node, allowed, mend);
            return standIn;
        }
        Optional<T> value = parse.apply(text.text().strip());
        if (value.isEmpty()) {
            reading.fault(fault, node, allowed, mend);
        }
        return value.orElse(standIn);
    }
}
