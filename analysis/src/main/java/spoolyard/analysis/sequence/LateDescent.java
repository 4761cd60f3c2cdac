package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Exchanges blocks on a {@link LateLine} until none helps that begins near a change. A place is looked at again only if an
 * exchange has changed what stands there or up to {@value #REACH} places further on. For one thread.
 */
final class LateDescent {
    private static final int LONGEST_APART = 3;
    private static final int REACH = 12;

    private final LateLine line;
    private final BlockExchange blocks;
    private final SplittableRandom random;
    private final boolean[] isOpen;
    private final boolean[] isOpenApart;

    LateDescent(LateLine line, SplittableRandom random) {
        this.line = line;
        this.random = random;
        blocks = new BlockExchange(line, LONGEST_APART);
        isOpen = new boolean[line.count];
        isOpenApart = new boolean[line.count];
    }

    void improve(Budget budget) {
        Arrays.fill(isOpen, true);
        Arrays.fill(isOpenApart, true);
        boolean isBetter = true;
        while (isBetter && budget.progress() < 1) {
            exchangeNeighbours(budget);
            isBetter = exchangeApart(budget);
        }
    }

    /** Until no open place is left. */
    private void exchangeNeighbours(Budget budget) {
        int places = line.count - 1;
        int place = random.nextInt(places);
        for (int idle = 0; idle < places && budget.progress() < 1; idle++) {
            int each = line.order[place];
            if (isOpen[each]) {
                budget.goesOn(triesFrom(place));
                if (blocks.improveNeighbours(place)) {
                    blocks.ends().forEach(this::open);
                    idle = -1;
                } else {
                    isOpen[each] = false;
                }
            }
            place = place + 1 < places ? place + 1 : 0;
        }
    }

    private long triesFrom(int place) {
        long left = line.count - place;
        return left * (left - 1) / 2;
    }

    /** Until it helps once. */
    private boolean exchangeApart(Budget budget) {
        int places = line.count - 2;
        int offset = random.nextInt(places);
        for (int i = 0; i < places && budget.progress() < 1; i++) {
            int place = (offset + i) % places;
            int each = line.order[place];
            if (isOpenApart[each]) {
                budget.goesOn(line.count);
                if (blocks.improveApart(place)) {
                    blocks.ends().forEach(this::open);
                    return true;
                }
                isOpenApart[each] = false;
            }
        }
        return false;
    }

    private void open(int changed) {
        for (int place = Math.max(0, changed - REACH); place < Math.min(line.count, changed + 2); place++) {
            isOpen[line.order[place]] = true;
            isOpenApart[line.order[place]] = true;
        }
    }
}
