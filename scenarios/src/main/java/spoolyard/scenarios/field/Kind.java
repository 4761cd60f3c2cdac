package spoolyard.scenarios.field;

import spoolyard.scenarios.read.Node;

/**
 * How a value of a type is read.
 *
 * @param <T> the type
 */
public interface Kind<T> {
    /**
     * Reads a value.
     *
     * @param node what is written; {@link Node.Nothing} is a fault
     * @param reading takes faults
     * @return the value; the stand-in if there is a fault
     */
    T read(Node node, Reading reading);

    /**
     * A sound value to go on with after a fault, so that all other faults are found in the same reading. It never
     * reaches a plant.
     *
     * @return some value of the kind
     */
    T standIn();
}
