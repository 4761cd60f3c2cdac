package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Filament;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/**
 * A line on which nothing is random, worked by hand: 18 kg/h of PLA (1.24 g/cm3) at 1.75 mm runs at v = 1.676418 m/s; 1 kg
 * is 335.284 m and takes 200 s; the winder catches up at w = 160 m/min = 2.666667 m/s.
 *
 * <p>Source: geometry and arithmetic, beside each check.
 */
final class HandOracleTheoryTest {
    private static final double KG_PER_M = new Filament(1240, 1.75).kgPerM();
    private static final double SPEED_M_PER_S = 1.676418;

    /** Hand: spool n is full at n x 200 s, for the accumulator is home before; it is off 18 + 32 s later: 144 at 28 850 s. */
    @Test
    void makes144SpoolsInEightHours() {
        LineResult justBefore = oracle("28849 s").lines().get(0);
        LineResult justAfter = oracle("28851 s").lines().get(0);

        assertThat(justBefore.goodSpools()).isEqualTo(143);
        assertThat(justAfter.goodSpools()).isEqualTo(144);
        assertThat(justAfter.goodKg()).isCloseTo(144, within(1e-6));
        assertThat(justAfter.totalScrapKg()).isZero();
    }

    /** Hand: 8 h x 18 kg/h = 144 kg = 144 x 335.284 m = 48.28 km; 18 s x v = 30.18 m in the accumulator at most. */
    @Test
    void makes48KilometresInEightHours() {
        LineResult line = oracle("8 h").lines().get(0);

        assertThat(line.fedKg()).isCloseTo(144, within(1e-6));
        assertThat(line.fedKg() / KG_PER_M).isCloseTo(48_281, within(1.0));
        assertThat(line.peakLevelM()).isCloseTo(30.18, within(0.01));
    }

    /**
     * Hand: C/v = 35.7906 s. 35.79 s x v = 59.9990 m just fits; 37 s x v - 60 m = 2.0275 m lost. The last swap of the late
     * case begins at 28 772 s, so it is over at the end.
     */
    @Test
    void aSwapOf35SecondsAndAHalfFitsAndOneOf37LosesTwoMetresASpool() {
        LineResult fits = swap("35.79 s");
        LineResult late = swap("37 s");

        assertThat(fits.peakLevelM()).isCloseTo(59.9990, within(0.0005));
        assertThat(fits.scrapKg().get(ScrapCause.OVERFLOW)).isZero();
        assertThat(late.peakLevelM()).isCloseTo(60, within(1e-4));
        assertThat(late.overflows().get(OverflowCause.SWAP_TOO_SLOW)).isEqualTo(late.swaps());
        assertThat(late.overflowM().get(OverflowCause.SWAP_TOO_SLOW) / late.swaps())
                .isCloseTo(2.0275, within(0.0005));
        assertThat(late.scrapKg().get(ScrapCause.OVERFLOW)).isCloseTo(late.swaps() * 2.0275 * KG_PER_M, within(1e-4));
    }

    /**
     * Hand: both lines fill at 200 s; the operator serves one for 18 + 1 s, then the other, which loses (19 + 18) x v - 60 =
     * 2.0275 m, and somebody is at work on it when it fills at 235.79 s.
     */
    @Test
    void aWaitOf19SecondsBeforeASwapOf18LosesTwoMetres() {
        RunResult run = Corner.of("two-lines").run();
        LineResult first = run.lines().get(0);
        LineResult second = run.lines().get(1);

        assertThat(first.overflowM().get(OverflowCause.SWAP_TOO_SLOW)).isZero();
        assertThat(second.overflowM().get(OverflowCause.SWAP_TOO_SLOW)).isCloseTo(2.0275, within(0.0005));
        assertThat(second.overflowM().get(OverflowCause.NO_CREW)).isZero();
        assertThat(first.longestSwapWaitS()).isZero();
        assertThat(second.longestSwapWaitS()).isCloseTo(19, within(1e-6));
    }

