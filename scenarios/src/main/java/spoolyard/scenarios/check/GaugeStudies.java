package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.gauge.GaugeLoop;
import spoolyard.core.gauge.ToleranceFinding;
import spoolyard.core.gauge.ToleranceStudy;

/** Studies of gauge loops, each done once in a reading: lines with the same loop and tolerance share theirs. */
final class GaugeStudies {
    /** The laws of a scenario do not depend on the seed of the run. */
    private static final long SEED = 1;

    private record Question(GaugeLoop loop, double joinS, double toleranceMm) {}

    private final Map<Question, ToleranceFinding> done = new LinkedHashMap<>();

    ToleranceFinding of(GaugeLoop loop, double joinS, double toleranceMm) {
        return done.computeIfAbsent(new Question(loop, joinS, toleranceMm), q -> new ToleranceStudy(
                        q.loop(), q.joinS(), ToleranceStudy.SAMPLES_FOR_A_RUN)
                .of(List.of(q.toleranceMm()), SEED)
                .get(0));
    }
}
