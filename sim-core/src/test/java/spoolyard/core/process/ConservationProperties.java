package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import spoolyard.core.plant.Plant;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/** Mass, spools and people are conserved after every event of any small plant, and time in state sums to the calendar. */
class ConservationProperties {
    @Property(tries = 300, seed = "20270301")
    void everythingAddsUpAfterEveryEvent(@ForAll long seed) {
        Plant plant = RandomPlants.of(seed).plant();
        PlantRun run = new PlantRun(plant, seed, 0, EventLog.SILENT);
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
        result.finishing().forEach(station -> assertThat(station.stateS().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum())
                .isCloseTo(station.servers() * horizonS, within(1e-6)));
        long lost = result.quality().losses().stream()
                .mapToLong(QualityResult.LossResult::spools)
                .sum();
        assertThat(result.flow().made() + result.flow().accepted())
                .isEqualTo(result.flow().packed()
                        + result.flow().waiting()
                        + result.flow().inWork()
                        + lost);
        assertThat(lossesOfLines(result))
                .isEqualTo(result.flow().made()
                        - result.lines().stream()
                                .mapToLong(LineResult::goodSpools)
                                .sum());
        assertLossesAreScrap(result);
        result.quality().approvals().forEach(ConservationProperties::assertHeldSpoolsAddUp);
    }

    /** Held spools are released, refused, or not yet judged. */
    private static void assertHeldSpoolsAddUp(QualityResult.ApprovalResult approvals) {
        assertThat(approvals.released()).isBetween(0L, approvals.held());
        assertThat(approvals.refused()).isBetween(0L, approvals.judged());
        if (approvals.refused() == 0) {
            assertThat(approvals.scrapped()).isZero();
        }
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
            for (ScrapCause cause : List.of(ScrapCause.REFUSED_BY_LAB, ScrapCause.EXPOSURE)) {
                double lostKg = result.quality().losses().stream()
                        .filter(loss -> loss.line().equals(line.line()) && loss.cause() == cause)
                        .mapToDouble(QualityResult.LossResult::kg)
                        .sum();
                assertThat(line.scrapKg().get(cause)).isCloseTo(lostKg, within(1e-9));
            }
        }
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

    @Property(tries = 40, seed = "20270302")
    void nobodyIsBusyLongerThanPresent(@ForAll long seed) {
        Plant plant = RandomPlants.of(seed).plant();

        RunResult result = new PlantRun(plant, seed, 0, EventLog.SILENT).run();

        result.crew().forEach(crew -> {
            assertThat(crew.busyS()).isLessThanOrEqualTo(crew.presentS() + 1e-6);
            assertThat(crew.walkingS()).isLessThanOrEqualTo(crew.busyS() + 1e-6);
        });
    }
}
