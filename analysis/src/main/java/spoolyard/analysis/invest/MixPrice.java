package spoolyard.analysis.invest;

/**
 * What a mix costs against the plant as it is. Immutable.
 *
 * @param once paid once
 * @param boughtPerYear that as an equal amount each year, with interest
 * @param runningPerYear paid each year besides
 * @param payPerYear pay a year of the people more, or below 0 of those fewer
 * @param more paid hours a year that it has more, at the wages of the scenario
 */
public record MixPrice(double once, double boughtPerYear, double runningPerYear, double payPerYear, MixLoss.Pay more) {
    /**
     * All of it in a year.
     *
     * @return money a year
     */
    public double perYear() {
        return boughtPerYear + runningPerYear + payPerYear;
    }

    /** With what an option costs; its hours are in those of the mix. */
    MixPrice with(MixPrice option) {
        return new MixPrice(
                once + option.once,
                boughtPerYear + option.boughtPerYear,
                runningPerYear + option.runningPerYear,
                payPerYear + option.payPerYear,
                more);
    }
}
