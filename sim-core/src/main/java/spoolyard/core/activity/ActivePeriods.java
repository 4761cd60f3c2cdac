package spoolyard.core.activity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;

/**
 * Takes down when stations are active, as a run goes on. A period that ends and begins again at the same instant is one
 * period; one of no length is none. Adding to it allocates nothing but for rare growth. Not thread-safe.
 *
 * <p>Example: {@code int line = periods.add(Activity.Kind.LINE, "L1"); periods.set(line, true, 0); periods.set(line, false, 900);}
 */
public final class ActivePeriods {
    private static final long NOT_ACTIVE = -1;

    private final List<Activity.Kind> kinds = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final Skyline skyline = new Skyline();
    private long[] since = new long[0];
    private boolean[] isEnding = new boolean[0];
    private long[] activeTicks = new long[0];
    private long[] longestTicks = new long[0];
    private long[] periods = new long[0];
    private int[] ending = new int[0];
    private int endingCount;
    private long endingTick;

    /**
     * Adds a station.
     *
     * @param kind what it is
     * @param name its name
     * @return its number, to be given at begin and end
     */
    public int add(Activity.Kind kind, String name) {
        int station = names.size();
        kinds.add(kind);
        names.add(name);
        since = Arrays.copyOf(since, station + 1);
        since[station] = NOT_ACTIVE;
        isEnding = Arrays.copyOf(isEnding, station + 1);
        activeTicks = Arrays.copyOf(activeTicks, station + 1);
        longestTicks = Arrays.copyOf(longestTicks, station + 1);
        periods = Arrays.copyOf(periods, station + 1);
        ending = Arrays.copyOf(ending, station + 1);
        return station;
    }

    /**
     * Says whether a station is active from now on; what is said already changes nothing.
     *
     * @param station its number
     * @param isActive whether it is
     * @param tick now, never less than before
     */
    public void set(int station, boolean isActive, long tick) {
        if (isActive == (since[station] != NOT_ACTIVE && !isEnding[station])) {
            return;
        }
        if (endingCount > 0 && tick > endingTick) {
            settle();
        }
        if (isActive) {
            begin(station, tick);
        } else {
            isEnding[station] = true;
            endingTick = tick;
            ending[endingCount++] = station;
        }
    }

    private void begin(int station, long tick) {
        if (isEnding[station]) {
            isEnding[station] = false;
            int place = 0;
            while (ending[place] != station) {
                place++;
            }
            endingCount--;
            System.arraycopy(ending, place + 1, ending, place, endingCount - place);
        } else {
            since[station] = tick;
        }
    }

    private void settle() {
        for (int i = 0; i < endingCount; i++) {
            finish(ending[i], endingTick);
        }
        endingCount = 0;
    }

    private void finish(int station, long tick) {
        long length = tick - since[station];
        if (length > 0) {
            activeTicks[station] += length;
            longestTicks[station] = Math.max(longestTicks[station], length);
            periods[station]++;
            skyline.add(station, since[station], tick);
        }
        since[station] = NOT_ACTIVE;
        isEnding[station] = false;
    }

    /**
     * Ends all periods and finds the bottleneck.
     *
     * @param tick the end of the run
     * @return one a station, by kind, then in the order in which they were added
     */
    public List<Activity> close(long tick) {
        settle();
        for (int station = 0; station < names.size(); station++) {
            if (since[station] != NOT_ACTIVE) {
                finish(station, tick);
            }
        }
        BottleneckChain chain = new BottleneckChain(skyline, names.size());
        List<Activity> all = new ArrayList<>();
        for (int station = 0; station < names.size(); station++) {
            all.add(new Activity(
                    kinds.get(station),
                    names.get(station),
                    Ticks.toSeconds(activeTicks[station]),
                    periods[station],
                    Ticks.toSeconds(longestTicks[station]),
                    chain.turns(station)));
        }
        all.sort(Comparator.comparing(Activity::kind));
        return all;
    }
}
