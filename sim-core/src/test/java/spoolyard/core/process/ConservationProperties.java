package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.ServerState;

/**
 * Mass, spools and people are conserved after every event of any small plant; time in state, time of people and pay sum to
 * the calendar, and energy and money to what the counters give.
 */
class ConservationProperties {
    @Property(tries = 300, seed = "20270301")
    void everythingAddsUpAfterEveryEvent(@ForAll long seed) {
        Plant plant = RandomPlants.of(seed).plant();
        CrewBook crew = new CrewBook(plant);
        PlantRun run = new PlantRun(plant, seed, 0, crew);
        Audit audit = new Audit(run, plant.shifts());
        run.engine().afterEach(audit::check);

        RunResult result = run.run();

        double horizonS = Ticks.toSeconds(plant.horizonTicks());
        for (LineResult line : result.lines()) {
            assertThat(line.stateS().values().stream()
                            .mapToDouble(Double::doubleValue)
                            .sum())
                    .isCloseTo(horizonS, within(1e-6));
            assertThat(line.fedKg())
                    .isCloseTo(
                            line.goodKg() + line.gauge().bGradeKg() + line.totalScrapKg() + line.inProcessKg(),
                            within(1e-8 * (1 + line.fedKg())));
        }
        result.lines().forEach(line -> assertProductionAddsUp(plant, line));
        result.finishing().forEach(station -> assertThat(station.stateS().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum())
                .isCloseTo(station.servers() * horizonS, within(1e-6)));
        assertSpoolsAreFound(plant, result);
        assertThat(lossesOfLines(result))
                .isEqualTo(result.flow().made()
                        - result.lines().stream()
                                .mapToLong(LineResult::goodSpools)
                                .sum());
        assertLossesAreScrap(result);
        result.quality().approvals().forEach(ConservationProperties::assertHeldSpoolsAddUp);
        assertThat(StockAudit.findings(plant, result)).isEmpty();
        assertThat(crew.findings(plant, result)).isEmpty();
        assertThat(SecondAccount.findings(plant, result)).isEmpty();
        assertThat(StockAudit.dryers(run, result)).isEmpty();
    }

    /** Spools at the start, made and from outside are packed, waiting, in work or lost; orders and lines agree on them. */
    private static void assertSpoolsAreFound(Plant plant, RunResult result) {
        long lost = result.quality().losses().stream()
                .mapToLong(QualityResult.LossResult::spools)
                .sum();
        assertThat(result.flow().opening())
                .isEqualTo(plant.finishing().opening().stream()
                        .mapToLong(OpeningSpools::spools)
                        .sum());
        assertThat(result.orders().stream()
                        .mapToLong(RunResult.OrderResult::goodSpools)
                        .sum())
                .isEqualTo(result.lines().stream()
                        .mapToLong(LineResult::goodSpools)
                        .sum());
        assertThat(result.flow().opening()
                        + result.flow().made()
                        + result.flow().accepted())
                .isEqualTo(result.flow().packed()
                        + result.flow().waiting()
                        + result.flow().inWork()
                        + lost);
    }

    /** Held spools are released, refused, or not yet judged. */
    private static void assertHeldSpoolsAddUp(QualityResult.ApprovalResult approvals) {
        assertThat(approvals.released()).isBetween(0L, approvals.held());
        assertThat(approvals.refused()).isBetween(0L, approvals.judged());
        if (approvals.refused() == 0) {
            assertThat(approvals.scrapped()).isZero();
        }
    }

    @Property(tries = 100, seed = "20270310")
    void storesThatNeverRunOutChangeNothing(@ForAll long seed) {
        Plant plant = RandomPlants.of(seed).plant();
        List<StockItem> endless = plant.materials().stocks().stream()
                .map(item -> new StockItem(
                        item.kind(),
                        item.name(),
                        item.spoolKg(),
                        Double.POSITIVE_INFINITY,
                        List.of(),
                        Optional.empty()))
                .toList();

        RunResult with = new PlantRun(
                        plant.with(new Materials(endless, plant.materials().whenShort(), Optional.empty())),
                        seed,
                        0,
                        EventLog.SILENT)
                .run();
        RunResult without = new PlantRun(plant.with(Materials.NONE), seed, 0, EventLog.SILENT).run();

        assertThat(with.events()).isEqualTo(without.events());
        assertThat(with.lines()).isEqualTo(without.lines());
        assertThat(with.shifts()).isEqualTo(without.shifts());
        assertThat(with.orders()).isEqualTo(without.orders());
        assertThat(with.changeovers()).isEqualTo(without.changeovers());
        assertThat(with.crew()).isEqualTo(without.crew());
        assertThat(with.finishing()).isEqualTo(without.finishing());
        assertThat(with.flow()).isEqualTo(without.flow());
        assertThat(with.quality()).isEqualTo(without.quality());
    }

