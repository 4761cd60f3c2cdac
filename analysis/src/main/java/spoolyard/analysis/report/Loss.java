package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/**
 * A step of the way from what a line would make at its nominal rate day and night down to its good spools. What is lost
 * outside production is lost as time, at the nominal rate; what is lost in production as mass. All steps of a line from
 * {@link #FULL} less the losses are {@link #GOOD}, to rounding. Immutable.
 *
 * @param label what it is, for people and files
 * @param spools how many spools; a loss below 0 is a gain, as with a polymer that runs faster than nominal
 */
record Loss(String label, double spools) {
    static final String FULL = "full rate day and night";
    static final String GOOD = "good spools";
    private static final String SCRAP = "scrap: ";

    /** States in which nothing is produced, the plan's own first. */
    private static final List<StateGroup> IDLE = List.of(
            StateGroup.NOT_SCHEDULED,
            StateGroup.PLANNED_STOP,
            StateGroup.NO_ORDER,
            StateGroup.NO_MATERIAL,
            StateGroup.NO_CREW,
            StateGroup.DOWN,
            StateGroup.CHANGEOVER,
            StateGroup.START_AND_STOP);

    /** Order of the causes of scrap in production; the part of strands under repair stands for stoppages. */
    private static final List<ScrapCause> CAUSES = Stream.of(ScrapCause.values())
            .filter(cause -> cause != ScrapCause.STOPPAGE)
            .toList();

    /**
     * The way of a line.
     *
     * @param plant the plant
     * @param line what the line did
     * @return {@link #FULL}, then every loss, then {@link #GOOD}
     */
    static List<Loss> of(Plant plant, LineResult line) {
        Line description = plant.lines().stream()
                .filter(each -> each.name().equals(line.line()))
                .findFirst()
                .orElseThrow();
        return new OfLine(line, description.nominalRateKgPerH() / 3600, 1 / spoolKg(plant, line)).all();
    }

    /** Mean mass of the line's good spools; of all spools it may make if it made none. */
    private static double spoolKg(Plant plant, LineResult line) {
        if (line.goodSpools() > 0) {
            return line.goodKg() / line.goodSpools();
        }
        return plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.line()))
                .mapToDouble(order -> order.product().spoolKg())
                .average()
                .orElse(1);
    }

    /** The arithmetic of one line. */
    private record OfLine(LineResult line, double nominalKgPerS, double spoolsPerKg) {
        List<Loss> all() {
            List<Loss> all = new ArrayList<>();
            add(all, FULL, nominalKgPerS * secondsIn(List.of(LineState.values())));
            IDLE.forEach(group -> add(all, group.label(), nominalKgPerS * secondsIn(group.states())));
            add(all, "product rate", nominalKgPerS * productionS() - line.ratedKg());
            add(all, "reduced speed", line.slowedLossKg());
            add(all, "strand under repair", strandKg());
            scrapKg().forEach((cause, kg) -> add(all, SCRAP + cause.label(), kg));
            add(all, "B-grade", line.gauge().bGradeKg());
            add(all, "still on the line", line.inProcessKg());
            add(all, GOOD, line.goodKg());
            return all;
        }

        private void add(List<Loss> all, String label, double kg) {
            all.add(new Loss(label, kg * spoolsPerKg));
        }

        private double secondsIn(List<LineState> states) {
            return states.stream()
                    .mapToDouble(state -> line.stateS().get(state))
                    .sum();
        }

        private double productionS() {
            return secondsIn(StateGroup.RUNNING.states()) + secondsIn(StateGroup.SLOWED.states());
        }

        /** Scrap made in production. */
        private Map<ScrapCause, Double> scrapKg() {
            Map<ScrapCause, Double> kg = new EnumMap<>(ScrapCause.class);
            CAUSES.forEach(cause ->
                    kg.put(cause, line.scrapKg().get(cause) - line.stepWasteKg().get(cause)));
            return kg;
        }

        /** Waste of a strand under repair while another makes product: the rest of what passed the die in production. */
        private double strandKg() {
            double madeKg = line.ratedKg() - line.slowedLossKg();
            double accountedKg = line.goodKg()
                    + line.gauge().bGradeKg()
                    + line.inProcessKg()
                    + scrapKg().values().stream()
                            .mapToDouble(Double::doubleValue)
                            .sum();
            return madeKg - accountedKg;
        }
    }
}
