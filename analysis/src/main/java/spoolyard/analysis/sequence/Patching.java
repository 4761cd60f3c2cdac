package spoolyard.analysis.sequence;

/**
 * Joins the circles of an assignment to one tour: again and again the two largest, each opened at the edge where that adds least.
 *
 * <p>Source, from memory: Karp, SIAM Journal on Computing 8 (1979); largest circles first, Karp and Steele, in Lawler, Lenstra, Rinnooy
 * Kan and Shmoys, The Traveling Salesman Problem, 1985.
 */
final class Patching {
    private final int size;
    private final double[] distance;
    private final int[] next;
    private final int[] circle;
    private final int[] length;

    private Patching(int size, double[] distance, int[] next) {
        this.size = size;
        this.distance = distance;
        this.next = next.clone();
        circle = new int[size];
        length = new int[size];
    }

    /**
     * Joins them. O(n^2).
     *
     * @param size number of nodes
     * @param distance row-major, from the row to the column
     * @param next the node after each, in one or more circles
     * @return all nodes in the order of the tour, node 0 first
     */
    static int[] tour(int size, double[] distance, int[] next) {
        Patching patching = new Patching(size, distance, next);
        int circles = patching.mark();
        for (int count = circles; count > 1; count--) {
            int one = patching.largestBut(-1);
            patching.join(one, patching.largestBut(one));
        }
        return patching.order();
    }

    /** Each circle bears the number of its first node. */
    private int mark() {
        int circles = 0;
        boolean[] isMarked = new boolean[size];
        for (int first = 0; first < size; first++) {
            if (!isMarked[first]) {
                circles++;
                for (int node = first; !isMarked[node]; node = next[node]) {
                    isMarked[node] = true;
                    circle[node] = first;
                    length[first]++;
                }
            }
        }
        return circles;
    }

    private int largestBut(int other) {
        int largest = -1;
        for (int each = 0; each < size; each++) {
            if (each != other && length[each] > (largest < 0 ? 0 : length[largest])) {
                largest = each;
            }
        }
        return largest;
    }

    private void join(int one, int other) {
        double least = Double.POSITIVE_INFINITY;
        int from = one;
        int to = other;
        for (int a = 0; a < size; a++) {
            for (int b = 0; circle[a] == one && b < size; b++) {
                if (circle[b] == other && added(a, b) < least) {
                    least = added(a, b);
                    from = a;
                    to = b;
                }
            }
        }
        int after = next[from];
        next[from] = next[to];
        next[to] = after;
        for (int node = 0; node < size; node++) {
            circle[node] = circle[node] == other ? one : circle[node];
        }
        length[one] += length[other];
        length[other] = 0;
    }

    private double added(int a, int b) {
        return distance[a * size + next[b]]
                + distance[b * size + next[a]]
                - distance[a * size + next[a]]
                - distance[b * size + next[b]];
    }

    private int[] order() {
        int[] order = new int[size];
        for (int i = 1; i < size; i++) {
            order[i] = next[order[i - 1]];
        }
        return order;
    }
}
