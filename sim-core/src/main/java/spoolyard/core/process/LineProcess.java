package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult.ChangeoverResult;
import spoolyard.core.record.ScrapCause;

/** A line as it runs: which order it makes, and what it must go through to make it. */
final class LineProcess {
    private final World world;
    private final Line line;
    private final int index;
    private final Floor floor;
    private final LineLedger ledger;
    private final LineClock clock;
    private final LineCondition condition;
    private final StepPlanner planner;
    private final Program program;
    private final ChangeoverLog changeovers;
    private final StrandGroup strands;
    private final LineStops stops;
    private final LineHours hours;
    private final WinderOutput output;
    private final LineMaterial material;
    private final LineStores stores;
    private final LineOrders orders;
    private final Making making;
    private Runnable afterProgram = () -> {};
    private boolean overflowStopped;
    private double drawnKgPerS;

    LineProcess(World world, Line line, int index, Floor floor) {
        this.world = world;
        this.line = line;
        this.index = index;
        this.floor = floor;
        this.ledger = new LineLedger(floor.stores());
        this.clock = new LineClock(world, ledger, line);
        this.condition = new LineCondition(line, clock.heat(), new ColourApproval(world, this, floor));
        Heating heating = new Heating(world, line, clock.heat());
        this.material = new LineMaterial(world, this, floor, condition, heating);
        this.stores = new LineStores(world, this, floor.stores(), material.supply());
        this.orders = new LineOrders(floor.orders(), line, condition, material, stores);
        this.planner = new StepPlanner(world, line, heating, floor.purges(), material::rateKgPerH);
        this.changeovers = new ChangeoverLog(world, line.name(), ledger);
        this.strands = new StrandGroup(world, this, floor);
        this.program = new Program(
                world,
                floor.desk(),
                new LineSteps(world, this, strands, changeovers),
                index,
                line.place(),
                "line " + line.name());
        this.output = new WinderOutput(world, this, floor, condition.colour());
        this.stops = new LineStops(world, this, condition);
        this.making = new Making(this, strands, clock, stops::setClocks);
        this.hours = new LineHours(this, condition, planner, stops, heating);
    }

    Line description() {
        return line;
    }

    int index() {
        return index;
    }

    long now() {
        return world.now();
    }

    /** Spools of the store that are on its strands. */
    LineStores stores() {
        return stores;
    }

