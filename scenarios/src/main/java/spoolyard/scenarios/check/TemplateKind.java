package spoolyard.scenarios.check;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Break;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.calendar.ShiftEnd;
import spoolyard.scenarios.calendar.ShiftTemplate;
import spoolyard.scenarios.calendar.Staffing;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Times;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** What the shifts of the pattern, extra shifts and changed shifts have in common. */
final class TemplateKind {
    private static final Kind<Double> LENGTH = QuantityKind.above(Dimension.TIME, "0 min", "24 h");
    private static final Kind<Double> HAND_OVER = QuantityKind.from(Dimension.TIME, "0 min", "2 h");
    private static final Kind<Double> PACE = Numbers.from("0.2", "5");
    private static final Kind<Double> PAY = QuantityKind.from(Dimension.SHARE, "0 %", "1000 %");

    private final PlantNames names;

    TemplateKind(PlantNames names) {
        this.names = names;
    }

    /** Length of the hand-over, and whether it is before the start of the shift. */
    private record HandOver(long ticks, boolean overlaps) {}

    ShiftTemplate read(String name, MappingReader r) {
        int before = r.reading().faults().count();
        LocalTime start = r.required("start", Times.timeOfDay());
        ShiftEnd end = end(r);
        Staffing staffing = staffing(r);
        if (r.reading().faults().count() == before) {
            checkBreaks(staffing.breaks(), end.usualLength(start), r);
        }
        return new ShiftTemplate(name, r.origin(), start, end, staffing);
    }

    private static void requireOne(MappingReader r, boolean areBothGiven) {
        String allowed = "Must have either end or length.";
        String mend = "give end: 14:00, or length: 8 h; a merge patch takes one out with null";
        Origin origin = r.origin().child("end");
        if (areBothGiven) {
            r.reading().faults().add(new Fault(FaultKind.CONTRADICTION, origin, "end and length", allowed, mend));
        } else {
            r.followsFrom(r.reading().missing(origin, allowed, mend), "end", "length");
        }
    }

    private static ShiftEnd end(MappingReader r) {
        Optional<LocalTime> atClock = r.optional("end", Times.timeOfDay());
        Optional<Double> lengthS = r.optional("length", LENGTH);
        if (atClock.isPresent() == lengthS.isPresent()) {
            requireOne(r, atClock.isPresent());
        }
        return atClock.<ShiftEnd>map(ShiftEnd.AtClock::new)
                .orElse(new ShiftEnd.AfterLength(Duration.ofNanos(Math.round(lengthS.orElse(3600.0) * 1e9))));
    }

    private Staffing staffing(MappingReader r) {
        HandOver handOver = r.optional("hand_over", new MappingKind<>("hand_over", TemplateKind::handOver))
                .orElse(new HandOver(0, true));
        return new Staffing(
                r.optional("crew", new MappingKind<>("heads", this::heads), noHeads()),
                r.optional("breaks", new BreaksKind(), List.of()),
                handOver.ticks(),
                handOver.overlaps(),
                r.optional("pace", PACE, 1.0),
                r.optional("lines", ListKind.of(Words.name("line", names.lines())), names.lines()),
                r.optional("pay", PAY, 1.0));
    }

    private List<Integer> heads(MappingReader r) {
        return names.roles().stream()
                .map(role -> r.optional(role, Numbers.whole(0, 1000), 0))
                .toList();
    }

    private List<Integer> noHeads() {
        return names.roles().stream().map(role -> 0).toList();
    }

    private static HandOver handOver(MappingReader r) {
        return new HandOver(Ticks.ofSeconds(r.required("length", HAND_OVER)), r.required("overlap", Words.yesOrNo()));
    }

    /** Breaks must follow one another within the shift. */
    private static void checkBreaks(List<Break> breaks, Duration shift, MappingReader r) {
        long freeFromTick = 0;
        for (Break each : breaks) {
            long endTick = each.offsetTicks() + each.lengthTicks();
            if (each.offsetTicks() < freeFromTick || endTick > Ticks.ofSeconds(shift.toSeconds())) {
                r.raw("breaks").ifPresent(node -> r.reading()
                        .fault(
                                FaultKind.CONTRADICTION,
                                node,
                                "Breaks must lie within the shift and not overlap.",
                                "correct after or length of a break"));
                return;
            }
            freeFromTick = endTick;
        }
    }
}
