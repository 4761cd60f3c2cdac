package spoolyard.analysis.schedule;

import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.ChangeoverResult;

/** What changeovers that were simulated cost, by the weights that plans are judged by. Immutable. */
public final class ChangeoverPrices {
    private static final double S_PER_H = 3600;

    private final PlantBook book;
    private final ChangeoverArithmetic arithmetic;

    /**
     * For a plant.
     *
     * @param book its order book and weights
     */
    public ChangeoverPrices(PlantBook book) {
        this.book = book;
        arithmetic = new ChangeoverArithmetic(book.plant(), book.weights());
    }

    /**
     * Time of the line that a changeover took: its waits for people and its purge as they came, all else at the mean. Waits
     * for material are not in it; they are no matter of colours.
     *
     * @param change what happened
     * @return seconds
     */
    public double lineS(ChangeoverResult change) {
        Line line = line(change);
        Product to = product(change.to()).orElseThrow();
        ChangeoverEstimate mean = mean(line, product(change.from()), to);
        double extraKg = change.purgeKg() - mean.purgeKg() - mean.compoundKg();
        return Math.max(0, change.waitS() + mean.lineS() + extraKg / line.rateKgPerH(to) * S_PER_H);
    }

    /**
     * What a changeover cost. Purge compound and work are priced at the mix that is expected of it.
     *
     * @param change what happened
     * @return money
     */
    public double money(ChangeoverResult change) {
        Line line = line(change);
        Product to = product(change.to()).orElseThrow();
        Optional<Product> from = product(change.from());
        return change.purgeKg() * perKg(line, from, to)
                + lineS(change) / S_PER_H * book.weights().linePerH(line, to)
                + change.crewS() / S_PER_H * crewPerH(line, from, to);
    }

    /**
     * What the purges at the end of weeks cost, those that were done, at their mean.
     *
     * @param result a replication
     * @return money
     */
    public double weekEnds(RunResult result) {
        return result.lines().stream()
                .mapToDouble(each -> each.use().purgedAtWeekEnd().stream()
                        .mapToDouble(held ->
                                arithmetic.endOfWeek(line(each.line()), held).money())
                        .sum())
                .sum();
    }

    private Line line(ChangeoverResult change) {
        return line(change.line());
    }

    private Line line(String name) {
        return book.plant().lines().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private ChangeoverEstimate mean(Line line, Optional<Product> from, Product to) {
        return from.map(before -> arithmetic.estimate(line, before, to)).orElse(ChangeoverEstimate.NONE);
    }

    private Optional<Product> product(String label) {
        return book.products().stream()
                .filter(product -> product.label().equals(label))
                .findFirst();
    }

    private double perKg(Line line, Optional<Product> from, Product to) {
        boolean isMixed = from.isPresent()
                && !from.get().polymer().code().equals(to.polymer().code());
        double newPerKg = book.weights().purgePerKg(to, isMixed);
        ChangeoverEstimate expected = mean(line, from, to);
        double allKg = expected.purgeKg() + expected.compoundKg();
        return allKg > 0
                ? (expected.purgeKg() * newPerKg
                                + expected.compoundKg() * book.weights().compoundPerKg())
                        / allKg
                : newPerKg;
    }

    private double crewPerH(Line line, Optional<Product> from, Product to) {
        Map<CrewNeed, Double> workS =
                from.map(before -> arithmetic.crewS(line, before, to)).orElse(Map.of());
        double allS = workS.values().stream().mapToDouble(Double::doubleValue).sum();
        double money = workS.entrySet().stream()
                .mapToDouble(each -> each.getValue() * book.weights().crewPerH(each.getKey()))
                .sum();
        return allS > 0
                ? money / allS
                : book.weights().crewPerH(line.startStop().crew());
    }
}
