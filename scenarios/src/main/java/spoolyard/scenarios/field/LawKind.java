package spoolyard.scenarios.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import spoolyard.core.plant.Law;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.read.Node;

/**
 * A probability law: a quantity alone, which is always the same, or a mapping from the law's name to its parameters, for
 * example {@code triangular: {low: 7 min, mode: 10 min, high: 16 min}}. Immutable.
 */
public final class LawKind implements Kind<Law> {
    private static final Kind<Double> CV = Numbers.above("0", "10");
    private static final Kind<Double> GAMMA_CV = Numbers.above("0", "3");
    private static final Kind<Double> SHAPE = Numbers.from("0.1", "100");

    private final Kind<Double> value;
    private final boolean isPositive;
    private final Map<String, Kind<Law>> laws = new LinkedHashMap<>();

    private LawKind(Kind<Double> value, boolean isPositive) {
        this.value = value;
        this.isPositive = isPositive;
        laws.put("fixed", new Single<>(value, Law.Fixed::new));
        laws.put("exponential", mapping("exponential", r -> new Law.Exponential(r.required("mean", positive()))));
        laws.put("uniform", mapping("uniform", this::uniform));
        laws.put("triangular", mapping("triangular", this::triangular));
        laws.put("lognormal", mapping("lognormal", r -> meanAnd(r, "cv", CV, Law.Lognormal::new)));
        laws.put("gamma", mapping("gamma", r -> meanAnd(r, "cv", GAMMA_CV, Law.Gamma::new)));
        laws.put("weibull", mapping("weibull", r -> meanAnd(r, "shape", SHAPE, Law.Weibull::new)));
        laws.put("observed", new Single<>(ListKind.some(value), Law.Observed::new));
    }

    /**
     * A law that may be always zero.
     *
     * @param value kind of its values
     * @return the kind
     */
    public static LawKind of(Kind<Double> value) {
        return new LawKind(value, false);
    }

    /**
     * A law with a mean above zero.
     *
     * @param value kind of its values
     * @return the kind
     */
    public static LawKind positive(Kind<Double> value) {
        return new LawKind(value, true);
    }

    /**
     * Whether a key is the name of a law.
     *
     * @param name the key
     * @return true if it is
     */
    public boolean isLaw(String name) {
        return laws.containsKey(name);
    }

    @Override
    public Law read(Node node, Reading reading) {
        int before = reading.faults().count();
        Law law = node instanceof Node.Mapping mapping
                ? named(mapping, reading)
                : new Law.Fixed(value.read(node, reading));
        boolean isClean = reading.faults().count() == before;
        if (isClean && isPositive && !(law.mean() > 0)) {
            impossible(node, "Must be longer than zero on average.", reading);
        }
        return law;
    }

    @Override
    public Law standIn() {
        return new Law.Fixed(Math.max(1, value.standIn()));
    }

    private Law named(Node.Mapping mapping, Reading reading) {
        List<String> names = List.copyOf(mapping.entries().keySet());
        if (names.size() == 1 && laws.containsKey(names.get(0))) {
            return laws.get(names.get(0)).read(mapping.entries().get(names.get(0)), reading);
        }
        mapping.entries().keySet().stream()
                .filter(name -> !laws.containsKey(name))
                .forEach(name -> unknown(name, mapping.entries().get(name), reading));
        if (laws.keySet().containsAll(names)) {
            String mend = names.isEmpty()
                    ? "write for example lognormal: {mean: 18 s, cv: 0.25}"
                    : "leave one; a merge patch takes an inherited one out with " + names.get(0) + ": null";
            reading.fault(FaultKind.IMPOSSIBLE_DISTRIBUTION, mapping, "Must name one distribution.", mend);
        }
        return standIn();
    }

    private void unknown(String name, Node node, Reading reading) {
        String mend = Nearest.to(name, laws.keySet())
                .map(near -> "write " + near)
                .orElse("write for example lognormal: {mean: 18 s, cv: 0.25}");
        String allowed = "Must be a distribution: " + String.join(", ", laws.keySet()) + ".";
        reading.faults().add(new Fault(FaultKind.IMPOSSIBLE_DISTRIBUTION, node.origin(), name, allowed, mend));
    }

    private Kind<Law> mapping(String type, Function<MappingReader, Law> build) {
        return new MappingKind<>(type, build);
    }

    private Law meanAnd(MappingReader r, String key, Kind<Double> kind, BiFunction<Double, Double, Law> build) {
        return build.apply(r.required("mean", positive()), r.required(key, kind));
    }

    private Law uniform(MappingReader r) {
        int before = r.reading().faults().count();
        double low = r.required("low", value);
        double high = r.required("high", value);
        if (r.reading().faults().count() > before) {
            return standIn();
        }
        if (low > high) {
            impossible(r, "high", "Must be >= low.");
            return standIn();
        }
        return new Law.Uniform(low, high);
    }

    private Law triangular(MappingReader r) {
        int before = r.reading().faults().count();
        double low = r.required("low", value);
        double mode = r.required("mode", value);
        double high = r.required("high", value);
        if (r.reading().faults().count() > before) {
            return standIn();
        }
        if (!(low <= mode && mode <= high && low < high)) {
            impossible(r, "mode", "Must be >= low and <= high, and high above low.");
            return standIn();
        }
        return new Law.Triangular(low, mode, high);
    }

    private void impossible(MappingReader r, String key, String allowed) {
        r.raw(key).ifPresent(node -> impossible(node, allowed, r.reading()));
    }

    private static void impossible(Node node, String allowed, Reading reading) {
        reading.fault(FaultKind.IMPOSSIBLE_DISTRIBUTION, node, allowed, "correct the parameters of the distribution");
    }

    /** Values of the law's kind without zero. */
    private Kind<Double> positive() {
        return new Kind<>() {
            @Override
            public Double read(Node node, Reading reading) {
                int before = reading.faults().count();
                double read = value.read(node, reading);
                if (reading.faults().count() == before && read <= 0) {
                    impossible(node, "Must be > 0.", reading);
                }
                return read > 0 ? read : 1;
            }

            @Override
            public Double standIn() {
                return 1.0;
            }
        };
    }

    /** A law with a single parameter that needs no name. */
    private record Single<P>(Kind<P> parameter, Function<P, Law> build) implements Kind<Law> {
        @Override
        public Law read(Node node, Reading reading) {
            return build.apply(parameter.read(node, reading));
        }

        @Override
        public Law standIn() {
            return build.apply(parameter.standIn());
        }
    }
}
