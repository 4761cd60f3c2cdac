package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spoolyard.core.gauge.GaugeLoop;
import spoolyard.core.gauge.SpoolLoss;
import spoolyard.core.gauge.ToleranceFinding;
import spoolyard.core.plant.DiameterControl;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Polymer;
import spoolyard.core.quantity.Filament;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Warning;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** The key {@code gauge} of a line: excursions as they are, or what they are derived from. */
final class GaugeKind implements Kind<Gauge> {
    /** Rarer than this, an excursion is not worth a clock: one in a hundred years of running. */
    private static final double NEVER_PER_H = 1e-6;

    /** Share of spools hit from which on a tolerance is worth a warning. */
    private static final double TIGHT = 0.1;

    private static final Kind<Gauge.Excursions> EXCURSIONS = new MappingKind<>(
            "excursions",
            r -> Gauge.Excursions.ofAll(r.required("every", Amounts.INTERVAL), r.required("last", Amounts.EXCURSION)));

    private final Line line;
    private final Products products;
    private final GaugeStudies studies;

    GaugeKind(Line line, Products products, GaugeStudies studies) {
        this.line = line;
        this.products = products;
        this.studies = studies;
    }

    @Override
    public Gauge read(Node node, Reading reading) {
        return new MappingKind<>("gauge", this::gauge).read(node, reading);
    }

    @Override
    public Gauge standIn() {
        return new Gauge(List.of(), new Gauge.Policy.Cut(), Optional.empty());
    }

    private Gauge gauge(MappingReader r) {
        Gauge.Policy policy = r.required("out_of_tolerance", new GaugePolicyKind());
        Optional<Gauge.Excursions> given = r.optional("excursions", EXCURSIONS);
        Optional<DiameterControl> control = r.optional("diameter", new DiameterControlKind(products.polymerCodes()));
        if (given.isPresent() == control.isPresent()) {
            requireOne(r, given.isPresent());
            return standIn();
        }
        boolean isClean = r.reading().faults().isEmpty();
        return control.filter(c -> isClean)
                .map(c -> new Gauge(derived(c, r), policy, control))
                .orElseGet(() -> new Gauge(given.map(List::of).orElse(List.of()), policy, Optional.empty()));
    }

    private static void requireOne(MappingReader r, boolean areBothGiven) {
        String mend = "give how often they come and how long they last under excursions, or what they follow from under"
                + " diameter";
        if (areBothGiven) {
            r.raw("excursions").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must have either excursions or diameter.",
                            mend + "; a merge patch takes one out with null"));
        } else {
            r.reading().missing(r.origin().child("excursions"), "Must have either excursions or diameter.", mend);
        }
    }

    private List<Gauge.Excursions> derived(DiameterControl control, MappingReader r) {
        List<Gauge.Excursions> all = new ArrayList<>();
        for (String code : line.polymers()) {
            Polymer polymer = products.polymer(code);
            for (double diameterMm : line.diametersMm()) {
                double speedMPerS = line.speedMPerS(polymer, diameterMm);
                GaugeLoop loop = GaugeLoop.of(control, speedMPerS);
                ToleranceFinding finding = studies.of(loop, control.joinS(), control.toleranceMm(code));
                if (finding.perRunningH() > NEVER_PER_H) {
                    Law untilNextS = new Law.Exponential(finding.meanInToleranceS());
                    all.add(new Gauge.Excursions(code, diameterMm, untilNextS, finding.lengthS()));
                    double kgPerS = speedMPerS * new Filament(polymer.densityKgPerM3(), diameterMm).kgPerM();
                    warnIfTight(code + " " + diameterMm + " mm", finding, 1 / kgPerS, r);
                }
            }
        }
        return all;
    }

    private void warnIfTight(String product, ToleranceFinding finding, double kgS, MappingReader r) {
        SpoolLoss loss =
                new SpoolLoss(finding.meanInToleranceS(), finding.lengthS().mean(), kgS);
        if (loss.touchedShare() > TIGHT) {
            String message = String.format(
                    Locale.ROOT,
                    "line %s with %s leaves its tolerance of %.3f mm %.1f times an hour on each strand, as its diameter"
                            + " spreads by %.4f mm: %.0f %% of spools of 1 kg are hit.",
                    line.name(),
                    product,
                    finding.toleranceMm(),
                    finding.perRunningH(),
                    finding.spreadMm(),
                    100 * loss.touchedShare());
            r.reading().faults().add(new Warning(Warning.Kind.TOLERANCE_TOO_TIGHT, r.origin(), message));
        }
    }
}
