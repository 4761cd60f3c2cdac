package spoolyard.core.record;

import java.util.List;

/**
 * What one replication tells. Immutable. Masses in kg, times in seconds or ticks as named, all from the start of the run.
 *
 * @param masterSeed the seed of the experiment
 * @param replication number of the replication, from 0
 * @param horizonTicks length of the run
 * @param events events executed
 * @param lines one a line, in plant order
 * @param shifts one a shift that overlaps the run, in plant order; the part before 0 and beyond the horizon is cut off
 * @param orders one an order, in book order
 * @param changeovers every changeover begun, by line, then time; the last of a line may be unfinished
 * @param crew one a role and shift name, roles in plant order, shift names in order of first use
 * @param finishing one a finishing station, in flow order
 * @param inbound one a source of spools from outside, in plant order
 * @param flow spools and their whereabouts
 * @param quality lab, exposure clock and spools lost behind the line
 * @param stocks one an article in store, in plant order
 * @param regrind one a polymer that is ground, in plant order
 * @param activity active periods of lines, roles, stations, lab tests and dryers, by kind, then plant order
 */
public record RunResult(
        long masterSeed,
        int replication,
        long horizonTicks,
        long events,
        List<LineResult> lines,
        List<ShiftResult> shifts,
        List<OrderResult> orders,
        List<ChangeoverResult> changeovers,
        List<CrewResult> crew,
        List<StationResult> finishing,
        List<InboundResult> inbound,
        FlowResult flow,
        QualityResult quality,
        List<StockResult> stocks,
        List<RegrindResult> regrind,
        List<Activity> activity) {
    /** Copies the lists. */
    public RunResult {
        lines = List.copyOf(lines);
        shifts = List.copyOf(shifts);
        orders = List.copyOf(orders);
        changeovers = List.copyOf(changeovers);
        crew = List.copyOf(crew);
        finishing = List.copyOf(finishing);
        inbound = List.copyOf(inbound);
        stocks = List.copyOf(stocks);
        regrind = List.copyOf(regrind);
        activity = List.copyOf(activity);
    }

    /**
     * A shift.
     *
     * @param name shift name
     * @param startTick begin
     * @param endTick end
     * @param goodSpools good spools by line, in plant order, counted when the spool leaves the winder's crew
     * @param goodKg good mass by line, kg
     * @param scrapKg scrap by line, kg
     */
    public record ShiftResult(
            String name,
            long startTick,
            long endTick,
            List<Integer> goodSpools,
            List<Double> goodKg,
            List<Double> scrapKg) {
        /** Copies the lists. */
        public ShiftResult {
            goodSpools = List.copyOf(goodSpools);
            goodKg = List.copyOf(goodKg);
            scrapKg = List.copyOf(scrapKg);
        }

        /**
         * Good spools of all lines.
         *
         * @return count
         */
        public int totalGoodSpools() {
            return goodSpools.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * An order.
     *
     * @param id order id
     * @param line name of the line that made or makes it, the last one if it was made up; empty if not begun
     * @param startTick begin of its changeover; {@code Ticks.NEVER} if not begun
     * @param madeTick last good spool off the winder; {@code Ticks.NEVER} if unfinished
     * @param packedTick last spool packed, the order is complete; {@code Ticks.NEVER} if not
     * @param goodSpools good spools that lines made for it, surplus included, less those lost behind the line
     * @param packedSpools spools packed for it, never more than ordered
     * @param lostSpools spools lost behind the line
     * @param shortSpools of these, spools that are not made again: the order is complete without them
     */
    public record OrderResult(
            String id,
            String line,
            long startTick,
            long madeTick,
            long packedTick,
            int goodSpools,
            int packedSpools,
            int lostSpools,
            int shortSpools) {
        /**
         * An order of which nothing was lost.
         *
         * @param id as above
         * @param line as above
         * @param startTick as above
         * @param madeTick as above
         * @param packedTick as above
         * @param goodSpools as above
         * @param packedSpools as above
         */
        public OrderResult(
                String id,
                String line,
                long startTick,
                long madeTick,
                long packedTick,
                int goodSpools,
                int packedSpools) {
            this(id, line, startTick, madeTick, packedTick, goodSpools, packedSpools, 0, 0);
        }
    }

    /**
     * A changeover.
     *
     * @param line line name
     * @param from label of the product before; empty if the screw was clean
     * @param to label of the product after
     * @param fromColour colour code before; empty if the screw was clean
     * @param toColour colour code after
     * @param startTick begin
     * @param endTick first product; {@code Ticks.NEVER} if unfinished
     * @param purgeKg run to waste for colour, polymer, approval and stabilising, kg
     * @param crewS attended time, seconds
     * @param waitS time the line stood waiting for a person, seconds
     */
    public record ChangeoverResult(
            String line,
            String from,
            String to,
            String fromColour,
            String toColour,
            long startTick,
            long endTick,
            double purgeKg,
            double crewS,
            double waitS) {}

    /**
     * A role in all shifts of one name.
     *
     * @param role role name
     * @param shift shift name
     * @param presentS person-seconds present, breaks excluded
     * @param busyS person-seconds at work, walking included
     * @param walkingS person-seconds walking
     * @param breakS person-seconds on break
     * @param paidS person-seconds paid: shift length plus an overlapping hand-over, breaks included
     * @param tasks tasks ended
     * @param meanWaitS mean time from call to arrival over the tasks ended, seconds; 0 if none
     * @param longestWaitS longest such time, seconds
     * @param ratedPaidS person-seconds paid, each times the pay factor of its shift
     */
    public record CrewResult(
            String role,
            String shift,
            double presentS,
            double busyS,
            double walkingS,
            double breakS,
            double paidS,
            long tasks,
            double meanWaitS,
            double longestWaitS,
            double ratedPaidS) {
        /**
         * A role at the usual pay.
         *
         * @param role as above
         * @param shift as above
         * @param presentS as above
         * @param busyS as above
         * @param walkingS as above
         * @param breakS as above
         * @param paidS as above
         * @param tasks as above
         * @param meanWaitS as above
         * @param longestWaitS as above
         */
        public CrewResult(
                String role,
                String shift,
                double presentS,
                double busyS,
                double walkingS,
                double breakS,
                double paidS,
                long tasks,
                double meanWaitS,
                double longestWaitS) {
            this(role, shift, presentS, busyS, walkingS, breakS, paidS, tasks, meanWaitS, longestWaitS, paidS);
        }
    }

    /**
     * Spools from outside.
     *
     * @param name its name
     * @param arrived spools that came
     * @param turnedAway of these, spools that found the rack full and went back
     */
    public record InboundResult(String name, long arrived, long turnedAway) {}

    /**
     * Where the spools are at the end: {@code opening + made + inbound accepted = packed + waiting + inWork + lost} and
     * {@code made = good spools of all lines + lost ones of lines}; the lost ones are told in
     * {@link QualityResult#losses()}.
     *
     * @param opening spools in racks at the start
     * @param made good spools off the lines
     * @param accepted spools accepted from outside
     * @param packed spools through the last station
     * @param waiting spools in racks and quarantine
     * @param inWork spools in a work place, blocked ones included
     * @param surplus of the packed ones, spools beyond their order, to stock
     * @param cartons cartons closed
     * @param pallets pallets closed
     * @param meanInSystemS mean time from the winder (or gate) to packed, seconds, over packed spools; 0 if none
     * @param meanSpoolsInSystem time-average number of spools between the winder (or gate) and packed
     */
    public record FlowResult(
            long opening,
            long made,
            long accepted,
            long packed,
            long waiting,
            long inWork,
            long surplus,
            long cartons,
            long pallets,
            double meanInSystemS,
            double meanSpoolsInSystem) {}
}
