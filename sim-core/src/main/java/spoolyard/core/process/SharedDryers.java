package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.function.Consumer;
import spoolyard.core.plant.DryingRoom;

/** The dryers on wheels and the blenders: who asks first is served first. */
final class SharedDryers {
    private final ArrayDeque<Dryer> free = new ArrayDeque<>();
    private final ArrayDeque<Consumer<Dryer>> dryerClaims = new ArrayDeque<>();
    private final ArrayDeque<Runnable> blenderClaims = new ArrayDeque<>();
    private int freeBlenders;

    SharedDryers(DryingRoom description) {
        for (int i = 0; i < description.mobileDryers(); i++) {
            free.add(new Dryer(description.mobileKg(), true));
        }
        freeBlenders = description.blenders();
    }

    /** Lends a dryer, now or as soon as one is given back. */
    void claimDryer(Consumer<Dryer> claim) {
        if (free.isEmpty()) {
            dryerClaims.add(claim);
        } else {
            claim.accept(free.remove());
        }
    }

    void withdrawClaim(Consumer<Dryer> claim) {
        dryerClaims.remove(claim);
    }

    void giveBack(Dryer dryer) {
        if (dryerClaims.isEmpty()) {
            free.add(dryer);
        } else {
            dryerClaims.remove().accept(dryer);
        }
    }

    /** Lends a blender, now or as soon as one is free. */
    void claimBlender(Runnable claim) {
        if (freeBlenders > 0) {
            freeBlenders--;
            claim.run();
        } else {
            blenderClaims.add(claim);
        }
    }

    void withdrawBlenderClaim(Runnable claim) {
        blenderClaims.remove(claim);
    }

    void giveBackBlender() {
        if (blenderClaims.isEmpty()) {
            freeBlenders++;
        } else {
            blenderClaims.remove().run();
        }
    }
}