    /**
     * Hand: with 20 s more at the first spool the other waits 39 s: nobody is there when its accumulator fills after 35.7906
     * s, and until somebody comes it loses 3.2094 s x v = 5.3803 m; then 18 s x v = 30.1755 m because the swap takes so long.
     */
    @Test
    void anAccumulatorThatFillsBeforeAnybodyComesIsForWantOfCrew() {
        LineResult second = Corner.of("two-lines")
                .with("/every_line/winder/finish", "21 s")
                .run()
                .lines()
                .get(1);

        assertThat(second.overflows().get(OverflowCause.NO_CREW)).isEqualTo(1);
        assertThat(second.overflows().get(OverflowCause.SWAP_TOO_SLOW)).isZero();
        assertThat(second.overflowM().get(OverflowCause.NO_CREW)).isCloseTo(5.3803, within(0.0005));
        assertThat(second.overflowM().get(OverflowCause.SWAP_TOO_SLOW)).isCloseTo(30.1755, within(0.0005));
    }

    /**
     * Hand: 35.79 s x v = 59.9990 m drain at w - v = 0.990249 m/s in 60.59 s, in which w x 60.59 s = 161.57 m are wound. A
     * spool of 161.7 m is full just after the accumulator is home, so the next swap fits too; one of 161.4 m is full 0.065 s
     * before, 0.0642 m above home, and the next swap loses that less the 0.0010 m to spare. The first spool is full at 96.3
     * s, the second 35.79 + 60.6 s later, its swap done at 228.5 s.
     */
    @Test
    void drainingSixtyMetresTakesSixtySecondsAndAHalf() {
        LineResult longer = shortSpool("oracle/spool-161.7.yaml", "35.79 s", "229 s");
        LineResult shorter = shortSpool("oracle/spool-161.4.yaml", "35.79 s", "229 s");

        assertThat(longer.swaps()).isEqualTo(2);
        assertThat(overflowM(longer)).isZero();
        assertThat(shorter.swaps()).isEqualTo(2);
        assertThat(overflowM(shorter)).isCloseTo(0.0632, within(0.0005));
    }

    /**
     * Hand: a spool of 0.3 kg is 100.585 m, 60 s at v and 37.72 s at w. A swap of 24 s adds 24 v = 40.234 m, and until the
     * next spool is full only 37.72 s x (w - v) = 37.352 m drain: the level before the swaps climbs by 2.882 m each. Swap n
     * begins at 60 + (n - 1) 61.719 s and peaks at 40.234 + (n - 1) 2.882 m.
     */
    @Test
    void levelClimbsFromSpoolToSpoolWhereCatchingUpIsTooSlow() {
        assertThat(ratchet("85 s").peakLevelM()).isCloseTo(40.234, within(0.001));
        assertThat(ratchet("146 s").peakLevelM()).isCloseTo(43.117, within(0.001));
        assertThat(ratchet("208 s").peakLevelM()).isCloseTo(45.999, within(0.001));
        assertThat(ratchet("455 s").peakLevelM()).isCloseTo(57.529, within(0.001));
    }

    /** Hand, as above: the eighth swap would reach 60.411 m, it fills at 515.79 s; from then on each loses 2.8824 m. */
    @Test
    void theEighthSpoolOfTheClimbIsTheFirstToOverflow() {
        LineResult before = ratchet("515.78 s");
        LineResult eighth = ratchet("517 s");
        LineResult tenth = ratchet("640 s");

        assertThat(overflowCount(before)).isZero();
        assertThat(overflowCount(eighth)).isEqualTo(1);
        assertThat(overflowM(eighth)).isCloseTo(0.4112, within(0.0005));
        assertThat(overflowCount(tenth)).isEqualTo(3);
        assertThat(overflowM(tenth)).isCloseTo(0.4112 + 2 * 2.8824, within(0.001));
    }

