package spoolyard.core.record;

/**
 * Regrind of one polymer over one replication. Immutable. {@code brought = ground + noRoom + held}; the stock of regrind
 * receives {@code ground - dust}.
 *
 * @param polymer polymer code
 * @param broughtKg clean scrap brought to be ground, kg
 * @param groundKg of this, ground, kg
 * @param dustKg of this, lost as dust, kg
 * @param noRoomKg not ground because the store was full, and sold, kg
 * @param heldKg not yet a batch at the end, kg
 * @param takenKg regrind taken by lines in place of natural resin, kg
 */
public record RegrindResult(
        String polymer,
        double broughtKg,
        double groundKg,
        double dustKg,
        double noRoomKg,
        double heldKg,
        double takenKg) {}
