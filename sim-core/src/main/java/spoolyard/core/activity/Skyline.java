package spoolyard.core.activity;

import java.util.Arrays;

/**
 * The active periods that no other one covers, by begin; only these can be the longest at any instant. Periods are added in
 * the order of their ends, so that those which a new one covers are the last: adding is O(1) on average, and what is kept
 * does not grow with the number of short periods.
 */
final class Skyline {
    private static final int FIRST_SIZE = 256;

    private long[] starts = new long[FIRST_SIZE];
    private long[] ends = new long[FIRST_SIZE];
    private int[] owners = new int[FIRST_SIZE];
    private int size;

    /** Adds a period that ends no earlier than any before it; of two that are alike the first is kept. */
    void add(int owner, long start, long end) {
        if (size > 0 && ends[size - 1] == end && starts[size - 1] <= start) {
            return;
        }
        while (size > 0 && starts[size - 1] >= start) {
            size--;
        }
        if (size == starts.length) {
            starts = Arrays.copyOf(starts, 2 * size);
            ends = Arrays.copyOf(ends, 2 * size);
            owners = Arrays.copyOf(owners, 2 * size);
        }
        starts[size] = start;
        ends[size] = end;
        owners[size] = owner;
        size++;
    }

    int size() {
        return size;
    }

    long start(int i) {
        return starts[i];
    }

    long end(int i) {
        return ends[i];
    }

    int owner(int i) {
        return owners[i];
    }

    long length(int i) {
        return ends[i] - starts[i];
    }
}
