package spoolyard.analysis.crew;

import spoolyard.analysis.theory.ConstantServiceInterference;
import spoolyard.analysis.theory.MachineInterference;

/** Published models of machine interference: efficiency F = 1 - (winders that wait for a person) / N. */
public enum PublishedCurve {
    /** All winders in one pool, served in the order of their calls; exponential run and work. M/M/c//N. */
    POOL("one pool, M/M/c//N", "all winders to all people, work of any length (exponential)") {
        @Override
        double waiting(CrewLoad load, int people) {
            return new MachineInterference(load.winders(), people, load.runS(), load.workS()).meanWaiting();
        }
    },
    /** Each person has winders of the own; exponential run and work. M/M/1//n. */
    OWN("own winders, M/M/1//n", "each person the own winders, work of any length (exponential)") {
        @Override
        double waitingOfOne(CrewLoad load, int winders) {
            return new MachineInterference(winders, 1, load.runS(), load.workS()).meanWaiting();
        }
    },
    /** Each person has winders of the own; exponential run, work that always takes the same. Ashcroft's M/D/1//n. */
    OWN_CONSTANT("own winders, M/D/1//n", "each person the own winders, work always as long (Ashcroft 1950)") {
        @Override
        double waitingOfOne(CrewLoad load, int winders) {
            ConstantServiceInterference one = new ConstantServiceInterference(winders, load.runS(), load.workS());
            return winders - one.meanRunning() - one.operatorUtilisation();
        }
    };

    private final String label;
    private final String assumes;

    PublishedCurve(String label, String assumes) {
        this.label = label;
        this.assumes = assumes;
    }

    /**
     * Name for a table and a picture.
     *
     * @return a few words
     */
    public String label() {
        return label;
    }

    /**
     * What it takes for granted.
     *
     * @return a clause
     */
    public String assumes() {
        return assumes;
    }

    /**
     * Efficiency.
     *
     * @param load a sound one
     * @param people how many, {@code >= 1}
     * @return in (0, 1]
     */
    public double efficiency(CrewLoad load, int people) {
        return 1 - waiting(load, people) / load.winders();
    }

    /** Winders that wait: split as evenly as they can be. */
    double waiting(CrewLoad load, int people) {
        int each = load.winders() / people;
        int withOneMore = load.winders() % people;
        double waiting = withOneMore * waitingOfOne(load, each + 1);
        return each == 0 ? waiting : waiting + (people - withOneMore) * waitingOfOne(load, each);
    }

    /** Winders of one person that wait. */
    double waitingOfOne(CrewLoad load, int winders) {
        throw new IllegalStateException(this + " has no winders of one person.");
    }
}
