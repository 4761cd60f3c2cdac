package spoolyard.scenarios.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Kinds of quantity, each with the units a file may write and the unit it has inside. */
public enum Dimension {
    /** Seconds inside. */
    TIME(
            "time",
            "25 s",
            new Units()
                    .add("s", "1")
                    .add("min", "60")
                    .add("h", "3600")
                    .add("days", "86400", "day", "d")
                    .add("weeks", "604800", "week")),
    /** Kilograms inside. */
    MASS("mass", "0.85 kg", new Units().add("kg", "1").add("g", "0.001").add("t", "1000")),
    /** Kilograms an hour inside. */
    MASS_RATE(
            "mass rate",
            "18 kg/h",
            new Units().add("kg/h", "1").add("kg/min", "60").add("g/min", "0.06")),
    /** Metres inside. */
    LENGTH(
            "length",
            "60 m",
            new Units().add("m", "1").add("mm", "0.001").add("cm", "0.01").add("km", "1000")),
    /** Millimetres inside. */
    DIAMETER("diameter", "1.75 mm", new Units().add("mm", "1")),
    /** Millimetres inside. */
    DEVIATION("deviation", "0.03 mm", new Units().add("mm", "1").add("µm", "0.001", "um")),
    /** Metres a second inside. */
    SPEED(
            "speed",
            "160 m/min",
            new Units().add("m/s", "1").addFraction("m/min", "1", "60").add("mm/s", "0.001")),
    /** Degrees Celsius inside. */
    TEMPERATURE("temperature", "205 °C", new Units().add("°C", "1", "C")),
    /** Kelvins inside. */
    TEMPERATURE_DIFFERENCE("temperature difference", "30 K", new Units().add("K", "1")),
    /** Kelvins a second inside. */
    HEATING_RATE(
            "heating rate",
            "4 K/min",
            new Units().addFraction("K/min", "1", "60").add("K/s", "1").addFraction("K/h", "1", "3600")),
    /** Kilojoules a kelvin inside. */
    HEAT_CAPACITY(
            "heat capacity",
            "45 kJ/K",
            new Units().add("kJ/K", "1").add("MJ/K", "1000").add("kWh/K", "3600")),
    /** Kilograms a cubic metre inside. */
    DENSITY(
            "density",
            "1.24 g/cm3",
            new Units()
                    .add("g/cm3", "1000", "g/cm³", "g/cm^3")
                    .add("kg/m3", "1", "kg/m³", "kg/m^3")
                    .add("kg/dm3", "1000", "kg/dm³", "kg/l", "kg/L")),
    /** Seconds a kelvin inside. */
    TIME_PER_KELVIN("time per kelvin", "45 s/K", new Units().add("s/K", "1").add("min/K", "60")),
    /** Kilowatts inside. */
    ELECTRIC_POWER(
            "power", "55 kW", new Units().add("kW", "1").add("W", "0.001").add("MW", "1000")),
    /** Kilowatt-hours inside. */
    ELECTRIC_ENERGY(
            "quantity of energy",
            "18 kWh",
            new Units().add("kWh", "1").add("Wh", "0.001").add("MWh", "1000")),
    /** Kilowatt-hours a kilogram inside. */
    SPECIFIC_ENERGY(
            "specific energy", "0.55 kWh/kg", new Units().add("kWh/kg", "1").add("Wh/kg", "0.001")),
    /** A part of one inside. */
    SHARE("share", "5 %", new Units().add("%", "0.01")),
    /** Spools inside. */
    SPOOLS("number of spools", "2400 spools", new Units().add("spools", "1", "spool")),
    /** Cartons inside. */
    CARTONS("number of cartons", "250 cartons", new Units().add("cartons", "1", "carton"));

    private final String label;
    private final String example;
    private final List<Unit> units;

    Dimension(String label, String example, Units units) {
        this.label = label;
        this.example = example;
        this.units = List.copyOf(units.list);
    }

    /**
     * Its name in messages.
     *
     * @return for example {@code mass rate}
     */
    public String label() {
        return label;
    }

    /**
     * A quantity of this kind as a file writes it.
     *
     * @return for example {@code 18 kg/h}
     */
    public String example() {
        return example;
    }

    /**
     * Every spelling of every unit.
     *
     * @return at least one
     */
    public List<Unit> units() {
        return units;
    }

    /**
     * Finds a unit.
     *
     * @param symbol text after the number
     * @return the unit, if a file may write it for this kind of quantity
     */
    public Optional<Unit> unit(String symbol) {
        return units.stream().filter(unit -> unit.symbol().equals(symbol)).findFirst();
    }

    /**
     * The units that messages name.
     *
     * @return for example {@code kg/h, kg/min, g/min}
     */
    public String offeredUnits() {
        return units.stream().filter(Unit::isOffered).map(Unit::symbol).collect(Collectors.joining(", "));
    }

    private static final class Units {
        private final List<Unit> list = new ArrayList<>();

        Units add(String symbol, String factor, String... aliases) {
            return addFraction(symbol, factor, "1", aliases);
        }

        Units addFraction(String symbol, String numerator, String denominator, String... aliases) {
            Unit unit = Unit.of(symbol, numerator, denominator);
            list.add(unit);
            for (String alias : aliases) {
                list.add(unit.alias(alias));
            }
            return this;
        }
    }
}
