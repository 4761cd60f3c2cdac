package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;

/** A given sequence as a CSV file: can be made on L1 (A-2 there only), A-3 on L2 only. */
final class PlanTableTest {
    private static final String SOUND =
            """
            line,place,order_id,polymer,colour,diameter_mm,spool_kg,spools,making_start_local
            L1,1,A-2,PETG,BLK,1.75,1.0,50,2027-03-01 06:00
            L2,1,A-3,PLA,BLK,2.85,2.3,40,2027-03-01 06:00
            L1,2,A-1,PLA,RED,1.75,1,100,2027-03-02 06:00
            """;

    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent)
                .replace("plant.yaml", "sequence:\n    L1: [A-2, A-1]\n    L2: [A-3]", "sequence: plan.csv")
                .write("plan.csv", SOUND);
    }

    @Test
    void isTheSequenceWithRowsOfALineFromTopToBottom() {
        assertThat(folder.read().plant().book().givenSequence())
                .containsExactly(entry("L1", List.of("A-2", "A-1")), entry("L2", List.of("A-3")));
    }

    @Test
    void needsOnlyLineAndOrder() {
        folder.write("plan.csv", "Order;Line\nA-1;L1\nA-2;L1\nA-3;L2\n");

        assertThat(folder.read().plant().book().givenSequence())
                .containsExactly(entry("L1", List.of("A-1", "A-2")), entry("L2", List.of("A-3")));
    }

    @Test
    void takesWhatASpreadsheetWritesWithDecimalCommas() {
        folder.write(
                "plan.csv",
                "\uFEFF"
                        + SOUND.replace(',', ';')
                                .replace("1.75", "1,75")
                                .replace("2.3", "2,3")
                                .replace("2.85", "2,85")
                                .replace("1.0;", "1;")
                                .replace("2027-03-01 06:00", "01.03.2027 06:00"));

        assertThat(folder.read().plant().book().givenSequence()).containsEntry("L1", List.of("A-2", "A-1"));
    }

    /** Half a place goes between two, once the rows are sorted. */
    @Test
    void takesPlacesBetweenPlaces() {
        folder.replace("plan.csv", "L1,2,A-1", "L1,1.5,A-1");

        assertThat(folder.read().plant().book().givenSequence()).containsEntry("L1", List.of("A-2", "A-1"));
    }

    /** What stands once in the plan, what takes its place, kind, line, column, value, allowed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        L2,1     | L3,1     | UNKNOWN_NAME   | 3 | line     | L3   | Must be a line of this plant: L1, L2.
        A-3      | A-9      | UNKNOWN_NAME   | 3 | order_id | A-9  | Must be an order of this plant: A-1, A-2, A-3.
        A-1,PLA,RED,1.75,1,100 | A-2,PETG,BLK,1.75,1.0,50 | DUPLICATE_NAME | 4 | order_id | A-2 | Each order may stand in one sequence, once.
        L1,1     | L2,0.5   | CONTRADICTION  | 2 | order_id | A-2  | Must be an order that line L2 can make; this one can be made on L1.
        L1,2     | L1,1     | CONTRADICTION  | 4 | place    | 1    | Must be more than the place above it on line L1: rows are made from top to bottom.
        L1,2     | L1,last  | OUT_OF_RANGE   | 4 | place    | last | Must be a number > 0 and <= 1000000, without a unit.
        1,100    | 1,120    | CONTRADICTION  | 4 | spools   | 120  | Must be 100 as in the order book; a plan says where and when, not what.
        2.85     | 1.75     | CONTRADICTION  | 3 | diameter_mm | 1.75 | Must be 2.85 as in the order book; a plan says where and when, not what.
        PLA,RED  | PLA,BLK  | CONTRADICTION  | 4 | colour   | BLK  | Must be RED as in the order book; a plan says where and when, not what.
        A-3      | ''       | MISSING_VALUE  | 3 | order_id | (empty) | Must be an order of this plant: A-1, A-2, A-3.
        line,    | row,     | BAD_HEADER     | 1 | line     | (no such column) | Must be a column; the first row must hold the column names.
        order_id | what     | BAD_HEADER     | 1 | order_id | (no such column) | Must be a column; the first row must hold the column names.
        """)
    void reportsAWrongPlan(
            String old, String replacement, FaultKind kind, int line, String column, String value, String allowed) {
        folder.replace("plan.csv", old, replacement);

        Fault fault = folder.onlyFault();

        assertThat(fault.text())
                .startsWith(folder.shown("plan.csv") + ":" + line + ": " + column + " = " + value + ". " + allowed
                        + "\n  Mend: ");
        assertThat(fault.kind()).isEqualTo(kind);
    }

    @Test
    void reportsOrdersThatAreLeftOut() {
        folder.replace("plan.csv", "L2,1,A-3,PLA,BLK,2.85,2.3,40,2027-03-01 06:00\n", "");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.MISSING_VALUE);
        assertThat(fault.text())
                .isEqualTo(folder.at("plant.yaml", "sequence: plan.csv")
                        + ": /orders/sequence = plan.csv. Must have a row for every order of the book; left out: A-3.\n"
                        + "  Mend: add the rows to the plan, or take the orders out of the order book.");
    }

    @Test
    void reportsAPlanThatIsNotThere() {
        folder.delete("plan.csv");

        assertThat(folder.onlyFault().kind()).isEqualTo(FaultKind.MISSING_FILE);
    }

    @Test
    void blamesNoRowForAnOrderThatCouldNotBeRead() {
        folder.replace("orders.csv", "A-3,PLA", "A-3,PLO");

        assertThat(folder.onlyFault().file()).isEqualTo(folder.shown("orders.csv"));
    }

    @Test
    void aVariationTakesThePlaceOfListsAndListsThatOfAPlan() {
        ScenarioFolder lists = folder.write("lists.yaml", "base: plant.yaml\norders: {sequence: {L1: [A-1, A-2]}}\n");

        assertThat(ScenarioFolder.readOf(lists.path().resolve("lists.yaml"))
                        .plant()
                        .book()
                        .givenSequence())
                .containsExactly(entry("L1", List.of("A-1", "A-2")));
        lists.write("back.yaml", "base: lists.yaml\norders: {sequence: plan.csv}\n");
        assertThat(ScenarioFolder.readOf(lists.path().resolve("back.yaml"))
                        .plant()
                        .book()
                        .givenSequence())
                .containsExactly(entry("L1", List.of("A-2", "A-1")), entry("L2", List.of("A-3")));
    }
}