    /**
     * Hand, as above: a swap of 24 s from home never fills 60 m, so all that the climb loses is due to the level carried
     * over: 22.648 m are left when the tenth spool is full.
     */
    @Test
    void whatTheClimbLosesIsDueToTheLevelCarriedOver() {
        LineResult tenth = ratchet("640 s");

        assertThat(tenth.overflows().get(OverflowCause.CARRIED_OVER)).isEqualTo(3);
        assertThat(tenth.overflowM().get(OverflowCause.CARRIED_OVER)).isCloseTo(overflowM(tenth), within(1e-9));
    }

    /**
     * Hand: swaps of 37 s lose 2.0275 m from home. A spool of 0.3 kg is full 37.72 s after the winder turns, in which
     * 37.352 m drain, so from the second on 60 - 37.352 = 22.648 m are carried over: of the 37 v - 37.352 = 24.675 m a
     * swap loses, 22.648 m are due to that and 2.0275 m to the swap. The second is full at 60 + 37 + 37.72 s, done 37 s
     * later.
     */
    @Test
    void aSwapThatIsTooSlowAnywayLosesNoMoreToTheLevelCarriedOverThanThatLevel() {
        LineResult two = shortSpool("oracle/spool-300g.yaml", "37 s", "172 s");

        assertThat(two.overflows().get(OverflowCause.SWAP_TOO_SLOW)).isEqualTo(2);
        assertThat(two.overflows().get(OverflowCause.CARRIED_OVER)).isZero();
        assertThat(two.overflowM().get(OverflowCause.SWAP_TOO_SLOW)).isCloseTo(2 * 2.0275, within(0.001));
        assertThat(two.overflowM().get(OverflowCause.CARRIED_OVER)).isCloseTo(22.648, within(0.001));
    }

    /**
     * Hand, as above, but the line stops for a full accumulator and goes on at once: the eighth swap of 24 s, which finds
     * 20.177 m, fills with 0.245 s to go, less than the 12 s the level carried over is worth; the second swap of 37 s fills
     * with 14.72 s to go, more than the 13.51 s that 22.648 m are worth.
     */
    @Test
    void aLineThatStopsCountsWhatItDidNotMake() {
        LineResult climb = stopping("24 s", "517 s");
        LineResult slow = stopping("37 s", "98 s");

        assertThat(climb.overflows().get(OverflowCause.CARRIED_OVER)).isEqualTo(1);
        assertThat(slow.overflows().get(OverflowCause.SWAP_TOO_SLOW)).isEqualTo(1);
        assertThat(overflowM(climb) + overflowM(slow)).isZero();
    }

    private static LineResult stopping(String stop, String length) {
        return Corner.of("oracle/spool-300g.yaml")
                .with("/every_line/overflow", "stop")
                .with("/time/length", length)
                .with("/every_line/winder/stop", stop)
                .with("/every_line/winder/finish", "0 s")
                .run()
                .lines()
                .get(0);
    }

    private static LineResult ratchet(String length) {
        return shortSpool("oracle/spool-300g.yaml", "24 s", length);
    }

    private static LineResult shortSpool(String spools, String stop, String length) {
        return Corner.of(spools)
                .with("/time/length", length)
                .with("/every_line/winder/stop", stop)
                .with("/every_line/winder/finish", "0 s")
                .run()
                .lines()
                .get(0);
    }

    private static long overflowCount(LineResult line) {
        return line.overflows().values().stream().mapToLong(Long::longValue).sum();
    }

    private static RunResult oracle(String length) {
        return Corner.of("oracle").with("/time/length", length).run();
    }

    private static LineResult swap(String stop) {
        return Corner.of("oracle")
                .with("/time/length", "28850 s")
                .with("/every_line/winder/stop", stop)
                .run()
                .lines()
                .get(0);
    }

    private static double overflowM(LineResult line) {
        return line.overflowM().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
    }
}
