package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.ScrapCause;

/** Each check of the audit fires when the defect it is there for is planted. */
class AuditTest {
    private PlantRun run;
    private Audit audit;

    @BeforeEach
    void runForAnHour() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.rackPlaces = 3;
        Plant plant = sketch.plant();
        run = new PlantRun(plant, 1, 0, EventLog.SILENT);
        audit = new Audit(run, plant.shifts());
        run.start();
        run.engine().runUntil(PlantSketch.ticks(3650));
    }

    @Test
    void findsNothingInASoundRun() {
        assertThat(audit.findings()).isEmpty();
    }

    @Test
    void findsFilamentOutOfThinAir() {
        run.lines().get(0).strands().get(0).plantDefect(1);

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("mass of line L1 is off"));
    }

    @Test
    void findsScrapBookedTwice() {
        run.lines().get(0).ledger().scrap(ScrapCause.OVERFLOW, 0.001);

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("mass of line L1 is off by -0.001"));
    }

    @Test
    void findsALevelAboveTheAccumulator() {
        run.lines().get(0).strands().get(0).plantDefect(100);

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("level "));
    }

    @Test
    void findsASpoolThatWasNeverMade() {
        run.stations().get(0).rack().keep();
        run.stations().get(0).rack().put(Spool.fromOutside(1, Optional.empty()));
        run.stations().get(0).rack().keep();
        run.stations().get(0).rack().put(Spool.fromOutside(1, Optional.empty()));

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("spools: "));
    }

    @Test
    void findsMorePromisesThanPlaces() {
        for (int i = 0; i < 4; i++) {
            run.stations().get(0).rack().keep();
        }

        assertThat(audit.findings()).containsExactly("rack of packing holds more than its places");
    }

    @Test
    void findsAPersonWhoIsNotOnTheRoster() {
        RoleCrew role = run.desk().roles().get(0);
        ShiftRun shift = role.members().get(0).shift();
        role.absentMember().come(shift, 0);

        assertThat(audit.findings()).containsExactly("2 of role operator present, 1 planned");
    }

    @Test
    void findsAPersonWhoIsMissing() {
        run.desk().roles().get(0).members().get(0).shiftEnds(true);

        assertThat(audit.findings()).containsExactly("0 of role operator present, 1 planned");
    }

    @Test
    void findsTwoPersonsAtOneTask() {
        RoleCrew role = run.desk().roles().get(0);
        ShiftRun shift = role.members().get(0).shift();
        Task task = run.lines().get(0).spindles().get(0);
        for (int i = 0; i < 2; i++) {
            Member extra = role.absentMember();
            extra.come(shift, 0);
            extra.take(task, null);
        }

        assertThat(audit.findings()).contains("two persons at one task");
    }

    @Test
    void findsAFullSpoolThatNobodyWillComeFor() {
        // the 19th spool is full at 3800 s; its call is lost while the operator is at it
        run.engine().runUntil(PlantSketch.ticks(3805));
        audit.checkLiveness();

        run.desk().withdraw(run.lines().get(0).spindles().get(0));

        assertThatThrownBy(audit::checkLiveness)
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("line L1 is stuck");
    }

    @Test
    void findsAPersonIdleBesideACall() {
        run.engine().runUntil(PlantSketch.ticks(3700));
        Task call = run.lines().get(0).spindles().get(0);
        call.raised(run.engine().now());
        run.desk().waiting().add(call);

        assertThatThrownBy(audit::checkLiveness)
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("somebody is idle beside waiting work");
    }

    @Test
    void findsASpoolThatStandsInNoRackAtTheStart() {
        run.flow().opened(Spool.atStart(Spool.NONE, 1, Optional.empty()), 0);

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("spools: "));
    }

    @Test
    void findsASpoolLostWithoutItsLineKnowing() {
        run.flow().lost();

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("spools: "));
    }

    @Test
    void findsALossThatNobodyBooked() {
        run.lines().get(0).ledger().lost(ScrapCause.EXPOSURE, 1, Optional.empty());

        assertThat(audit.findings()).anyMatch(finding -> finding.startsWith("spools made: "));
    }
}
