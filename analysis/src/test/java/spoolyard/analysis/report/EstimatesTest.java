package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.PlausibleRuns;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.ChangeoverResult;

final class EstimatesTest {
    private static final Setting SETTING = new Setting(SamplePlant.of(12, 1), SampleReports.clock());
    private static final Sheet<ChangeoverSheet.Pair> SHEET = ChangeoverSheet.SHEET;

    /**
     * Worked by hand: RED to BLK on L2 purges 2 kg once in the first replication, 2 and 4 kg in the second. Amounts: 2
     * and 6 kg, mean 4; averages: 2 and 3 kg, mean 2.5. BLK to NAT comes in the second only: its amount counts as 0 in
     * the first, its average has no say there.
     */
    @Test
    void countsAMissingRowAsNothingInAmountsAndNotAtAllInAverages() throws IOException {
        Estimates table = estimates(
                Runs.of(changeover("L2", "RED", "BLK", 2)),
                Runs.of(
                        changeover("L2", "RED", "BLK", 2),
                        changeover("L2", "RED", "BLK", 4),
                        changeover("L2", "BLK", "NAT", 9)));

        StringBuilder csv = new StringBuilder();
        new CsvTable(SETTING.clock()).write(table, csv);

        List<String> rows = csv.toString().lines().toList();
        assertThat(rows.get(0))
                .startsWith("line,from,to,count,count_half_width,purge_kg,purge_kg_half_width,purge_kg_each");
        // t(0.975; 1) = 12.7062047361747 (GNU R qt); of two values a and b the half-width is t |a - b| / 2.
        assertThat(rows.get(1)).startsWith("L2,BLK,NAT,0.5,6.353102,4.5,57.17792,9,,");
        assertThat(rows.get(2)).startsWith("L2,RED,BLK,1.5,6.353102,4,25.41241,2.5,6.353102,");
    }

    @Test
    void keepsRowsInPlantOrderWhicheverReplicationHasThemFirst() {
        Estimates table = estimates(
                Runs.of(changeover("L10", "RED", "BLK", 2)),
                Runs.of(changeover("L2", "RED", "BLK", 2), changeover("L2", "BLK", "RED", 2)));

        assertThat(table.keys())
                .containsExactly(
                        List.of("L2", "BLK", "RED"), List.of("L2", "RED", "BLK"), List.of("L10", "RED", "BLK"));
    }

    @Test
    void leavesOutAChangeoverThatTheEndOfTheRunCutsShort() {
        ChangeoverResult unfinished = new ChangeoverResult("L1", "RED", "BLK", "RED", "BLK", 0, Ticks.NEVER, 1, 60, 0);

        assertThat(estimates(Runs.of(unfinished)).keys()).isEmpty();
    }

    @Test
    void givesACellByRowAndColumn() {
        Estimates table = estimates(Runs.of(changeover("L2", "RED", "BLK", 2)));
        Column<?> purge = SHEET.columns().get(1);

        assertThat(table.at(List.of("L2", "RED", "BLK"), purge).mean()).isCloseTo(2, within(1e-15));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.at(List.of("L9", "RED", "BLK"), purge))
                .withMessage("changeovers has no row [L9, RED, BLK]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.at(List.of("L2", "RED", "BLK"), CrewSheet.BUSY))
                .withMessage("changeovers has no column busy_pct_of_present");
    }

    @Test
    void namesEveryColumnOfATableOnce() {
        for (Sheet<?> sheet : Sheets.ALL) {
            assertThat(CsvTable.header(sheet)).as(sheet.name()).doesNotHaveDuplicates();
            assertThat(CsvTable.header(sheet)).as(sheet.name()).allMatch(name -> name.matches("[a-z0-9_]+"));
        }
    }

    @Test
    void hasUniqueRowsInEveryTable() {
        RunResult result = new PlausibleRuns(SETTING.plant(), 3).replicate(0);

        for (Sheet<?> sheet : Sheets.ALL) {
            assertThat(sheet.rows(SETTING, result).keys()).as(sheet.name()).doesNotHaveDuplicates();
        }
    }

    private static Estimates estimates(RunResult... replications) {
        List<Rows> rows = new ArrayList<>();
        Stream.of(replications).forEach(result -> rows.add(SHEET.rows(SETTING, result)));
        return Estimates.of(SHEET, rows, SHEET.order().apply(SETTING), 0.95);
    }

    private static ChangeoverResult changeover(String line, String from, String to, double purgeKg) {
        return new ChangeoverResult(line, from, to, from, to, 0, Ticks.PER_HOUR, purgeKg, 360, 60);
    }
}
