package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.PurgeEstimate;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.purge.PurgeModel;
import spoolyard.core.purge.PurgeStudy;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;

/**
 * Purge from washout and mixing.
 *
 * @param products the plant's colours
 */
record PurgeEstimateKind(Products products) implements Kind<PurgeEstimateKind.Read> {
    private static final Kind<Viewing> VIEWING = Words.oneOf(viewings());
    private static final Kind<Double> TOLERANCE = Numbers.from("0.1", "20");
    private static final Kind<Double> VOLUME = Numbers.from("0.1", "20");
    private static final Kind<Double> EXPONENT = Numbers.from("0", "2");
    private static final Kind<Double> RESIN = QuantityKind.above(Dimension.SHARE, "0 %", "50 %");
    private static final Kind<Double> THROWN_BACK = QuantityKind.from(Dimension.SHARE, "0 %", "90 %");
    private static final double USUAL_RESIN = 0.002;

    private static final Kind<Saunderson> SURFACE = new MappingKind<>(
            "surface", r -> new Saunderson(r.required("outside", THROWN_BACK), r.required("inside", THROWN_BACK)));

    /**
     * An estimate as the file says it.
     *
     * @param said what it says
     * @param colours those it is for
     */
    record Read(PurgeInputs.Estimate said, List<Colour> colours) {
        /** Purge of every pair of these colours. */
        PurgeEstimate estimate(PurgeFormula otherwise) {
            return new PurgeEstimate(
                    PurgeStudy.of(colours, said.model().looks()).pairs(said.model()), otherwise);
        }
    }

    private static Map<String, Viewing> viewings() {
        Map<String, Viewing> viewings = new LinkedHashMap<>();
        viewings.put("D65 10°", Viewing.D65_10);
        viewings.put("D65 2°", Viewing.D65_2);
        viewings.put("D50 10°", Viewing.D50_10);
        viewings.put("D50 2°", Viewing.D50_2);
        return viewings;
    }

    @Override
    public Read read(Node node, Reading reading) {
        return new MappingKind<>("purge_estimate", this::estimate).read(node, reading);
    }

    @Override
    public Read standIn() {
        return new MappingKind<>("purge_estimate", this::estimate).standIn();
    }

    private Read estimate(MappingReader r) {
        PurgeModel.Looks looks = new PurgeModel.Looks(
                r.required("measured_under", VIEWING),
                r.optional("surface", SURFACE, Saunderson.NONE),
                r.optional("tolerance", TOLERANCE, 1.0));
        PurgeModel model = new PurgeModel(
                looks,
                r.required("washout", new WashoutKind()),
                r.optional("volume", VOLUME, 1.0),
                r.optional("mixing_exponent", EXPONENT, 1.0),
                r.optional("resin", RESIN, USUAL_RESIN));
        List<String> leftOut = r.optional("leave_out", ListKind.of(products.colourCode()), List.of());
        List<Colour> colours = products.colours().values().stream()
                .filter(colour -> !leftOut.contains(colour.code()))
                .toList();
        if (r.reading().faults().isEmpty()) {
            colours.stream()
                    .filter(colour -> !PurgeStudy.isPossible(colour, looks))
                    .forEach(colour -> r.reading().faults().add(impossible(colour)));
        }
        return new Read(new PurgeInputs.Estimate(model, leftOut), colours);
    }

    private Fault impossible(Colour colour) {
        Origin row = products.rows().get(colour.code());
        return new Fault(
                FaultKind.CONTRADICTION,
                new Origin(row.file(), row.line(), "L, a, b"),
                colour.lightness() + ", " + colour.a() + ", " + colour.b(),
                "Must be a colour that a surface can have under the light of purge_estimate, and throw back more than"
                        + " its surface alone.",
                "measure it again, mend measured_under or surface, or write " + colour.code() + " under leave_out");
    }
}
