package spoolyard.core.process;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.random.Uniforms;
import spoolyard.core.record.QualityResult.ExposureResult;
import spoolyard.core.record.ScrapCause;

/** Looks at the exposure clock of a spool when it is its turn to be sealed, and deals with those beyond their limit. */
final class ExposureGate implements SealingGate {
    private final World world;
    private final Exposure rules;
    private final Losses losses;
    private final StationProcess oven;
    private final Uniforms spoilt;
    private final Map<String, ExposureLedger> ledgers = new LinkedHashMap<>();

    ExposureGate(World world, Exposure rules, Losses losses, StationProcess oven) {
        this.world = world;
        this.rules = rules;
        this.losses = losses;
        this.oven = oven;
        this.spoilt = world.streams().uniforms("exposure / spoilt by drying");
        polymers(world.plant())
                .filter(polymer -> polymer.exposureLimitS() < Double.POSITIVE_INFINITY)
                .forEach(polymer -> ledgers.computeIfAbsent(polymer.code(), code -> new ExposureLedger(polymer)));
    }

    private static Stream<Polymer> polymers(Plant plant) {
        Finishing finishing = plant.finishing();
        Stream<Polymer> outside = Stream.concat(
                        finishing.inbound().stream().map(Finishing.Inbound::polymer),
                        finishing.opening().stream().map(OpeningSpools::polymer))
                .flatMap(Optional::stream);
        return Stream.concat(
                plant.book().orders().stream().map(order -> order.product().polymer()), outside);
    }

    @Override
    public boolean refuses(Spool spool) {
        return rules.beyond() != Exposure.Beyond.SEAL && isBeyond(spool);
    }

    private boolean isBeyond(Spool spool) {
        return world.now() > spool.deadlineTick();
    }

    private Optional<ExposureLedger> ledger(Spool spool) {
        return spool.polymer.map(polymer -> ledgers.get(polymer.code()));
    }

    private void note(Spool spool) {
        ledger(spool).ifPresent(ledger -> ledger.turn(world.now() - spool.exposedTick, isBeyond(spool)));
    }

    @Override
    public void admitted(Spool spool) {
        note(spool);
    }

    @Override
    public void turnAway(Spool spool) {
        note(spool);
        if (rules.beyond() == Exposure.Beyond.SCRAP) {
            scrap(spool);
        } else {
            oven.rack().keep();
            oven.rack().put(spool);
        }
    }

    private void scrap(Spool spool) {
        ledger(spool).ifPresent(ledger -> ledger.scrapped++);
        losses.lose(spool, ScrapCause.EXPOSURE);
    }

    /** An oven is done with a batch: takes the spoilt spools out and starts the clock of the others anew. */
    void dried(List<Spool> batch) {
        batch.removeIf(spool -> {
            boolean isSpoilt = spoilt.next() < rules.oven().scrapped();
            if (isSpoilt) {
                scrap(spool);
            } else {
                spool.exposedTick = world.now();
                ledger(spool).ifPresent(ledger -> ledger.redried++);
            }
            return isSpoilt;
        });
    }

    List<ExposureResult> results() {
        return ledgers.values().stream().map(ExposureLedger::result).toList();
    }
}
