package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.ChangeoverResult;

/** Changeovers by line and pair of products. */
final class ChangeoverSheet {
    /** Stands for the product before on a line whose screw was clean. */
    static final String CLEAN = "(clean)";

    static final Sheet<Pair> SHEET = new Sheet<>(
            "changeovers",
            List.of("line", "from", "to"),
            ChangeoverSheet::pairs,
            Pair::key,
            List.of(
                    Column.amount("count", pair -> pair.all().size()),
                    Column.amount("purge_kg", pair -> pair.sum(ChangeoverResult::purgeKg)),
                    Column.average("purge_kg_each", pair -> pair.mean(ChangeoverResult::purgeKg)),
                    Column.amount("total_h", pair -> pair.sum(ChangeoverSheet::seconds) / 3600),
                    Column.average("minutes_each", pair -> pair.mean(ChangeoverSheet::seconds) / 60),
                    Column.average("crew_minutes_each", pair -> pair.mean(ChangeoverResult::crewS) / 60),
                    Column.average("waited_for_crew_minutes_each", pair -> pair.mean(ChangeoverResult::waitS) / 60)),
            setting -> Ranked.lines(0, setting.plant())
                    .thenComparing(Ranked.alphabet(1))
                    .thenComparing(Ranked.alphabet(2)));

    private ChangeoverSheet() {}

    private static double seconds(ChangeoverResult changeover) {
        return Ticks.toSeconds(changeover.endTick() - changeover.startTick());
    }

    /** Finished changeovers only: one that the end of the run cuts short would blur the averages. */
    private static List<Pair> pairs(Setting setting, RunResult result) {
        Map<List<String>, Pair> pairs = new LinkedHashMap<>();
        for (ChangeoverResult each : result.changeovers()) {
            if (each.endTick() != Ticks.NEVER) {
                String from = each.from().isEmpty() ? CLEAN : each.from();
                List<String> key = List.of(each.line(), from, each.to());
                pairs.computeIfAbsent(key, unseen -> new Pair(unseen, new ArrayList<>()))
                        .all()
                        .add(each);
            }
        }
        return List.copyOf(pairs.values());
    }

    /** All changeovers of a line from one product to another. */
    record Pair(List<String> key, List<ChangeoverResult> all) {
        double sum(ToDoubleFunction<ChangeoverResult> value) {
            return all.stream().mapToDouble(value).sum();
        }

        double mean(ToDoubleFunction<ChangeoverResult> value) {
            return sum(value) / all.size();
        }
    }
}
