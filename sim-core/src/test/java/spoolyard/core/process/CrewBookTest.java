package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.CrewResult;

/** Each check of the book of the crew fires when the defect it is there for is planted. */
class CrewBookTest {
    private static final long HOUR = PlantSketch.ticks(3600);

    private Plant plant;
    private CrewBook book;
    private RunResult result;

    @BeforeEach
    void runForFourHours() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.hours = 4;
        sketch.endOfShift = Crew.EndOfShift.FINISH_TASK;
        sketch.shifts.add(shift(0, 1, true));
        sketch.shifts.add(shift(2 * HOUR, 1, false));
        plant = sketch.plant();
        book = new CrewBook(plant);
        result = new PlantRun(plant, 1, 0, book).run();
    }

    private static Shift shift(long start, int heads, boolean overlaps) {
        return new Shift("D", start, start + 2 * HOUR, List.of(heads), List.of(), HOUR / 6, overlaps, 1, 1.5);
    }

    private RunResult withCrew(UnaryOperator<CrewResult> change) {
        return new RunResult(
                result.masterSeed(),
                result.replication(),
                result.horizonTicks(),
                result.events(),
                result.lines(),
                result.shifts(),
                result.orders(),
                result.changeovers(),
                result.crew().stream().map(change).toList(),
                result.finishing(),
                result.inbound(),
                result.flow(),
                QualityResult.NONE,
                List.of(),
                List.of(),
                List.of());
    }

    private static CrewResult with(CrewResult was, double presentS, double paidS, double ratedPaidS) {
        return new CrewResult(
                was.role(),
                was.shift(),
                presentS,
                was.busyS(),
                was.walkingS(),
                was.breakS(),
                paidS,
                was.tasks(),
                was.meanWaitS(),
                was.longestWaitS(),
                ratedPaidS);
    }

    /** 4 h of shifts and 10 min before the first are paid, at 1.5; 10 min of the second are lost to its briefing. */
    @Test
    void agreesWithTheCalendarByHand() {
        CrewResult crew = result.crew().get(0);

        assertThat(book.findings(plant, result)).isEmpty();
        assertThat(crew.paidS()).isEqualTo(4 * 3600 + 600);
        assertThat(crew.ratedPaidS()).isEqualTo(1.5 * (4 * 3600 + 600));
        // the second shift ends with the run, so that nobody works on after it
        assertThat(crew.presentS()).isBetween(4 * 3600 - 600.0, 4 * 3600 - 600.0 + 50);
    }

    @Test
    void findsAPersonWhoNeverComes() {
        Plant two = withShifts(shift(0, 1, true), shift(2 * HOUR, 2, false));

        assertThat(book.findings(two, result))
                .contains("1 of role operator came at tick " + (2 * HOUR + HOUR / 6) + ", 2 planned");
    }

    @Test
    void findsAPersonOutsideTheCalendar() {
        assertThat(book.findings(withShifts(shift(0, 1, true)), result)).contains("2 came, 1 of them by the calendar");
    }

    private Plant withShifts(Shift... shifts) {
        return new Plant(
                plant.name(),
                plant.horizonTicks(),
                plant.lines(),
                plant.crew(),
                List.of(shifts),
                plant.changeovers(),
                plant.finishing(),
                plant.book());
    }

    @Test
    void findsAPersonWhoLeavesEarly() {
        book.tell(HOUR, "operator 3", Member.State.IDLE.label(), "");
        Plant early = withShifts(
                shift(0, 1, true),
                shift(2 * HOUR, 1, false),
                new Shift("E", HOUR, 2 * HOUR, List.of(1), List.of(), 0, false, 1));
        book.tell(HOUR + 10, "operator 3", Member.State.ABSENT.label(), "");

        assertThat(book.findings(early, result))
                .contains("one of role operator left " + (10 - HOUR) + " ticks after the end");
    }

    @Test
    void findsAnHourPaidTooLittle() {
        RunResult spoilt = withCrew(was -> with(was, was.presentS(), was.paidS() - 3600, was.ratedPaidS()));

        assertThat(book.findings(plant, spoilt))
                .singleElement()
                .asString()
                .startsWith("operator in D: paid 11400.0 s but 15000.0 s");
    }

    @Test
    void findsAPremiumForgotten() {
        RunResult spoilt = withCrew(was -> with(was, was.presentS(), was.paidS(), was.paidS()));

        assertThat(book.findings(plant, spoilt)).singleElement().asString().startsWith("operator in D: rated pay");
    }

    @Test
    void findsPresenceThatNobodySaw() {
        RunResult spoilt = withCrew(was -> with(was, was.presentS() + 1, was.paidS(), was.ratedPaidS()));

        assertThat(book.findings(plant, spoilt))
                .hasSize(2)
                .anyMatch(
                        finding -> finding.startsWith("operator in D: present and on break, less work after the end"));
    }
}
