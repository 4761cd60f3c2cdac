package spoolyard.analysis.sample;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineResult.GaugeResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.LineUse;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.StationResult;
import spoolyard.core.record.Turn;

/**
 * Results that a run of a {@link SamplePlant} might give: they balance in mass, time and spools, but nothing was
 * simulated. The same seed and replication give the same result.
 */
public final class PlausibleRuns implements Replicator {
    private final Plant plant;
    private final long seed;

    /**
     * Prepares results.
     *
     * @param plant a sample plant
     * @param seed any value
     */
    public PlausibleRuns(Plant plant, long seed) {
        this.plant = plant;
        this.seed = seed;
    }

    @Override
    public RunResult replicate(int replication) {
        SplittableRandom random = new SplittableRandom(seed * 1_000_003 + replication);
        List<RunResult.ShiftResult> shifts =
                plant.shifts().stream().map(shift -> shift(shift, random)).toList();
        List<LineResult> lines = new ArrayList<>();
        for (int i = 0; i < plant.lines().size(); i++) {
            lines.add(line(i, shifts, random));
        }
        long made = lines.stream().mapToLong(LineResult::goodSpools).sum();
        return new RunResult(
                seed,
                replication,
                plant.horizonTicks(),
                made * 4,
                lines,
                shifts,
                plant.book().orders().stream()
                        .map(order -> order(order, random))
                        .toList(),
                changeovers(random),
                crew(random),
                stations(made, random),
                List.of(),
                new RunResult.FlowResult(0, made, 0, made - 40, 30, 10, 0, (made - 40) / 8, made / 320, 5400, 90),
                QualityResult.NONE,
                List.of(),
                List.of(),
                activity(random));
    }

    private RunResult.ShiftResult shift(Shift shift, SplittableRandom random) {
        int bound = "N".equals(shift.name()) ? 8 : 12;
        List<Integer> spools = plant.lines().stream()
                .map(line -> 92 + line.name().hashCode() % 7 + random.nextInt(bound))
                .toList();
        List<Double> kg = spools.stream().map(Integer::doubleValue).toList();
        List<Double> scrapKg =
                plant.lines().stream().map(line -> 2 + 3 * random.nextDouble()).toList();
        long end = Math.min(shift.endTick(), plant.horizonTicks());
        return new RunResult.ShiftResult(shift.name(), shift.startTick(), end, spools, kg, scrapKg);
    }

    private LineResult line(int index, List<RunResult.ShiftResult> shifts, SplittableRandom random) {
        Line line = plant.lines().get(index);
        long spools = shifts.stream()
                .mapToLong(shift -> shift.goodSpools().get(index))
                .sum();
        double inProcessKg = random.nextDouble();
        Map<ScrapCause, Double> scrapKg = scrap(spools, random);
        double scrap =
                scrapKg.values().stream().mapToDouble(Double::doubleValue).sum();
        double outsideKg = scrapKg.get(ScrapCause.COLOUR_PURGE) + scrapKg.get(ScrapCause.START_UP);
        double slowedLossKg = 0.004 * spools;
        double ratedKg = spools + scrap + inProcessKg - outsideKg + slowedLossKg;
        Map<LineState, Double> stateS = states(line, ratedKg / line.nominalRateKgPerH() * 3600, random);
        long swaps = spools + 8;
        return new LineResult(
                line.name(),
                stateS,
                spools,
                8,
                spools,
                scrapKg,
                spools + scrap + inProcessKg,
                inProcessKg,
                ratedKg,
                swaps,
                overflows(swaps),
                overflowM(),
                slowedLossKg,
                0,
                60,
                14 + random.nextDouble(),
                140 + 20 * random.nextDouble(),
                List.of(new LineResult.StoppageResult("strand break", 7, 7 * 900.0, 7 * 120.0)),
                stepWaste(scrapKg),
                GaugeResult.NONE,
                LineUse.NONE);
    }

    private static Map<ScrapCause, Double> stepWaste(Map<ScrapCause, Double> scrapKg) {
        Map<ScrapCause, Double> kg = new EnumMap<>(scrapKg);
        kg.replaceAll((cause, all) -> cause == ScrapCause.COLOUR_PURGE || cause == ScrapCause.START_UP ? all : 0.0);
        return kg;
    }

    private List<Activity> activity(SplittableRandom random) {
        List<Activity> all = new ArrayList<>();
        double horizonS = Ticks.toSeconds(plant.horizonTicks());
        plant.lines().forEach(line -> all.add(activity(Activity.Kind.LINE, line.name(), horizonS, random)));
        plant.crew().roles().forEach(role -> all.add(activity(Activity.Kind.CREW, role.name(), horizonS, random)));
        all.add(activity(Activity.Kind.FINISHING, "sealing", horizonS, random));
        all.add(activity(Activity.Kind.FINISHING, "packing", horizonS, random));
        return all;
    }

    private static Activity activity(Activity.Kind kind, String name, double horizonS, SplittableRandom random) {
        long sole = Ticks.ofSeconds(horizonS * 0.02 * random.nextDouble());
        long periods = 40 + random.nextInt(9);
        List<Turn> turns = List.of(new Turn(0, 0, sole, sole + sole / 2));
        return new Activity(kind, name, horizonS * 0.6, periods, horizonS * 0.02, turns);
    }

