package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.RunResult;

/** Results with next to nothing in them. */
final class Runs {
    private static final RunResult.FlowResult NO_FLOW = new RunResult.FlowResult(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    private Runs() {}

    static RunResult of(LineResult... lines) {
        return with(List.of(lines), List.of(), List.of());
    }

    static RunResult of(RunResult.OrderResult... orders) {
        return with(List.of(), List.of(orders), List.of());
    }

    static RunResult of(RunResult.ChangeoverResult... changeovers) {
        return with(List.of(), List.of(), List.of(changeovers));
    }

    private static RunResult with(
            List<LineResult> lines, List<RunResult.OrderResult> orders, List<RunResult.ChangeoverResult> changeovers) {
        return new RunResult(
                1,
                0,
                168 * Ticks.PER_HOUR,
                0,
                lines,
                List.of(),
                orders,
                changeovers,
                List.of(),
                List.of(),
                List.of(),
                NO_FLOW,
                QualityResult.NONE,
                List.of(),
                List.of(),
                List.of());
    }
}
