package spoolyard.analysis.sequence;

import java.util.SplittableRandom;

/**
 * Small changes of a plan, tried one at a time: a segment to another place, two segments against each other, the tails of two
 * lines against each other. Frozen orders stay. For one thread.
 */
final class Moves {
    private static final double SHARE_RELOCATE = 0.55;
    private static final double SHARE_SWAP = 0.85;
    private static final double SHARE_NEAR = 0.5;
    private static final double SHARE_ONE = 0.55;
    private static final double SHARE_CAMPAIGN = 0.25;
    private static final int LONGEST = 12;

    private final Schedule schedule;
    private final Neighbours neighbours;
    private final SplittableRandom random;
    private final Pieces one = new Pieces();
    private final Pieces other = new Pieces();
    private final int[] movable;

    private int lineA;
    private int fromA;
    private int toA;
    private int lineB;
    private int fromB;
    private int toB;

    Moves(Schedule schedule, Neighbours neighbours, SplittableRandom random, int[] movable) {
        this.schedule = schedule;
        this.neighbours = neighbours;
        this.random = random;
        this.movable = movable;
    }

    /** Proposes a change; made if it costs no more than the limit. Returns its cost, infinite if not made. */
    double attempt(double limit) {
        double kind = random.nextDouble();
        if (kind < SHARE_RELOCATE || schedule.kernels.length == 1 && kind >= SHARE_SWAP) {
            return relocate(limit);
        }
        return kind < SHARE_SWAP ? swap(limit) : exchangeTails(limit);
    }

    private void chooseSegment() {
        int job = movable[random.nextInt(movable.length)];
        lineA = schedule.lineOf[job];
        fromA = schedule.placeOf[job];
        toA = endOfSegment(lineA, fromA);
    }

    private int endOfSegment(int line, int from) {
        int length = schedule.length[line];
        double kind = random.nextDouble();
        if (kind < SHARE_ONE) {
            return from + 1;
        }
        if (kind < SHARE_ONE + SHARE_CAMPAIGN) {
            return endOfCampaign(line, from);
        }
        return Math.min(length, from + 2 + random.nextInt(LONGEST - 1));
    }

    /** A campaign is a run of orders of one product. */
    private int endOfCampaign(int line, int from) {
        int[] product = schedule.kernels[line].product;
        int[] jobs = schedule.sequence[line];
        int end = from + 1;
        while (end < schedule.length[line] && product[jobs[end]] == product[jobs[from]]) {
            end++;
        }
        return end;
    }

    private boolean canMakeAll(int line, int ofLine, int from, int to) {
        LineKernel kernel = schedule.kernels[line];
        for (int place = from; place < to; place++) {
            if (!kernel.canMake(schedule.sequence[ofLine][place])) {
                return false;
            }
        }
        return true;
    }

    /** Where the segment could go: behind an order it follows well, or anywhere. */
    private boolean chooseGap(int head) {
        int[] near = neighbours.before(head);
        if (near.length > 0 && random.nextDouble() < SHARE_NEAR) {
            int before = near[random.nextInt(near.length)];
            lineB = schedule.lineOf[before];
            fromB = schedule.placeOf[before] + 1;
        } else if (schedule.kernels.length == 1 || random.nextDouble() < 0.4) {
            lineB = lineA;
            fromB = nearby(schedule.length[lineB]);
        } else {
            lineB = random.nextInt(schedule.kernels.length);
            fromB = random.nextInt(schedule.length[lineB] + 1);
        }
        return fromB >= schedule.kernels[lineB].frozen;
    }

    /** Half of the places are no farther off than a segment may be long. */
    private int nearby(int length) {
        if (random.nextBoolean()) {
            return random.nextInt(length + 1);
        }
        int place = fromA - LONGEST + random.nextInt(2 * LONGEST + 1);
        return Math.max(0, Math.min(length, place));
    }

