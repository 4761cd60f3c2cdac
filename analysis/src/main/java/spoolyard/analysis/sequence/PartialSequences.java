package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * Beginnings of sequences of one line, kept in arrays, with a heap of those that are still to be continued, the most promising on top.
 * Of beginnings that make the same orders and end with the same product, one that is beaten in time and cost is not kept. Reused from line
 * to line. For one thread at a time.
 */
final class PartialSequences {
    private static final int FIRST_SIZE = 1024;
    private static final int MOST = 300_000;
    private static final int MOST_WORDS = 1_000_000;

    /** What the whole costs at least. */
    double[] promise = new double[FIRST_SIZE];
    /** What it costs so far. */
    double[] cost = new double[FIRST_SIZE];
    /** When it ends, worked seconds. */
    double[] workedS = new double[FIRST_SIZE];
    /** Product at its end. */
    int[] product = new int[FIRST_SIZE];
    /** Its last order; -1 for the empty one. */
    int[] order = new int[FIRST_SIZE];
    /** The beginning that it continues; -1 for the empty one. */
    int[] before = new int[FIRST_SIZE];

    private int[] sameOrders = new int[FIRST_SIZE];
    private long[] made = new long[FIRST_SIZE];
    private int[] heap = new int[FIRST_SIZE];
    private int[] table = new int[4 * FIRST_SIZE];
    private int words;
    private int size;
    private int open;

    /** Forgets all and begins with the empty sequence, which is open. */
    void begin(int orders, int startProduct, double startS, double leastCost) {
        words = Math.max(1, (orders + Long.SIZE - 1) / Long.SIZE);
        made = made.length < words * cost.length ? new long[words * cost.length] : made;
        Arrays.fill(table, -1);
        Arrays.fill(made, 0, words, 0);
        size = 1;
        open = 0;
        product[0] = startProduct;
        order[0] = -1;
        before[0] = -1;
        cost[0] = 0;
        workedS[0] = startS;
        promise[0] = leastCost;
        push(0);
    }

    /** Whether it has grown so large that it is better to stop: some 20 MB. */
    boolean isFull() {
        return size >= MOST || size * words >= MOST_WORDS;
    }

    boolean isEmpty() {
        return open == 0;
    }

    /** The most promising, which stays. */
    int top() {
        return heap[0];
    }

    boolean makes(int sequence, int orderNumber) {
        return (made[sequence * words + orderNumber / Long.SIZE] >>> orderNumber & 1) != 0;
    }

    /** Continues a sequence, for the time being: the next draft takes its place unless this one is kept. */
    int draft(int from, int orderNumber) {
        if (size == cost.length) {
            enlarge();
        }
        System.arraycopy(made, from * words, made, size * words, words);
        made[size * words + orderNumber / Long.SIZE] |= 1L << orderNumber;
        order[size] = orderNumber;
        before[size] = from;
        return size;
    }

    /** Keeps the draft, though it is not to be continued. */
    void keep() {
        size++;
    }

    /** Keeps the draft and offers it for continuing, unless it is beaten. */
    void offer() {
        int slot = slot(size);
        for (int other = table[slot]; other >= 0; other = sameOrders[other]) {
            if (workedS[other] <= workedS[size] && cost[other] <= cost[size]) {
                return;
            }
        }
        sameOrders[size] = table[slot];
        table[slot] = size;
        push(size++);
        if (2 * size > table.length) {
            enlargeTable();
        }
    }

    /** Where its orders and product stand in the table, or the free place for them. */
    private int slot(int sequence) {
        int place = place(sequence);
        while (table[place] >= 0 && !isAlike(table[place], sequence)) {
            place = place + 1 & table.length - 1;
        }
        return place;
    }

    private boolean isAlike(int one, int other) {
        return product[one] == product[other]
                && Arrays.equals(made, one * words, (one + 1) * words, made, other * words, (other + 1) * words);
    }

    private int place(int sequence) {
        long hash = product[sequence] * 0x9E3779B97F4A7C15L;
        for (int word = 0; word < words; word++) {
            hash = (hash ^ made[sequence * words + word]) * 0xBF58476D1CE4E5B9L;
            hash ^= hash >>> 29;
        }
        return (int) hash & table.length - 1;
    }

    private void push(int sequence) {
        int place = open++;
        while (place > 0 && promise[heap[(place - 1) / 2]] > promise[sequence]) {
            heap[place] = heap[(place - 1) / 2];
            place = (place - 1) / 2;
        }
        heap[place] = sequence;
    }

    /** Takes the most promising off the heap. */
    int pop() {
        int top = heap[0];
        int last = heap[--open];
        int place = 0;
        int child = lesser(1);
        while (child < open && promise[heap[child]] < promise[last]) {
            heap[place] = heap[child];
            place = child;
            child = lesser(2 * place + 1);
        }
        heap[place] = last;
        return top;
    }

    private int lesser(int child) {
        return child + 1 < open && promise[heap[child + 1]] < promise[heap[child]] ? child + 1 : child;
    }

    /** Its orders from the first to the last. */
    int[] orders(int sequence) {
        int count = 0;
        for (int part = sequence; before[part] >= 0; part = before[part]) {
            count++;
        }
        int[] all = new int[count];
        for (int part = sequence; before[part] >= 0; part = before[part]) {
            all[--count] = order[part];
        }
        return all;
    }

    private void enlarge() {
        int larger = 2 * size;
        promise = Arrays.copyOf(promise, larger);
        cost = Arrays.copyOf(cost, larger);
        workedS = Arrays.copyOf(workedS, larger);
        product = Arrays.copyOf(product, larger);
        order = Arrays.copyOf(order, larger);
        before = Arrays.copyOf(before, larger);
        sameOrders = Arrays.copyOf(sameOrders, larger);
        heap = Arrays.copyOf(heap, larger);
        made = Arrays.copyOf(made, larger * words);
    }

    private void enlargeTable() {
        int[] old = table;
        table = new int[2 * old.length];
        Arrays.fill(table, -1);
        for (int first : old) {
            if (first >= 0) {
                int place = place(first);
                while (table[place] >= 0) {
                    place = place + 1 & table.length - 1;
                }
                table[place] = first;
            }
        }
    }
}
