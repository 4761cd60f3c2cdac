package spoolyard.analysis.crew;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;

/**
 * How many people of a role each shift has. A shift without any of them stays without. Immutable.
 *
 * @param plant the plant
 * @param role place of the role among those of the plant
 */
public record Staffing(Plant plant, int role) {
    /**
     * The role of a name.
     *
     * @param plant the plant
     * @param name name of one of its roles
     * @return its staffing
     * @throws IllegalArgumentException if the plant has no such role
     */
    public static Staffing of(Plant plant, String name) {
        List<String> names = plant.crew().roles().stream().map(Role::name).toList();
        if (!names.contains(name)) {
            throw new IllegalArgumentException("role = " + name + ". Must be one of " + names + ".");
        }
        return new Staffing(plant, names.indexOf(name));
    }

    /**
     * Name of the role.
     *
     * @return as in the files
     */
    public String roleName() {
        return plant.crew().roles().get(role).name();
    }

    /**
     * Winders whose spools the role may change.
     *
     * @return strands of all lines that name the role at the winder
     */
    public int winders() {
        return plant.lines().stream()
                .filter(line -> line.winder().crew().roles().contains(roleName()))
                .mapToInt(line -> line.strands())
                .sum();
    }

    /**
     * Most of them in any shift.
     *
     * @return people
     */
    public int most() {
        return plant.shifts().stream().mapToInt(this::heads).max().orElse(0);
    }

    /**
     * Fewest of them in any shift that has some.
     *
     * @return people; 0 if no shift has any
     */
    public int fewest() {
        return plant.shifts().stream()
                .mapToInt(this::heads)
                .filter(heads -> heads > 0)
                .min()
                .orElse(0);
    }

    /**
     * Time in which some of them are on shift within the run.
     *
     * @return ticks; shifts that overlap count once
     */
    long mannedTicks() {
        long manned = 0;
        long until = 0;
        for (Shift shift : plant.shifts()) {
            if (heads(shift) > 0) {
                long from = Math.max(until, shift.startTick());
                long to = Math.min(plant.horizonTicks(), shift.endTick());
                manned += Math.max(0, to - from);
                until = Math.max(until, to);
            }
        }
        return manned;
    }

    /**
     * The plant with another number of them in every shift that has any.
     *
     * @param people how many, {@code >= 1}
     * @return the plant
     */
    public Plant with(int people) {
        return new Plant(
                plant.name(),
                plant.horizonTicks(),
                plant.lines(),
                plant.crew(),
                plant.shifts().stream()
                        .map(shift -> heads(shift) > 0 ? with(shift, people) : shift)
                        .toList(),
                plant.changeovers(),
                plant.finishing(),
                plant.book(),
                plant.drying(),
                plant.economy(),
                plant.materials());
    }

    private Shift with(Shift shift, int people) {
        List<Integer> heads = new ArrayList<>(shift.heads());
        heads.set(role, people);
        return new Shift(
                shift.name(),
                shift.startTick(),
                shift.endTick(),
                heads,
                shift.breaks(),
                shift.handOverTicks(),
                shift.handOverOverlaps(),
                shift.pace(),
                shift.payFactor());
    }

    private int heads(Shift shift) {
        return shift.heads().get(role);
    }
}
