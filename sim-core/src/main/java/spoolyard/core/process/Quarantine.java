package spoolyard.core.process;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Lab;
import spoolyard.core.quantity.Ticks;

/**
 * Holds spools until their lot is judged, and makes up the lots as spools come. When it is full of spools of open lots
 * only, the largest of these is closed, for else nothing would ever leave it.
 */
final class Quarantine {
    private final World world;
    private final Lab lab;
    private final Rack rack;
    private final Consumer<Lot> judge;
    private final List<Lot> open = new ArrayList<>();
    private final Consumer<List<Spool>> passOn;
    private int openSpools;

    Quarantine(World world, Lab lab, Rack rack, Consumer<Lot> judge, Consumer<List<Spool>> passOn) {
        this.world = world;
        this.lab = lab;
        this.rack = rack;
        this.judge = judge;
        this.passOn = passOn;
        rack.whenSpoolArrives(this::arrived);
    }

    private void arrived(Spool spool) {
        if (spool.lot.isPresent()) {
            passOn.accept(List.of(spool));
        } else {
            Campaign campaign = spool.campaign.orElseThrow();
            Lot lot = campaign.openLot().orElseGet(() -> open(campaign));
            spool.lot = campaign.openLot();
            lot.add(spool);
            openSpools++;
            campaign.spoolArrived();
            if (lot.spools().size() == lab.lotSpools() || campaign.isOver()) {
                lot.close();
            }
        }
        cutIfStuck();
    }

    private Lot open(Campaign campaign) {
        Lot lot = new Lot(campaign, this::closed);
        campaign.open(lot);
        open.add(lot);
        if (lab.lotWithinS() < Double.POSITIVE_INFINITY) {
            closing(lot).in(Ticks.ofSeconds(lab.lotWithinS()));
        }
        return lot;
    }

    private TimedEvent closing(Lot lot) {
        return new TimedEvent(world.engine(), Phase.SIGNAL) {
            @Override
            protected void happen() {
                if (lot.isOpen()) {
                    lot.close();
                }
            }

            @Override
            public String toString() {
                return "a lot is closed in time";
            }
        };
    }

    private void closed(Lot lot) {
        open.remove(lot);
        openSpools -= lot.spools().size();
        judge.accept(lot);
    }

    private void cutIfStuck() {
        if (!rack.hasRoom() && rack.held() == 0 && openSpools == rack.size() && openSpools > 0) {
            Lot largest = open.stream()
                    .max(Comparator.comparingInt(lot -> lot.spools().size()))
                    .orElseThrow();
            largest.cut();
        }
    }

    int openSpools() {
        return openSpools;
    }
}
