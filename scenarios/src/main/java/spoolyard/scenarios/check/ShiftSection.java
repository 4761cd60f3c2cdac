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
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
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
        int before = r.reading().faults().count();
        Cycle cycle = cycle(r);
        boolean isCycleRead = r.reading().faults().count() == before;
        DayRuleKind days = new DayRuleKind(isCycleRead ? cycle.days() : 7);
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
                isCycleRead || r.raw("crews").isEmpty()
                        ? new RotaKind(names.shifts(), cycle, List.copyOf(shifts.values())).all(r)
                        : List.of());
    }

    private Cycle cycle(MappingReader r) {
        int days = r.optional("cycle", Span.days(366), 7);
        LocalDate monday = clock.firstDate().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new Cycle(days, r.optional("cycle_start", Times.date(), monday));
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

    /**
     * The shift of the pattern with the remaining keys merged over it; end and length take each other's place. What is
     * missing in a shift of the pattern that is faulty itself is told there.
     */
    private ShiftTemplate over(String shift, MappingReader r) {
        Node.Mapping own = r.rest();
        MappingKind<ShiftTemplate> kind = new MappingKind<>("shift_on_date", s -> template.read(shift, s));
        if (r.raw("shift").isEmpty()) {
            return kind.standIn();
        }
        Stream<String> replaced = own.entries().containsKey("end")
                ? Stream.of("days", "length")
                : own.entries().containsKey("length") ? Stream.of("days", "end") : Stream.of("days");
        Node without = Trees.without(Trees.at(pattern, shift), replaced.toList());
        Faults faults = new Faults();
        ShiftTemplate read = kind.read(
                MergePatch.apply(without, own), new Reading(faults, r.reading().keys()));
        boolean isPatternFaulty = isFaulty(shift, r.reading().faults());
        faults.all().stream()
                .filter(fault -> fault.kind() != FaultKind.MISSING_VALUE || !isPatternFaulty)
                .forEach(r.reading().faults()::add);
        return read;
    }

    private boolean isFaulty(String shift, Faults faults) {
        String within = Trees.at(pattern, shift).origin().field() + "/";
        return faults.all().stream().anyMatch(fault -> fault.field().startsWith(within));
    }
}
