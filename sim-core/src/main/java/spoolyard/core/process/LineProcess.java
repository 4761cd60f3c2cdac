package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Uniforms;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult.ChangeoverResult;
import spoolyard.core.record.ScrapCause;

/** A line as it runs: which order it makes, and what it must go through to make it. */
final class LineProcess implements Struck {
    private final World world;
    private final Line line;
    private final int index;
    private final Floor floor;
    private final LineLedger ledger = new LineLedger();
    private final LineClock clock;
    private final LineCondition condition;
    private final StepPlanner planner;
    private final Program program;
    private final ChangeoverLog changeovers;
    private final StrandGroup strands;
    private final List<StoppageClock> causes = new ArrayList<>();
    private final ArrayDeque<StoppageClock> pending = new ArrayDeque<>();
    private final Uniforms defects;
    private Optional<OrderRun> order = Optional.empty();
    private Optional<Product> onStrands = Optional.empty();
    private Optional<StoppageClock> standing = Optional.empty();
    private Optional<Window> plannedStop = Optional.empty();
    private Runnable afterProgram = () -> {};
    private double kgPerS;
    private boolean making;
    private boolean slowed;
    private boolean overflowStopped;
    private boolean scheduled;
    private boolean closing;

    LineProcess(World world, Line line, int index, Floor floor) {
        this.world = world;
        this.line = line;
        this.index = index;
        this.floor = floor;
        this.clock = new LineClock(world, ledger);
        this.condition = new LineCondition(line.runningAtStart(), line.onLineNow());
        this.planner = new StepPlanner(world, line, floor.purges());
        this.changeovers = new ChangeoverLog(world, line.name(), ledger);
        this.strands = new StrandGroup(world, this, floor);
        this.program = new Program(
                world,
                floor.desk(),
                new LineSteps(world, this, strands, changeovers),
                index,
                line.place(),
                "line " + line.name());
        this.defects = world.streams().uniforms("line " + line.name() + " / winding defect");
        for (Stoppage cause : line.stoppages()) {
            if (cause.scope() == Stoppage.Scope.STATION) {
                causes.add(new StoppageClock(world, cause, "line " + line.name(), this));
            }
        }
    }

    Line description() {
        return line;
    }

    int index() {
        return index;
    }

    LineLedger ledger() {
        return ledger;
    }

    List<Strand> strands() {
        return strands.strands();
    }

    List<AbstractSpindle> spindles() {
        return strands.spindles();
    }

    LineClock clock() {
        return clock;
    }

    List<ChangeoverResult> changeovers() {
        return changeovers.results();
    }

    /** Books all flows up to now. */
    void advance() {
        strands.advance();
        clock.book();
    }

    // ------------------------------------------------------------------ calendar

    long drawShutDownTicks() {
        return planner.drawShutDownTicks();
    }

    void preheat() {
        if (!scheduled && !condition.isHot() && !program.isRunning()) {
            run(planner.preheat(), () -> {
                condition.heated();
                if (scheduled) {
                    decide();
                } else {
                    clock.enter(LineState.NOT_SCHEDULED);
                }
            });
        }
    }

    void periodBegins() {
        scheduled = true;
        closing = false;
        if (!making && !program.isRunning() && !overflowStopped) {
            decide();
        }
    }

    void shutDown(long ticks) {
        closing = true;
        if (standing.isPresent() || plannedStop.isPresent()) {
            return;
        }
        if (condition.isHot() || program.isRunning()) {
            halt(ScrapCause.SHORT_SPOOL);
            run(planner.shutDown(ticks), this::goOff);
        } else {
            goOff();
        }
    }

    void periodEnds() {
        scheduled = false;
        EndOfPeriod policy = line.startStop().endOfPeriod();
        boolean atWork = making || program.isRunning() || overflowStopped;
        if (standing.isPresent() || plannedStop.isPresent() || policy == EndOfPeriod.RUN_ON && atWork) {
            return;
        }
        goOff();
    }

    void plannedStop(Window window) {
        boolean off = !making && !program.isRunning() && clock.state() == LineState.NOT_SCHEDULED;
        if (off) {
            return;
        }
        plannedStop = Optional.of(window);
        if (!program.isRunning()) {
            halt(ScrapCause.SHORT_SPOOL);
            decide();
        }
    }

    // ------------------------------------------------------------------ orders

    void orderReleased() {
        if (clock.state() == LineState.NO_ORDER) {
            decide();
        }
    }

    private Optional<OrderRun> takeNext() {
        return floor.orders().next(line, condition.inScrew());
    }

    Spool newSpool(Strand strand, double massKg) {
        OrderRun run = order.orElseThrow(() -> new IllegalStateException(
                "line " + line.name() + " filled a spool at " + Ticks.toSeconds(world.now()) + " s without an order."));
        double risk =
                strands.isFirstAfterThreadUp(strand) ? line.defectProbabilityAfterThreadUp() : line.defectProbability();
        boolean good = defects.next() >= risk;
        if (good) {
            run.spoolFilled();
        }
        return new Spool(run.index, index, run.order.product().spoolKg(), massKg, good);
    }

