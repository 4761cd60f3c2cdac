package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.scenarios.ScenarioReader;

/** The reference plant against figures worked out on paper from its line table, before the program existed. */
final class CapacitySummaryTest {
    private static Plant plant;
    private static CapacitySummary summary;

    @BeforeAll
    static void readReferencePlant() throws Exception {
        plant = ScenarioReader.read(Path.of("orrenvale"), List.of()).plant();
        summary = CapacitySummary.of(plant);
    }

    private static Line line(String name) {
        return plant.lines().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Product product(String polymer, double diameterMm, double spoolKg) {
        return plant.book().orders().stream()
                .map(Order::product)
                .filter(p ->
                        p.polymer().code().equals(polymer) && p.diameterMm() == diameterMm && p.spoolKg() == spoolKg)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Line, polymer, diameter, spool; then speed m/min, fill time s, least winder m/min, longest wait s, spools/h and
     * operator-hours an hour, rounded as on paper: v = kg/h / strands / (rho pi d^2/4), T = L/v, v T/(T - t), C/v - t
     * (two-position: T - unload), 3600 strands / T, spools/h * attended / 3600.
     */
    @ParameterizedTest
    @CsvSource({
        "L1, TPU, 1.75, 1.0, 40.1, 514, 41.7, 40, 7.0, 0.10",
        "L2, PLA, 1.75, 1.0, 100.6, 200, 110.5, 18, 18, 0.25",
        "L3, PLA, 1.75, 1.0, 100.6, 200, 110.5, 18, 18, 0.25",
        "L4, PLA, 1.75, 1.0, 67.1, 300, 71.8, 16, 24, 0.33",
        "L5, PLA, 1.75, 1.0, 122.9, 164, 126.0, 136, 44, 0.34",
        "L6, PLA, 1.75, 1.0, 122.9, 164, 126.0, 136, 44, 0.34",
        "L7, PLA, 1.75, 1.0, 100.6, 200, 110.5, 18, 36, 0.50",
        "L8, PLA, 2.85, 2.3, 42.1, 414, 44.8, 32, 8.7, 0.14"
    })
    void agreesWithThePaperTable(
            String line,
            String polymer,
            double diameterMm,
            double spoolKg,
            double speed,
            double fill,
            double winder,
            double wait,
            double spools,
            double heads) {
        SwapArithmetic swap = SwapArithmetic.of(line(line), product(polymer, diameterMm, spoolKg));

        assertThat(60 * swap.speedMPerS()).isCloseTo(speed, within(0.05));
        assertThat(swap.fillS()).isCloseTo(fill, within(0.5));
        assertThat(60 * swap.leastWinderMPerS()).isCloseTo(winder, within(0.05));
        assertThat(swap.longestWaitS()).isCloseTo(wait, within(0.5));
        assertThat(swap.spoolsPerH()).isCloseTo(spools, within(0.05));
        assertThat(swap.attendedHeads()).isCloseTo(heads, within(0.0051));
    }

    /** On paper: 67 499 kg PLA-equivalent over 218 kg/h in 480 h is 64.5 %; planned stops leave about 469 h a line. */
    @Test
    void spreadsTheBookAsLevelAsTheSingleLinesAllow() {
        double loadKg = 0;
        for (int i = 0; i < plant.lines().size(); i++) {
            loadKg += summary.lines().get(i).loadH() * plant.lines().get(i).nominalRateKgPerH();
        }

        assertThat(loadKg).isCloseTo(67_499, within(1.0));
        assertThat(summary.lines())
                .filteredOn(l -> List.of("L2", "L3", "L4", "L5", "L6", "L7").contains(l.line()))
                .allSatisfy(l -> assertThat(l.loadShare()).isBetween(0.64, 0.66));
    }

    /** On paper: TPU 229 + PA 51 + PC 44 h on L1; 6955 kg of 2.85 mm on L8 alone. */
    @Test
    void findsTheLinesThatNobodyCanRelieve() {
        assertThat(summary.lines().get(0).onlyHereH()).isCloseTo(324, within(1.0));
        double kgOfThickFilament = plant.book().orders().stream()
                .filter(order -> order.product().diameterMm() == 2.85)
                .mapToDouble(order -> LoadLevelling.massKg(plant, order))
                .sum();
        assertThat(kgOfThickFilament).isCloseTo(6955, within(1.0));
        assertThat(summary.lines().get(7).onlyHereH())
                .isEqualTo(summary.lines().get(7).loadH())
                .isGreaterThan(347);
    }

    /** On paper, all lines on 1 kg of their usual polymer: 2.26 operators; here on the book's mix of sizes, less. */
    @Test
    void loadsTheCrewByShift() {
        assertThat(summary.crew())
                .extracting(CrewCapacity::shift, CrewCapacity::heads)
                .containsExactly(tuple("D", 4), tuple("E", 4), tuple("N", 4), tuple("S", 2));
        double byDay = summary.crew().get(0).attendedHeads();
        assertThat(byDay).isBetween(1.9, 2.26);
        assertThat(summary.crew().get(2).attendedHeads()).isCloseTo(1.08 * byDay, within(1e-9));
    }

    /** On paper: 3 + 2 + 1 packers of 100 spools/h, less breaks, against 14 100 spools a week; some 260 wait at dawn. */
    @Test
    void findsThePackingWaitAtDawn() {
        StationCapacity packing = summary.stations().get(1);

        assertThat(packing.demandSpools()).isCloseTo(56_280, within(1e-6));
        assertThat(packing.capacitySpools()).isGreaterThan(4 * 14_100.0);
        assertThat(packing.peakWaiting()).isBetween(150.0, 350.0);
        assertThat(packing.longestClosedH()).isEqualTo(48);
        assertThat(packing.roomSpools()).isEqualTo(2400);
    }
}
