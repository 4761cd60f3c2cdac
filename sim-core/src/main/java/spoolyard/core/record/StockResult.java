package spoolyard.core.record;

/**
 * A stock over one replication. Immutable. Amounts in {@code unit}; {@code opening + received = used + closing}, to
 * rounding for masses and exactly for pieces.
 *
 * @param kind label of its kind
 * @param name which one of its kind
 * @param unit kg or pieces
 * @param opening there at the start; infinity if it can't run out
 * @param received delivered
 * @param used taken: resin and concentrate as they are fed or as a batch is weighed, spools as they are full or cut off,
 *     cartons as they are opened
 * @param closing there at the end
 * @param mean time-average of what is there
 * @param lowest least that was ever there
 * @param outS time with nothing to take, seconds
 * @param timesOut how often it ran out
 * @param lineWaitS line-seconds stood for want of it
 * @param ordersPlaced orders sent to the supplier
 */
public record StockResult(
        String kind,
        String name,
        String unit,
        double opening,
        double received,
        double used,
        double closing,
        double mean,
        double lowest,
        double outS,
        long timesOut,
        double lineWaitS,
        long ordersPlaced) {}
