package spoolyard.scenarios.check;

import spoolyard.core.plant.Place;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.LawKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.format.Dimension;

/** Kinds of value that several parts of a scenario share. The upper bounds are far beyond any plant of this trade. */
final class Amounts {
    /** Attended work on one spool. */
    static final LawKind SPOOL_WORK = durationUpTo("1 h");

    /** Work on a line or a station. */
    static final LawKind WORK = durationUpTo("60 days");

    /** From one stoppage or arrival to the next. */
    static final LawKind INTERVAL = LawKind.positive(QuantityKind.from(Dimension.TIME, "0 s", "5000 weeks"));

    /** Running time out of tolerance. */
    static final LawKind EXCURSION = LawKind.positive(QuantityKind.from(Dimension.TIME, "0 s", "24 h"));

    /** From one stoppage to the next by mass made. */
    static final LawKind MASS_INTERVAL = LawKind.positive(QuantityKind.from(Dimension.MASS, "0 kg", "1000000 t"));

    /** Melt volumes. */
    static final Kind<Double> HOLD_UPS = Numbers.from("0", "50");

    /** A part of one, both ends allowed. */
    static final Kind<Double> SHARE = QuantityKind.from(Dimension.SHARE, "0 %", "100 %");

    /** A chance of having to do a thing again. */
    static final Kind<Double> REPEAT_CHANCE = QuantityKind.from(Dimension.SHARE, "0 %", "90 %");

    /** Net filament mass on a spool. */
    static final Kind<Double> SPOOL_MASS = QuantityKind.from(Dimension.MASS, "10 g", "50 kg");

    /** Filament diameter in mm. */
    static final Kind<Double> DIAMETER = QuantityKind.from(Dimension.DIAMETER, "0.5 mm", "10 mm");

    /** Where a station stands. */
    static final Kind<Place> PLACE =
            new MappingKind<>("place", r -> new Place(r.required("x", distance()), r.required("y", distance())));

    private Amounts() {}

    /** Law of a duration, each of whose values is at most so long. */
    static LawKind durationUpTo(String longest) {
        return LawKind.of(QuantityKind.from(Dimension.TIME, "0 s", longest));
    }

    /** How long something has stood. */
    static final Kind<Double> AGE = QuantityKind.from(Dimension.TIME, "0 s", "52 weeks");

    /** A number of spools, or no limit. */
    static Kind<Integer> spoolsOrUnlimited() {
        QuantityKind spools = QuantityKind.from(Dimension.SPOOLS, "0 spools", "10000000 spools");
        return new UnlimitedKind(spools);
    }

    private static Kind<Double> distance() {
        return QuantityKind.from(Dimension.LENGTH, "0 m", "10 km");
    }
}
