package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.QualityRules;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.LawKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;

/** The parts {@code lab} and {@code exposure}. */
final class QualitySection {
    private static final Kind<Double> LOT_AGE = QuantityKind.above(Dimension.TIME, "0 h", "52 weeks");
    private static final Kind<Integer> PLACES = Numbers.whole(1, 1000);
    private static final LawKind SPOOL_WORK = Amounts.durationUpTo("24 h");

    private static final Kind<Lab.LotQuality> DEFECTIVE = new MappingKind<>(
            "defective",
            r -> new Lab.LotQuality(
                    r.required("spools", Amounts.SHARE),
                    r.optional("bad_lots", Amounts.SHARE, 0.0),
                    r.optional("spools_in_bad_lots", Amounts.SHARE, 0.0)));

    private static final Kind<Lab.Sampling> SAMPLING = new MappingKind<>(
            "sampling",
            r -> new Lab.Sampling(r.required("level", Words.oneOf(levels())), r.required("aql", new AqlKind())));

    private final CrewNeedKind crew;

    QualitySection(CrewNeedKind crew) {
        this.crew = crew;
    }

    private static Map<String, InspectionLevel> levels() {
        Map<String, InspectionLevel> levels = new LinkedHashMap<>();
        for (InspectionLevel level : InspectionLevel.values()) {
            levels.put(level.label(), level);
        }
        return levels;
    }

    QualityRules rules(MappingReader r) {
        return new QualityRules(
                r.optional("lab", new MappingKind<>("lab", this::lab)),
                r.optional("exposure", new MappingKind<>("exposure", this::exposure)));
    }

    // ------------------------------------------------------------------ lab

    private Lab lab(MappingReader r) {
        LotSize lot = r.required("lot", LotSize.KIND);
        Optional<Lab.Sampling> sampling = r.optional("sampling", SAMPLING);
        List<Lab.Test> tests = tests(r);
        if (sampling.isEmpty() && tests.stream().anyMatch(Lab.Test::isForEachSampledSpool)) {
            contradiction(
                    r,
                    "tests",
                    "A test of each sampled spool needs a sample.",
                    "add sampling, or take each out of the test");
        }
        return new Lab(
                r.optional("hold", Words.oneOf(Lab.Hold.class), Lab.Hold.BEFORE_PACKING),
                quarantine(r),
                lot.spools(),
                lot.withinS(),
                r.optional("defective", DEFECTIVE, new Lab.LotQuality(0, 0, 0)),
                sampling,
                tests,
                r.optional("refused", new MappingKind<>("refused", this::refusal), Lab.Refusal.GRIND),
                r.optional("place", Amounts.PLACE, Place.ORIGIN));
    }

    private static int quarantine(MappingReader r) {
        int places = r.required("quarantine", Amounts.spoolsOrUnlimited());
        if (places == 0) {
            r.raw("quarantine").filter(node -> r.reading().faults().isEmpty()).ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.OUT_OF_RANGE,
                            node,
                            "Must be >= 1 spool, or unlimited.",
                            "enter how many spools can be held, or take the part lab out"));
        }
        return places;
    }

    private List<Lab.Test> tests(MappingReader r) {
        Kind<Map<String, Lab.Test>> kind = new NamedKind<>(name -> new MappingKind<>("test", test -> test(name, test)));
        return List.copyOf(r.optional("tests", kind, Map.of()).values());
    }

    private Lab.Test test(String name, MappingReader r) {
        return new Lab.Test(
                name,
                r.optional("places", PLACES, 1),
                r.optional("batch", PLACES, 1),
                r.required("takes", Amounts.WORK),
                r.optional("crew", crew, CrewNeed.NOBODY),
                r.optional("lots", Amounts.SHARE, 1.0),
                r.optional("each", Words.oneOf("lot", "sampled spool"), "lot").equals("sampled spool"),
                r.optional("holds", Words.yesOrNo(), true));
    }

    private Lab.Refusal refusal(MappingReader r) {
        RefusedLots sorted = r.optional("sort", refusedLots(), RefusedLots.NONE);
        RefusedLots respooled = r.optional("re_spool", refusedLots(), RefusedLots.NONE);
        if (sorted.lots() + respooled.lots() > 1) {
            contradiction(
                    r,
                    "sort",
                    "The lots sorted and the lots re-spooled must be 100 % or less together.",
                    "lower one of the shares; what is left is ground");
        }
        return new Lab.Refusal(sorted.lots(), sorted.work(), respooled.lots(), respooled.work());
    }

    private Kind<RefusedLots> refusedLots() {
        return new MappingKind<>(
                "refused_lots",
                r -> new RefusedLots(
                        r.required("lots", Amounts.SHARE),
                        new Lab.Work(
                                r.optional("places", PLACES, 1),
                                r.required("takes", SPOOL_WORK),
                                r.optional("crew", crew, CrewNeed.NOBODY))));
    }

    private static void contradiction(MappingReader r, String key, String allowed, String mend) {
        r.raw(key).ifPresent(node -> r.reading().fault(FaultKind.CONTRADICTION, node, allowed, mend));
    }

    // ------------------------------------------------------------------ exposure

    private Exposure exposure(MappingReader r) {
        Exposure.Beyond beyond = r.required("beyond", Words.oneOf(beyond()));
        Optional<Exposure.Oven> oven = r.optional("oven", new MappingKind<>("oven", this::oven));
        if (beyond == Exposure.Beyond.RE_DRY && oven.isEmpty()) {
            contradiction(r, "beyond", "To dry spools again takes an oven.", "add oven, or choose seal or scrap");
        }
        return new Exposure(
                beyond,
                r.optional("order", Words.oneOf(Exposure.Order.class), Exposure.Order.FIRST_COME),
                oven.orElse(Exposure.Oven.NONE));
    }

    private static Map<String, Exposure.Beyond> beyond() {
        Map<String, Exposure.Beyond> words = new LinkedHashMap<>();
        words.put("re-dry", Exposure.Beyond.RE_DRY);
        words.put("scrap", Exposure.Beyond.SCRAP);
        words.put("seal", Exposure.Beyond.SEAL);
        return words;
    }

    private Exposure.Oven oven(MappingReader r) {
        return new Exposure.Oven(
                r.optional("places", PLACES, 1),
                r.required("batch", Numbers.whole(1, 10_000)),
                r.required("takes", Amounts.WORK),
                r.optional("scrapped", Amounts.SHARE, 0.0),
                r.optional("crew", crew, CrewNeed.NOBODY));
    }

    /** The largest lot. */
    private record LotSize(int spools, double withinS) {
        static final Kind<LotSize> KIND = new MappingKind<>(
                "lot",
                r -> new LotSize(
                        r.required("spools", Numbers.whole(1, 1_000_000)),
                        r.optional("within", LOT_AGE, Double.POSITIVE_INFINITY)));
    }

    /** A share of the refused lots and what is done to them. */
    private record RefusedLots(double lots, Lab.Work work) {
        static final RefusedLots NONE = new RefusedLots(0, Lab.Work.NONE);
    }
}
