package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Stoppage;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Words;

/** Causes that interrupt a line or a finishing station. */
final class StoppageKind {
    private final CrewNeedKind crew;

    StoppageKind(CrewNeedKind crew) {
        this.crew = crew;
    }

    /** Causes of a line, by name. */
    List<Stoppage> ofLine(MappingReader line) {
        return List.copyOf(line.optional(
                        "stoppages",
                        new NamedKind<>(name -> new MappingKind<>("line_stoppage", r -> lineStoppage(name, r))),
                        Map.of())
                .values());
    }

    /** Causes of a finishing station, by name. */
    List<Stoppage> ofStation(MappingReader station) {
        return List.copyOf(station.optional(
                        "stoppages",
                        new NamedKind<>(name -> new MappingKind<>("station_stoppage", r -> stationStoppage(name, r))),
                        Map.of())
                .values());
    }

    private Stoppage lineStoppage(String name, MappingReader r) {
        boolean isPerStrand =
                r.optional("scope", Words.oneOf("line", "strand"), "line").equals("strand");
        boolean runsToWaste = r.optional("meanwhile", Words.oneOf("stop", "run to waste"), "stop")
                .equals("run to waste");
        boolean atFullSpool = r.optional("begins", Words.oneOf("at once", "at full spool"), "at once")
                .equals("at full spool");
        int before = r.reading().faults().count();
        Stoppage.Clock clock = clock(r);
        boolean isClockRead = r.reading().faults().count() == before;
        return new Stoppage(
                name,
                isPerStrand ? Stoppage.Scope.STRAND : Stoppage.Scope.STATION,
                clock,
                interval(r, clock, isClockRead),
                r.required("takes", Amounts.WORK),
                r.required("crew", crew),
                runsToWaste ? Stoppage.Effect.RUNS_TO_WASTE : Stoppage.Effect.STOPS,
                r.required("restart", Words.oneOf(Stoppage.Restart.class)),
                r.optional("stabilise", Amounts.WORK),
                atFullSpool,
                r.optional("planned", Words.yesOrNo(), false));
    }

    private Stoppage stationStoppage(String name, MappingReader r) {
        int before = r.reading().faults().count();
        Stoppage.Clock clock = clock(r);
        boolean isClockRead = r.reading().faults().count() == before;
        return new Stoppage(
                name,
                Stoppage.Scope.STATION,
                clock,
                interval(r, clock, isClockRead),
                r.required("takes", Amounts.WORK),
                r.required("crew", crew),
                Stoppage.Effect.STOPS,
                Stoppage.Restart.NONE,
                Optional.empty(),
                false,
                r.optional("planned", Words.yesOrNo(), false));
    }

    private static Stoppage.Clock clock(MappingReader r) {
        return r.optional("clock", Words.oneOf(Stoppage.Clock.class), Stoppage.Clock.RUNNING_TIME);
    }

    /** What stands between two of its kind, by the clock; of any sort if nobody can tell which clock is meant. */
    private static Law interval(MappingReader r, Stoppage.Clock clock, boolean isClockRead) {
        Kind<Law> kind = clock == Stoppage.Clock.MASS ? Amounts.MASS_INTERVAL : Amounts.INTERVAL;
        return isClockRead || r.raw("every").isEmpty() ? r.required("every", kind) : kind.standIn();
    }
}
