package spoolyard.scenarios.check;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Span;
import spoolyard.scenarios.field.Times;

/** The part {@code time}: zone, start and length of the run. */
final class TimeSection {
    static final Kind<PlantClock> KIND = new MappingKind<>("time", TimeSection::clock);

    private TimeSection() {}

    private static PlantClock clock(MappingReader r) {
        ZoneId zone = r.required("zone", Times.zone());
        LocalDateTime wallClock = r.required("start", Times.dateTime());
        ZonedDateTime start = wallClock.atZone(zone);
        if (zone.getRules().getValidOffsets(wallClock).isEmpty()) {
            r.raw("start").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must be a time that the clocks in " + zone + " show that day.",
                            "choose a time outside the hour that the clock change skips"));
        }
        return new PlantClock(start, r.required("length", Span.kind()).after(start));
    }
}
