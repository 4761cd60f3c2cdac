package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Ruin and recreate: takes a few strings of orders out and puts each order back where it costs least, now and then passing a
 * place by. For one thread.
 *
 * <p>Source: Schrimpf et al., Journal of Computational Physics 159 (2000); strings and blinks after Christiaens and Vanden
 * Berghe, Transportation Science 54 (2020).
 */
final class Rebuilding {
    private static final double BLINK = 0.02;
    private static final int MOST_STRINGS = 3;
    private static final int LONGEST_STRING = 6;

    private final Schedule schedule;
    private final Neighbours neighbours;
    private final SplittableRandom random;
    private final int[] movable;
    private final int[] out;
    private final boolean[] isTouched;
    private int count;
    private int bestLine;
    private int bestPlace;

    Rebuilding(Schedule schedule, Neighbours neighbours, SplittableRandom random, int[] movable) {
        this.schedule = schedule;
        this.neighbours = neighbours;
        this.random = random;
        this.movable = movable;
        out = new int[schedule.lineOf.length];
        isTouched = new boolean[schedule.kernels.length];
    }

    /** Rebuilds a part of the plan, whatever it costs. */
    void rebuild() {
        ruin();
        shuffle();
        for (int i = 0; i < count; i++) {
            putBack(out[i]);
        }
        schedule.sum();
    }

    /** Puts orders that are on no line yet where they cost least. */
    void insertAll(int[] jobs) {
        for (int job : jobs) {
            putBack(job);
        }
        schedule.sum();
    }

    private void ruin() {
        count = 0;
        Arrays.fill(isTouched, false);
        int seed = movable[random.nextInt(movable.length)];
        int strings = 1 + random.nextInt(MOST_STRINGS);
        for (int i = 0; i < strings; i++) {
            takeString(i == 0 ? seed : partnerOf(seed));
        }
        for (int line = 0; line < isTouched.length; line++) {
            if (isTouched[line]) {
                schedule.refresh(line, 0);
            }
        }
    }

    private int partnerOf(int seed) {
        int[] near = neighbours.before(seed);
        return near.length > 0 && random.nextBoolean()
                ? near[random.nextInt(near.length)]
                : movable[random.nextInt(movable.length)];
    }

    private void takeString(int job) {
        int line = schedule.lineOf[job];
        if (line < 0 || schedule.placeOf[job] < schedule.kernels[line].frozen) {
            return;
        }
        int length = 1 + random.nextInt(LONGEST_STRING);
        int first = Math.max(schedule.kernels[line].frozen, schedule.placeOf[job] - random.nextInt(length));
        int end = Math.min(schedule.length[line], first + length);
        isTouched[line] = true;
        for (int place = end - 1; place >= first; place--) {
            int taken = schedule.sequence[line][place];
            schedule.takeOut(taken);
            out[count++] = taken;
        }
    }

    private void shuffle() {
        for (int i = count - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            int held = out[i];
            out[i] = out[j];
            out[j] = held;
        }
    }

    private void putBack(int job) {
        bestLine = -1;
        double best = Double.POSITIVE_INFINITY;
        for (int line = 0; line < schedule.kernels.length; line++) {
            if (schedule.kernels[line].canMake(job)) {
                best = bestOn(line, job, best);
            }
        }
        schedule.putIn(job, bestLine, bestPlace);
    }

    private double bestOn(int line, int job, double bestSoFar) {
        double best = bestSoFar;
        double now = schedule.lineCost[line];
        for (int place = schedule.kernels[line].frozen; place <= schedule.length[line]; place++) {
            double more = schedule.costOfInsertion(job, line, place, now + best) - now;
            boolean isBetter = more < best && (bestLine < 0 || random.nextDouble() >= BLINK);
            if (isBetter || bestLine < 0) {
                best = more;
                bestLine = line;
                bestPlace = place;
            }
        }
        return best;
    }
}
