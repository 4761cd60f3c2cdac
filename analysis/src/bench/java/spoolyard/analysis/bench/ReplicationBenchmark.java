package spoolyard.analysis.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantLaws;
import spoolyard.core.process.PlantRun;
import spoolyard.core.random.InverseTables;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;
import spoolyard.scenarios.ScenarioReader;

/** One four-week replication of a shipped scenario, on one core. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 10, time = 2)
@Fork(2)
public class ReplicationBenchmark {
    @Param("orrenvale")
    private String scenario;

    private Plant plant;
    private InverseTables tables;
    private int replication;

    @Setup(Level.Trial)
    public void read() throws Exception {
        plant = ScenarioReader.read(Path.of("..", "scenarios", scenario), List.of()).plant();
        tables = PlantLaws.tables(plant);
    }

    @Benchmark
    public RunResult fourWeeks() {
        return new PlantRun(plant, tables, 1, replication++, EventLog.SILENT).run();
    }
}
