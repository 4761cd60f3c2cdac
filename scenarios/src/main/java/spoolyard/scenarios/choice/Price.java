package spoolyard.scenarios.choice;

import java.util.OptionalDouble;

/**
 * What an option costs, in the currency of the scenario's costs. Immutable.
 *
 * @param buy paid once, whatever the size, {@code >= 0}
 * @param buyPerMetre paid once for each metre of accumulator more, every strand counted, {@code >= 0}
 * @param buyPerWinder paid once for each winder that differs, every strand counted, {@code >= 0}
 * @param lifeYears years after which what was paid once is paid again, {@code > 0}; 1 where nothing is paid once
 * @param perYear paid every year, {@code >= 0}
 * @param perHour for each paid person-hour more at the usual rate; empty for the wages of the scenario
 */
public record Price(
        double buy,
        double buyPerMetre,
        double buyPerWinder,
        double lifeYears,
        double perYear,
        OptionalDouble perHour) {}
