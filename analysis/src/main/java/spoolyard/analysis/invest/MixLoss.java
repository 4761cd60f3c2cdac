package spoolyard.analysis.invest;

import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.bottleneck.Contribution;
import spoolyard.analysis.buffer.Loss;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.CrewResult;

/**
 * What is kept of a replication of a mix. Immutable.
 *
 * @param held what the lines that are held against the target lost at full accumulators
 * @param lostMoney what each line lost there: material of the waste, contribution of all that was not sold
 * @param contribution contribution of all good kilograms; not a number where nobody says what a kilogram brings
 * @param pay paid hours of everybody: how many, how many at the usual rate, what they cost
 * @param busiestShare of the crews that change spools, the greatest share of its presence in which one is at work; 0
 *     without such a crew
 */
public record MixLoss(Loss held, List<Double> lostMoney, double contribution, Pay pay, double busiestShare) {
    /** Copies the list. */
    public MixLoss {
        lostMoney = List.copyOf(lostMoney);
    }

    /**
     * Paid hours.
     *
     * @param hours paid
     * @param ratedHours the same times the pay factor of their shift
     * @param wages what they cost
     */
    public record Pay(double hours, double ratedHours, double wages) {
        static Pay of(Prices prices, RunResult run) {
            double hours = 0;
            double rated = 0;
            double wages = 0;
            for (CrewResult crew : run.crew()) {
                double ratedH = crew.ratedPaidS() / 3600;
                hours += crew.paidS() / 3600;
                rated += ratedH;
                wages += ratedH * prices.labourPerH().getOrDefault(crew.role(), 0.0);
            }
            return new Pay(hours, rated, wages);
        }

        Pay less(Pay other) {
            return new Pay(hours - other.hours, ratedHours - other.ratedHours, wages - other.wages);
        }

        Pay times(double factor) {
            return new Pay(hours * factor, ratedHours * factor, wages * factor);
        }
    }

    /**
     * Reads it off a replication.
     *
     * @param plant a plant with prices
     * @param held what the lines that are held against the target lost in it
     * @param run the replication
     * @return what is kept
     */
    public static MixLoss of(Plant plant, Loss held, RunResult run) {
        Prices prices = plant.economy().prices().orElseThrow();
        return new MixLoss(
                held,
                IntStream.range(0, plant.lines().size())
                        .mapToObj(line -> Loss.of(plant, line, run).cost())
                        .toList(),
                Contribution.of(plant, run),
                Pay.of(prices, run),
                busiest(plant, run));
    }

    private static double busiest(Plant plant, RunResult run) {
        List<String> roles = plant.lines().stream()
                .map(Line::winder)
                .flatMap(winder -> winder.crew().roles().stream())
                .distinct()
                .toList();
        return run.crew().stream()
                .filter(crew -> roles.contains(crew.role()) && crew.presentS() > 0)
                .mapToDouble(crew -> crew.busyS() / crew.presentS())
                .max()
                .orElse(0);
    }
}
