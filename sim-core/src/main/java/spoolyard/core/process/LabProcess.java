package spoolyard.core.process;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.SamplingPlan;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.policy.NormalInspection;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.QualityResult.LotResult;

/**
 * Tests closed lots and judges them. A specimen of the lot goes to each of its tests at once; the sample by attributes
 * decides when the last test that holds the lot is done.
 */
final class LabProcess {
    private final World world;
    private final Lab lab;
    private final Refusals refusals;
    private final List<StationProcess> tests = new ArrayList<>();
    private final Map<String, LotLedger> ledgers = new LinkedHashMap<>();

    LabProcess(World world, CrewDesk desk, Lab lab, Refusals refusals) {
        this.world = world;
        this.lab = lab;
        this.refusals = refusals;
        for (Lab.Test test : lab.tests()) {
            tests.add(station(desk, test));
        }
        world.plant()
                .book()
                .orders()
                .forEach(order -> ledger(order.product().polymer().code()));
    }

    private StationProcess station(CrewDesk desk, Lab.Test test) {
        FinishingStation description = new FinishingStation(
                test.name(),
                TaskKind.LAB_TEST,
                test.places(),
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, test.batch(), test.takesS())),
                test.crew(),
                List.of(new Window(test.name(), 0, world.plant().horizonTicks())),
                Integer.MAX_VALUE,
                0,
                List.of(),
                lab.place());
        Rack rack = new Rack(world, Integer.MAX_VALUE);
        StationProcess station = new StationProcess(world, desk, description, StationSort.LAB, rack);
        station.sendTo(server -> done(test, server));
        return station;
    }

    private void done(Lab.Test test, Server server) {
        List<Spool> specimens = List.copyOf(server.batch());
        server.batch().clear();
        server.batchGone();
        if (test.isHolding()) {
            specimens.forEach(specimen -> tested(specimen.lot.orElseThrow()));
        }
    }

    private void tested(Lot lot) {
        if (lot.tested()) {
            judge(lot);
        }
    }

    List<StationProcess> tests() {
        return tests;
    }

    /** A lot is closed: sends specimens to its tests. */
    void take(Lot lot) {
        List<Integer> drawn = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            if (lot.luck().isTested(i)) {
                drawn.add(i);
            }
        }
        int holding =
                (int) drawn.stream().filter(i -> lab.tests().get(i).isHolding()).count();
        lot.awaits(holding, world.now());
        drawn.forEach(i -> bring(lot, i));
        if (holding == 0) {
            judge(lot);
        }
    }

    private void bring(Lot lot, int test) {
        Spool specimen = Spool.fromOutside(0, Optional.empty());
        specimen.lot = Optional.of(lot);
        if (lab.tests().get(test).isForEachSampledSpool()) {
            specimen.rounds = plan(lot).sampleSize();
        }
        Rack rack = tests.get(test).rack();
        rack.keep();
        rack.put(specimen);
    }

    private SamplingPlan plan(Lot lot) {
        Lab.Sampling sampling = lab.sampling().orElseThrow();
        return NormalInspection.plan(
                sampling.level(), sampling.aqlPercent(), lot.spools().size());
    }

    private void judge(Lot lot) {
        LotLedger ledger = ledger(polymerOf(lot));
        double holdS = Ticks.toSeconds(world.now() - lot.closedTick());
        ledger.judged++;
        ledger.cut += lot.isCut() ? 1 : 0;
        ledger.spools += lot.spools().size();
        ledger.holdS += holdS;
        ledger.longestHoldS = Math.max(ledger.longestHoldS, holdS);
        boolean isAccepted = lab.sampling().isEmpty() || passes(lot, ledger);
        refusals.rejectFlagged(lot);
        if (world.log().isOn()) {
            world.tell(
                    "lab",
                    isAccepted ? "lot accepted" : "lot refused",
                    lot.spools().size() + " spools");
        }
        if (isAccepted) {
            ledger.defectivePassed += lot.defective();
            refusals.release(lot.spools());
        } else {
            ledger.refused++;
            refusals.deal(lot, ledger);
        }
    }

    private boolean passes(Lot lot, LotLedger ledger) {
        SamplingPlan plan = plan(lot);
        int defective = lot.luck().defectiveInSample(lot.spools(), plan.sampleSize());
        ledger.sampled += plan.sampleSize();
        ledger.defectiveSampled += defective;
        return plan.accepts(defective);
    }

    private static String polymerOf(Lot lot) {
        return lot.spools().get(0).polymer.map(Polymer::code).orElse("");
    }

    private LotLedger ledger(String polymer) {
        return ledgers.computeIfAbsent(polymer, code -> new LotLedger());
    }

    List<LotResult> lots() {
        List<LotResult> results = new ArrayList<>();
        ledgers.forEach((polymer, ledger) -> results.add(ledger.result(polymer)));
        return results;
    }
}
