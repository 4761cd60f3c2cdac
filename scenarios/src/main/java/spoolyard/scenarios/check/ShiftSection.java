package spoolyard.scenarios.check;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.scenarios.calendar.Cycle;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.calendar.ShiftPlan;
import spoolyard.scenarios.calendar.ShiftTemplate;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Span;
import spoolyard.scenarios.field.Times;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.MergePatch;
import spoolyard.scenarios.read.Node;

/** The part {@code shifts}: pattern, holidays, extra and changed shifts. */
final class ShiftSection {
    private final PlantNames names;
    private final PlantClock clock;
    private final TemplateKind template;
    private final Node pattern;
    private final List<String> crews;

    ShiftSection(PlantNames names, PlantClock clock, Node tree) {
        this.names = names;
        this.clock = clock;
        this.pattern = Trees.at(tree, "shifts", "pattern");
        this.crews = Trees.keys(Trees.at(tree, "shifts", "crews"));
        this.template = new TemplateKind(names);
    }

    Kind<ShiftPlan> kind() {
        return new MappingKind<>("shifts", this::plan);
    }

    private ShiftPlan plan(MappingReader r) {
        r.optional("every_shift", new AnyMappingKind());
        boolean isMade = new SystemKeys(r).areSound();
        int cycleDays = r.optional("cycle", Span.days(366), 7);
        LocalDate monday = clock.firstDate().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        Cycle cycle = new Cycle(cycleDays, r.optional("cycle_start", Times.date(), monday));
        DayRuleKind days = new DayRuleKind(cycleDays);
        Kind<Map<String, ShiftPlan.PatternShift>> all =
                new NamedKind<>(name -> new MappingKind<>("shift", s -> patternShift(name, s, days)));
        Map<String, ShiftPlan.PatternShift> shifts =
                isMade ? r.required("pattern", all) : r.optional("pattern", all, Map.of());
        return new ShiftPlan(
                cycle,
                List.copyOf(shifts.values()),
                new HashSet<>(r.optional("holidays", ListKind.of(Times.date()), List.of())),
                extras(r),
                changes(r),
                new RotaKind(names.shifts(), cycle, List.copyOf(shifts.values())).all(r));
    }

    private ShiftPlan.PatternShift patternShift(String name, MappingReader r, DayRuleKind days) {
        return new ShiftPlan.PatternShift(template.read(name, r), r.required("days", days));
    }

    private List<ShiftPlan.Extra> extras(MappingReader r) {
        Kind<ShiftPlan.Extra> extra = new MappingKind<>("extra_shift", this::extra);
        return List.copyOf(
                r.optional("extra", new NamedKind<>(name -> extra), Map.of()).values());
    }

    private List<ShiftPlan.Change> changes(MappingReader r) {
        Kind<ShiftPlan.Change> change = new MappingKind<>("changed_shift", this::change);
        return List.copyOf(
                r.optional("changes", new NamedKind<>(name -> change), Map.of()).values());
    }

    private ShiftPlan.Extra extra(MappingReader r) {
        String shift = shift(r);
        List<LocalDate> dates = r.required("dates", ListKind.some(Times.date()));
        Optional<String> workedBy = r.optional("worked_by", Words.name("crew", crews));
        return new ShiftPlan.Extra(over(shift, r), dates, workedBy);
    }

    private ShiftPlan.Change change(MappingReader r) {
        String shift = shift(r);
        List<LocalDate> dates = r.required("dates", ListKind.some(Times.date()));
        boolean isCancelled = r.optional("cancelled", Words.yesOrNo(), false);
        Optional<ShiftTemplate> instead = isCancelled ? Optional.empty() : Optional.of(over(shift, r));
        return new ShiftPlan.Change(shift, r.origin(), dates, instead);
    }

    private String shift(MappingReader r) {
        return r.required("shift", Words.name("shift", names.shifts()));
    }

    /** The shift of the pattern with the remaining keys merged over it; end and length take each other's place. */
    private ShiftTemplate over(String shift, MappingReader r) {
        Node.Mapping own = r.rest();
        Stream<String> replaced = own.entries().containsKey("end")
                ? Stream.of("days", "length")
                : own.entries().containsKey("length") ? Stream.of("days", "end") : Stream.of("days");
        Node without = Trees.without(Trees.at(pattern, shift), replaced.toList());
        return new MappingKind<>("shift_on_date", s -> template.read(shift, s))
                .read(MergePatch.apply(without, own), r.reading());
    }
}
