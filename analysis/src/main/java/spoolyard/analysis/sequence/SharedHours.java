package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A bound on changeovers and lateness together that knows that orders share the lines' hours. For one thread.
 *
 * <p>It is a linear programme in which each order may be made in pieces, on any lines and at any worked times that follow its
 * release. An order that a plan makes on a line in the worked time from {@code U - p} to {@code U} pays for the piece at {@code u}
 * by {@code w (E(u) - d + p/2)} if {@code u} is after the due date, otherwise nothing; {@code w} is what a second costs, {@code d}
 * the due date, {@code E} the clock at a worked time. The mean over the order is no more than what its lateness costs:
 * {@code E} rises by a second a second at least, so that the mean of {@code E(u)} over the last {@code e} seconds is at most
 * {@code E(U) - e/2}. If all is late, {@code e = p} and the mean is at most {@code w (E(U) - d)}. If {@code e < p} seconds are, it
 * is at most {@code w (e/p) (L + (p - e)/2)} with {@code L = E(U) - d}, and that is at most {@code w L} because {@code L >= e}.
 *
 * <p>The order right after the first begin of a product carries the changeover with it: {@code p} is longer by the shortest one,
 * and its price ({@link EntryPrices}) is added; each product has such an order at least once. A line begins with what it
 * holds, which may be cheaper, but only once.
 *
 * <p>Any numbers bound the programme from below by duality: {@code u} for each order, {@code b} for each product and {@code f} for
 * the first place of each line, none below 0. The hour of a line is then worth what the order that would pay most for it has
 * left, and the bound is the sum of {@code u} and {@code b} less that of {@code f} and less the worth of all hours. The numbers are
 * improved by {@link Ascent}. Hours are taken in pieces, each at the price of its beginning; after the last piece
 * they are worth nothing, so that no order may be ready to pay for them.
 *
 * <p>Source, from memory: Bülbül, Kaminsky and Yano, Naval Research Logistics 51 (2004), for the costs of the pieces on a line that never rests.
 */
final class SharedHours {
    private static final double LONGER = 1.2;
    private static final int FINE = 1600;
    private static final int COARSE = 200;
    private static final int COARSE_FOR_MANY = 100;
    private static final int MANY = 10_000;
    private static final double WORK = 2e9;
    private static final int MOST_STEPS = 2000;

    private final LineKernel[] kernels;
    private final EntryPrices entries;
    private final int jobs;
    private final int firsts;
    private final int size;
    private final double lastS;
    /** How each number counts in the bound: 1 for each order and for each product that has one, -1 for each line. */
    private final double[] share;

    private final List<List<HourOffer>> offers = new ArrayList<>();
    private int pieces;
    private double pieceS;
    private double[][] clockS;

    /**
     * For a problem.
     *
     * @param kernels its lines
     * @param lastS worked seconds after which hours are worth next to nothing, {@code > 0}; any number gives a bound
     */
    SharedHours(LineKernel[] kernels, double lastS) {
        this.kernels = kernels;
        this.lastS = lastS * LONGER;
        entries = new EntryPrices(kernels);
        jobs = kernels[0].product.length;
        firsts = jobs + kernels[0].atStart;
        size = firsts + kernels.length;
        share = new double[size];
        Arrays.fill(share, 0, jobs, 1);
        Arrays.stream(kernels[0].product).forEach(product -> share[jobs + product] = 1);
        Arrays.fill(share, firsts, size, -1);
    }

    /**
     * The bound.
     *
     * @param planCost what a good plan costs, {@code > 0}; guides the search for the numbers
     * @return money that no plan goes below
     */
    double bound(double planCost) {
        divide(COARSE);
        int count = offers.stream().mapToInt(List::size).sum();
        if (count > MANY) {
            divide(COARSE_FOR_MANY);
        }
        double[] start = start();
        int steps = (int) Math.min(MOST_STEPS, WORK / pieces / count);
        double[] best = new Ascent(this::value, start, planCost / firsts).run(steps);
        divide(FINE);
        double[] unused = new double[size];
        return Math.max(value(start, unused), value(best, unused));
    }

    private void divide(int count) {
        pieces = count;
        pieceS = lastS / pieces;
        clockS = new double[kernels.length][pieces + 1];
        offers.clear();
        for (int line = 0; line < kernels.length; line++) {
            for (int piece = 0; piece <= pieces; piece++) {
                clockS[line][piece] = kernels[line].endOfS(piece * pieceS);
            }
            offers.add(offersOn(line));
        }
    }

