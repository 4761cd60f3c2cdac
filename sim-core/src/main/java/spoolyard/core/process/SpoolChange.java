package spoolyard.core.process;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.Swap;
import spoolyard.core.record.SwapLog;

/**
 * The spool change of a strand that is under way, or the last one: what it lost and to which cause, and when what
 * happened.
 *
 * <p>What the accumulator held above its home when the spool was full would have been room for as many metres more: the
 * first metres lost are due to it.
 */
final class SpoolChange {
    private static final OverflowCause[] CAUSES = OverflowCause.values();

    private final LineLedger ledger;
    private final SwapLog log;
    private final String line;
    private final int strand;
    private final double[] lostM = new double[CAUSES.length];
    private Product product;
    private boolean untold;
    private double carriedM;
    private double missedM;
    private double standingMPerS;
    private double feedMPerS;
    private boolean ownFeed;
    private OverflowCause counted;
    private long fullTick;
    private double fullLevelM;
    private long begunTick;
    private double begunLevelM;
    private double begunMPerS;
    private long disturbedTick;
    private long turnedTick;
    private double peakLevelM;

    SpoolChange(LineLedger ledger, SwapLog log, String line, int strand) {
        this.ledger = ledger;
        this.log = log;
        this.line = line;
        this.strand = strand;
    }

    void winds(Product its) {
        product = its;
    }

    /** A spool is full. */
    void begin(long now, double levelM) {
        tell();
        untold = true;
        carriedM = levelM > Strand.SLACK_M ? levelM : 0;
        missedM = 0;
        counted = null;
        fullTick = now;
        fullLevelM = levelM;
        peakLevelM = levelM;
        begunTick = Ticks.NEVER;
        disturbedTick = Ticks.NEVER;
        turnedTick = Ticks.NEVER;
        begunLevelM = 0;
        begunMPerS = 0;
        Arrays.fill(lostM, 0);
    }

    /** The work begins that lets the winder turn. */
    void workBegins(long now, double levelM, double inflowMPerS) {
        begunTick = now;
        begunLevelM = levelM;
        begunMPerS = inflowMPerS;
    }

    /** The winder may turn. */
    void turns(long now) {
        turnedTick = now;
    }

    /** What enters the accumulator, as long as it has room. */
    void feeds(long now, double mPerS) {
        if (mPerS != feedMPerS) {
            feedMPerS = mPerS;
            if (!ownFeed) {
                disturbed(now);
            }
        }
    }

    /** Whether the feed changes for the level of this accumulator, as was to be expected. */
    void ownFeed(boolean isOwn) {
        ownFeed = isOwn;
    }

    /** Something happens that the work could not expect. */
    void disturbed(long now) {
        if (begunTick != Ticks.NEVER && disturbedTick == Ticks.NEVER) {
            disturbedTick = now;
        }
    }

    void reaches(double levelM) {
        peakLevelM = Math.max(peakLevelM, levelM);
    }

    /** The accumulator has been emptied into the bin: nothing is carried over any more. */
    void emptied() {
        carriedM = 0;
    }

    /**
     * The accumulator is full.
     *
     * @param lineStands whether the line stops for it, so that it makes nothing rather than loses what it makes
     */
    void overflows(OverflowCause holding, boolean lineStands) {
        missedM = 0;
        standingMPerS = lineStands ? feedMPerS : 0;
        counted = carriedM > 0 ? OverflowCause.CARRIED_OVER : holding;
        ledger.overflows[counted.ordinal()]++;
    }

    /** The line has stood for a full accumulator. */
    void stands(double seconds, OverflowCause holding) {
        misses(standingMPerS * seconds, holding);
    }

    /** Metres go to the bin. */
    void loses(double metres, OverflowCause holding) {
        double carriedOverM = Math.min(metres, Math.max(0, carriedM - missedM));
        book(OverflowCause.CARRIED_OVER, carriedOverM);
        book(holding, metres - carriedOverM);
        misses(metres, holding);
    }

    private void book(OverflowCause cause, double metres) {
        ledger.overflowM[cause.ordinal()] += metres;
        lostM[cause.ordinal()] += metres;
    }

    private void misses(double metres, OverflowCause holding) {
        missedM += metres;
        if (counted == OverflowCause.CARRIED_OVER && missedM > carriedM + Strand.SLACK_M) {
            ledger.overflows[counted.ordinal()]--;
            counted = holding;
            ledger.overflows[counted.ordinal()]++;
        }
    }

    /** Tells of the last change, once. */
    void tell() {
        if (untold && log.isOn()) {
            log.tell(new Swap(
                    line,
                    strand,
                    product,
                    fullTick,
                    fullLevelM,
                    begunTick,
                    begunLevelM,
                    begunMPerS,
                    disturbedTick,
                    turnedTick,
                    peakLevelM,
                    Optional.ofNullable(counted),
                    lostByCause()));
        }
        untold = false;
    }

    private Map<OverflowCause, Double> lostByCause() {
        Map<OverflowCause, Double> map = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : CAUSES) {
            map.put(cause, lostM[cause.ordinal()]);
        }
        return map;
    }
}
