package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.TaskKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** The part {@code crew}: roles and the rules they work by. */
final class CrewSection {
    /** A plant with no people. */
    static final Crew NONE = new Crew(
            List.of(), Double.POSITIVE_INFINITY, Crew.ServiceOrder.LONGEST_WAITING, Crew.EndOfShift.FINISH_TASK);

    private static final Kind<Double> WALK = QuantityKind.from(Dimension.SPEED, "0.1 m/s", "5 m/s");

    private final PlantNames names;

    CrewSection(PlantNames names) {
        this.names = names;
    }

    Kind<Crew> kind() {
        return new MappingKind<>("crew", this::crew);
    }

    private Crew crew(MappingReader r) {
        Map<String, Role> roles =
                r.required("roles", new NamedKind<>(name -> new MappingKind<>("role", m -> role(name, m))));
        return new Crew(
                List.copyOf(roles.values()),
                r.optional("walking_speed", WALK, Double.POSITIVE_INFINITY),
                r.optional("service_order", Words.oneOf(Crew.ServiceOrder.class), Crew.ServiceOrder.LONGEST_WAITING),
                r.optional("end_of_shift", Words.oneOf(Crew.EndOfShift.class), Crew.EndOfShift.FINISH_TASK));
    }

    private Role role(String name, MappingReader r) {
        Kind<List<String>> zone = ListKind.some(Words.name("line", names.lines()));
        return new Role(
                name,
                r.optional("zones", ListKind.of(zone), List.of()),
                r.optional("zones_strict", Words.yesOrNo(), false),
                r.optional("priorities", ListKind.of(Words.oneOf(TaskKind.class)), List.of()),
                r.optional("relieves", ListKind.of(Words.name("role", names.roles())), List.of()));
    }
}