    @Example
    void randomPlantsRunOutOfEverything() {
        List<RunResult> runs = new Random(20270311)
                .longs(300)
                .mapToObj(seed -> new PlantRun(RandomPlants.of(seed).plant(), seed, 0, EventLog.SILENT).run())
                .toList();

        for (LineState state : List.of(LineState.NO_RESIN, LineState.NO_CONCENTRATE, LineState.NO_EMPTY_SPOOL)) {
            assertThat(runs).anyMatch(run -> run.lines().stream()
                    .anyMatch(line -> line.stateS().get(state) > 0));
        }
        assertThat(runs).anyMatch(run -> run.finishing().stream()
                .anyMatch(station -> station.stateS().get(ServerState.NO_CARTON) > 0));
        assertThat(runs).anyMatch(run -> run.stocks().stream().anyMatch(stock -> stock.ordersPlaced() > 1));
    }

    /**
     * What passed the die in production is good, second quality, still on the line, or scrap that no step ran to waste.
     * The rest is waste of strands under repair beside one that makes product: none where there is but one strand, never
     * more than the scrap of stoppages.
     */
    private static void assertProductionAddsUp(Plant plant, LineResult line) {
        double otherScrapKg = 0;
        for (ScrapCause cause : ScrapCause.values()) {
            double kg = line.scrapKg().get(cause) - line.stepWasteKg().get(cause);
            assertThat(kg).as(cause.label()).isGreaterThanOrEqualTo(-1e-9 * (1 + line.fedKg()));
            otherScrapKg += cause == ScrapCause.STOPPAGE ? 0 : kg;
        }
        double madeKg = line.ratedKg() - line.slowedLossKg();
        double strandKg = madeKg - line.goodKg() - line.gauge().bGradeKg() - line.inProcessKg() - otherScrapKg;
        double slackKg = 1e-8 * (1 + line.fedKg());
        boolean isSingle = plant.lines().get(0).strands() == 1;
        double mostKg = isSingle
                ? 0
                : line.scrapKg().get(ScrapCause.STOPPAGE) - line.stepWasteKg().get(ScrapCause.STOPPAGE);
        assertThat(strandKg).isBetween(-slackKg, mostKg + slackKg);
    }

    private static long lossesOfLines(RunResult result) {
        return result.quality().losses().stream()
                .filter(loss -> !loss.line().isEmpty())
                .mapToLong(QualityResult.LossResult::spools)
                .sum();
    }

    /** The mass of the spools lost is in the scrap of their line, under their cause. */
    private static void assertLossesAreScrap(RunResult result) {
        for (LineResult line : result.lines()) {
            assertThat(line.scrapKg().get(ScrapCause.REFUSED_COLOUR))
                    .isGreaterThanOrEqualTo(lostKg(result, line, ScrapCause.REFUSED_COLOUR) - 1e-9);
            for (ScrapCause cause : List.of(ScrapCause.REFUSED_BY_LAB, ScrapCause.EXPOSURE)) {
                assertThat(line.scrapKg().get(cause)).isCloseTo(lostKg(result, line, cause), within(1e-9));
            }
        }
    }

    private static double lostKg(RunResult result, LineResult line, ScrapCause cause) {
        return result.quality().losses().stream()
                .filter(loss -> loss.line().equals(line.line()) && loss.cause() == cause)
                .mapToDouble(QualityResult.LossResult::kg)
                .sum();
    }

    @Property(tries = 200, seed = "20270303")
    void nothingStandsStillForGood(@ForAll long seed) {
        Plant plant = RandomPlants.of(seed).plant();
        PlantRun run = new PlantRun(plant, seed, 0, EventLog.SILENT);
        Audit audit = new Audit(run, plant.shifts());
        run.start();

        for (int slice = 1; slice <= 200; slice++) {
            run.engine().runUntil(plant.horizonTicks() / 200 * slice);
            audit.checkLiveness();
        }
    }
}
