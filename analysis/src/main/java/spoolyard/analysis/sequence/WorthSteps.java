package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Seeks what each order must be worth for the bound of {@link WholeLines} to be greatest. For one thread.
 *
 * <p>The bound is the sum of the worths and, for each line, the least of what sequences cost less what their orders are worth. With the
 * sequences known so far it is no less than the bound: a model. The next worths make the model greatest, less the square of
 * their distance from the best worths so far over twice the reach. The dual of that shares each line out over its sequences so that
 * each order is made about once; two shares of a line are exchanged at a time until nothing is left to gain.
 *
 * <p>Sequences that make orders more than once bring the model down where it should not be. They go as soon as they promise less
 * than a line was shown to cost.
 *
 * <p>Source, from memory: the proximal bundle method with one model for each term, Hiriart-Urruty and Lemaréchal, Convex Analysis and
 * Minimization Algorithms II, 1993, chapter XV; exchanges of pairs: Platt, in Advances in Kernel Methods, 1999.
 */
final class WorthSteps {
    private static final int MOST_SEQUENCES = 80;
    private static final int MOST_PASSES = 2000;
    private static final int EXCHANGES = 8;
    private static final int OLD = 40;
    private static final int OLD_IF_NOT_POSSIBLE = 3;

    private final List<List<Share>> lines = new ArrayList<>();
    private final boolean[] isFree;
    private final double tolerance;
    private final double[] centre;
    private final double[] worth;
    private final double[] missing;
    private double reach;

    /** A sequence, and how much of its line it has. */
    private static final class Share {
        private final LineSequence sequence;
        private double share;
        private int age;

        Share(LineSequence sequence) {
            this.sequence = sequence;
        }
    }

    /**
     * Starts somewhere.
     *
     * @param start what each order is worth; kept as it is for orders that are not free
     * @param isFree which orders may be made by a sequence
     * @param lineCount number of lines
     * @param tolerance money that doesn't matter, {@code > 0}
     */
    WorthSteps(double[] start, boolean[] isFree, int lineCount, double tolerance) {
        this.isFree = isFree;
        this.tolerance = tolerance;
        centre = start.clone();
        worth = start.clone();
        missing = new double[start.length];
        for (int line = 0; line < lineCount; line++) {
            lines.add(new ArrayList<>());
        }
    }

    /** What the orders are worth now, to be read only. */
    double[] worth() {
        return worth;
    }

    /** How many orders are free. */
    int orders() {
        int count = 0;
        for (boolean each : isFree) {
            count += each ? 1 : 0;
        }
        return count;
    }

    /** The sum of the worths of all orders that are free. */
    double sum() {
        double sum = 0;
        for (int order = 0; order < worth.length; order++) {
            sum += isFree[order] ? worth[order] : 0;
        }
        return sum;
    }

    /** How far the next worths may be from the best. */
    void reach(double money) {
        reach = money;
    }

    double reach() {
        return reach;
    }

    /** The worths now are the best so far. */
    void settle() {
        System.arraycopy(worth, 0, centre, 0, worth.length);
    }

    /** Back to the best. */
    void back() {
        System.arraycopy(centre, 0, worth, 0, worth.length);
    }

    void add(int line, LineSequence sequence) {
        List<Share> shares = lines.get(line);
        for (Share other : shares) {
            if (other.sequence.isLike(sequence)) {
                other.age = 0;
                return;
            }
        }
        Share share = new Share(sequence);
        share.share = shares.isEmpty() ? 1 : 0;
        shares.add(share);
    }

    /** Drops sequences of a line that would cost less than the line was shown to cost by the worths now. */
    void dropBelow(int line, double least) {
        drop(line, share -> share.sequence.reduced(worth) < least - tolerance / 100);
    }

    /** Drops all that make an order more than once; returns whether there was one. */
    boolean dropNotPossible() {
        boolean dropped = false;
        for (int line = 0; line < lines.size(); line++) {
            int before = lines.get(line).size();
            drop(line, share -> !share.sequence.isPossible());
            dropped |= lines.get(line).size() < before;
        }
        return dropped;
    }

