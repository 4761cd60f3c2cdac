package spoolyard.analysis.invest;

import java.util.List;

/** Prices mixes when their paid hours are known. */
@FunctionalInterface
public interface PriceList {
    /**
     * What each mix costs.
     *
     * @param pay paid hours of each mix in a replication, the plant as it is first
     * @return one price a mix, in the same order
     */
    List<MixPrice> of(List<MixLoss.Pay> pay);
}
