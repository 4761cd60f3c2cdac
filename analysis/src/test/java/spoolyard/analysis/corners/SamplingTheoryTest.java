package spoolyard.analysis.corners;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.AcceptanceCurve;
import spoolyard.core.record.QualityResult.LotResult;
import spoolyard.core.record.RunResult;

/**
 * The operating characteristic of a sampling plan as the run gives it: lots of 200 spools, level II, AQL 2.5 %, which is
 * letter G: n = 32, Ac = 2. Each spool is defective by chance, so the number in the sample is binomial.
 *
 * <p>Source: {@link AcceptanceCurve}, held against published values in {@code QualityTheoryTest}. Level 99 %, 48
 * replications of 1080 lots, fixed seed; exact, as lots are independent.
 */
final class SamplingTheoryTest {
    private static final AcceptanceCurve LETTER_G = new AcceptanceCurve(32, 2);
    private static final int REPLICATIONS = 48;

    @Test
    void lotsAtTheLimitAreRarelyRefused() {
        assertRefused("2.5 %", 1 - LETTER_G.binomial(0.025), 0.12);
    }

    @Test
    void lotsOfTwiceTheLimitAreRefusedAsTheCurveSays() {
        assertRefused("5 %", 1 - LETTER_G.binomial(0.05), 0.06);
    }

    @Test
    void badLotsAreMostlyRefused() {
        assertRefused("15 %", 1 - LETTER_G.binomial(0.15), 0.02);
    }

    /** One lot in ten is bad: the shares of refusal mix. */
    @Test
    void aMixOfUsualAndBadLotsIsRefusedInProportion() {
        double refused = 0.9 * (1 - LETTER_G.binomial(0.01)) + 0.1 * (1 - LETTER_G.binomial(0.15));
        List<RunResult> runs =
                lab("{spools: 1 %, bad_lots: 10 %, spools_in_bad_lots: 15 %}").replications(REPLICATIONS);

        Agreement.over(runs)
                .on("lots refused, 10 % bad ones", SamplingTheoryTest::refusedShare, refused, 0.12)
                .on("defective in the samples", SamplingTheoryTest::defectiveInSamples, 0.9 * 0.01 + 0.1 * 0.15, 0.03);
    }

    private static void assertRefused(String defective, double refused, double narrow) {
        List<RunResult> runs = lab("{spools: " + defective + "}").replications(REPLICATIONS);

        Agreement.over(runs).on("lots refused at " + defective, SamplingTheoryTest::refusedShare, refused, narrow);
    }

    private static Corner lab(String defective) {
        return Corner.of("lab")
                .with("/lab/lot/spools", "200")
                .with("/lab/sampling", "{level: II, aql: 2.5 %}")
                .with("/lab/defective", defective);
    }

    private static double refusedShare(RunResult run) {
        LotResult lots = outside(run);
        return lots.refused() / (double) lots.judged();
    }

    private static double defectiveInSamples(RunResult run) {
        LotResult lots = outside(run);
        return lots.defectiveSampled() / (double) lots.sampled();
    }

    private static LotResult outside(RunResult run) {
        return run.quality().lots().stream()
                .filter(lots -> lots.judged() > 0)
                .findFirst()
                .orElseThrow();
    }
}
