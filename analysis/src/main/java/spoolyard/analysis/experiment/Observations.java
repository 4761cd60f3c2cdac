package spoolyard.analysis.experiment;

import java.util.List;

/**
 * Observations of systems among which the best is sought; larger is better. The same system and number give the same
 * value. For one thread.
 */
public interface Observations {
    /**
     * How many systems there are.
     *
     * @return at least 2
     */
    int systems();

    /**
     * An observation of some systems. Asked for in ascending order of the numbers, of ever fewer systems.
     *
     * @param number number of the observation, from 0
     * @param systems numbers of the systems, ascending
     * @return their values, in the order asked for
     */
    double[] at(int number, List<Integer> systems);
}