    Making making() {
        return making;
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

    boolean isMaking() {
        return making.isOn();
    }

    /** With no order it may make or nothing in store to make it of. */
    boolean isIdle() {
        return clock.state() == LineState.NO_ORDER || stores.isShort();
    }

    /** Making, in a program, or standing with a full accumulator. */
    boolean isAtWork() {
        return making.isOn() || program.isRunning() || overflowStopped;
    }

    ColourApproval colour() {
        return condition.colour();
    }

    LineOrders orders() {
        return orders;
    }

    Program program() {
        return program;
    }

    LineHours hours() {
        return hours;
    }

    /** Rate of the product at full speed. */
    double kgPerS() {
        return making.kgPerS();
    }

    LineClock clock() {
        return clock;
    }

    /** Books the time out of tolerance up to now. */
    void countExcursions() {
        strands.countExcursions();
    }

    List<ChangeoverResult> changeovers() {
        return changeovers.results();
    }

    /** Books all flows up to now. */
    void advance() {
        strands.advance();
        clock.book();
    }

    // ------------------------------------------------------------------ orders

    void orderReleased() {
        if (isIdle()) {
            decide();
        } else if (making.isOn()) {
            orders.lookAhead();
        }
    }

    Spool newSpool(Strand strand, double massKg, boolean isBlemished) {
        stores.spoolUsed();
        OrderRun run = orders.inHand()
                .orElseThrow(() -> new IllegalStateException("line " + line.name() + " filled a spool at "
                        + Ticks.toSeconds(world.now()) + " s without an order."));
        return output.newSpool(run, strands.isFirstAfterThreadUp(strand), massKg, isBlemished);
    }

    Spool shortSpool(double massKg) {
        stores.spoolUsed();
        return Spool.cutShort(index, making.product(), massKg);
    }

    void spoolFilled() {
        if (orders.isFilled()) {
            orderFilled();
        } else {
            stops.beginPending();
        }
    }

    private void orderFilled() {
        orders.inHand().ifPresent(OrderRun::leavesLine);
        Optional<OrderRun> next = orders.takeNext();
        boolean goesOn = !stops.isPending()
                && next.map(run -> run.order.product())
                        .filter(making::isSetUpFor)
                        .isPresent();
        if (goesOn) {
            orders.takeInHand(next);
        } else {
            halt(ScrapCause.ORDER_TAIL);
            output.campaignEnds();
            orders.takeInHand(next);
            decide();
        }
    }

    void takenOff(Spool spool) {
        output.takenOff(spool);
    }

    // ------------------------------------------------------------------ what to do next

    /** What to do now that the line is neither making nor in a program. */
    void decide() {
        stores.goOn();
        if (!hours.mayWork()) {
            goOff();
        } else if (!stops.beginWindow() && !stops.beginPending()) {
            orders.inHandOrNext().ifPresentOrElse(this::make, this::idle);
        }
    }

    private void make(OrderRun run) {
        Product product = run.order.product();
        Optional<Stock> missing = stores.missingFor(product);
        if (missing.isPresent()) {
            lacks(missing.get());
            return;
        }
        turnTo(product);
        if (!material.takeUp(product)) {
            enter(LineState.WAITING_FOR_MATERIAL);
            material.heatMeanwhile();
            return;
        }
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

    private void turnTo(Product product) {
        clock.turnTo(product);
        stores.turnTo(product);
    }

    /** Makes another order, or stands until there is more of what is missing. */
    private void lacks(Stock stock) {
        halt(ScrapCause.SHORT_SPOOL);
        if (orders.exchange()) {
            output.campaignEnds();
            make(orders.inHand().orElseThrow());
            return;
        }
        if (condition.isThreaded()) {
            condition.unthreaded(ScrapCause.STOPPAGE);
        }
        if (condition.inScrew().isEmpty()) {
            turnTo(orders.inHand().orElseThrow().order.product());
        }
        clock.enter(stores.standFor(stock));
    }

    private void produce(Product product) {
        condition.holds(product);
        stores.mount(product);
        condition.colour().makes();
        making.begin(product, material.rateKgPerH(product));
        tell("makes", product.label());
        orders.lookAhead();
    }

    /** Draws material for what passes the die. */
    void draw(double rateKgPerS) {
        drawnKgPerS = rateKgPerS;
        clock.heat().screw(rateKgPerS > 0);
        stores.draw(rateKgPerS > 0 && !ledger.materials.isCompound() ? strands.dieKgPerS() : 0);
        material.draw(stores.driedKgPerS());
    }

    /** The store of regrind is empty, or there is some again. */
    void regrindChanged() {
        draw(drawnKgPerS);
    }

    boolean isWaitingForMaterial() {
        return clock.state() == LineState.WAITING_FOR_MATERIAL;
    }

    /** A batch has been loaded for the line. */
    void materialIsLoaded() {
        material.heatMeanwhile();
    }

    /** The material that the line waits for is dry. */
    void materialIsDry() {
        if (isWaitingForMaterial()) {
            decide();
        }
    }

    /** Nothing dry is left in the hopper. A purge or start under way is finished with what is in the throat. */
    void materialRanOut() {
        if (making.isOn()) {
            halt(ScrapCause.SHORT_SPOOL);
            condition.unthreaded(ScrapCause.STOPPAGE);
            decide();
        }
    }

    /** The colour of what the line makes, or last made, was refused. */
    void colourRefused() {
        if (making.isOn()) {
            halt(ScrapCause.REFUSED_COLOUR);
            decide();
        } else {
            strands.cut(ScrapCause.REFUSED_COLOUR);
            making.clear();
        }
    }

    /** Something that it draws is out of store: it stops, whatever it does but a stoppage or its shut-down. */
    void storeRanOut() {
        boolean starts = program.isRunning() && !stops.isUnderWay() && hours.mayWork();
        if (making.isOn() || starts) {
            halt(ScrapCause.SHORT_SPOOL);
            condition.screwStopped(world.now());
            condition.unthreaded(ScrapCause.STOPPAGE);
            decide();
        } else {
            strands.stopFeed();
            draw(0);
        }
    }

    /** There is more in store. */
    void storeRose() {
        if (isIdle()) {
            decide();
        }
    }

    private void idle() {
        condition.unthreaded(ScrapCause.START_UP);
        clock.enter(LineState.NO_ORDER);
    }

    /** Stops and goes out of hours. */
    void goOff() {
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
    void halt(ScrapCause cause) {
        program.abort();
        overflowStopped = false;
        stopMaking();
        strands.cut(cause);
        making.clear();
        stores.dismount();
        stores.goOn();
    }

    /** Stops the screw; what is on the strands stays. */
    void stopMaking() {
        if (making.isOn()) {
            making.end();
            condition.screwStopped(world.now());
        }
        strands.stopFeed();
        draw(0);
        making.setClocks();
    }

    /** Takes the line through steps, then does the rest. */
    void run(List<Step> steps, Runnable then) {
        stores.goOn();
        afterProgram = then;
        program.run(steps);
    }

    /** An accumulator is full and the policy is to stop. */
    void overflowStop() {
        overflowStopped = true;
        stopMaking();
        clock.enter(LineState.OVERFLOW_STOP);
    }

    /** A strand begins or ceases to overflow. */
    void overflowChanged() {
        clock.holdUp(strands.isAllOverflowing());
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

    /** Shows a state; a line that only waits outside its working period counts as not scheduled. */
    void enter(LineState state) {
        clock.enter(!hours.isScheduled() && state == LineState.WAITING_FOR_CREW ? LineState.NOT_SCHEDULED : state);
    }

    void tell(String what, String detail) {
        if (world.log().isOn()) {
            world.tell(line.name(), what, detail);
        }
    }

    List<StoppageClock> stoppageClocks() {
        List<StoppageClock> all = new ArrayList<>(stops.clocks());
        strands.repairs().forEach(repair -> all.add(repair.clock()));
        return all;
    }

    /** Whether nothing that is on the calendar or called for will ever move it, although it should be at work. */
    boolean isStuck() {
        boolean atRest =
                isIdle() || clock.state() == LineState.NOT_SCHEDULED || clock.state() == LineState.WAITING_FOR_MATERIAL;
        boolean standsForNothing = overflowStopped && strands.areWindersReady();
        return standsForNothing
                || stores.standsForNothing()
                || !making.isOn() && !program.isRunning() && !overflowStopped && !atRest
                || strands.isStuck(making.isOn());
    }

    /** A step begins after a wait for its crew; if it puts right a stoppage, the wait is that stoppage's. */
    void stepBegins(long waitedTicks) {
        stops.waited(waitedTicks);
    }

    /** All steps are over. */
    void programEnds() {
        condition.screwStopped(world.now());
        afterProgram.run();
    }
}