    void spoolFilled() {
        if (order.filter(OrderRun::isFilled).isPresent()) {
            orderFilled();
        } else if (!pending.isEmpty()) {
            interrupt(pending.remove());
        }
    }

    private void orderFilled() {
        Optional<OrderRun> next = takeNext();
        boolean goesOn = pending.isEmpty()
                && next.map(run -> run.order.product())
                        .filter(product -> onStrands.filter(product::equals).isPresent())
                        .isPresent();
        if (goesOn) {
            order = next;
        } else {
            halt(ScrapCause.ORDER_TAIL);
            order = next;
            decide();
        }
    }

    void takenOff(Spool spool) {
        if (spool.good) {
            ledger.goodSpools++;
            ledger.goodKg += spool.massKg;
            floor.flow().made(spool);
            floor.rack().put(spool);
        } else {
            ledger.rejectedSpools++;
            ledger.scrap(ScrapCause.WINDING_DEFECT, spool.massKg);
            floor.rack().release();
        }
        if (world.log().isOn()) {
            world.tell(line.name(), spool.good ? "good spool" : "rejected spool", Double.toString(spool.sizeKg));
        }
    }

    // ------------------------------------------------------------------ what to do next

    private void decide() {
        if (plannedStop.isPresent()) {
            runPlannedStop(plannedStop.get());
        } else if (closing || !scheduled) {
            goOff();
        } else if (!pending.isEmpty()) {
            interrupt(pending.remove());
        } else {
            if (order.isEmpty()) {
                order = takeNext();
            }
            order.ifPresentOrElse(this::make, this::idle);
        }
    }

    private void make(OrderRun run) {
        Product product = run.order.product();
        if (condition.isReadyFor(product)) {
            produce(product);
            return;
        }
        changeovers.begin(condition.inScrew(), product);
        List<Step> steps = planner.toMake(product, condition);
        boolean threads = steps.stream().anyMatch(step -> step.kind() == TaskKind.THREAD_UP);
        run(steps, () -> {
            if (threads) {
                strands.threadedUp();
            }
            changeovers.end();
            condition.settled();
            condition.holds(product);
            decide();
        });
    }

    private void produce(Product product) {
        condition.holds(product);
        if (onStrands.filter(product::equals).isEmpty()) {
            strands.setUp(product, line.overlength());
            onStrands = Optional.of(product);
        }
        kgPerS = line.rateKgPerH(product) / 3600;
        clock.rate(kgPerS);
        making = true;
        feedProduct();
        showMaking();
        tell("makes", product.label());
    }

    private void idle() {
        condition.unthreaded(ScrapCause.START_UP);
        clock.enter(LineState.NO_ORDER);
    }

    private void goOff() {
        halt(ScrapCause.SHORT_SPOOL);
        if (line.startStop().endOfPeriod() == EndOfPeriod.SHUT_DOWN || !condition.isHot()) {
            condition.cooled();
        } else {
            condition.unthreaded(ScrapCause.START_UP);
        }
        clock.enter(LineState.NOT_SCHEDULED);
        tell("off", "");
    }

    /** Takes the line out of making and out of any program; what is on the strands is scrap. */
    private void halt(ScrapCause cause) {
        program.abort();
        overflowStopped = false;
        stopMaking();
        strands.cut(cause);
        onStrands = Optional.empty();
    }

    private void stopMaking() {
        if (making) {
            making = false;
            condition.screwStopped(world.now());
        }
        strands.stopFeed();
        setClocks();
    }

    private void run(List<Step> steps, Runnable then) {
        afterProgram = then;
        program.run(steps);
    }

    // ------------------------------------------------------------------ making

    private void feedProduct() {
        double share = 1;
        double scrapShare = 0;
        if (slowed && line.overflow() instanceof OverflowPolicy.Slow slow) {
            share = slow.minimumSpeedShare();
            scrapShare = slow.scrapShare();
        }
        double kgPerM = onStrands.orElseThrow().filament().kgPerM();
        strands.feedProduct(share * kgPerS, kgPerM, scrapShare);
        clock.share(share);
    }

    void slowingChanged() {
        boolean any = strands.isAnySlowing();
        if (any != slowed) {
            slowed = any;
            if (making) {
                feedProduct();
                showMaking();
            }
        }
    }

    /** Shows on the clocks what the line makes. */
    private void showMaking() {
        setClocks();
        if (strands.isAnyOnProduct()) {
            clock.enter(slowed ? LineState.SLOWED : LineState.RUNNING);
        } else {
            clock.enter(strands.isAnyRepairAttended() ? LineState.DOWN : LineState.WAITING_FOR_CREW);
        }
    }

    private void setClocks() {
        double share = clock.speedShare();
        for (StoppageClock cause : causes) {
            cause.station(making, kgPerS * share);
        }
        strands.setClocks(making, kgPerS * share);
    }

    // ------------------------------------------------------------------ full accumulator