    private List<HourOffer> offersOn(int line) {
        LineKernel kernel = kernels[line];
        List<HourOffer> all = new ArrayList<>();
        for (int job = 0; job < jobs; job++) {
            if (kernel.canMake(job)) {
                int product = kernel.product[job];
                int begin = jobs + product;
                double entry = entries.money[line][product];
                all.add(HourOffer.of(kernel, job, -1, -1, 0, 0, pieceS));
                if (entry < Double.POSITIVE_INFINITY) {
                    all.add(HourOffer.of(kernel, job, begin, -1, entry, entries.timeS[line][product], pieceS));
                }
                double first = entries.firstMoney[line][product];
                all.add(HourOffer.of(
                        kernel, job, begin, firsts + line, first, entries.firstTimeS(line, product), pieceS));
            }
        }
        return all;
    }

    /** Numbers by which hours are worth nothing: what products cost to begin, and what lines save by what they hold. */
    private double[] start() {
        double[] number = new double[size];
        Arrays.fill(number, jobs, firsts, Double.POSITIVE_INFINITY);
        for (List<HourOffer> line : offers) {
            line.stream()
                    .filter(HourOffer::isBegin)
                    .filter(offer -> !offer.isFirst())
                    .forEach(offer -> number[offer.begin()] = Math.min(number[offer.begin()], offer.money()));
        }
        for (int i = jobs; i < firsts; i++) {
            number[i] = number[i] == Double.POSITIVE_INFINITY ? 0 : number[i];
        }
        for (List<HourOffer> line : offers) {
            line.stream()
                    .filter(HourOffer::isFirst)
                    .forEach(offer -> number[offer.first()] =
                            Math.max(number[offer.first()], number[offer.begin()] - offer.money()));
        }
        return number;
    }

    /** The bound by some numbers, which are lowered where they must be, and how it grows with each of them. */
    private double value(double[] number, double[] slope) {
        lower(number, false);
        lower(number, true);
        System.arraycopy(share, 0, slope, 0, size);
        double value = entries.endsMoney;
        for (int i = 0; i < size; i++) {
            value += slope[i] * number[i];
        }
        for (int line = 0; line < kernels.length; line++) {
            value -= worth(line, number, slope);
        }
        return value;
    }

    /** After the last piece hours are worth nothing, so that nobody may be ready to pay for them. */
    private void lower(double[] number, boolean isBegin) {
        for (int line = 0; line < kernels.length; line++) {
            for (HourOffer offer : offers.get(line)) {
                double over = offer.ready(number) - offer.cost(Math.max(pieces, offer.from()), clockS[line][pieces]);
                if (offer.isBegin() == isBegin && over > 0) {
                    number[isBegin ? offer.begin() : offer.order()] -= over;
                }
            }
        }
    }

    /** What all hours of a line are worth; each piece goes to the offer that pays most. */
    private double worth(int line, double[] number, double[] slope) {
        double[] most = new double[pieces];
        HourOffer[] taker = new HourOffer[pieces];
        for (HourOffer offer : offers.get(line)) {
            double ready = offer.ready(number);
            if (ready > 0) {
                bid(line, offer, ready, most, taker);
            }
        }
        double worth = 0;
        for (int piece = 0; piece < pieces; piece++) {
            if (taker[piece] != null) {
                worth += most[piece] * pieceS;
                take(taker[piece], slope);
            }
        }
        return worth;
    }

    private void bid(int line, HourOffer offer, double ready, double[] most, HourOffer[] taker) {
        for (int piece = offer.from(); piece < pieces; piece++) {
            double perS = (ready - offer.cost(piece, clockS[line][piece])) / offer.workS();
            if (perS <= 0) {
                return;
            }
            if (perS > most[piece]) {
                most[piece] = perS;
                taker[piece] = offer;
            }
        }
    }

    private void take(HourOffer offer, double[] slope) {
        double made = pieceS / offer.workS();
        slope[offer.order()] -= made;
        if (offer.isBegin()) {
            slope[offer.begin()] -= made;
        }
        if (offer.isFirst()) {
            slope[offer.first()] += made;
        }
    }
}
