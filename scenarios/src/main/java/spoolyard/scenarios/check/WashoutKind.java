package spoolyard.scenarios.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.core.washout.LaminarPipe;
import spoolyard.core.washout.PlugAndTank;
import spoolyard.core.washout.SingleScrew;
import spoolyard.core.washout.TanksInSeries;
import spoolyard.core.washout.Washout;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/** How the old melt leaves: {@code single screw}, or one of three laws under the name of its number. */
final class WashoutKind implements Kind<Washout> {
    private static final Kind<Double> PLUG_SHARE = QuantityKind.from(Dimension.SHARE, "0 %", "99 %");
    private static final Kind<Integer> TANKS = Numbers.whole(1, 100);
    private static final Kind<Double> INDEX = Numbers.from("0.05", "1");
    private static final Kind<String> WORD = Words.oneOf("single screw");

    @Override
    public Washout read(Node node, Reading reading) {
        if (node instanceof Node.Mapping) {
            return new MappingKind<>("washout", this::law).read(node, reading);
        }
        WORD.read(node, reading);
        return standIn();
    }

    @Override
    public Washout standIn() {
        return new SingleScrew();
    }

    private Washout law(MappingReader r) {
        Optional<Washout> plug = r.optional("plug_share", PLUG_SHARE).map(PlugAndTank::new);
        Optional<Washout> tanks = r.optional("tanks_in_series", TANKS).map(TanksInSeries::new);
        Optional<Washout> pipe = r.optional("laminar_pipe", INDEX).map(LaminarPipe::new);
        List<Washout> named =
                Stream.of(plug, tanks, pipe).flatMap(Optional::stream).toList();
        if (named.isEmpty() && r.hasMore()) {
            return standIn();
        }
        if (named.size() != 1) {
            r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            new Node.Text(r.origin(), named.size() + " laws"),
                            "Must have one of plug_share, tanks_in_series and laminar_pipe, or be single screw.",
                            "write for example washout: {plug_share: 40 %}");
            return standIn();
        }
        return named.get(0);
    }
}
