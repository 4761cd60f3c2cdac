package spoolyard.scenarios.check;

import java.nio.file.Path;
import java.util.List;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.CsvRow;
import spoolyard.scenarios.read.CsvTable;
import spoolyard.scenarios.read.SourceFiles;

/** Reads a log of changeovers that is no part of a scenario: like its changeovers file, but a pair may come again. */
public final class ChangeoverLog {
    private ChangeoverLog() {}

    /**
     * Reads one.
     *
     * @param file the log, a CSV file; columns that nobody reads are passed over
     * @param plant the plant whose lines it names
     * @param inputs polymers and colours that it names
     * @return its rows
     * @throws ScenarioException with all faults, if there are any
     */
    public static List<LoggedPurge> read(Path file, Plant plant, PurgeInputs inputs) throws ScenarioException {
        Reading reading = Reading.begin();
        List<CsvRow> rows = new SourceFiles(reading.faults())
                .open(file, Origin.ofFile("--log"), SourceFiles.CSV_LIMIT_BYTES)
                .map(source -> CsvTable.rows(source, ChangeoverFile.COLUMNS, reading.faults()))
                .orElse(List.of());
        List<String> colours = inputs.colours().stream()
                .map(offered -> offered.colour().code())
                .toList();
        List<LoggedPurge> log = new ChangeoverFile(
                        plant.lines().stream().map(Line::name).toList(),
                        inputs.polymers().stream().map(Polymer::code).toList(),
                        Words.name("colour", colours),
                        reading)
                .log(rows);
        reading.faults().throwIfAny();
        return log;
    }
}