    /** An accumulator is full and the policy is to stop. */
    void overflowStop() {
        overflowStopped = true;
        stopMaking();
        clock.enter(LineState.OVERFLOW_STOP);
    }

    /** A winder may turn again. */
    void winderReady() {
        if (!overflowStopped || !strands.areWindersReady()) {
            return;
        }
        overflowStopped = false;
        condition.unthreaded(ScrapCause.OVERFLOW);
        halt(ScrapCause.SHORT_SPOOL);
        decide();
    }

    // ------------------------------------------------------------------ stoppages

    @Override
    public void struckBy(StoppageClock cause) {
        tell("stoppage", cause.cause().name());
        if (making ? !cause.cause().beginsAtFullSpool() : clock.state() == LineState.NO_ORDER) {
            interrupt(cause);
        } else {
            pending.add(cause);
        }
    }

    private void interrupt(StoppageClock cause) {
        cause.takenUp();
        Stoppage stoppage = cause.cause();
        if (stoppage.restart() == Stoppage.Restart.NONE) {
            stopMaking();
        } else {
            halt(ScrapCause.SHORT_SPOOL);
            switch (stoppage.restart()) {
                case STABILISE -> condition.unstable(ScrapCause.STOPPAGE, Optional.of(stoppage));
                case THREAD_UP -> {
                    condition.unthreaded(ScrapCause.STOPPAGE);
                    condition.unstable(ScrapCause.STOPPAGE, Optional.of(stoppage));
                }
                case COLD_START, NONE -> condition.cooled();
            }
        }
        standing = Optional.of(cause);
        boolean runs = stoppage.effect() == Stoppage.Effect.RUNS_TO_WASTE;
        Step.Waste waste = runs ? new Step.Waste(kgPerS, ScrapCause.STOPPAGE, true) : Step.Waste.NONE;
        LineState state = stoppage.planned() ? LineState.PLANNED_STOP : LineState.DOWN;
        Step step = new Step(
                stoppage.name(), state, cause.drawDuration(), waste, stoppage.crew(), TaskKind.STOPPAGE, false);
        run(List.of(step), () -> {
            standing = Optional.empty();
            cause.fixed();
            decide();
        });
    }

    private void runPlannedStop(Window window) {
        plannedStop = Optional.empty();
        if (window.endTick() <= world.now()) {
            decide();
            return;
        }
        plannedStop = Optional.of(window);
        halt(ScrapCause.SHORT_SPOOL);
        condition.unthreaded(ScrapCause.STOPPAGE);
        long ticks = window.endTick() - world.now();
        run(List.of(Step.alone(window.name(), LineState.PLANNED_STOP, ticks, Step.Waste.NONE)), () -> {
            plannedStop = Optional.empty();
            decide();
        });
    }

    /** A strand has broken; the others go on. */
    void strandBroke(StrandRepair repair) {
        Strand strand = repair.strand();
        if (!making || strands.isUnderRepair(strand)) {
            repair.clock().fixed();
            return;
        }
        tell("strand", repair.clock().cause().name());
        strand.cut(ScrapCause.SHORT_SPOOL);
        double kgPerM = onStrands.orElseThrow().filament().kgPerM();
        strand.feedWaste(kgPerS * clock.speedShare() / line.strands(), kgPerM, ScrapCause.STOPPAGE);
        repair.start();
        strandRepairChanged();
    }

    void strandRepairChanged() {
        if (making) {
            showMaking();
        }
    }

    void strandRepaired(Strand strand) {
        strands.threadedUp(strand);
        if (making) {
            feedProduct();
            showMaking();
        }
    }

    private void tell(String what, String detail) {
        if (world.log().isOn()) {
            world.tell(line.name(), what, detail);
        }
    }

    List<StoppageClock> stoppageClocks() {
        List<StoppageClock> all = new ArrayList<>(causes);
        strands.repairs().forEach(repair -> all.add(repair.clock()));
        return all;
    }

    /** Whether nothing that is on the calendar or called for will ever move it, although it should be at work. */
    boolean isStuck() {
        boolean atRest = clock.state() == LineState.NO_ORDER || clock.state() == LineState.NOT_SCHEDULED;
        boolean standsForNothing = overflowStopped && strands.areWindersReady();
        return standsForNothing
                || !making && !program.isRunning() && !overflowStopped && !atRest
                || strands.isStuck(making);
    }

    /** A step begins after a wait for its crew; if it puts right a stoppage, the wait is that stoppage's. */
    void stepBegins(long waitedTicks) {
        standing.ifPresent(cause -> cause.waited(waitedTicks));
    }

    /** All steps are over. */
    void programEnds() {
        condition.screwStopped(world.now());
        afterProgram.run();
    }

    /** Mass of a metre of what runs to waste, where no strand is in the line to tell. */
    double wasteKgPerM() {
        return order.map(run -> run.order.product())
                .or(condition::inScrew)
                .map(product -> product.filament().kgPerM())
                .orElse(1.0);
    }
}
