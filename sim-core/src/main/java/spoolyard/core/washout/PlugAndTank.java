package spoolyard.core.washout;

/**
 * Plug flow, then a stirred tank: nothing for the plug's share of a turnover, then {@code exp(-(t - p) / (1 - p))}. Immutable.
 *
 * <p>Source: O. Levenspiel, Chemical Reaction Engineering, 3rd ed. 1999, ch. 12. Plug shares of 0.38 to 0.65 fitted single
 * screws in A.-I. Yeh, Y.-M. Jaw, Modeling residence time distributions for single screw extrusion process, Journal of Food
 * Engineering 35 (1998).
 *
 * @param plugShare share p of the melt in plug flow, in [0, 1)
 */
public record PlugAndTank(double plugShare) implements Washout {
    @Override
    public double oldShare(double turnovers) {
        return turnovers <= plugShare ? 1 : Math.exp(-(turnovers - plugShare) / (1 - plugShare));
    }

    @Override
    public double turnovers(double oldShare) {
        return oldShare >= 1 ? 0 : plugShare - (1 - plugShare) * Math.log(oldShare);
    }
}
