package spoolyard.analysis.invest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.Verdict;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Progress;
import spoolyard.core.random.Normal;
import spoolyard.core.random.Streams;
import spoolyard.core.record.OverflowCause;

/** The study on losses whose means are known. */
final class InvestStudyTest {
    private static final int ENOUGH = 1_000_000;
    private static final int MACRO_REPLICATIONS = 200;
    private static final LossTarget FIVE_PCT = new LossTarget(LossMeasure.OVERFLOW, 5);
    private static final MixLoss.Pay NOBODY = new MixLoss.Pay(0, 0, 0);

    /** A replication of 1000 swaps on one line. */
    private static MixLoss loss(double overflowPct, double money) {
        Map<OverflowCause, Long> causes = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OverflowCause.values()) {
            causes.put(cause, cause == OverflowCause.SWAP_TOO_SLOW ? Math.round(10 * overflowPct) : 0L);
        }
        Loss held = new Loss(1, 1000, 10 * overflowPct, causes, 0, 0, money);
        return new MixLoss(held, List.of(money), -money, NOBODY, 0);
    }

    private static List<MixPrice> prices(double... perYear) {
        return IntStream.range(0, perYear.length)
                .mapToObj(mix -> new MixPrice(0, 0, perYear[mix], 0, NOBODY))
                .toList();
    }

    private static InvestFinding study(
            InvestPlan plan,
            double runsPerYear,
            List<MixPrice> prices,
            ToDoubleBiFunction<Integer, Integer> overflowPct,
            ToDoubleBiFunction<Integer, Integer> money) {
        CommonNumbers<MixLoss> numbers = new CommonNumbers<>(
                (mix, i) -> loss(overflowPct.applyAsDouble(mix, i), money.applyAsDouble(mix, i)), 1);
        return new InvestStudy(
                        plan, runsPerYear, Counting.ofAll(prices.size(), 1), numbers, Progress.UNHEARD, () -> true)
                .run(Optional.of(FIVE_PCT), pay -> prices, List.of(1));
    }

    /**
     * Hand: ten runs a year; each loses 100 and 120 by turns as it is and 70 with the mix, so 300 and 500 a year are gained,
     * mean 400, standard deviation of ten values 105.41; price 60. Told may be after 2 or 10 replications, so each interval is
     * at 97.5 %: t(0.9875; 9) = 2.6850 (integrated numerically), half-width 89.50.
     */
    @Test
    void isWorthWhatItGainsLessItsPrice() {
        InvestPlan plan = new InvestPlan(0.95, 10, 10, ENOUGH, 2, OptionalDouble.of(1));

        InvestFinding found = study(
                plan, 10, prices(0, 60), (mix, i) -> mix == 0 ? 8 : 2, (mix, i) -> mix == 1 ? 70 : 100 + 20 * (i % 2));

        Worth worth = found.mixes().get(1).worth().orElseThrow();
        assertThat(worth.gain().mean()).isCloseTo(400, within(1e-9));
        assertThat(worth.net().mean()).isCloseTo(340, within(1e-9));
        assertThat(worth.net().halfWidth().orElseThrow()).isCloseTo(89.50, within(0.01));
        assertThat(worth.plantNet().mean()).isCloseTo(340, within(1e-9));
    }

    /** Nothing varies: mixes 2 and 3 meet 5 %, 3 is cheaper, 2 is worth more (900 - 400 against 400 - 100). */
    @Test
    void findsTheCheapestAndTheBestWhereNothingIsLeftToChance() {
        double[] overflowPct = {9, 6, 1, 4};
        double[] lost = {100, 90, 10, 60};

        InvestFinding found = study(
                new InvestPlan(0.95, 10, 40, ENOUGH, 10, OptionalDouble.of(50)),
                10,
                prices(0, 10, 400, 100),
                (mix, i) -> overflowPct[mix],
                (mix, i) -> lost[mix]);

        assertThat(found.mixes())
                .extracting(InvestFinding.MixFinding::verdict)
                .containsExactly(Verdict.MISSES, Verdict.MISSES, Verdict.MEETS, Verdict.MEETS);
        assertDecided(found.cheapest(), 3);
        assertDecided(found.best(), 2);
        assertThat(found.cheaperAndOpen()).isEmpty();
        assertThat(found.mixes().get(1).worth()).isPresent();
    }

    /** Of two at the same price the one that loses less is the cheapest. */
    @Test
    void choosesByWorthAmongThoseOfTheSamePrice() {
        InvestFinding found = study(
                new InvestPlan(0.95, 10, 40, ENOUGH, 10, OptionalDouble.of(5)),
                10,
                prices(0, 20, 20, 30),
                (mix, i) -> mix == 0 ? 9 : 1,
                (mix, i) -> new double[] {100, 50, 40, 60}[mix]);

        assertDecided(found.cheapest(), 2);
    }

    /** Exactly at the target nothing can be told: a cheaper mix stays open and is named. */
    @Test
    void namesTheCheaperOnesOfWhichItCannotTell() {
        InvestFinding found = study(
                new InvestPlan(0.95, 10, 40, ENOUGH, 10, OptionalDouble.of(5)),
                10,
                prices(0, 10, 20),
                (mix, i) -> mix == 0 ? 9 : mix == 2 ? 1 : 5 + (i % 2 == 0 ? 2 : -2),
                (mix, i) -> 10);

        assertDecided(found.cheapest(), 2);
        assertThat(found.cheaperAndOpen())
                .extracting(InvestFinding.MixFinding::number)
                .containsExactly(1);
    }

    @Test
    void saysWhenNoneMeets() {
        InvestFinding found = study(
                new InvestPlan(0.95, 10, 40, ENOUGH, 10, OptionalDouble.of(5)),
                10,
                prices(0, 10),
                (mix, i) -> 9 - mix,
                (mix, i) -> 10);

        assertThat(found.isHopeless()).isTrue();
        assertThat(found.cheapest()).isEmpty();
        assertThat(found.best()).isEmpty();
        assertThat(found.nearest().number()).isEqualTo(1);
    }

    /**
     * Six mixes at 8, 6, 5.3, 4.7, 4 and 3 % of the swaps against a target of 5 %, standard deviation 1 point; in money the
     * fourth is ahead of the fifth and the sixth by 100 a year, standard deviation 150, correlation 0.5; asked for is one that
     * is at most 50 below the best, so none but the fourth. Prices grow, so that the cheapest that meets is the
     * fourth. No wrong verdict, no wrong cheapest and no wrong promise of the best in at least 95 % of 200 experiments, less
     * two standard errors of a share, 1.54 points each. How often the best is told at all is counted apart.
     */
    @Test
    void isRightAsOftenAsItPromises() {
        double[] overflowPct = {8, 6, 5.3, 4.7, 4, 3};
        double[] price = {0, 100, 200, 300, 400, 500};
        int right = 0;
        int decided = 0;
        for (int macro = 0; macro < MACRO_REPLICATIONS; macro++) {
            int seed = 100 + macro;
            InvestFinding found = study(
                    new InvestPlan(0.95, 10, 320, ENOUGH, 10, OptionalDouble.of(50)),
                    1,
                    prices(price),
                    (mix, i) -> overflowPct[mix] + normal(seed, i, "overflow " + mix),
                    (mix, i) -> (mix == 3 ? 0 : 100)
                            - price[mix]
                            + 1000
                            + 150 * Math.sqrt(0.5) * (normal(seed, i, "shared") + normal(seed, i, "money " + mix)));
            boolean isVerdictWrong = found.mixes().stream()
                    .anyMatch(mix -> mix.verdict() == (mix.number() >= 3 ? Verdict.MISSES : Verdict.MEETS));
            boolean isCheapestWrong = found.cheaperAndOpen().isEmpty()
                    && found.cheapest().filter(pick -> pick.mix() == 3).isEmpty();
            boolean isRaceFull = found.mixes().get(3).isMeeting();
            boolean isBestWrong = isRaceFull
                    && found.best().orElseThrow().mix() != 3
                    && found.best().orElseThrow().atMostBelow() < 100;
            decided += isRaceFull && found.best().orElseThrow().isDecided() ? 1 : 0;
            right += isVerdictWrong || isCheapestWrong || isBestWrong ? 0 : 1;
        }

        assertThat(right / (double) MACRO_REPLICATIONS).isGreaterThanOrEqualTo(0.95 - 2 * 0.0154);
        assertThat(decided).isGreaterThanOrEqualTo(MACRO_REPLICATIONS * 3 / 4);
    }

    /**
     * Two mixes at the target stay open, two meet it by far and vary in money alone. With 200 runs in all, 100 for the target:
     * 4 mixes to 10 take 40; the open two to 20, 60 so far; to 40, 100; to 80 would be 180, too many. The two others race to 15,
     * 110; to 23, 126; to 35, 150; to 53, 186; to 80 would be 240, too many.
     */
    @Test
    void endsBeforeTheRunsThatItMayTake() {
        InvestFinding found = study(
                new InvestPlan(0.95, 10, 320, 200, 10, OptionalDouble.of(1)),
                1,
                prices(10, 20, 30, 40),
                (mix, i) -> mix < 2 ? 5 + (i % 2 == 0 ? 2 : -2) : 1,
                (mix, i) -> mix < 2 ? 500 : 1000 + (i % 2 == 0 ? 300 : -300) * (mix == 2 ? 1 : -1));

        assertThat(found.mixes())
                .extracting(InvestFinding.MixFinding::verdict)
                .containsExactly(Verdict.OPEN, Verdict.OPEN, Verdict.MEETS, Verdict.MEETS);
        assertThat(found.mixes().get(1).replications()).isEqualTo(40);
        assertThat(found.mixes().get(2).replications()).isEqualTo(53);
        assertThat(found.best().orElseThrow().isDecided()).isFalse();
        assertThat(found.best().orElseThrow().atMostBelow()).isPositive();
    }

    private static void assertDecided(Optional<InvestFinding.Pick> pick, int mix) {
        assertThat(pick.orElseThrow().mix()).isEqualTo(mix);
        assertThat(pick.orElseThrow().isDecided()).isTrue();
    }

    private static double normal(int seed, int replication, String cause) {
        return Normal.quantile(new Streams(seed, replication).uniforms(cause).next());
    }
}
