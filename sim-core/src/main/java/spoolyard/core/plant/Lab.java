package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;

/**
 * Lots of spools, their tests, and what happens to a lot that is refused. Immutable.
 *
 * <p>A lot is what one line makes of one product without a break, or {@code lotSpools} spools, whichever is less. Its
 * spools are held in quarantine until the tests that hold it are done.
 *
 * @param hold where spools are held
 * @param quarantinePlaces spools that can be held, {@code >= 1}; {@link Integer#MAX_VALUE} means no limit
 * @param lotSpools largest lot, {@code >= 1}
 * @param lotWithinS a lot is closed so long after its first spool came, seconds; infinity for no limit
 * @param quality how many spools are defective, which only the lab can see
 * @param sampling how a lot is judged; empty means that every lot is released when its tests are done
 * @param tests the tests of a lot
 * @param refusal what happens to a refused lot
 * @param place where the lab stands
 */
public record Lab(
        Hold hold,
        int quarantinePlaces,
        int lotSpools,
        double lotWithinS,
        LotQuality quality,
        Optional<Sampling> sampling,
        List<Test> tests,
        Refusal refusal,
        Place place) {
    /** Copies the list. */
    public Lab {
        tests = List.copyOf(tests);
    }

    /** Where spools are held. */
    public enum Hold {
        /** Before they are sealed: the exposure clock runs on. */
        BEFORE_SEALING,
        /** After sealing, before packing. */
        BEFORE_PACKING
    }

    /**
     * Defective spools: a lot is usual or bad, and each of its spools is defective by chance.
     *
     * @param usualShare chance of a spool in a usual lot, in [0, 1]
     * @param badLots chance that a lot is bad, in [0, 1]
     * @param badShare chance of a spool in a bad lot, in [0, 1]
     */
    public record LotQuality(double usualShare, double badLots, double badShare) {}

    /**
     * Single sampling, normal inspection, by ISO 2859-1.
     *
     * @param level inspection level
     * @param aqlPercent acceptance quality limit, per cent of defective spools, one of those of the standard's table
     */
    public record Sampling(InspectionLevel level, double aqlPercent) {}

    /**
     * A test.
     *
     * @param name name used in files and reports
     * @param places apparatus or benches, {@code >= 1}
     * @param batch lots tested at once, {@code >= 1}; a test starts with what is there, up to this many
     * @param takesS time of a test, seconds; of each sampled spool if {@code isForEachSampledSpool}
     * @param crew who does it, one person a place for its whole time; nobody means that the apparatus works alone
     * @param shareOfLots part of the lots that get it, in [0, 1]
     * @param isForEachSampledSpool true: it takes its time once for each spool of the sample
     * @param isHolding true: the lot is held until it is done; false: its result comes later
     */
    public record Test(
            String name,
            int places,
            int batch,
            Law takesS,
            CrewNeed crew,
            double shareOfLots,
            boolean isForEachSampledSpool,
            boolean isHolding) {}

    /**
     * What happens to a refused lot; what is neither sorted nor re-spooled is ground.
     *
     * @param sorted part of the refused lots whose spools are looked at one by one, defective ones ground
     * @param sorting the work of it, by spool
     * @param respooled part of the refused lots whose spools are wound anew, which puts them right
     * @param respooling the work of it, by spool
     */
    public record Refusal(double sorted, Work sorting, double respooled, Work respooling) {
        /** All refused lots are ground. */
        public static final Refusal GRIND = new Refusal(0, Work.NONE, 0, Work.NONE);
    }

    /**
     * Work on each spool of a refused lot.
     *
     * @param places work places, {@code >= 1}
     * @param takesS time for a spool, seconds
     * @param crew who does it, one person a place
     */
    public record Work(int places, Law takesS, CrewNeed crew) {
        /** Work that takes no time. */
        public static final Work NONE = new Work(1, Law.ZERO, CrewNeed.NOBODY);
    }
}
