package spoolyard.core.process;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import spoolyard.core.plant.Shift;
import spoolyard.core.record.QualityResult;

/** Looks at a whole run between two events and says which conservation law is broken, if any. */
final class Audit {
    /** Length that a strand moves within the rounding of the clock, over a few events. */
    private static final double SLACK_M = 1e-4;

    private final PlantRun run;
    private final List<Shift> shifts;
    private long lastTick;

    Audit(PlantRun run, List<Shift> shifts) {
        this.run = run;
        this.shifts = shifts;
    }

    /** Fails at the first event after which something does not add up. */
    void check() {
        List<String> broken = findings();
        if (!broken.isEmpty()) {
            throw new AssertionError("at tick " + run.engine().now() + ": " + broken);
        }
    }

    List<String> findings() {
        List<String> broken = new ArrayList<>();
        clock(broken);
        run.lines().forEach(line -> line(line, broken));
        spools(broken);
        crew(broken);
        broken.addAll(StockAudit.findings(run));
        return broken;
    }

    /** Fails if something stands still for good; to be asked between instants, when all of an instant has happened. */
    void checkLiveness() {
        List<String> stuck = new ArrayList<>();
        for (LineProcess line : run.lines()) {
            if (line.isStuck()) {
                stuck.add("line " + line.description().name() + " is stuck");
            }
        }
        if (run.desk().isIdleBesideWork()) {
            stuck.add("somebody is idle beside waiting work");
        }
        List<StationProcess> all = new ArrayList<>(run.route().spoolStations());
        all.addAll(run.route().tests());
        for (StationProcess station : all) {
            if (station.isIdleBesideWork()) {
                stuck.add("station " + station.description().name() + " is idle beside waiting spools");
            }
        }
        if (!stuck.isEmpty()) {
            throw new AssertionError("at tick " + run.engine().now() + ": " + stuck);
        }
    }

    private void clock(List<String> broken) {
        long now = run.engine().now();
        if (now < lastTick) {
            broken.add("the clock ran back from " + lastTick);
        }
        lastTick = now;
    }

    private void line(LineProcess line, List<String> broken) {
        LineLedger ledger = line.ledger();
        double inProcessKg =
                line.strands().stream().mapToDouble(Strand::inProcessKg).sum();
        double leftKg = ledger.fedKg - ledger.goodKg - ledger.gauge.bGradeKg - ledger.totalScrapKg() - inProcessKg;
        if (Math.abs(leftKg) > 1e-9 * (1 + ledger.fedKg)) {
            broken.add("mass of line " + line.description().name() + " is off by " + leftKg + " kg");
        }
        double roomM = line.description().accumulator().roomM();
        for (Strand strand : line.strands()) {
            if (strand.levelM() < -SLACK_M || strand.levelM() > roomM + SLACK_M) {
                broken.add("level " + strand.levelM() + " m outside 0 to " + roomM);
            }
        }
        if (Math.abs(inProcessKg) > 0 && inProcessKg < -1e-6) {
            broken.add("negative mass in process " + inProcessKg);
        }
    }

    private void spools(List<String> broken) {
        long inSystem = run.route().quarantine().map(Audit::standing).orElse(0L);
        run.route().quarantine().ifPresent(rack -> places("quarantine", rack, broken));
        for (StationProcess station : run.route().spoolStations()) {
            inSystem += standing(station.rack()) + station.inWork();
            places("rack of " + station.description().name(), station.rack(), broken);
        }
        long lostByLines = run.lines().stream().mapToLong(line -> lost(line)).sum();
        long good =
                run.lines().stream().mapToLong(line -> line.ledger().goodSpools).sum();
        if (good + lostByLines != run.flow().madeSoFar()) {
            broken.add(
                    "spools made: " + run.flow().madeSoFar() + " but " + good + " good and " + lostByLines + " lost");
        }
        long heldOfOpenLots = run.route().heldOfOpenLots();
        long held = run.route().quarantine().map(Rack::size).orElse(0);
        if (heldOfOpenLots > held) {
            broken.add("quarantine: " + heldOfOpenLots + " spools of open lots but " + held + " held");
        }
        if (inSystem != run.flow().inSystem()) {
            broken.add("spools: " + run.flow().inSystem() + " in the system but " + inSystem + " found");
        }
    }

    private long lost(LineProcess line) {
        return run.route().losses().stream()
                .filter(loss -> loss.line().equals(line.description().name()))
                .mapToLong(QualityResult.LossResult::spools)
                .sum();
    }

    private static long standing(Rack rack) {
        return rack.size() + rack.held();
    }

    private static void places(String what, Rack rack, List<String> broken) {
        if (standing(rack) + rack.keptPlaces() > rack.places()) {
            broken.add(what + " holds more than its places");
        }
    }

    private void crew(List<String> broken) {
        Set<Task> taken = new LinkedHashSet<>();
        for (RoleCrew role : run.desk().roles()) {
            int present = 0;
            for (Member member : role.members()) {
                present += member.state() == Member.State.ABSENT || member.isLeaving() ? 0 : 1;
                if (member.task() != null && !taken.add(member.task())) {
                    broken.add("two persons at one task");
                }
            }
            planned(role, present, broken);
        }
        for (Task task : run.desk().waiting()) {
            if (!task.isWaiting()) {
                broken.add("a task waits that is not waiting");
            }
        }
    }

    /** As many as planned; in the very instant in which people come or go either number. */
    private void planned(RoleCrew role, int present, List<String> broken) {
        long now = run.engine().now();
        int least = 0;
        int most = 0;
        for (Shift shift : shifts) {
            int heads = shift.heads().get(role.index());
            long comeTick = shift.startTick() + (shift.handOverOverlaps() ? 0 : shift.handOverTicks());
            most += comeTick <= now && now <= shift.endTick() ? heads : 0;
            least += Math.max(comeTick, 0) < now && now < shift.endTick() ? heads : 0;
        }
        if (present < least || present > most) {
            int planned = present < least ? least : most;
            broken.add(present + " of role " + role.name() + " present, " + planned + " planned");
        }
    }
}
