package spoolyard.core.policy;

import java.util.List;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.SamplingPlan;

/**
 * Single sampling plans for normal inspection: from lot size, inspection level and acceptance quality limit (AQL) to sample
 * size and acceptance number. Where the table has an arrow, the plan is the first one below or above it, with its own sample
 * size. Where the sample is not smaller than the lot, the whole lot is looked at.
 *
 * <p>Only limits up to 10 are here. They may be read as per cent of defective spools. Those above, up to 1000, count
 * nonconformities in 100 spools, of which one spool can have several; here a spool is defective or not.
 *
 * <p>Source: MIL-STD-105E (1989), tables I and II-A, on which ISO 2859-1 tables 1 and 2-A rest. All letters of table I stand
 * in a public program that cites ISO 2859-1:1999, the acceptance numbers of each letter in a public legible copy of
 * MIL-STD-105E (whose arrows are lost), the arrows from 0.65 to 10 in a public copy by the National Institute of Building
 * Sciences (nibs.org, "AC-TABLE"). From memory: the arrows below 0.65, which are those of the other columns on the same
 * diagonal, and the two corners. At letter A an arrow up has nothing above it and is an arrow down; at letter R an arrow
 * down has nothing below it and is an arrow up. The standard itself has further rules (switching to tightened and reduced
 * inspection, double plans): buy it for use.
 */
public final class NormalInspection {
    private static final int[] LARGEST_LOT = {
        8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10_000, 35_000, 150_000, 500_000, Integer.MAX_VALUE
    };
    private static final String LETTERS = "ABCDEFGHJKLMNPQR";
    private static final int[] SAMPLE_SIZE = {2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000};
    private static final List<Double> AQL_PERCENT =
            List.of(0.010, 0.015, 0.025, 0.040, 0.065, 0.10, 0.15, 0.25, 0.40, 0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10.0);

    private static final int DOWN = -1;
    private static final int UP = -2;

    /**
     * The table is the same along each diagonal, from letter and AQL to the next letter and the next smaller AQL: above
     * these all arrows point down, below them up.
     */
    private static final int[] DIAGONAL = {0, UP, DOWN, 1, 2, 3, 5, 7, 10, 14, 21};

    /** Row and column of any plan with acceptance number 0, added: letter A, AQL 6.5. */
    private static final int FIRST_DIAGONAL = 14;

    private NormalInspection() {}

    /**
     * The limits of the table.
     *
     * @return AQL in per cent of defective spools, ascending from 0.010 to 10
     */
    public static List<Double> limitsPercent() {
        return AQL_PERCENT;
    }

    /**
     * Code letter of a lot.
     *
     * @param level inspection level
     * @param lotSpools spools in the lot, {@code >= 1}; a lot of one counts as the smallest of the table, 2 to 8
     * @return A to R, without I and O
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
            case S1 -> "AAAABBBBCCCCDDD";
            case S2 -> "AAABBBCCCDDDEEE";
            case S3 -> "AABBCCDDEEFFGGH";
            case S4 -> "AABCCDEEFGGHJJK";
            case I -> "AABCCDEFGHJKLMN";
            case II -> "ABCDEFGHJKLMNPQ";
            case III -> "BCDEFGHJKLMNPQR";
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
     * @param letter A to R, without I and O
     * @param aqlPercent AQL in per cent, one of {@link #limitsPercent()}
     * @return the plan, arrows followed
     * @throws IllegalArgumentException if letter or AQL is not in the table
     */
    public static SamplingPlan plan(char letter, double aqlPercent) {
        int row = LETTERS.indexOf(letter);
        int column = AQL_PERCENT.indexOf(aqlPercent);
        if (row < 0 || column < 0) {
            throw new IllegalArgumentException("letter " + letter + ", AQL = " + aqlPercent + " %. Must be a letter of "
                    + LETTERS + " and one of " + AQL_PERCENT + " %.");
        }
        while (cell(row, column) < 0) {
            row += cell(row, column) == DOWN ? 1 : -1;
        }
        return new SamplingPlan(SAMPLE_SIZE[row], cell(row, column));
    }

    /** Acceptance number or arrow. */
    private static int cell(int row, int column) {
        int place = row + column - FIRST_DIAGONAL;
        if (place < 0) {
            return DOWN;
        }
        int cell = place < DIAGONAL.length ? DIAGONAL[place] : UP;
        if (row == 0) {
            return cell == UP ? DOWN : cell;
        }
        return row == LETTERS.length() - 1 && cell == DOWN ? UP : cell;
    }
}
