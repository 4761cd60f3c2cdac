package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Lab;
import spoolyard.core.random.Uniforms;

/** Chance in the lots of one line or one source from outside: how good they are, and what the lab finds. */
final class LotLuck {
    private final Lab lab;
    private final Uniforms quality;
    private final Uniforms defect;
    private final Uniforms sample;
    private final Uniforms refusal;
    private final List<Uniforms> tests = new ArrayList<>();

    private LotLuck(World world, Lab lab, String source) {
        this.lab = lab;
        this.quality = world.streams().uniforms(source + " / lot quality");
        this.defect = world.streams().uniforms(source + " / hidden defect");
        this.sample = world.streams().uniforms(source + " / sample");
        this.refusal = world.streams().uniforms(source + " / refused lot");
        for (Lab.Test test : lab.tests()) {
            tests.add(world.streams().uniforms(source + " / test " + test.name()));
        }
    }

    /** Empty if the plant has no lab. */
    static Optional<LotLuck> of(World world, String source) {
        return world.plant().finishing().quality().lab().map(lab -> new LotLuck(world, lab, source));
    }

    /** Chance of a spool of a new lot to be defective. */
    double drawDefectShare() {
        Lab.LotQuality all = lab.quality();
        return quality.next() < all.badLots() ? all.badShare() : all.usualShare();
    }

    boolean isDefective(double share) {
        return defect.next() < share;
    }

    boolean isTested(int test) {
        return tests.get(test).next() < lab.tests().get(test).shareOfLots();
    }

    double drawRefusal() {
        return refusal.next();
    }

    /** Takes a sample without putting back, every subset equally likely, and counts the defective spools in it. */
    int defectiveInSample(List<Spool> lot, int size) {
        int wanted = size;
        int found = 0;
        for (int i = 0; i < lot.size() && wanted > 0; i++) {
            if (sample.next() * (lot.size() - i) < wanted) {
                wanted--;
                found += lot.get(i).defective ? 1 : 0;
            }
        }
        return found;
    }
}
