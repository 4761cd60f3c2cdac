package spoolyard.core.policy;

import java.util.List;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.SamplingPlan;

/**
 * Single sampling plans for normal inspection: from lot size, inspection level and acceptance quality limit (AQL) to sample
 * size and acceptance number. Where the table has an arrow, the plan is the first one below or above it, with its own sample
 * size. Where the sample is not smaller than the lot, the whole lot is looked at.
 *
 * <p>Source: MIL-STD-105E (1989), tables I and II-A, on which ISO 2859-1 tables 1 and 2-A rest. Level II and table II-A were
 * read in a public copy by the National Institute of Building Sciences (nibs.org, "AC-TABLE", 8 limits from 0.65 to 15; its
 * arrow up at letter A, AQL 10, has nothing above it and is taken as an arrow down, as memory of the standard has it);
 * levels S-3 and S-4 in two public copies of table I that agree ("AQL sampling chart", ANSI/ASQC Z1.4 - MIL-STD-105E - ISO
 * 2859). The standard itself has further rules (switching to tightened and reduced inspection, double plans): buy it for
 * use.
 */
public final class NormalInspection {
    private static final int[] LARGEST_LOT = {
        8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000, 150_000, 500_000, Integer.MAX_VALUE
    };
    private static final String LETTERS = "ABCDEFGHJKLMNPQ";
    private static final int[] SAMPLE_SIZE = {2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250};
    private static final String S3 = "AABBCCDDEEFFGGH";
    private static final String S4 = "AABCCDEEFGGHJJK";
    private static final String II = "ABCDEFGHJKLMNPQ";

    private static final int DOWN = -1;
    private static final int UP = -2;
    private static final double[] AQL_PERCENT = {0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10, 15};

    /** Acceptance numbers; rows by letter, columns by AQL. */
    private static final int[][] ACCEPTANCE = {
        {DOWN, DOWN, DOWN, DOWN, DOWN, 0, DOWN, DOWN},
        {DOWN, DOWN, DOWN, DOWN, 0, UP, DOWN, 1},
        {DOWN, DOWN, DOWN, 0, UP, DOWN, 1, 2},
        {DOWN, DOWN, 0, UP, DOWN, 1, 2, 3},
        {DOWN, 0, UP, DOWN, 1, 2, 3, 5},
        {0, UP, DOWN, 1, 2, 3, 5, 7},
        {UP, DOWN, 1, 2, 3, 5, 7, 10},
        {DOWN, 1, 2, 3, 5, 7, 10, 14},
        {1, 2, 3, 5, 7, 10, 14, 21},
        {2, 3, 5, 7, 10, 14, 21, UP},
        {3, 5, 7, 10, 14, 21, UP, UP},
        {5, 7, 10, 14, 21, UP, UP, UP},
        {7, 10, 14, 21, UP, UP, UP, UP},
        {10, 14, 21, UP, UP, UP, UP, UP},
        {14, 21, UP, UP, UP, UP, UP, UP},
    };

    private NormalInspection() {}

    /**
     * The limits of the table.
     *
     * @return AQL in per cent of defective spools, ascending
     */
    public static List<Double> limitsPercent() {
        return List.of(0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10.0, 15.0);
    }

    /**
     * Code letter of a lot.
     *
     * @param level inspection level
     * @param lotSpools spools in the lot, {@code >= 1}; a lot of one counts as the smallest of the table, 2 to 8
     * @return A to Q, without I and O
     */
    public static char letter(InspectionLevel level, int lotSpools) {
        int row = 0;
        while (lotSpools > LARGEST_LOT[row]) {
            row++;
        }
        return letters(level).charAt(row);
    }

    private static String letters(InspectionLevel level) {
        return switch (level) {
            case S3 -> S3;
            case S4 -> S4;
            case II -> II;
        };
    }

    /**
     * Plan of a lot.
     *
     * @param level inspection level
     * @param aqlPercent AQL in per cent, one of {@link #limitsPercent()}
     * @param lotSpools spools in the lot, {@code >= 1}
     * @return the plan; its sample is never larger than the lot
     * @throws IllegalArgumentException if the AQL is not in the table
     */
    public static SamplingPlan plan(InspectionLevel level, double aqlPercent, int lotSpools) {
        SamplingPlan plan = plan(letter(level, lotSpools), aqlPercent);
        return plan.sampleSize() < lotSpools ? plan : new SamplingPlan(lotSpools, plan.acceptance());
    }

    /**
     * Plan of a code letter.
     *
     * @param letter A to Q, without I and O
     * @param aqlPercent AQL in per cent, one of {@link #limitsPercent()}
     * @return the plan, arrows followed
     * @throws IllegalArgumentException if letter or AQL is not in the table
     */
    public static SamplingPlan plan(char letter, double aqlPercent) {
        int row = LETTERS.indexOf(letter);
        int column = column(aqlPercent);
        if (row < 0 || column < 0) {
            throw new IllegalArgumentException(
                    "letter " + letter + ", AQL = " + aqlPercent + " %. Must be in the table of normal inspection.");
        }
        while (ACCEPTANCE[row][column] < 0) {
            row += ACCEPTANCE[row][column] == DOWN ? 1 : -1;
        }
        return new SamplingPlan(SAMPLE_SIZE[row], ACCEPTANCE[row][column]);
    }

    private static int column(double aqlPercent) {
        for (int i = 0; i < AQL_PERCENT.length; i++) {
            if (AQL_PERCENT[i] == aqlPercent) {
                return i;
            }
        }
        return -1;
    }
}
