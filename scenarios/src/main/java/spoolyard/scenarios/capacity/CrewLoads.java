package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;

/** Works out the rows of the crew. A winder that several roles may attend counts for the first. */
final class CrewLoads {
    private final Plant plant;
    private final Map<String, LineCapacity> lineByName = new LinkedHashMap<>();

    private CrewLoads(Plant plant, List<LineCapacity> lines) {
        this.plant = plant;
        lines.forEach(line -> lineByName.put(line.line(), line));
    }

    static List<CrewCapacity> of(Plant plant, List<LineCapacity> lines) {
        return new CrewLoads(plant, lines).rows();
    }

    private List<CrewCapacity> rows() {
        List<CrewCapacity> rows = new ArrayList<>();
        List<Role> roles = plant.crew().roles();
        for (int i = 0; i < roles.size(); i++) {
            String role = roles.get(i).name();
            if (plant.lines().stream().anyMatch(line -> isAttendedBy(line, role))) {
                rows.addAll(rowsOf(role, i));
            }
        }
        return rows;
    }

    private Collection<CrewCapacity> rowsOf(String role, int index) {
        Map<String, CrewCapacity> worstByShift = new LinkedHashMap<>();
        for (Shift shift : plant.shifts()) {
            worstByShift.merge(shift.name(), row(role, index, shift), (a, b) -> a.loadShare() >= b.loadShare() ? a : b);
        }
        return worstByShift.values();
    }

    private CrewCapacity row(String role, int index, Shift shift) {
        double attended = plant.lines().stream()
                .filter(line -> isAttendedBy(line, role) && runsIn(line, shift))
                .mapToDouble(line -> lineByName.get(line.name()).attendedHeads() * shift.pace())
                .sum();
        int heads = shift.heads().get(index);
        return new CrewCapacity(role, shift.name(), heads, new Presence(plant.crew()).heads(role, shift), attended);
    }

    private static boolean isAttendedBy(Line line, String role) {
        List<String> roles = line.winder().crew().roles();
        return !roles.isEmpty() && roles.get(0).equals(role);
    }

    static boolean runsIn(Line line, Shift shift) {
        return OpenTime.overlapTicks(line.workingPeriods(), shift.startTick(), shift.endTick()) > 0;
    }
}