    private double relocate(double limit) {
        chooseSegment();
        boolean isPossible = chooseGap(schedule.sequence[lineA][fromA]);
        if (!isPossible || lineA != lineB && !canMakeAll(lineB, lineA, fromA, toA)) {
            return Double.POSITIVE_INFINITY;
        }
        if (lineA == lineB) {
            return fromB >= fromA && fromB <= toA ? Double.POSITIVE_INFINITY : relocateWithin(limit);
        }
        one.keep(fromA).add(lineA, toA, schedule.length[lineA]);
        other.keep(fromB).add(lineA, fromA, toA).add(lineB, fromB, schedule.length[lineB]);
        return tryBoth(limit);
    }

    private double relocateWithin(double limit) {
        int end = schedule.length[lineA];
        if (fromB > toA) {
            one.keep(fromA).add(lineA, toA, fromB).add(lineA, fromA, toA).add(lineA, fromB, end);
        } else {
            one.keep(fromB).add(lineA, fromA, toA).add(lineA, fromB, fromA).add(lineA, toA, end);
        }
        return tryOne(limit);
    }

    private double swap(double limit) {
        chooseSegment();
        choosePartner();
        toB = endOfSegment(lineB, fromB);
        if (lineA == lineB) {
            return swapWithin(limit);
        }
        if (!canMakeAll(lineB, lineA, fromA, toA) || !canMakeAll(lineA, lineB, fromB, toB)) {
            return Double.POSITIVE_INFINITY;
        }
        one.keep(fromA).add(lineB, fromB, toB).add(lineA, toA, schedule.length[lineA]);
        other.keep(fromB).add(lineA, fromA, toA).add(lineB, toB, schedule.length[lineB]);
        return tryBoth(limit);
    }

    private void choosePartner() {
        int partner = movable[random.nextInt(movable.length)];
        lineB = schedule.lineOf[partner];
        fromB = schedule.placeOf[partner];
        if (lineB == lineA && schedule.length[lineA] > 0) {
            fromB = Math.max(
                    schedule.kernels[lineA].frozen,
                    Math.min(schedule.length[lineA] - 1, nearby(schedule.length[lineA])));
        }
    }

    private double swapWithin(double limit) {
        int firstFrom = Math.min(fromA, fromB);
        int firstTo = fromA < fromB ? toA : toB;
        int secondFrom = Math.max(fromA, fromB);
        int secondTo = fromA < fromB ? toB : toA;
        if (firstFrom == secondFrom || firstTo > secondFrom) {
            return Double.POSITIVE_INFINITY;
        }
        one.keep(firstFrom)
                .add(lineA, secondFrom, secondTo)
                .add(lineA, firstTo, secondFrom)
                .add(lineA, firstFrom, firstTo)
                .add(lineA, secondTo, schedule.length[lineA]);
        return tryOne(limit);
    }

    private double exchangeTails(double limit) {
        chooseSegment();
        if (!chooseGap(schedule.sequence[lineA][fromA]) || lineA == lineB) {
            return Double.POSITIVE_INFINITY;
        }
        int endA = schedule.length[lineA];
        int endB = schedule.length[lineB];
        if (!canMakeAll(lineB, lineA, fromA, endA) || !canMakeAll(lineA, lineB, fromB, endB)) {
            return Double.POSITIVE_INFINITY;
        }
        one.keep(fromA).add(lineB, fromB, endB);
        other.keep(fromB).add(lineA, fromA, endA);
        return tryBoth(limit);
    }

    private double tryOne(double limit) {
        double cost = schedule.costWith(lineA, one, limit);
        if (cost > limit) {
            return Double.POSITIVE_INFINITY;
        }
        schedule.apply(lineA, one);
        return schedule.cost;
    }

    private double tryBoth(double limit) {
        double cost = schedule.costWith(lineA, one, lineB, other, limit);
        if (cost > limit) {
            return Double.POSITIVE_INFINITY;
        }
        schedule.apply(lineA, one, lineB, other);
        return schedule.cost;
    }
}
