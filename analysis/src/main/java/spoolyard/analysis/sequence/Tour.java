package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * A closed tour through nodes whose distances depend on the direction, changed by exchanging neighbouring segments, and back.
 * For one thread.
 */
final class Tour {
    final int size;
    final double[] distance;
    final int[] node;
    final int[] place;
    private final int[] buffer;
    private int[] log = new int[3 * 64];
    private int logged;

    /** Distances are row-major, from the row to the column. */
    Tour(int size, double[] distance) {
        this.size = size;
        this.distance = distance;
        node = new int[size];
        place = new int[size];
        buffer = new int[size];
    }

    void set(int[] nodes) {
        System.arraycopy(nodes, 0, node, 0, size);
        for (int i = 0; i < size; i++) {
            place[node[i]] = i;
        }
        logged = 0;
    }

    double length() {
        double total = distance[node[size - 1] * size + node[0]];
        for (int i = 1; i < size; i++) {
            total += distance[node[i - 1] * size + node[i]];
        }
        return total;
    }

    double distance(int from, int to) {
        return distance[from * size + to];
    }

    int after(int city) {
        int next = place[city] + 1;
        return node[next == size ? 0 : next];
    }

    int before(int city) {
        int previous = place[city] - 1;
        return node[previous < 0 ? size - 1 : previous];
    }

    int at(int index) {
        return node[index < size ? index : index - size];
    }

    /**
     * Exchanges the segment of some nodes from a place on with the one of others that follows. The rest of the tour is a
     * third segment; as going round the three is all that counts, the two shorter ones are moved.
     */
    void exchange(int start, int first, int second) {
        int rest = size - first - second;
        if (rest >= first && rest >= second) {
            rotate(start, first, second);
        } else if (first >= second) {
            rotate(wrap(start + first), second, rest);
        } else {
            rotate(wrap(start + first + second), rest, first);
        }
    }

    private int wrap(int index) {
        return index < size ? index : index - size;
    }

    private void rotate(int start, int first, int second) {
        if (logged + 3 > log.length) {
            log = Arrays.copyOf(log, log.length * 2);
        }
        log[logged++] = start;
        log[logged++] = first;
        log[logged++] = second;
        shift(start, first, second);
    }

    private void shift(int start, int first, int second) {
        for (int i = 0; i < first; i++) {
            buffer[i] = at(start + i);
        }
        int to = start;
        for (int i = 0; i < second; i++) {
            int city = at(wrap(start + first) + i);
            node[to] = city;
            place[city] = to;
            to = wrap(to + 1);
        }
        for (int i = 0; i < first; i++) {
            node[to] = buffer[i];
            place[buffer[i]] = to;
            to = wrap(to + 1);
        }
    }

    /** From here on changes can be taken back. */
    void mark() {
        logged = 0;
    }

    /** Takes all changes since the mark back. */
    void takeBack() {
        while (logged > 0) {
            logged -= 3;
            shift(log[logged], log[logged + 2], log[logged + 1]);
        }
    }
}
