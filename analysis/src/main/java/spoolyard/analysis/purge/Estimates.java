package spoolyard.analysis.purge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import spoolyard.core.plant.Colour;
import spoolyard.core.purge.PurgeModel;
import spoolyard.core.purge.PurgeStudy;
import spoolyard.scenarios.check.PurgeInputs;

/** A plant's estimate of hidden shares, each pair worked out when first asked for. Not for several threads. */
final class Estimates {
    private final PurgeModel model;
    private final Set<String> codes;
    private final PurgeStudy study;
    private final Map<List<String>, Double> cleanRatios = new LinkedHashMap<>();

    private Estimates(PurgeModel model, Set<String> codes, PurgeStudy study) {
        this.model = model;
        this.codes = codes;
        this.study = study;
    }

    /**
     * For a plant's colours.
     *
     * @param inputs the colours
     * @param estimate what is supposed, and which colours are left out
     * @return the estimates; colours that no surface can have are left out too
     */
    static Estimates of(PurgeInputs inputs, PurgeInputs.Estimate estimate) {
        List<Colour> colours = inputs.colours().stream()
                .map(PurgeInputs.OfferedColour::colour)
                .filter(colour -> !estimate.leftOut().contains(colour.code()))
                .filter(colour -> PurgeStudy.isPossible(colour, estimate.model().looks()))
                .toList();
        Set<String> codes = colours.stream().map(Colour::code).collect(Collectors.toSet());
        return new Estimates(
                estimate.model(), codes, PurgeStudy.of(colours, estimate.model().looks()));
    }

    /**
     * Whether a pair can be estimated.
     *
     * @param from colour code before
     * @param to colour code after
     * @return false for one colour, and if either is left out
     */
    boolean knows(String from, String to) {
        return !from.equals(to) && codes.contains(from) && codes.contains(to);
    }

    /**
     * As the plant supposes.
     *
     * @param from colour code before
     * @param to colour code after
     * @return share of the melt that may be old
     */
    double hiddenShare(String from, String to) {
        return hiddenShare(from, to, model);
    }

    /**
     * As another model of the same looks supposes.
     *
     * @param from colour code before
     * @param to colour code after
     * @param other the model
     * @return share of the melt that may be old
     */
    double hiddenShare(String from, String to, PurgeModel other) {
        double ratio = cleanRatios.computeIfAbsent(List.of(from, to), pair -> study.cleanRatio(from, to));
        return study.cleanShare(from, to, ratio, other);
    }
}
