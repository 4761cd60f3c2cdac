package spoolyard.core.purge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.colour.CieLab;
import spoolyard.core.colour.HidingColour;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.PurgeEstimate;

/**
 * Estimates the purge of every pair of a plant's colours. Each estimate is washout times mixing: the new colour is clean
 * when the share of old melt in what comes out has fallen to what the new colour hides. Nothing here knows which of two
 * colours is the lighter. Immutable.
 */
public final class PurgeStudy {
    private final PurgeModel.Looks looks;
    private final Map<String, Compound> compounds;

    private PurgeStudy(PurgeModel.Looks looks, Map<String, Compound> compounds) {
        this.looks = looks;
        this.compounds = compounds;
    }

    /** A colour of the plant and how its pigments mix. */
    private record Compound(Colour colour, HidingColour looks) {
        /** What a melt of this colour scatters. */
        double scattering(PurgeModel model) {
            double power = colour.pigmentStrength() * colour.concentrateShare() + model.resinShare();
            return power * Math.pow(looks.meanKOverS(), model.mixingExponent() - 1);
        }
    }

    /**
     * Prepares a study.
     *
     * @param colours the plant's colours, each code once; those that no surface can have are left out
     * @param looks light, eye, surface and tolerance
     * @return the study
     */
    public static PurgeStudy of(List<Colour> colours, PurgeModel.Looks looks) {
        Map<String, Compound> compounds = new LinkedHashMap<>();
        for (Colour colour : colours) {
            hiding(colour, looks).ifPresent(hiding -> compounds.put(colour.code(), new Compound(colour, hiding)));
        }
        return new PurgeStudy(looks, Collections.unmodifiableMap(compounds));
    }

    /**
     * Whether a surface can have a colour.
     *
     * @param colour a colour
     * @param looks light, eye, surface
     * @return false if its L*a*b* belong to no reflectance between 0 and 1, or to less than the surface throws back
     */
    public static boolean isPossible(Colour colour, PurgeModel.Looks looks) {
        return hiding(colour, looks).isPresent();
    }

    private static Optional<HidingColour> hiding(Colour colour, PurgeModel.Looks looks) {
        CieLab lab = new CieLab(colour.lightness(), colour.a(), colour.b());
        return HidingColour.of(lab, looks.viewing(), looks.surface());
    }

    /**
     * How much of a pair's scattering may be the old colour's. Does not depend on volume, exponent or resin.
     *
     * @param from colour code before
     * @param to colour code after
     * @return old over new, {@code > 0}; infinity if the old colour itself is within the tolerance
     */
    public double cleanRatio(String from, String to) {
        return CleanRatio.of(compound(from).looks(), compound(to).looks(), looks.toleranceDeltaE());
    }

    /**
     * How much of the melt may be old.
     *
     * @param from colour code before
     * @param to colour code after
     * @param cleanRatio what {@link #cleanRatio} found for the pair
     * @param model what is supposed
     * @return share of the melt, in (0, 1]
     */
    public double cleanShare(String from, String to, double cleanRatio, PurgeModel model) {
        double byMass =
                cleanRatio * compound(to).scattering(model) / compound(from).scattering(model);
        return Double.isInfinite(byMass) ? 1 : byMass / (1 + byMass);
    }

    /**
     * The purge of a pair.
     *
     * @param from colour code before
     * @param to colour code after
     * @param model what is supposed, with the looks of this study
     * @return mass run to waste over the hold-up of the line, {@code >= 0}
     */
    public double holdUps(String from, String to, PurgeModel model) {
        double share = cleanShare(from, to, cleanRatio(from, to), model);
        return model.volumeHoldUps() * model.washout().turnovers(share);
    }

    /**
     * The purge of every pair.
     *
     * @param model what is supposed, with the looks of this study
     * @return each pair of different colours. Cost: O(colours^2), some 20 microseconds a pair
     */
    public PurgeEstimate estimate(PurgeModel model) {
        List<PurgeEstimate.Pair> pairs = new ArrayList<>();
        for (String from : compounds.keySet()) {
            for (String to : compounds.keySet()) {
                if (!from.equals(to)) {
                    pairs.add(new PurgeEstimate.Pair(from, to, holdUps(from, to, model)));
                }
            }
        }
        return new PurgeEstimate(pairs);
    }

    private Compound compound(String code) {
        Compound compound = compounds.get(code);
        if (compound == null) {
            throw new IllegalArgumentException("colour = " + code + ". Must be a possible colour of this study.");
        }
        return compound;
    }
}
