package spoolyard.scenarios.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import spoolyard.core.policy.NormalInspection;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/** An acceptance quality limit: one of those for which the table of normal inspection has plans. In per cent. */
final class AqlKind implements Kind<Double> {
    private static final Kind<Double> SHARE = QuantityKind.from(Dimension.SHARE, "0 %", "100 %");
    private static final List<Double> LIMITS = NormalInspection.limitsPercent();

    @Override
    public Double read(Node node, Reading reading) {
        int before = reading.faults().count();
        double percent = 100 * SHARE.read(node, reading);
        if (reading.faults().count() > before) {
            return standIn();
        }
        return LIMITS.stream()
                .filter(limit -> Math.abs(limit - percent) < 1e-9)
                .findFirst()
                .orElseGet(() -> unknown(node, reading, percent));
    }

    private Double unknown(Node node, Reading reading, double percent) {
        String all = LIMITS.stream().map(AqlKind::written).collect(Collectors.joining(", "));
        reading.fault(
                FaultKind.OUT_OF_RANGE,
                node,
                "Must be a limit of the table of normal inspection up to 10 %, in %: " + all + ".",
                percent > LIMITS.get(LIMITS.size() - 1)
                        ? "choose one of these; above 10 the table counts nonconformities in 100 spools,"
                                + " and here a spool is defective or not"
                        : "choose one of these");
        return standIn();
    }

    private static String written(double percent) {
        return BigDecimal.valueOf(percent).stripTrailingZeros().toPlainString();
    }

    @Override
    public Double standIn() {
        return LIMITS.get(0);
    }
}
