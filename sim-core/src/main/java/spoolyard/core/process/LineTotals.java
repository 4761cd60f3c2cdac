package spoolyard.core.process;

import java.util.Arrays;
import java.util.List;

/** What each line has made up to an instant. Arrays are by line, in plant order. */
record LineTotals(int[] goodSpools, double[] goodKg, double[] scrapKg) {
    /** Reads the totals off the lines now. */
    interface Source {
        /** The totals now. */
        LineTotals read();
    }

    static LineTotals of(List<LineProcess> lines) {
        int n = lines.size();
        LineTotals totals = new LineTotals(new int[n], new double[n], new double[n]);
        for (int i = 0; i < n; i++) {
            lines.get(i).advance();
            LineLedger ledger = lines.get(i).ledger();
            totals.goodSpools[i] = ledger.goodSpools;
            totals.goodKg[i] = ledger.goodKg;
            totals.scrapKg[i] = ledger.totalScrapKg();
        }
        return totals;
    }

    LineTotals minus(LineTotals earlier) {
        int n = goodSpools.length;
        LineTotals difference = new LineTotals(new int[n], new double[n], new double[n]);
        for (int i = 0; i < n; i++) {
            difference.goodSpools[i] = goodSpools[i] - earlier.goodSpools[i];
            difference.goodKg[i] = goodKg[i] - earlier.goodKg[i];
            difference.scrapKg[i] = scrapKg[i] - earlier.scrapKg[i];
        }
        return difference;
    }

    List<Integer> goodSpoolsList() {
        return Arrays.stream(goodSpools).boxed().toList();
    }

    List<Double> goodKgList() {
        return Arrays.stream(goodKg).boxed().toList();
    }

    List<Double> scrapKgList() {
        return Arrays.stream(scrapKg).boxed().toList();
    }
}