    private static Map<OverflowCause, Long> overflows(long swaps) {
        return Map.of(
                OverflowCause.NO_CREW,
                swaps / 60,
                OverflowCause.SWAP_TOO_SLOW,
                swaps / 200,
                OverflowCause.RACK_FULL,
                0L,
                OverflowCause.CARRIED_OVER,
                swaps / 300);
    }

    private static Map<OverflowCause, Double> overflowM() {
        return Map.of(
                OverflowCause.NO_CREW,
                55.0,
                OverflowCause.SWAP_TOO_SLOW,
                12.0,
                OverflowCause.RACK_FULL,
                0.0,
                OverflowCause.CARRIED_OVER,
                8.0);
    }

    private static Map<ScrapCause, Double> scrap(long spools, SplittableRandom random) {
        Map<ScrapCause, Double> kg = new EnumMap<>(ScrapCause.class);
        double share = 0.024;
        for (ScrapCause cause : ScrapCause.values()) {
            kg.put(cause, spools * share * (0.8 + 0.4 * random.nextDouble()));
            share *= 0.7;
        }
        kg.put(ScrapCause.SLOWED, 0.0);
        return kg;
    }

    private Map<LineState, Double> states(Line line, double runningS, SplittableRandom random) {
        Map<LineState, Double> seconds = new EnumMap<>(LineState.class);
        Stream.of(LineState.values()).forEach(state -> seconds.put(state, 0.0));
        double scheduledS = line.workingPeriods().stream()
                .mapToDouble(period -> Ticks.toSeconds(period.endTick() - period.startTick()))
                .sum();
        double lostS = Math.max(0, scheduledS - runningS);
        double setUp = 0.2 + 0.1 * random.nextDouble();
        seconds.put(LineState.RUNNING, scheduledS - lostS);
        seconds.put(LineState.SET_UP, lostS * setUp);
        seconds.put(LineState.PURGING, lostS * 0.15);
        seconds.put(LineState.STARTING, lostS * 0.1);
        seconds.put(LineState.DOWN, lostS * 0.2);
        seconds.put(LineState.PLANNED_STOP, lostS * 0.1);
        seconds.put(LineState.WAITING_FOR_CREW, lostS * (0.45 - setUp));
        seconds.put(LineState.NOT_SCHEDULED, Ticks.toSeconds(plant.horizonTicks()) - scheduledS);
        return seconds;
    }

    private RunResult.OrderResult order(Order order, SplittableRandom random) {
        long packed = order.dueTick() + (long) ((random.nextDouble() - 0.85) * 40 * Ticks.PER_HOUR);
        if (packed > plant.horizonTicks()) {
            return new RunResult.OrderResult(
                    order.id(), order.lines().get(0), packed / 2, Ticks.NEVER, Ticks.NEVER, 380, 350);
        }
        return new RunResult.OrderResult(
                order.id(), order.lines().get(0), packed / 2, packed - Ticks.PER_HOUR, packed, 400, 400);
    }

    private List<RunResult.ChangeoverResult> changeovers(SplittableRandom random) {
        List<RunResult.ChangeoverResult> changeovers = new ArrayList<>();
        for (Line line : plant.lines()) {
            long start = (long) (10 * random.nextDouble() * Ticks.PER_HOUR);
            changeovers.add(changeover(line, "", "RED", start, random));
            changeovers.add(changeover(line, "RED", "BLK", start + 5 * Ticks.PER_HOUR, random));
            if (random.nextDouble() < 0.4) {
                changeovers.add(changeover(line, "BLK", "NAT", start + 9 * Ticks.PER_HOUR, random));
            }
        }
        return changeovers;
    }

    private static RunResult.ChangeoverResult changeover(
            Line line, String from, String to, long start, SplittableRandom random) {
        String before = from.isEmpty() ? "" : "PLA " + from + " 1.75 mm";
        double purgeKg = "NAT".equals(to) ? 9.8 : 1.9;
        long end = start + (long) ((0.3 + 0.4 * random.nextDouble()) * Ticks.PER_HOUR);
        return new RunResult.ChangeoverResult(
                line.name(),
                before,
                "PLA " + to + " 1.75 mm",
                from,
                to,
                start,
                end,
                purgeKg,
                360,
                120 * random.nextDouble());
    }

    private List<RunResult.CrewResult> crew(SplittableRandom random) {
        List<RunResult.CrewResult> crew = new ArrayList<>();
        for (Role role : plant.crew().roles()) {
            for (String shift : List.of("D", "E", "N")) {
                double present = 4 * 7.5 * 3600 * 5;
                double busy = present * (0.5 + 0.2 * random.nextDouble());
                crew.add(new RunResult.CrewResult(
                        role.name(), shift, present, busy, busy * 0.1, 9000, present + 9000, 600, 12, 300));
            }
        }
        return crew;
    }

    private List<StationResult> stations(long made, SplittableRandom random) {
        double serverS = 2 * Ticks.toSeconds(plant.horizonTicks());
        return Stream.of("sealing", "packing")
                .map(name -> {
                    double working = serverS * (0.4 + 0.1 * random.nextDouble());
                    Map<ServerState, Double> stateS = new EnumMap<>(ServerState.class);
                    Stream.of(ServerState.values()).forEach(state -> stateS.put(state, 0.0));
                    stateS.put(ServerState.WORKING, working);
                    stateS.put(ServerState.STARVED, serverS - working);
                    return new StationResult(name, 2, stateS, made, 12, 40, 3000, 8, 260, 0.4);
                })
                .toList();
    }
}
