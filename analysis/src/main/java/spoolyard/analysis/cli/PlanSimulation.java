package spoolyard.analysis.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.SequentialExperiment;
import spoolyard.analysis.experiment.Source;
import spoolyard.analysis.report.OrdersAtRisk;
import spoolyard.analysis.report.PlanOutcome;
import spoolyard.analysis.report.PlanTrial;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;

/**
 * Simulates plans on common random numbers. Immutable.
 *
 * @param book the orders and what plans are judged by
 * @param effort replications of each plan, and when there are enough
 * @param seed master seed
 * @param simulator makes the replications
 * @param console where progress may be shown
 */
record PlanSimulation(PlantBook book, Effort effort, long seed, Simulator simulator, Console console) {
    /**
     * Runs plants that differ in the sequence of their orders alone.
     *
     * @param plants the plants
     * @param first number of the first replication
     * @return shape {@code [plant][replication]}
     */
    private List<List<PlanOutcome>> outcomes(List<Plant> plants, int first) {
        List<Replicator> replicators = plants.stream()
                .map(plant -> simulator.of(plant, seed, EventLog.SILENT))
                .toList();
        CommonNumbers<PlanOutcome> numbers = new CommonNumbers<>(
                (plant, replication) ->
                        PlanOutcome.of(book, replicators.get(plant).replicate(replication)),
                Runtime.getRuntime().availableProcessors());
        Source<List<PlanOutcome>> source =
                (from, count, progress) -> numbers.run(plants.size(), first + from, count, progress);
        List<List<PlanOutcome>> byReplication = new SequentialExperiment<>(source, effort, unasked -> Double.NaN)
                .run(ProgressBar.on(console))
                .observations();
        return IntStream.range(0, plants.size())
                .mapToObj(plant -> byReplication.stream()
                        .map(replication -> replication.get(plant))
                        .toList())
                .toList();
    }

    /**
     * Runs some plans.
     *
     * @param plans the plans
     * @return shape {@code [plan][replication]}, from the first replication on
     */
    List<List<PlanOutcome>> of(List<PlanFigures> plans) {
        return outcomes(plans.stream().map(this::planned).toList(), 0);
    }

    /**
     * Runs a plan beside today's order and light to dark.
     *
     * @param plan the plan
     * @param first number of the first replication
     * @return the comparison
     */
    PlanTrial besideToday(PlanFigures plan, int first) {
        Plant now = book.plant();
        Map<String, Plant> plants = new LinkedHashMap<>();
        plants.put("this plan", planned(plan));
        plants.put("today's order", now);
        if (now.book().rule() != DispatchRule.LIGHTEST_NEXT) {
            OrderBook byColour = new OrderBook(
                    now.book().orders(),
                    DispatchRule.LIGHTEST_NEXT,
                    Map.of(),
                    now.book().acceptedShortfall());
            plants.put("light to dark", now.with(byColour));
        }
        return trial(plants, first);
    }

    /**
     * Runs a plan that was changed beside the plant as it was before.
     *
     * @param plan the plan after the change
     * @return the comparison
     */
    PlanTrial besideBefore(PlanFigures plan) {
        Map<String, Plant> plants = new LinkedHashMap<>();
        plants.put("this plan", planned(plan));
        plants.put("before", book.plant());
        return trial(plants, 0);
    }

    private PlanTrial trial(Map<String, Plant> plants, int first) {
        List<String> names = List.copyOf(plants.keySet());
        List<List<PlanOutcome>> outcomes = outcomes(List.copyOf(plants.values()), first);
        return new PlanTrial(IntStream.range(0, names.size())
                .mapToObj(i -> new PlanTrial.Contender(names.get(i), outcomes.get(i)))
                .toList());
    }

    private Plant planned(PlanFigures plan) {
        OrderBook now = book.plant().book();
        return book.plant()
                .with(new OrderBook(
                        now.orders(), DispatchRule.GIVEN_SEQUENCE, plan.sequence(), now.acceptedShortfall()));
    }

    /**
     * The orders a trial shows to be at risk.
     *
     * @param trial of this simulation
     * @param clock the plant's clock
     * @return with their probability of being late
     */
    OrdersAtRisk atRisk(PlanTrial trial, PlantClock clock) {
        return new OrdersAtRisk(
                book.plant().book().orders(),
                trial.contenders().get(0),
                trial.contenders().get(1),
                clock);
    }
}
