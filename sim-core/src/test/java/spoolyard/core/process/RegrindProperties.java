package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.Regrind.Scrap;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.StockResult;

/** Regrind adds up after every event of any small plant, and it changes nothing but what is fed. */
class RegrindProperties {
    private static final List<Scrap> ALL = List.of(Scrap.values());

    /** A random plant that grinds its scrap for its black. */
    static Plant grinding(long seed) {
        Plant plant = RandomPlants.of(seed).plant();
        Random random = new Random(seed + 77);
        Regrind regrind = new Regrind(
                List.of("PLA"),
                List.of("BLK"),
                0.05 + random.nextInt(4) * 0.3,
                random.nextInt(4) == 0 ? List.of(Scrap.SPOOLS) : ALL,
                new Regrind.Grinding(1 + random.nextInt(5), random.nextInt(3) * 0.02, 1 + random.nextInt(40)),
                Map.of("PLA", (double) random.nextInt(3)));
        return regrinding(plant, regrind);
    }

    private static Plant regrinding(Plant plant, Regrind regrind) {
        Materials was = plant.materials();
        return plant.with(new Materials(was.stocks(), was.whenShort(), Optional.of(regrind)));
    }

    private static RunResult run(Plant plant, long seed) {
        return new PlantRun(plant, seed, 0, EventLog.SILENT).run();
    }

    @Property(tries = 300, seed = "20270320")
    void regrindAddsUpAfterEveryEvent(@ForAll long seed) {
        Plant plant = grinding(seed);
        CrewBook crew = new CrewBook(plant);
        PlantRun run = new PlantRun(plant, seed, 0, crew);
        Audit audit = new Audit(run, plant.shifts());
        run.engine().afterEach(audit::check);

        RunResult result = run.run();

        assertThat(StockAudit.findings(plant, result)).isEmpty();
        assertThat(crew.findings(plant, result)).isEmpty();
        assertThat(SecondAccount.findings(plant, result)).isEmpty();
        assertThat(StockAudit.dryers(run, result)).isEmpty();
    }

    @Property(tries = 100, seed = "20270321")
    void nothingStandsStillForWantOfRegrind(@ForAll long seed) {
        Plant plant = grinding(seed);
        PlantRun run = new PlantRun(plant, seed, 0, EventLog.SILENT);
        Audit audit = new Audit(run, plant.shifts());
        run.start();

        for (int slice = 1; slice <= 200; slice++) {
            run.engine().runUntil(plant.horizonTicks() / 200 * slice);
            audit.checkLiveness();
        }
    }

    /** A hopper of natural that is loaded by the batch lasts longer; all other plants run alike. */
    @Property(tries = 100, seed = "20270322")
    void whereResinNeverRunsOutRegrindChangesOnlyWhatIsFed(@ForAll long seed) {
        Plant plant = grinding(seed);
        Optional<Regrind> regrind = plant.materials().regrind();
        boolean isThroatByBatch = plant.lines().stream().anyMatch(line -> line.supply()
                .filter(how -> how.batchKg() > 0 && how.layout() == MaterialSupply.Layout.DOSE_AT_THROAT)
                .isPresent());
        Materials endless = new Materials(List.of(), Materials.WhenShort.WAIT, isThroatByBatch ? none() : regrind);

        RunResult with = run(plant.with(endless), seed);
        RunResult without = run(plant.with(Materials.NONE), seed);

        assertRunsAlike(with, without);
    }

    private static Optional<Regrind> none() {
        return Optional.of(partition("BLK"));
    }

    /** Ground, but without room in the store. */
    private static Regrind partition(String taker) {
        return new Regrind(List.of("PLA"), List.of(taker), 0.1, ALL, new Regrind.Grinding(1, 0.1, 0), Map.of());
    }

    private static void assertRunsAlike(RunResult with, RunResult without) {
        assertThat(with.lines()).isEqualTo(without.lines());
        assertThat(with.shifts()).isEqualTo(without.shifts());
        assertThat(with.orders()).isEqualTo(without.orders());
        assertThat(with.changeovers()).isEqualTo(without.changeovers());
        assertThat(with.crew()).isEqualTo(without.crew());
        assertThat(with.finishing()).isEqualTo(without.finishing());
        assertThat(with.flow()).isEqualTo(without.flow());
        assertThat(with.quality()).isEqualTo(without.quality());
        assertThat(with.activity()).isEqualTo(without.activity());
    }

    /** Black and white only: what is brought if black takes it is white's, and the other way round; no scrap is in both. */
    @Property(tries = 100, seed = "20270323")
    void everyKilogramOfCleanScrapBelongsToOneProduct(@ForAll long seed) {
        Plant plant = RandomPlants.of(seed).plant();

        RunResult white = run(regrinding(plant, partition("BLK")), seed);
        RunResult black = run(regrinding(plant, partition("WHT")), seed);

        assertRunsAlike(white, black);
        double cleanKg = white.lines().stream()
                .flatMap(line -> line.scrapKg().entrySet().stream())
                .filter(entry -> StockAudit.isClean(entry.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
        assertThat(white.regrind().get(0).broughtKg() + black.regrind().get(0).broughtKg())
                .isCloseTo(cleanKg, within(1e-9 * (1 + cleanKg)));
    }

    @Example
    void randomPlantsUseEveryBranch() {
        List<RunResult> runs = new Random(20270324)
                .longs(200)
                .mapToObj(seed -> run(grinding(seed), seed))
                .toList();

        List<RegrindResult> regrind =
                runs.stream().flatMap(run -> run.regrind().stream()).toList();
        assertThat(regrind).anyMatch(each -> each.takenKg() > 1);
        assertThat(regrind).anyMatch(each -> each.noRoomKg() > 0);
        assertThat(regrind).anyMatch(each -> each.dustKg() > 0);
        List<StockResult> stocks = runs.stream()
                .flatMap(run -> run.stocks().stream())
                .filter(stock -> stock.kind().equals("regrind"))
                .toList();
        assertThat(stocks).anyMatch(stock -> stock.timesOut() > 2);
        assertThat(stocks).anyMatch(stock -> stock.timesOut() == 0 && stock.used() > 0);
    }
}
