package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.ChangeoverRules.Approval;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Uniforms;
import spoolyard.core.random.Variate;
import spoolyard.core.record.QualityResult.ApprovalResult;

/**
 * Judges the colour of a line that makes product meanwhile: from its first product in a new colour on its spools are held
 * until somebody has looked. A refusal scraps them and lets the line purge again; what it makes then is judged anew. A line
 * that has gone over to another colour leaves the judgement of the last one behind.
 */
final class ColourApproval {
    private final World world;
    private final LineProcess line;
    private final Floor floor;
    private final Approval how;
    private final Variate time;
    private final Uniforms refusal;
    private final List<Judgement> all = new ArrayList<>();
    private Optional<Judgement> current = Optional.empty();
    private double extraKg;
    private boolean due;
    private boolean refused;
    private boolean purges;

    ColourApproval(World world, LineProcess line, Floor floor) {
        this.world = world;
        this.line = line;
        this.floor = floor;
        this.how = world.plant().changeovers().approval();
        String name = "line " + line.description().name();
        this.time = world.streams().variate(how.durationS(), name + " / colour approval");
        this.refusal = world.streams().uniforms(name + " / colour refusal");
    }

    /** Time of a judgement. */
    long drawTicks() {
        return time.nextTicks();
    }

    /** Whether a judgement refuses. */
    boolean drawRefusal() {
        return refusal.next() < how.refusalProbability();
    }

    /** The first product to come is in a new colour; if refused it costs a further purge. */
    void changes(double furtherPurgeKg) {
        current = Optional.empty();
        refused = false;
        extraKg = furtherPurgeKg;
        due = true;
    }

    /** Whether what the screw holds was refused and must be purged again. */
    boolean isRefused() {
        return refused;
    }

    /** What is to be purged in the program that is being written; empty if nothing. */
    Optional<Double> furtherPurgeKg() {
        purges = refused;
        return purges ? Optional.of(extraKg) : Optional.empty();
    }

    /** The program is over, with the purge if it was in it. */
    void programOver() {
        if (purges) {
            purges = false;
            refused = false;
            due = true;
        }
    }

    /** The line begins to make product. */
    void makes() {
        if (due) {
            due = false;
            Judgement judgement = new Judgement();
            all.add(judgement);
            current = Optional.of(judgement);
            judgement.call();
        }
    }

    /** What holds the spools that the line makes now; empty if they are free. */
    Optional<ColourHold> hold() {
        return current.map(judgement -> judgement.hold);
    }

    private void judged(Judgement judgement) {
        judgement.waitedTicks = world.now() - judgement.begunTick;
        judgement.refused = drawRefusal();
        line.tell("colour", judgement.refused ? "refused" : "approved");
        boolean isCurrent = current.filter(judgement::equals).isPresent();
        if (!judgement.refused) {
            current = isCurrent ? Optional.empty() : current;
            judgement.hold.release();
            return;
        }
        judgement.hold.refuse();
        if (isCurrent) {
            refused = true;
            line.colourRefused();
            current = Optional.empty();
        }
    }

    /** What the judgements came to; empty if product is not held. */
    Optional<ApprovalResult> result() {
        if (!how.isAsked() || how.meanwhile() != Approval.Meanwhile.HOLD) {
            return Optional.empty();
        }
        List<Judgement> over = all.stream().filter(Judgement::isOver).toList();
        return Optional.of(new ApprovalResult(
                line.description().name(),
                over.size(),
                over.stream().filter(each -> each.refused).count(),
                all.stream().mapToLong(each -> each.hold.standing()).sum(),
                all.stream().mapToLong(each -> each.hold.released()).sum(),
                all.stream().mapToLong(each -> each.hold.scrapped()).sum(),
                over.stream()
                        .mapToDouble(each -> Ticks.toSeconds(each.waitedTicks))
                        .sum(),
                over.stream()
                        .mapToDouble(each -> Ticks.toSeconds(each.waitedTicks))
                        .max()
                        .orElse(0)));
    }

    /** Somebody, or an instrument, looks at the first product in a colour. */
    private final class Judgement extends Task {
        private static final long NOT_YET = -1;

        private final ColourHold hold = new ColourHold(floor.rack(), floor.losses());
        private final long begunTick = world.now();
        private long waitedTicks = NOT_YET;
        private boolean refused;

        Judgement() {
            super(
                    TaskKind.APPROVAL,
                    floor.desk().rolesOf(how.crew()),
                    ColourApproval.this.line.index(),
                    ColourApproval.this.line.description().place());
        }

        void call() {
            if (how.crew().isNobody()) {
                instrument().in(drawTicks());
            } else {
                floor.desk().raise(this);
            }
        }

        private TimedEvent instrument() {
            return new TimedEvent(world.engine(), Phase.FINISH) {
                @Override
                protected void happen() {
                    judged(Judgement.this);
                }

                @Override
                public String toString() {
                    return "line " + ColourApproval.this.line.description().name() + " colour judged";
                }
            };
        }

        boolean isOver() {
            return waitedTicks != NOT_YET;
        }

        @Override
        long begin() {
            return drawTicks();
        }

        @Override
        long nextStage() {
            return DONE;
        }

        @Override
        void ended() {
            judged(this);
        }
    }
}
