package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.QualityRules;
import spoolyard.scenarios.fault.Warning;

/** Finds a lab that cuts its lots for want of room or outlasts an exposure limit, and limits and clocks without effect. */
final class QualityCheck {
    private final Plant plant;
    private final CapacityWarnings.Origins origins;
    private final QualityRules rules;
    private final List<Warning> warnings = new ArrayList<>();

    QualityCheck(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
        this.rules = plant.finishing().quality();
    }

    List<Warning> warnings() {
        rules.lab().ifPresent(this::checkLots);
        Set<Polymer> limited = limitedPolymers();
        if (rules.exposure().isEmpty()) {
            limited.forEach(this::warnOfUnreadLimit);
        } else if (limited.isEmpty()) {
            add("no polymer that comes to sealing has an exposure_limit: the clock never runs out.", "exposure");
        } else {
            rules.lab().filter(lab -> lab.hold() == Lab.Hold.BEFORE_SEALING).ifPresent(lab -> checkHold(lab, limited));
        }
        return warnings;
    }

    private void checkLots(Lab lab) {
        if (lab.quarantinePlaces() < lab.lotSpools()) {
            String form = "the quarantine holds %d spools, a lot has up to %d: larger lots are closed early.";
            add(String.format(Locale.ROOT, form, lab.quarantinePlaces(), lab.lotSpools()), "lab", "quarantine");
        }
    }

    /** Of what is ordered or comes from outside. */
    private Set<Polymer> limitedPolymers() {
        Set<Polymer> polymers = new LinkedHashSet<>();
        plant.book().orders().forEach(order -> polymers.add(order.product().polymer()));
        plant.finishing().inbound().forEach(inbound -> inbound.polymer().ifPresent(polymers::add));
        polymers.removeIf(polymer -> polymer.exposureLimitS() == Double.POSITIVE_INFINITY);
        return polymers;
    }

    private void warnOfUnreadLimit(Polymer polymer) {
        add(
                "the exposure_limit of " + polymer.code() + " has no effect without the part exposure.",
                "polymers",
                polymer.code(),
                "exposure_limit");
    }

    private void checkHold(Lab lab, Set<Polymer> limited) {
        double testS = lab.tests().stream()
                .filter(Lab.Test::isHolding)
                .mapToDouble(test -> test.takesS().mean())
                .max()
                .orElse(0);
        String form = "the lab holds spools before sealing for a test of %.1f h on average; %s may stand %.1f h.";
        limited.stream()
                .filter(polymer -> polymer.exposureLimitS() < testS)
                .forEach(polymer -> add(
                        String.format(Locale.ROOT, form, testS / 3600, polymer.code(), polymer.exposureLimitS() / 3600),
                        "lab",
                        "hold"));
    }

    private void add(String message, String... path) {
        warnings.add(new Warning(Warning.Kind.QUALITY_IN_VAIN, origins.of(path), message));
    }
}
