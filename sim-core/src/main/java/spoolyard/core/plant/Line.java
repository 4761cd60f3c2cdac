package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;
import spoolyard.core.quantity.Filament;

/**
 * An extrusion line from hopper to winder. Immutable.
 *
 * @param name name used in files, unique among the lines
 * @param strands strands from one die, 1 to 4, sharing the output equally
 * @param nominalRateKgPerH rate at a polymer rate factor of 1, all strands together, kg/h, {@code > 0}
 * @param polymers codes of the polymers it can make
 * @param diametersMm diameters it can make, mm
 * @param holdUpKg melt held in the screw and die, kg, {@code >= 0}
 * @param accumulator of each strand
 * @param winder of each strand
 * @param winderReserve share of the winder's highest speed kept for catching up: the line runs no faster than
 *     {@code (1 - winderReserve) * max}; in [0, 1)
 * @param overflow what happens when an accumulator is full
 * @param overlength filament wound beyond the net mass as a share of it, {@code >= 0}
 * @param defectProbability chance that a full spool is rejected at the winder, in [0, 1]
 * @param defectProbabilityAfterThreadUp the same for the first spool after a thread-up, in [0, 1]
 * @param startStop how it starts and stops
 * @param stoppages causes that interrupt it
 * @param plannedStops planned maintenance, by start
 * @param workingPeriods when it is meant to run, disjoint, by start; contiguous shifts are one period
 * @param onLineNow what the screw holds at the start of the run; empty means clean
 * @param runningAtStart true: hot and threaded at the start of the run; false: cold
 * @param place where it stands
 * @param supply how it is fed with dry material; empty means that dry material is always there
 * @param gauge excursions out of tolerance; empty if there are none
 */
public record Line(
        String name,
        int strands,
        double nominalRateKgPerH,
        List<String> polymers,
        List<Double> diametersMm,
        double holdUpKg,
        Accumulator accumulator,
        Winder winder,
        double winderReserve,
        OverflowPolicy overflow,
        double overlength,
        double defectProbability,
        double defectProbabilityAfterThreadUp,
        StartStop startStop,
        List<Stoppage> stoppages,
        List<Window> plannedStops,
        List<Window> workingPeriods,
        Optional<Product> onLineNow,
        boolean runningAtStart,
        Place place,
        Optional<MaterialSupply> supply,
        Optional<Gauge> gauge) {
    /** Copies the lists. */
    public Line {
        polymers = List.copyOf(polymers);
        diametersMm = List.copyOf(diametersMm);
        stoppages = List.copyOf(stoppages);
        plannedStops = List.copyOf(plannedStops);
        workingPeriods = List.copyOf(workingPeriods);
    }

    /**
     * The same line with a gauge.
     *
     * @param itsGauge excursions out of tolerance
     * @return the line
     */
    public Line withGauge(Optional<Gauge> itsGauge) {
        return new Line(
                name,
                strands,
                nominalRateKgPerH,
                polymers,
                diametersMm,
                holdUpKg,
                accumulator,
                winder,
                winderReserve,
                overflow,
                overlength,
                defectProbability,
                defectProbabilityAfterThreadUp,
                startStop,
                stoppages,
                plannedStops,
                workingPeriods,
                onLineNow,
                runningAtStart,
                place,
                supply,
                itsGauge);
    }

    /**
     * Whether the line can make a product at all.
     *
     * @param product the product
     * @return true if polymer and diameter are on its lists
     */
    public boolean canMake(Product product) {
        return polymers.contains(product.polymer().code()) && diametersMm.contains(product.diameterMm());
    }

    /**
     * Rate with a product: nominal rate times the polymer's factor, capped by the winder.
     *
     * @param product the product
     * @return kg/h, all strands together
     */
    public double rateKgPerH(Product product) {
        return rateKgPerH(product.polymer(), product.filament());
    }

    private double rateKgPerH(Polymer polymer, Filament filament) {
        double byScrew = nominalRateKgPerH * polymer.rateFactor();
        double byWinder = strands * filament.rateKgPerH(winder.maxSpeedMPerS() * (1 - winderReserve));
        return Math.min(byScrew, byWinder);
    }

    /**
     * Speed of a strand at full rate.
     *
     * @param polymer the polymer
     * @param diameterMm filament diameter, mm
     * @return m/s
     */
    public double speedMPerS(Polymer polymer, double diameterMm) {
        Filament filament = new Filament(polymer.densityKgPerM3(), diameterMm);
        return rateKgPerH(polymer, filament) / 3600 / strands / filament.kgPerM();
    }
}
