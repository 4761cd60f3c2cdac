package spoolyard.core.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;

/** Active periods and the bottleneck they show, against examples worked by hand and a slow, plain statement of the method. */
final class ActivePeriodsTest {
    /** An active period of a station. */
    private record Period(int station, int start, int end) {
        int length() {
            return end - start;
        }
    }

    /**
     * Method: Roser, Nakano and Tanaka, WSC 2001 and 2002 (from memory). The numbers are constructed and were worked by
     * hand: M1 is active from 0 to 10 and 12 to 15, M2 from 4 to 18, M3 from 1 to 3 and 16 to 22. The bottleneck is M1 to
     * 10, M2 to 18, M3 to 22; it shifts from 4 to 10 and from 16 to 18.
     */
    @Test
    void findsTheBottleneckOfTheWorkedExample() {
        List<Activity> all = run(
                3,
                List.of(
                        new Period(0, 0, 10),
                        new Period(0, 12, 15),
                        new Period(1, 4, 18),
                        new Period(2, 1, 3),
                        new Period(2, 16, 22)),
                22);

        assertThat(all).extracting(Activity::soleS).containsExactly(4.0, 6.0, 4.0);
        assertThat(all).extracting(Activity::shiftingS).containsExactly(6.0, 8.0, 2.0);
        assertThat(all).extracting(Activity::meanActiveS).containsExactly(6.5, 14.0, 4.0);
        assertThat(all).extracting(Activity::longestS).containsExactly(10.0, 14.0, 6.0);
    }

    /** By hand: nothing is active from 5 to 8, and at 8 the longer of two begins; no shift over the gap. */
    @Test
    void beginsAnewAfterATimeInWhichNothingIsActive() {
        List<Activity> all = run(3, List.of(new Period(0, 0, 5), new Period(1, 8, 9), new Period(2, 8, 12)), 20);

        assertThat(all).extracting(Activity::soleS).containsExactly(5.0, 0.0, 4.0);
        assertThat(all).extracting(Activity::shiftingS).containsExactly(0.0, 0.0, 0.0);
    }

    @Test
    void countsAPeriodThatGoesOnAtTheSameInstantAsOne() {
        ActivePeriods periods = new ActivePeriods();
        int crew = periods.add(Activity.Kind.CREW, "operator");

        periods.set(crew, true, 0);
        periods.set(crew, false, ticks(5));
        periods.set(crew, true, ticks(5));
        periods.set(crew, false, ticks(5));
        periods.set(crew, true, ticks(5));
        periods.set(crew, false, ticks(7));
        periods.set(crew, true, ticks(9));
        periods.set(crew, false, ticks(9));
        Activity activity = periods.close(ticks(20)).get(0);

        assertThat(activity.periods()).isEqualTo(1);
        assertThat(activity.activeS()).isEqualTo(7);
    }

    @Test
    void endsWhatIsActiveAtTheEndOfTheRun() {
        ActivePeriods periods = new ActivePeriods();
        int line = periods.add(Activity.Kind.LINE, "L1");
        int never = periods.add(Activity.Kind.LINE, "L2");

        periods.set(line, true, ticks(3));
        List<Activity> all = periods.close(ticks(10));

        assertThat(all.get(line).soleS()).isEqualTo(7);
        assertThat(all.get(never).meanActiveS()).isNaN();
    }

    /** The plain method needs all periods at once and looks at each of them; ours sees them come and forgets most. */
    @Property(tries = 300, seed = "20271201")
    void agreesWithThePlainMethodOnAnyPeriods(@ForAll long seed) {
        Random random = new Random(seed);
        int stations = 1 + random.nextInt(6);
        List<Period> periods = new ArrayList<>();
        for (int station = 0; station < stations; station++) {
            int time = random.nextInt(10);
            while (time < 200) {
                int end = time + 1 + (int) Math.min(150, Math.exp(random.nextDouble() * 5));
                periods.add(new Period(station, time, end));
                time = end + 1 + random.nextInt(20);
            }
        }
        int horizon = 1 + periods.stream().mapToInt(Period::end).max().orElse(0);

        List<Activity> ours = run(stations, periods, horizon);

        double[][] plain = plainMethod(stations, periods);
        assertThat(ours).extracting(Activity::soleS).containsExactly(boxed(plain[0]));
        assertThat(ours).extracting(Activity::shiftingS).containsExactly(boxed(plain[1]));
    }

    private static Double[] boxed(double[] values) {
        Double[] boxed = new Double[values.length];
        for (int i = 0; i < values.length; i++) {
            boxed[i] = values[i];
        }
        return boxed;
    }

    /** Second by second: who holds the chain, and whether its neighbour in the chain is active as well. */
    private static double[][] plainMethod(int stations, List<Period> periods) {
        List<Period> chain = new ArrayList<>();
        int last = periods.stream().mapToInt(Period::end).max().orElse(0);
        for (int now = 0; now < last; now++) {
            int at = now;
            boolean isHeld = !chain.isEmpty() && chain.get(chain.size() - 1).end() > at;
            if (!isHeld) {
                periods.stream()
                        .filter(period -> period.start() <= at && at < period.end())
                        .sorted(Comparator.comparingInt(Period::end).thenComparingInt(Period::station))
                        .reduce((a, b) -> b.length() > a.length() ? b : a)
                        .ifPresent(chain::add);
            }
        }
        double[][] seconds = new double[2][stations];
        for (int i = 0; i < chain.size(); i++) {
            Period own = chain.get(i);
            for (int now = own.start(); now < own.end(); now++) {
                boolean isShared = i > 0 && now < chain.get(i - 1).end()
                        || i < chain.size() - 1 && now >= chain.get(i + 1).start();
                seconds[isShared ? 1 : 0][own.station()]++;
            }
        }
        return seconds;
    }

    /** Tells the begins and ends in the order of time. */
    private static List<Activity> run(int stations, List<Period> periods, int horizon) {
        ActivePeriods active = new ActivePeriods();
        for (int station = 0; station < stations; station++) {
            active.add(Activity.Kind.LINE, "M" + (station + 1));
        }
        for (int now = 0; now <= horizon; now++) {
            for (Period period : periods) {
                if (period.start() == now || period.end() == now) {
                    active.set(period.station(), period.start() == now, ticks(now));
                }
            }
        }
        return active.close(ticks(horizon));
    }

    private static long ticks(int seconds) {
        return seconds * Ticks.PER_SECOND;
    }
}
