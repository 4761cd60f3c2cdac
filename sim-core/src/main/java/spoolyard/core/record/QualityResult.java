package spoolyard.core.record;

import java.util.List;

/**
 * Colour approval, lab, exposure clock and spools lost behind the line over one replication. Immutable.
 *
 * @param lab the tests as stations; their {@code spools} are lots
 * @param rework sorting, re-spooling and drying again
 * @param lots lots by polymer
 * @param exposure exposure by polymer
 * @param losses spools lost behind the line, by line and cause
 * @param approvals colour approvals with product held, by line; empty if product is not held
 */
public record QualityResult(
        List<StationResult> lab,
        List<StationResult> rework,
        List<LotResult> lots,
        List<ExposureResult> exposure,
        List<LossResult> losses,
        List<ApprovalResult> approvals) {
    /** No lab, no exposure clock. */
    public static final QualityResult NONE =
            new QualityResult(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public QualityResult {
        lab = List.copyOf(lab);
        rework = List.copyOf(rework);
        lots = List.copyOf(lots);
        exposure = List.copyOf(exposure);
        losses = List.copyOf(losses);
        approvals = List.copyOf(approvals);
    }

    /**
     * Colour approvals of a line that makes and holds product meanwhile.
     *
     * @param line its name
     * @param judged judgements
     * @param refused of these, refused
     * @param held spools that stood held
     * @param released of these, released; those not yet judged and those refused are the rest
     * @param scrapped spools refused, held or still at the winder
     * @param waitS time from the first product to the judgement, seconds, summed over {@code judged}
     * @param longestWaitS longest such time, seconds
     */
    public record ApprovalResult(
            String line,
            long judged,
            long refused,
            long held,
            long released,
            long scrapped,
            double waitS,
            double longestWaitS) {}

    /**
     * Lots of a polymer.
     *
     * @param polymer its code; empty for spools from outside whose polymer is not known
     * @param judged lots accepted or refused
     * @param refused of these, refused
     * @param cut of these, closed early because the quarantine was full
     * @param spools spools in the lots judged
     * @param sampled spools taken as samples
     * @param defectiveSampled defective spools found in the samples
     * @param defectivePassed defective spools in the accepted lots, which nobody found
     * @param sorted spools of refused lots sorted
     * @param respooled spools of refused lots wound anew
     * @param ground spools of refused lots ground, the defective ones of sorted lots included
     * @param holdS time from the close of a lot to its judgement, seconds, summed over the lots judged
     * @param longestHoldS longest such time, seconds
     */
    public record LotResult(
            String polymer,
            long judged,
            long refused,
            long cut,
            long spools,
            long sampled,
            long defectiveSampled,
            long defectivePassed,
            long sorted,
            long respooled,
            long ground,
            double holdS,
            double longestHoldS) {}

    /**
     * Exposure of a polymer with a limit.
     *
     * @param polymer its code
     * @param limitS the limit, seconds
     * @param spools times that a spool came to its turn at sealing; one that was dried again comes twice
     * @param beyond of these, beyond the limit
     * @param redried spools dried again and good
     * @param scrapped spools ground, at once or after drying
     * @param exposedS time from the winder, or the oven, to the turn at sealing, seconds, summed over {@code spools}
     * @param longestS longest such time, seconds
     */
    public record ExposureResult(
            String polymer,
            double limitS,
            long spools,
            long beyond,
            long redried,
            long scrapped,
            double exposedS,
            double longestS) {}

    /**
     * Good spools that were lost behind the line.
     *
     * @param line line name; empty for spools from outside
     * @param cause why
     * @param spools count
     * @param kg their mass
     */
    public record LossResult(String line, ScrapCause cause, long spools, double kg) {}
}
