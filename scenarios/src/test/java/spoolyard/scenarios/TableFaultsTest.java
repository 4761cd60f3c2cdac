package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Warning;

/** Faults and warnings in the CSV files. */
final class TableFaultsTest {
    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent);
    }

    /** File, text that stands once, what takes its place, kind, line, column, value, allowed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
        orders.csv  | PETG,BLK   | PET,BLK     | UNKNOWN_NAME       | 3 | polymer      | PET        | Must be a polymer of this plant: PLA, PETG.
        orders.csv  | PETG,BLK   | PETG,BLA    | UNKNOWN_NAME       | 3 | colour       | BLA        | Must be a colour of this plant: NAT, RED, BLK.
        orders.csv  | L1 L2      | L1 L3       | UNKNOWN_NAME       | 4 | lines        | L3         | Must be a line of this plant: L1, L2.
        orders.csv  | 2.3,40     | 2.3,-40     | OUT_OF_RANGE       | 4 | spools       | -40        | Must be a whole number >= 1 and <= 1000000.
        orders.csv  | 2.3,40     | 2.3,4o      | OUT_OF_RANGE       | 4 | spools       | 4o         | Must be a whole number >= 1 and <= 1000000.
        orders.csv  | 2.3,40     | 230,40      | OUT_OF_RANGE       | 4 | spool_kg     | 230        | Must be a number >= 0.01 and <= 50, without a unit.
        orders.csv  | 92.0       | 95.0        | CONTRADICTION      | 4 | net_kg       | 95.0       | Must be spools times spool_kg = 92.0 within 1 %.
        orders.csv  | 2027-03-09 | 2027-02-28  | DUE_BEFORE_RELEASE | 4 | due_date     | 2027-02-28 | Must not be before release_date, 2027-03-02.
        orders.csv  | 2027-03-09 | 09.03.2027  | NOT_A_VALUE        | 4 | due_date     | 09.03.2027 | Must be a date as year-month-day, optionally with hours:minutes.
        orders.csv  | 2027-03-09 | 2027-02-30  | NOT_A_VALUE        | 4 | due_date     | 2027-02-30 | Must be a date as year-month-day, optionally with hours:minutes.
        orders.csv  | 2027-03-09 | 3027-03-09  | OUT_OF_RANGE       | 4 | due_date     | 3027-03-09 | Must be within 50 years of the start of the run.
        orders.csv  | A-3,       | A-1,        | DUPLICATE_NAME     | 4 | order_id     | A-1        | Each order may stand once; it already stands in line 2.
        orders.csv  | ',3,'      | ',Z,'       | NOT_A_VALUE        | 4 | priority     | Z          | Must be one of: a, b, c, 1, 2, 3, 4, 5, 6, 7, 8, 9.
        colours.csv | BLK,Black  | RED,Black   | DUPLICATE_NAME     | 4 | colour_code  | RED        | Each colour may stand once.
        colours.csv | 17,0,0,4   | 17,0,0,5    | OUT_OF_RANGE       | 4 | shade_class  | 5          | Must be a whole number >= 1 and <= 4.
        colours.csv | 17,0,0,4   | 17,,0,4     | MISSING_VALUE      | 4 | a            | (empty)    | Must be a number >= -150 and <= 150, without a unit.
        changeovers.csv | RED,2.5 | REDD,2.5   | UNKNOWN_NAME       | 2 | to           | REDD       | Must be a colour of this plant: NAT, RED, BLK.
        changeovers.csv | L1,     | L9,        | UNKNOWN_NAME       | 2 | line         | L9         | Must be a line of this plant: L1, L2.
        changeovers.csv | 9.5     | -9.5       | OUT_OF_RANGE       | 3 | purge_kg     | -9.5       | Must be a number >= 0 and <= 2000, without a unit.
        """)
    void reportsAWrongCell(
            String file,
            String old,
            String replacement,
            FaultKind kind,
            int line,
            String column,
            String value,
            String allowed) {
        folder.replace(file, old, replacement);

        Fault fault = folder.faults().stream()
                .filter(f -> f.file().equals(folder.shown(file)))
                .findFirst()
                .orElseThrow();

        assertThat(fault.text())
                .startsWith(folder.shown(file) + ":" + line + ": " + column + " = " + value + ". " + allowed
                        + "\n  Mend: ");
        assertThat(fault.kind()).isEqualTo(kind);
    }

    @Test
    void reportsTheLinesOfRowsWithTooFewAndTooManyCells() {
        folder.replace("orders.csv", ",A,School supplier,", ",A")
                .replace("orders.csv", "A-3,PLA", "A-3,,PLA")
                .append("orders.csv", "Total,,,,,190,242,,,,,\n");

        List<Fault> faults = folder.faults();

        assertThat(faults).extracting(Fault::kind).containsOnly(FaultKind.ROW_LENGTH);
        assertThat(faults)
                .extracting(Fault::text)
                .containsExactly(
                        folder.shown("orders.csv") + ":2: row = 10 cells. Must have 12 cells like the header.\n"
                                + "  Mend: fill in the missing cells (an empty cell still needs its separator),"
                                + " or delete the row.",
                        folder.shown("orders.csv") + ":4: row = 13 cells. Must have 12 cells like the header.\n"
                                + "  Mend: put quotes around a cell that holds a separator, or delete the extra cells.",
                        folder.shown("orders.csv") + ":5: row = Total. Must be a row of the table, not a total.\n"
                                + "  Mend: delete the row of totals.");
    }

    @Test
    void countsLinesThroughCellsOfSeveralLines() {
        folder.replace("orders.csv", "School supplier", "\"School\r\nsupplier, \"\"the\"\"\n\nfirst\"")
                .replace("orders.csv", "2.3,40", "2.3,0");

        Fault fault = folder.onlyFault();

        assertThat(fault.origin().where()).isEqualTo(folder.shown("orders.csv") + ":7");
        assertThat(fault.field()).isEqualTo("spools");
    }

    @Test
    void reportsAQuoteThatIsNotClosed() {
        folder.replace("orders.csv", "A,School supplier", "A,\"School supplier");

        Fault fault = folder.faults().get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_SYNTAX);
        assertThat(fault.text())
                .isEqualTo(folder.shown("orders.csv") + ":2: row = broken quotes."
                        + " A quoted cell must end with a quote just before the separator or the end of the line.\n"
                        + "  Mend: close the quote, and write a quote inside a quoted cell twice.");
    }

    @Test
    void reportsDuplicateMisspeltAndMissingColumns() {
        folder.replace("colours.csv", "shade_class,pigment_strength", "shade_clas,colour_name")
                .replace("orders.csv", ",priority,", ",prority,");

        List<Fault> faults = folder.faults();

        assertThat(faults)
                .extracting(Fault::kind, Fault::value, Fault::mend)
                .containsExactly(
                        tuple(FaultKind.BAD_HEADER, "colour_name", "rename or delete one of the two columns"),
                        tuple(FaultKind.UNKNOWN_KEY, "shade_clas", "rename it to shade_class, or delete it"),
                        tuple(
                                FaultKind.BAD_HEADER,
                                "(no such column)",
                                "add the column shade_class, or correct its name"),
                        tuple(
                                FaultKind.BAD_HEADER,
                                "(no such column)",
                                "add the column pigment_strength, or correct its name"),
                        tuple(FaultKind.UNKNOWN_KEY, "prority", "rename it to priority, or delete it"));
        assertThat(faults).extracting(Fault::line).containsOnly(1);
    }

    @Test
    void warnsOfAColumnOfThePlantsOwn() {
        folder.replace("orders.csv", ",customer,", ",warehouse bin,");

        List<Warning> warnings = folder.read().warnings();

        assertThat(warnings)
                .filteredOn(w -> w.kind() == Warning.Kind.COLUMN_IGNORED)
                .extracting(Warning::text)
                .containsExactly(folder.shown("orders.csv") + ":1: column warehouse bin is not used.");
    }

    @Test
    void readsSemicolonsAndDecimalCommas() {
        Scenario plain = folder.read();
        for (String file : List.of("orders.csv", "colours.csv", "changeovers.csv")) {
            folder.write(file, folder.text(file).replace(',', ';').replaceAll("(\\d)\\.(\\d)", "$1,$2"));
        }

        assertThat(folder.read().plant()).isEqualTo(plain.plant());
    }

    @Test
    void readsOtherNamesOfColumnsAndPassesOverEmptyRows() {
        Scenario plain = folder.read();
        folder.replace("colours.csv", "colour_code,colour_name,L,a,b,shade_class", "Code,Name,L*,a*,b*,Class")
                .replace("colours.csv", "pigment_strength,masterbatch_pct", "Strength,Concentrate %")
                .append("colours.csv", "\n,,,,,,,,\n");

        assertThat(folder.read().plant()).isEqualTo(plain.plant());
    }

    @Test
    void refusesBothDecimalSignsInOneFile() {
        folder.write("changeovers.csv", "from;to;purge_kg\nNAT;RED;2,5\nRED;NAT;9.5\n");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.NOT_A_VALUE);
        assertThat(fault.text())
                .isEqualTo(folder.shown("changeovers.csv") + ":3: number = 9.5."
                        + " Must use the same decimal sign all through; line 2 uses the other.\n"
                        + "  Mend: write all numbers of the file with a comma, or all with a point.");
    }

    @Test
    void refusesAMeasuredPairGivenTwice() {
        folder.append("changeovers.csv", "L1,PLA,NAT,RED,3\n");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.DUPLICATE_NAME);
        assertThat(fault.line()).isEqualTo(4);
    }

    @Test
    void warnsOfAnOrderThatNoLineCanMake() {
        folder.replace("plant.yaml", "sequence:\n    L1: [A-2, A-1]", "sequence:\n    L1: [A-1]")
                .replace("orders.csv", "A-2,PETG,BLK,1.75", "A-2,PETG,BLK,2.85");

        Scenario scenario = folder.read();

        assertThat(scenario.warnings())
                .filteredOn(w -> w.kind() == Warning.Kind.ORDER_WITHOUT_LINE)
                .extracting(Warning::text)
                .containsExactly(folder.shown("orders.csv")
                        + ":3: order A-2 (PETG BLK 2.85 mm) can be made on no line; it will never be begun.");
        assertThat(scenario.plant().book().orders().get(1).lines()).isEmpty();
    }

    @Test
    void warnsOfAColourThatIsNotOffered() {
        folder.replace("colours.csv", "BLK,Black,17,0,0,4,4.0,3.0,PLA PETG", "BLK,Black,17,0,0,4,4.0,3.0,PLA");

        assertThat(folder.read().warnings())
                .filteredOn(w -> w.kind() == Warning.Kind.COLOUR_NOT_OFFERED)
                .extracting(Warning::text)
                .containsExactly(folder.shown("orders.csv")
                        + ":3: order A-2 (PETG BLK 1.75 mm) asks for a colour that is not offered in this polymer.");
    }

    @Test
    void readsDatesPrioritiesAndLines() {
        Scenario scenario = folder.read();

        long hour = 3_600_000_000L;
        assertThat(scenario.plant().book().orders())
                .extracting(o -> o.releaseTick() / hour, o -> o.dueTick() / hour, o -> o.priority(), o -> o.weight())
                .containsExactly(
                        tuple(-6L, 5 * 24 - 6L, 1, 3.0),
                        tuple(-6L, 4 * 24 + 8L, 2, 1.0),
                        tuple(18L, 9 * 24 - 6L, 3, 1.0));
        assertThat(scenario.plant().book().orders())
                .extracting(o -> o.lines())
                .containsExactly(List.of("L1", "L2"), List.of("L1"), List.of("L2"));
    }

    @Test
    void keepsFaultsOfATableFromSpreadingToOthers() {
        folder.replace("colours.csv", "shade_class", "class_of_shade_and_more")
                .replace("orders.csv", "A-2,PETG", "A-2,PET");

        List<Fault> faults = folder.faults();

        assertThat(faults).extracting(Fault::kind).containsExactly(FaultKind.BAD_HEADER, FaultKind.UNKNOWN_NAME);
    }
}
