package spoolyard.core.plant;

/** What takes up the filament of one strand. Immutable. */
public sealed interface Winder {
    /**
     * Highest winding speed, used to catch up after a swap.
     *
     * @return m/s
     */
    double maxSpeedMPerS();

    /**
     * Roles that may attend this winder.
     *
     * @return what the swap needs of the crew
     */
    CrewNeed crew();

    /**
     * One position: the winder stands still from a full spool until a person has put on an empty one.
     *
     * @param maxSpeedMPerS highest winding speed, m/s
     * @param stopTimeS from the person's arrival until the winder runs again, seconds
     * @param finishTimeS what the same person does to the full spool after that (weigh, label, rack), seconds
     * @param crew who swaps
     */
    record Manual(double maxSpeedMPerS, Law stopTimeS, Law finishTimeS, CrewNeed crew) implements Winder {}

    /**
     * Two positions: the strand is moved to the empty spool by the machine; a person unloads the full one while the
     * next fills. The machine can't transfer again until that is done.
     *
     * @param maxSpeedMPerS highest winding speed, m/s
     * @param transferTimeS winder stopped for the automatic transfer, seconds
     * @param unloadTimeS attended time to take off the full spool and fit an empty one, seconds
     * @param crew who unloads
     */
    record TwoPosition(double maxSpeedMPerS, Law transferTimeS, Law unloadTimeS, CrewNeed crew) implements Winder {}
}
