package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.StockItem.Kind;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.StockResult;

/** Each check of the stores' books fires when the defect it is there for is planted. */
class StockAuditTest {
    private Plant plant;
    private PlantRun run;

    @BeforeEach
    void runForAnHour() {
        PlantSketch sketch = new PlantSketch()
                .order("SO-1", PlantSketch.BLACK_PLA, 1000)
                .store(Kind.RESIN, "PLA", 500)
                .store(Kind.CONCENTRATE, "BLK", 50)
                .store(Kind.SPOOLS, "1 kg", 500);
        Regrind regrind = new Regrind(
                List.of("PLA"),
                List.of("BLK"),
                0.1,
                List.of(Regrind.Scrap.values()),
                new Regrind.Grinding(2, 0.1, 100),
                Map.of("PLA", 50.0));
        sketch.materials = new Materials(sketch.materials.stocks(), sketch.materials.whenShort(), Optional.of(regrind));
        plant = sketch.plant();
        run = new PlantRun(plant, 1, 0, EventLog.SILENT);
        run.start();
        run.engine().runUntil(PlantSketch.ticks(3650));
    }

    private Stock stock(Kind kind) {
        return run.stores().stocks().stream()
                .filter(stock -> stock.item().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private List<String> betweenEvents() {
        return StockAudit.findings(run);
    }

    // ------------------------------------------------------------------ between two events

    @Test
    void findsNothingInASoundStore() {
        assertThat(betweenEvents()).isEmpty();
    }

    @Test
    void findsMoreTakenThanThereIs() {
        Stock resin = stock(Kind.RESIN);
        resin.take(resin.free() + 1);

        assertThat(betweenEvents()).containsExactly("resin PLA: " + resin.level() + " in store");
    }

    @Test
    void findsMoreSpoolsOnSpindlesThanThereAre() {
        stock(Kind.SPOOLS).mount(1000);

        assertThat(betweenEvents()).anyMatch(finding -> finding.startsWith("empty spools 1 kg: 1001 on spindles of "));
    }

    @Test
    void findsASpoolOnNoSpindle() {
        stock(Kind.SPOOLS).mount(1);

        assertThat(betweenEvents()).containsExactly("2 spools of the stores on spindles but 1 found there");
    }

    @Test
    void findsRegrindOutOfThinAir() {
        stock(Kind.REGRIND).receive(1);

        assertThat(betweenEvents()).containsExactly("regrind of PLA is off by 1.0 kg");
    }

    /** Of 10 kg brought, 5 kg ground, 2 kg without room and 2 kg held: 1 kg is nowhere. */
    @Test
    void findsScrapThatLeftABinForNowhere() {
        List<String> broken = new ArrayList<>();

        StockAudit.bin(new RegrindResult("PLA", 10, 5, 0.5, 2, 2, 0), 4.5, broken);

        assertThat(broken).containsExactly("scrap of PLA is off by 1.0 kg");
    }

    @Test
    void findsScrapToGrindThatNoLineHasBooked() {
        run.stores().bins().get(0).bring(ScrapCause.START_UP, 1);

        assertThat(betweenEvents()).containsExactly("1.0 kg of scrap to grind but 0.0 kg booked");
    }

    // ------------------------------------------------------------------ at the end

    private RunResult result() {
        return new PlantRun(plant, 1, 0, EventLog.SILENT).run();
    }

    @Test
    void findsResinThatCameFromNoDryer() {
        PlantRun whole = new PlantRun(plant, 1, 0, EventLog.SILENT);
        RunResult result = whole.run();
        assertThat(StockAudit.dryers(whole, result)).isEmpty();

        whole.stores().stocks().get(0).take(1);

        assertThat(StockAudit.dryers(whole, result))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("resin PLA by way of");
    }

    private List<String> findings(RunResult result) {
        return StockAudit.findings(plant, result);
    }

    /** The result with the books of one kind of stock falsified. */
    private List<String> withStock(String kind, UnaryOperator<StockResult> falsified) {
        RunResult result = result();
        List<StockResult> stocks = result.stocks().stream()
                .map(stock -> stock.kind().equals(kind) ? falsified.apply(stock) : stock)
                .toList();
        return findings(with(result, stocks, result.regrind()));
    }

    private List<String> withRegrind(RegrindResult falsified) {
        RunResult result = result();
        return findings(with(result, result.stocks(), List.of(falsified)));
    }

    private static RunResult with(RunResult result, List<StockResult> stocks, List<RegrindResult> regrind) {
        return new RunResult(
                result.masterSeed(),
                result.replication(),
                result.horizonTicks(),
                result.events(),
                result.lines(),
                result.shifts(),
                result.orders(),
                result.changeovers(),
                result.crew(),
                result.finishing(),
                result.inbound(),
                result.flow(),
                result.quality(),
                stocks,
                regrind,
                result.activity());
    }

    /** Some more used, some less left; what is left and the least there was as given. */
    private static StockResult used(StockResult stock, double more, double less, double lowest) {
        return new StockResult(
                stock.kind(),
                stock.name(),
                stock.unit(),
                stock.opening(),
                stock.received(),
                stock.used() + more,
                stock.closing() - less,
                stock.mean(),
                lowest,
                stock.outS(),
                stock.timesOut(),
                stock.lineWaitS(),
                stock.ordersPlaced());
    }

    @Test
    void findsNothingInASoundResult() {
        assertThat(findings(result())).isEmpty();
    }

    @Test
    void findsASumThatDoesNotAddUp() {
        assertThat(withStock("empty spools", stock -> used(stock, 0, 1, stock.lowest())))
                .containsExactly("empty spools 1 kg: opening, received, used and closing do not add up");
    }

    @Test
    void findsAStockThatWasBelowNothing() {
        assertThat(withStock("concentrate", stock -> used(stock, 0, 0, -1)))
                .containsExactly("concentrate BLK: was -1.0");
    }

    @Test
    void findsResinUsedThatNoLineWasFed() {
        assertThat(withStock("resin", stock -> used(stock, 1, 1, stock.lowest())))
                .anyMatch(finding -> finding.matches("resin PLA: .* used but .* fed"));
    }

    @Test
    void findsConcentrateUsedThatNoLineWasFed() {
        assertThat(withStock("concentrate", stock -> used(stock, 1, 1, stock.lowest())))
                .anyMatch(finding -> finding.matches("concentrate BLK: .* used but .* fed"));
    }

    @Test
    void findsRegrindFedAboveItsShare() {
        assertThat(withStock("regrind", stock -> used(stock, 1, 1, stock.lowest())))
                .anyMatch(finding -> finding.matches("regrind PLA: .* used but .* fed"));
    }

    @Test
    void findsAnEmptySpoolUsedThatWasNotWound() {
        assertThat(withStock("empty spools", stock -> used(stock, 1000, 1000, stock.lowest())))
                .anyMatch(finding -> finding.matches(".* empty spools used but .* wound"));
    }

    @Test
    void findsDustThatIsNotItsShare() {
        assertThat(withRegrind(new RegrindResult("PLA", 0, 0, 0.5, 0, 0, 0))).contains("regrind PLA: 0.5 kg of dust");
    }

    @Test
    void findsABatchHeldBack() {
        assertThat(withRegrind(new RegrindResult("PLA", 0, 0, 0, 0, 2, 0))).contains("regrind PLA: 2.0 kg held");
    }

    @Test
    void findsMoreGroundThanWasScrap() {
        assertThat(withRegrind(new RegrindResult("PLA", 1e6, 0, 0, 0, 0, 0)))
                .anyMatch(finding -> finding.startsWith("regrind PLA: 1000000.0 kg of "));
    }
}
