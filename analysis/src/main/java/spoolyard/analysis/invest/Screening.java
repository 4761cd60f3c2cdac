package spoolyard.analysis.invest;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.TargetTest;
import spoolyard.analysis.buffer.Verdict;

/** Holds all mixes against a target, look by look, those that could not be decided once more with twice the replications. */
final class Screening {
    private final InvestPlan plan;
    private final LossTarget target;
    private final MixBook book;
    private final Allowance allowance;

    Screening(InvestPlan plan, LossTarget target, MixBook book, Allowance allowance) {
        this.plan = plan;
        this.target = target;
        this.book = book;
        this.allowance = allowance;
    }

    List<Verdict> verdicts(List<Integer> all) {
        TargetTest test = new TargetTest(target, plan.alphaEach(all.size()));
        List<Verdict> verdicts = new ArrayList<>(Collections.nCopies(all.size(), Verdict.OPEN));
        for (int count : plan.looks()) {
            List<Integer> open = all.stream()
                    .filter(mix -> verdicts.get(mix) == Verdict.OPEN)
                    .toList();
            if (count > plan.firstLook() && !allowance.allows(book.missing(open, count))) {
                break;
            }
            book.fill(open, count);
            open.forEach(mix -> verdicts.set(mix, test.of(losses(mix, count), costliest(all, test))));
        }
        return List.copyOf(verdicts);
    }

    /** What an overflow costs where it costs most, at the first look: for mixes of which none was seen. */
    private double costliest(List<Integer> all, TargetTest test) {
        return all.stream()
                .mapToDouble(mix -> test.amountAnOverflow(losses(mix, plan.firstLook())))
                .max()
                .orElse(0);
    }

    private List<Loss> losses(int mix, int count) {
        return book.at(mix, count).stream().map(MixLoss::held).toList();
    }
}
