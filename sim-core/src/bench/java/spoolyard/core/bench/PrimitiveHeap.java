package spoolyard.core.bench;

import java.util.Arrays;

/**
 * The limit to compare with: what one writes by hand for speed alone. Four children a node, the least found without
 * branches, instants and numbers in plain arrays; no order among equals, no cancelling, no events as objects.
 */
final class PrimitiveHeap {
    private static final long NO_TICK = Long.MAX_VALUE >> 1;
    private static final int CHILDREN = 4;

    private final long[] ticks;
    private final int[] numbers;
    private int size;

    PrimitiveHeap(int capacity) {
        ticks = new long[capacity + CHILDREN + 1];
        numbers = new int[ticks.length];
        Arrays.fill(ticks, NO_TICK);
    }

    long firstTick() {
        return ticks[0];
    }

    int firstNumber() {
        return numbers[0];
    }

    void add(long tick, int number) {
        int hole = size++;
        while (hole > 0) {
            int parent = (hole - 1) >>> 2;
            if (ticks[parent] <= tick) {
                break;
            }
            ticks[hole] = ticks[parent];
            numbers[hole] = numbers[parent];
            hole = parent;
        }
        ticks[hole] = tick;
        numbers[hole] = number;
    }

    void removeFirst() {
        int last = --size;
        long tick = ticks[last];
        ticks[last] = NO_TICK;
        if (last == 0) {
            return;
        }
        int hole = 0;
        for (int child = 1; child < last; child = CHILDREN * hole + 1) {
            int least = leastOfFour(child);
            if (ticks[least] >= tick) {
                break;
            }
            ticks[hole] = ticks[least];
            numbers[hole] = numbers[least];
            hole = least;
        }
        ticks[hole] = tick;
        numbers[hole] = numbers[last];
    }

    private int leastOfFour(int child) {
        int left = child + (int) ((ticks[child + 1] - ticks[child]) >>> 63);
        int right = child + 2 + (int) ((ticks[child + 3] - ticks[child + 2]) >>> 63);
        return left + (right - left) * (int) ((ticks[right] - ticks[left]) >>> 63);
    }
}
