package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Role;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;

/** Gathers from the event log what each person does, and until when. For one run. */
final class CrewWatch implements EventLog {
    private final List<String> roles;
    private final Map<String, Stint> open = new LinkedHashMap<>();
    private final List<Stint> ended = new ArrayList<>();

    CrewWatch(Crew crew) {
        this.roles = crew.roles().stream().map(Role::name).toList();
    }

    @Override
    public void tell(long tick, String station, String what, String detail) {
        if (isPerson(station)) {
            Stint before = open.put(station, new Stint(station, what, detail, tick, Ticks.NEVER));
            if (before != null && before.startTick() < tick) {
                ended.add(new Stint(station, before.what(), before.detail(), before.startTick(), tick));
            }
        }
    }

    private boolean isPerson(String station) {
        int space = station.lastIndexOf(' ');
        return space > 0
                && roles.contains(station.substring(0, space))
                && station.substring(space + 1).chars().allMatch(Character::isDigit);
    }

    /** All stints, those under way at the end last. */
    List<Stint> stints() {
        List<Stint> all = new ArrayList<>(ended);
        all.addAll(open.values());
        return all;
    }
}