    /** The cheapest that stays takes their shares; one stays in any case. */
    private void drop(int line, Predicate<Share> isToGo) {
        List<Share> shares = lines.get(line);
        List<Share> left = new ArrayList<>(shares);
        left.removeIf(isToGo);
        if (left.isEmpty() || left.size() == shares.size()) {
            return;
        }
        double freed =
                shares.stream().filter(isToGo).mapToDouble(share -> share.share).sum();
        cheapest(left).share += freed;
        lines.set(line, left);
    }

    private Share cheapest(List<Share> shares) {
        return shares.stream()
                .min(Comparator.comparingDouble(share -> share.sequence.reduced(worth)))
                .orElseThrow();
    }

    /** Moves to the next worths; returns what the bound is there by the model. */
    double next() {
        forget();
        Arrays.fill(missing, 0);
        for (int order = 0; order < missing.length; order++) {
            missing[order] = isFree[order] ? 1 : 0;
        }
        lines.forEach(shares -> shares.forEach(share -> count(share, -share.share)));
        place();
        double most = Double.POSITIVE_INFINITY;
        for (int pass = 0; pass < MOST_PASSES && most > tolerance; pass++) {
            most = 0;
            for (List<Share> shares : lines) {
                most = Math.max(most, exchange(shares));
            }
        }
        return model();
    }

    private void forget() {
        for (List<Share> shares : lines) {
            shares.forEach(share -> share.age = share.share > 0 ? 0 : share.age + 1);
            shares.removeIf(share -> share.age > (share.sequence.isPossible() ? OLD : OLD_IF_NOT_POSSIBLE));
            shares.sort(Comparator.comparingInt(share -> share.age));
            while (shares.size() > MOST_SEQUENCES && shares.get(shares.size() - 1).share == 0) {
                shares.remove(shares.size() - 1);
            }
        }
    }

    private void count(Share share, double part) {
        LineSequence sequence = share.sequence;
        for (int i = 0; i < sequence.order().length; i++) {
            missing[sequence.order()[i]] += part * sequence.times()[i];
        }
    }

    private void place() {
        for (int order = 0; order < worth.length; order++) {
            worth[order] = centre[order] + reach * missing[order];
        }
    }

    /** Exchanges shares of one line; returns what there was to gain by the first. */
    private double exchange(List<Share> shares) {
        double first = 0;
        for (int i = 0; i < EXCHANGES; i++) {
            double gain = exchangeTwo(shares);
            first = i == 0 ? gain : first;
            if (gain <= tolerance) {
                break;
            }
        }
        return first;
    }

    private double exchangeTwo(List<Share> shares) {
        Share cheapest = shares.get(0);
        Share dearest = null;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Share share : shares) {
            double reduced = share.sequence.reduced(worth);
            if (reduced < least) {
                least = reduced;
                cheapest = share;
            }
            if (share.share > 0 && reduced > most) {
                most = reduced;
                dearest = share;
            }
        }
        if (dearest != null && dearest != cheapest && most > least) {
            move(dearest, cheapest, most - least);
            return most - least;
        }
        return 0;
    }

    private void move(Share from, Share to, double gain) {
        double square = squareOfDifference(from.sequence, to.sequence);
        double part = square > 0 ? Math.min(from.share, gain / (reach * square)) : from.share;
        part = from.share - part < 1e-12 ? from.share : part;
        from.share -= part;
        to.share += part;
        count(from, part);
        count(to, -part);
        place(from.sequence);
        place(to.sequence);
    }

    private void place(LineSequence sequence) {
        for (int order : sequence.order()) {
            worth[order] = centre[order] + reach * missing[order];
        }
    }

    private static double squareOfDifference(LineSequence one, LineSequence other) {
        double square = 0;
        int i = 0;
        int k = 0;
        while (i < one.order().length || k < other.order().length) {
            int left = i < one.order().length ? one.order()[i] : Integer.MAX_VALUE;
            int right = k < other.order().length ? other.order()[k] : Integer.MAX_VALUE;
            double difference = left <= right ? one.times()[i++] : 0;
            difference -= right <= left ? other.times()[k++] : 0;
            square += difference * difference;
        }
        return square;
    }

    private double model() {
        double value = sum();
        for (List<Share> shares : lines) {
            value += cheapest(shares).sequence.reduced(worth);
        }
        return value;
    }
}
