package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.Warning;

/**
 * Finds work for which nobody who may do it is on shift: winders of lines that run in a shift, and any work for which nobody
 * ever comes.
 */
final class AttendanceCheck {
    private final Plant plant;
    private final CapacityWarnings.Origins origins;

    AttendanceCheck(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
    }

    /** One warning for each place at which work is written that is never done, then one for each shift name. */
    List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        CrewNeeds.of(plant).stream()
                .filter(need -> isNeverThere(need.crew()))
                .map(this::neverDone)
                .distinct()
                .forEach(warnings::add);
        linesLeftAlone().forEach((shift, lines) -> warnings.add(leftAlone(shift, lines)));
        return warnings;
    }

    private Map<String, Set<String>> linesLeftAlone() {
        Map<String, Set<String>> linesByShift = new LinkedHashMap<>();
        for (Shift shift : plant.shifts()) {
            plant.lines().stream()
                    .filter(line -> CrewLoads.runsIn(line, shift) && isLeftAlone(line, shift))
                    .forEach(line -> linesByShift
                            .computeIfAbsent(shift.name(), name -> new LinkedHashSet<>())
                            .add(line.name()));
        }
        return linesByShift;
    }

    private boolean isLeftAlone(Line line, Shift shift) {
        CrewNeed able = line.winder().crew();
        return !able.isNobody() && !isThere(able, shift) && !isNeverThere(able);
    }

    private boolean isNeverThere(CrewNeed able) {
        return plant.shifts().stream().noneMatch(shift -> isThere(able, shift));
    }

    private boolean isThere(CrewNeed able, Shift shift) {
        for (int i = 0; i < shift.heads().size(); i++) {
            String role = plant.crew().roles().get(i).name();
            if (shift.heads().get(i) > 0 && able.roles().contains(role)) {
                return true;
            }
        }
        return false;
    }

    private Warning neverDone(CrewNeeds.Need need) {
        String message = need.what() + " is never done: no "
                + String.join(" or ", need.crew().roles()) + " is there in any shift of the run.";
        Origin origin = origins.of(need.path().toArray(new String[0]));
        return new Warning(Warning.Kind.NOBODY_TO_ATTEND, origin, message);
    }

    private Warning leftAlone(String shift, Set<String> lines) {
        String message = "in shift " + shift + " nobody is there who may attend the winders of "
                + String.join(", ", lines) + ", which run.";
        return new Warning(Warning.Kind.NOBODY_TO_ATTEND, origins.of("shifts", "pattern", shift, "crew"), message);
    }
}
