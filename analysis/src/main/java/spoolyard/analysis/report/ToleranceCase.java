package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.gauge.GaugeLoop;
import spoolyard.core.gauge.SpoolLoss;
import spoolyard.core.gauge.ToleranceFinding;
import spoolyard.core.plant.DiameterControl;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;

/**
 * A line with a product, for which tolerances are compared. Immutable.
 *
 * @param line a line whose gauge has a diameter control
 * @param product what it makes
 */
public record ToleranceCase(Line line, Product product) {
    private static final double S_PER_H = 3600;

    /**
     * What the order book asks of a line, a case for each polymer and diameter, in the size most ordered.
     *
     * @param plant the plant
     * @param line a line of it
     * @return the cases, that with most mass ordered first; none if its gauge has no diameter control or nothing ordered
     *     may be made on it
     */
    public static List<ToleranceCase> of(Plant plant, Line line) {
        if (line.gauge().flatMap(Gauge::control).isEmpty()) {
            return List.of();
        }
        Map<String, Map<Product, Double>> kgByMelt = new LinkedHashMap<>();
        for (Order order : plant.book().orders()) {
            if (order.lines().contains(line.name())) {
                Product product = order.product();
                kgByMelt.computeIfAbsent(name(product), melt -> new LinkedHashMap<>())
                        .merge(product, order.spools() * product.spoolKg(), Double::sum);
            }
        }
        return kgByMelt.values().stream()
                .sorted(Comparator.comparingDouble(products -> -sum(products)))
                .map(products -> new ToleranceCase(line, most(products)))
                .toList();
    }

    private static double sum(Map<Product, Double> kg) {
        return kg.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static Product most(Map<Product, Double> kg) {
        return kg.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private static String name(Product product) {
        return product.polymer().code() + " " + product.diameterMm() + " mm";
    }

    /**
     * Name of the product for people.
     *
     * @return for example {@code PLA 1.75 mm}
     */
    String name() {
        return name(product);
    }

    DiameterControl control() {
        return line.gauge().flatMap(Gauge::control).orElseThrow();
    }

    Gauge.Policy policy() {
        return line.gauge().orElseThrow().policy();
    }

    double speedMPerS() {
        return line.speedMPerS(product.polymer(), product.diameterMm());
    }

    /**
     * Its gauge loop.
     *
     * @return at the speed of the product
     */
    public GaugeLoop loop() {
        return GaugeLoop.of(control(), speedMPerS());
    }

    /**
     * Excursions closer than this count as one.
     *
     * @return seconds
     */
    public double joinS() {
        return control().joinS();
    }

    /**
     * The tolerance of the scenario.
     *
     * @return mm
     */
    public double presentMm() {
        return control().toleranceMm(product.polymer().code());
    }

    double strandKgPerH() {
        return line.rateKgPerH(product) / line.strands();
    }

    double spoolS() {
        return product.spoolKg() * (1 + line.overlength()) / strandKgPerH() * S_PER_H;
    }

    private SpoolLoss loss(ToleranceFinding finding) {
        return new SpoolLoss(finding.meanInToleranceS(), finding.lengthS().mean(), spoolS());
    }

    /** Share of the spools on which an excursion falls. */
    double touchedShare(ToleranceFinding finding) {
        return loss(finding).touchedShare();
    }

    /** Share of the mass that is no first quality: scrap, or second quality if that is the policy. */
    double lostShare(ToleranceFinding finding) {
        if (policy() instanceof Gauge.Policy.Cut) {
            return loss(finding).cutShare();
        }
        double rejected = policy() instanceof Gauge.Policy.Flag flag ? flag.rejected() : 1;
        return rejected * touchedShare(finding);
    }

    /** What the lost mass becomes. */
    String lostAs() {
        return policy() instanceof Gauge.Policy.BGrade ? "B-grade" : "scrap";
    }
}
