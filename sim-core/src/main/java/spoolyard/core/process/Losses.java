package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.Line;
import spoolyard.core.record.QualityResult.LossResult;
import spoolyard.core.record.ScrapCause;

/** Good spools that are lost behind the line: takes them off the line's account and lets their order be made up. */
final class Losses {
    private static final ScrapCause[] CAUSES = ScrapCause.values();

    private final World world;
    private final SpoolFlow flow;
    private final OrderDesk desk;
    private final List<LineProcess> lines;
    private final Stores stores;
    private final long[][] spools;
    private final double[][] massKg;

    Losses(World world, SpoolFlow flow, OrderDesk desk, List<LineProcess> lines, Stores stores) {
        this.world = world;
        this.flow = flow;
        this.desk = desk;
        this.lines = lines;
        this.stores = stores;
        int sources = world.plant().lines().size() + 1;
        this.spools = new long[sources][CAUSES.length];
        this.massKg = new double[sources][CAUSES.length];
    }

    /** A spool is ground. */
    void lose(Spool spool, ScrapCause cause) {
        flow.lost();
        if (spool.lot.isEmpty()) {
            spool.campaign.ifPresent(Campaign::spoolLost);
        }
        int source = spool.line == Spool.NONE ? outside() : spool.line;
        spools[source][cause.ordinal()]++;
        massKg[source][cause.ordinal()] += spool.massKg;
        if (spool.line != Spool.NONE) {
            lines.get(spool.line).ledger().lost(cause, spool.massKg, spool.product.flatMap(stores::binFor));
        }
        if (spool.order != Spool.NONE) {
            loseForOrder(spool, desk.orders().get(spool.order));
        }
        if (world.log().isOn()) {
            world.tell(name(source), "spool lost", cause.label());
        }
    }

    private void loseForOrder(Spool spool, OrderRun run) {
        if (spool.line == Spool.NONE) {
            run.lostOfStart();
        }
        double accepted = world.plant().book().acceptedShortfall();
        int most = (int) Math.floor(accepted * run.order.spools());
        if (run.spoolLost(world.now(), most)) {
            desk.reopen(run, lines);
        }
    }

    private int outside() {
        return spools.length - 1;
    }

    private String name(int source) {
        List<Line> all = world.plant().lines();
        return source == outside() ? "" : all.get(source).name();
    }

    List<LossResult> results() {
        List<LossResult> results = new ArrayList<>();
        for (int source = 0; source < spools.length; source++) {
            for (ScrapCause cause : CAUSES) {
                long count = spools[source][cause.ordinal()];
                if (count > 0) {
                    results.add(new LossResult(name(source), cause, count, massKg[source][cause.ordinal()]));
                }
            }
        }
        return results;
    }
}
