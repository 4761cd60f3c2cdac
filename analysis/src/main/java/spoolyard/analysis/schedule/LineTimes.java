package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.sequence.WorkingTime;
import spoolyard.analysis.sequence.WorkingTime.Span;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/**
 * When a line can work and how long it takes for an order, all at the mean: starts, shut-downs, maintenance, stoppages and
 * defects are allowed for; waiting for people is not.
 */
final class LineTimes {
    private static final double S_PER_H = 3600;

    private final Plant plant;
    private final Line line;
    private final double horizonS;
    private final double heatUpS;

    LineTimes(Plant plant, Line line) {
        this.plant = plant;
        this.line = line;
        this.horizonS = Ticks.toSeconds(plant.horizonTicks());
        this.heatUpS = plant.book().orders().stream()
                .map(order -> order.product())
                .filter(line::canMake)
                .mapToDouble(product -> Warming.fromColdS(line.startStop().heatUp(), product.polymer()))
                .max()
                .orElse(0);
    }

    /** Working periods less what it takes to start, to shut down and to purge at the end of a week, less planned stops. */
    WorkingTime hours() {
        List<Span> spans = new ArrayList<>();
        boolean isFirst = true;
        for (int i = 0; i < line.workingPeriods().size(); i++) {
            Window period = line.workingPeriods().get(i);
            double startS = Math.max(0, Ticks.toSeconds(period.startTick()));
            double endS = Math.min(horizonS, Ticks.toSeconds(period.endTick()));
            boolean runsOn = isFirst && line.runningAtStart() && startS == 0;
            double openS = startS + (runsOn ? 0 : startUpS());
            double closeS = endS - (period.endTick() <= Ticks.ofSeconds(horizonS) ? shutDownS() + endOfWeekS(i) : 0);
            if (endS > startS) {
                addWithoutStops(spans, openS, closeS);
                isFirst = false;
            }
        }
        return spans.isEmpty()
                ? WorkingTime.of(List.of(new Span(horizonS, horizonS + S_PER_H)))
                : WorkingTime.of(spans);
    }

    private boolean isWeekEnd(int period) {
        return line.workingPeriods().get(period).endTick() <= plant.horizonTicks()
                && plant.changeovers()
                        .endOfWeek()
                        .filter(rule -> rule.comesAfter(line.workingPeriods(), period, plant.horizonTicks()))
                        .isPresent();
    }

    private double endOfWeekS(int period) {
        return isWeekEnd(period)
                ? plant.changeovers().endOfWeek().orElseThrow().durationS().mean()
                : 0;
    }

    /** When the line has no more to do in weeks that end with a purge: worked seconds, rising. */
    List<Double> weekEndsS(WorkingTime hours) {
        return IntStream.range(0, line.workingPeriods().size())
                .filter(i -> line.workingPeriods().get(i).endTick() > 0 && isWeekEnd(i))
                .mapToObj(i -> hours.workedUntilS(
                        Ticks.toSeconds(line.workingPeriods().get(i).endTick())))
                .toList();
    }

    private void addWithoutStops(List<Span> spans, double openS, double closeS) {
        double reachedS = openS;
        for (Window stop : line.plannedStops()) {
            double stopS = Ticks.toSeconds(stop.startTick());
            double againS = Ticks.toSeconds(stop.endTick()) + restartS();
            if (stopS < closeS && againS > reachedS) {
                add(spans, reachedS, stopS);
                reachedS = Math.max(reachedS, againS);
            }
        }
        add(spans, reachedS, closeS);
    }

    private static void add(List<Span> spans, double startS, double endS) {
        if (endS > startS) {
            spans.add(new Span(startS, endS));
        }
    }

    private double startUpS() {
        StartStop how = line.startStop();
        return switch (how.endOfPeriod()) {
            case SHUT_DOWN -> Math.max(0, heatUpS + how.soakS().mean() - how.preheatLeadS()) + restartS();
            case HOT_STANDBY -> restartS();
            case RUN_ON -> 0;
        };
    }

    private double restartS() {
        StartStop how = line.startStop();
        return line.strands() * how.threadUpS().mean() + how.stabiliseS().mean();
    }

    private double shutDownS() {
        StartStop how = line.startStop();
        return how.endOfPeriod() == EndOfPeriod.SHUT_DOWN ? how.shutDownS().mean() : 0;
    }

    /** Time to make an order: its mass with overlength and the spools that will be rejected, at the rate, with all stops. */
    double runS(Order order) {
        double kg = plant.toMake(order)
                * order.product().spoolKg()
                * (1 + line.overlength())
                / (1 - Math.min(0.99, line.defectProbability()));
        double rateKgPerH = rateKgPerH(order.product());
        double stopped = line.stoppages().stream()
                .mapToDouble(stoppage -> lostShare(stoppage, rateKgPerH))
                .sum();
        return kg / rateKgPerH * S_PER_H * (1 + stopped);
    }

    /** What the line extrudes, or what its dryer gives, if that is less. */
    private double rateKgPerH(Product product) {
        double driedKgPerH = line.supply()
                .map(supply -> supply.limitKgPerH(supply.hopperKg(), product))
                .orElse(Double.POSITIVE_INFINITY);
        return Math.min(line.rateKgPerH(product), driedKgPerH);
    }

    /** Time lost for each second of making. A stop of one strand costs that strand's share of the output. */
    private double lostShare(Stoppage stoppage, double rateKgPerH) {
        double apartS = stoppage.clock() == Stoppage.Clock.MASS
                ? mean(stoppage.untilNext()) / rateKgPerH * S_PER_H
                : mean(stoppage.untilNext());
        double lostS = stoppage.durationS().mean() + againS(stoppage);
        return lostS / Math.max(apartS, lostS);
    }

    private double againS(Stoppage stoppage) {
        double stabiliseS =
                stoppage.stabiliseS().orElse(line.startStop().stabiliseS()).mean();
        double threadUpS = line.strands() * line.startStop().threadUpS().mean();
        return switch (stoppage.restart()) {
            case NONE -> 0;
            case STABILISE -> stabiliseS;
            case THREAD_UP -> threadUpS + stabiliseS;
            case COLD_START -> heatUpS + line.startStop().soakS().mean() + threadUpS + stabiliseS;
        };
    }

    private static double mean(Law law) {
        return law.mean();
    }
}
