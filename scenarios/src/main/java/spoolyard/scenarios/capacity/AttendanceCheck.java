package spoolyard.scenarios.capacity;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.scenarios.fault.Warning;

/** Finds shifts in which lines run and nobody is there who may attend their winders. */
final class AttendanceCheck {
    private final Plant plant;
    private final CapacityWarnings.Origins origins;

    AttendanceCheck(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
    }

    /** One warning for each shift name. */
    List<Warning> warnings() {
        Map<String, Set<String>> linesByShift = new LinkedHashMap<>();
        for (Shift shift : plant.shifts()) {
            plant.lines().stream()
                    .filter(line -> CrewLoads.runsIn(line, shift) && isLeftAlone(line, shift))
                    .forEach(line -> linesByShift
                            .computeIfAbsent(shift.name(), name -> new LinkedHashSet<>())
                            .add(line.name()));
        }
        return linesByShift.entrySet().stream()
                .map(entry -> warning(entry.getKey(), entry.getValue()))
                .toList();
    }

    private boolean isLeftAlone(Line line, Shift shift) {
        List<String> able = line.winder().crew().roles();
        int there = 0;
        for (int i = 0; i < shift.heads().size(); i++) {
            Role role = plant.crew().roles().get(i);
            there += able.contains(role.name()) ? shift.heads().get(i) : 0;
        }
        return !able.isEmpty() && there == 0;
    }

    private Warning warning(String shift, Set<String> lines) {
        String message = "in shift " + shift + " nobody is there who may attend the winders of "
                + String.join(", ", lines) + ", which run.";
        return new Warning(Warning.Kind.NOBODY_TO_ATTEND, origins.of("shifts", "pattern", shift, "crew"), message);
    }
}
