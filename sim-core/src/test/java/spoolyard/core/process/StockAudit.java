package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.StockItem;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.StockResult;

/** Says which book of the stores does not add up, between two events or at the end of a run. */
final class StockAudit {
    private static final double SLACK_KG = 1e-9;

    private final Plant plant;
    private final RunResult result;
    private final List<String> broken = new ArrayList<>();

    private StockAudit(Plant plant, RunResult result) {
        this.plant = plant;
        this.result = result;
    }

    // ------------------------------------------------------------------ between two events

    static List<String> findings(PlantRun run) {
        List<String> broken = new ArrayList<>();
        run.stores().stocks().forEach(stock -> level(stock, broken));
        spoolsOnSpindles(run, broken);
        run.stores().bins().forEach(bin -> bin(bin.result(), bin.stock().received(), broken));
        scrap(run, broken);
        return broken;
    }

    /** A line may draw on for the tick in which its store has run out, and a shut-down or purge of compound goes on. */
    private static void level(Stock stock, List<String> broken) {
        String what = stock.item().kind().label() + " " + stock.item().name();
        StockItem.Kind kind = stock.item().kind();
        boolean isCounted = kind == StockItem.Kind.SPOOLS || kind == StockItem.Kind.CARTONS;
        if (stock.level() < (isCounted ? 0 : -Stock.SLACK)) {
            broken.add(what + ": " + stock.level() + " in store");
        }
        if (isCounted && (stock.onSpindles() < 0 || stock.onSpindles() > stock.level())) {
            broken.add(what + ": " + stock.onSpindles() + " on spindles of " + stock.level());
        }
    }

    private static void spoolsOnSpindles(PlantRun run, List<String> broken) {
        int onSpindles =
                run.stores().stocks().stream().mapToInt(Stock::onSpindles).sum();
        int mounted =
                run.lines().stream().mapToInt(line -> line.stores().mounted()).sum();
        if (onSpindles != mounted) {
            broken.add(onSpindles + " spools of the stores on spindles but " + mounted + " found there");
        }
    }

    static void bin(RegrindResult regrind, double receivedKg, List<String> broken) {
        double leftKg = regrind.broughtKg() - regrind.groundKg() - regrind.noRoomKg() - regrind.heldKg();
        if (isOff(leftKg, regrind.broughtKg())) {
            broken.add("scrap of " + regrind.polymer() + " is off by " + leftKg + " kg");
        }
        double storedKg = receivedKg - regrind.groundKg() + regrind.dustKg();
        if (isOff(storedKg, regrind.groundKg())) {
            broken.add("regrind of " + regrind.polymer() + " is off by " + storedKg + " kg");
        }
    }

    /** Nothing is ground that no line has booked as scrap. */
    private static void scrap(PlantRun run, List<String> broken) {
        double broughtKg =
                run.stores().bins().stream().mapToDouble(ScrapBin::broughtKg).sum();
        double scrapKg = run.lines().stream()
                .mapToDouble(line -> line.ledger().totalScrapKg())
                .sum();
        if (broughtKg > scrapKg + SLACK_KG * (1 + scrapKg)) {
            broken.add(broughtKg + " kg of scrap to grind but " + scrapKg + " kg booked");
        }
    }

    /** What lines with dryers have fed came out of the stores by way of these, at the end of a run. */
    static List<String> dryers(PlantRun run, RunResult result) {
        List<String> broken = new ArrayList<>();
        for (Stock stock : run.stores().stocks()) {
            if (stock.item().kind() == StockItem.Kind.RESIN) {
                String polymer = stock.item().name();
                double fedKg = fed(result, use -> use.polymer().equals(polymer), use -> 1 - use.concentrateShare());
                double inDryersKg = run.lines().stream()
                        .mapToDouble(line -> line.stores().driedStoreKg(polymer))
                        .sum();
                double offKg =
                        stock.used() + regrindTaken(result, polymer) + stock.fedFromThroatKg() - fedKg - inDryersKg;
                if (isOff(offKg, stock.used())) {
                    broken.add("resin " + polymer + " by way of the dryers is off by " + offKg + " kg");
                }
            }
        }
        return broken;
    }

    private static boolean isOff(double differenceKg, double sizeKg) {
        return !(Math.abs(differenceKg) <= SLACK_KG * (1 + Math.abs(sizeKg)));
    }

    // ------------------------------------------------------------------ at the end

    /** What was used of the stores is what the lines fed and the spools they wound. */
    static List<String> findings(Plant plant, RunResult result) {
        return new StockAudit(plant, result).findings();
    }

    private List<String> findings() {
        result.stocks().forEach(this::levels);
        result.stocks().forEach(this::fed);
        spoolsWound();
        result.regrind().forEach(this::regrind);
        return broken;
    }

    private void levels(StockResult stock) {
        if (stock.opening() + stock.received() - stock.used() != stock.closing()) {
            broken.add(label(stock) + ": opening, received, used and closing do not add up");
        }
        if (stock.lowest() <= -Stock.SLACK) {
            broken.add(label(stock) + ": was " + stock.lowest());
        }
    }

    private void fed(StockResult stock) {
        boolean isBatchwise =
                plant.lines().get(0).supply().filter(how -> how.batchKg() > 0).isPresent();
        boolean isBlended = isBatchwise
                && plant.lines().get(0).supply().orElseThrow().layout() == MaterialSupply.Layout.BLEND_FIRST;
        if (stock.kind().equals("resin") && !isBatchwise) {
            double natural = fed(use -> use.polymer().equals(stock.name()), use -> 1 - use.concentrateShare());
            compare(label(stock), stock.used() + regrindTaken(result, stock.name()), natural);
        } else if (stock.kind().equals("concentrate") && !isBlended) {
            compare(
                    label(stock),
                    stock.used(),
                    fed(use -> use.colour().equals(stock.name()), MaterialUse::concentrateShare));
        } else if (stock.kind().equals("regrind") && !isBlended) {
            regrindShare(stock);
        }
    }

    private static double regrindTaken(RunResult result, String polymer) {
        return result.stocks().stream()
                .filter(stock -> stock.kind().equals("regrind") && stock.name().equals(polymer))
                .mapToDouble(StockResult::used)
                .sum();
    }

    private void compare(String what, double used, double fed) {
        if (isOff(used - fed, fed)) {
            broken.add(what + ": " + used + " used but " + fed + " fed");
        }
    }

    /** At most its share of what the takers fed; all of it, if it was never out. */
    private void regrindShare(StockResult stock) {
        Regrind rule = plant.materials().regrind().orElseThrow();
        double mostKg = rule.share()
                * fed(
                        use -> use.polymer().equals(stock.name())
                                && rule.takers().contains(use.colour()),
                        use -> 1 - use.concentrateShare());
        if (stock.timesOut() == 0 || stock.used() > mostKg) {
            compare(label(stock), stock.used(), mostKg);
        }
    }

    private static String label(StockResult stock) {
        return stock.kind() + " " + stock.name();
    }

    private double fed(Predicate<MaterialUse> which, ToDoubleFunction<MaterialUse> share) {
        return fed(result, which, share);
    }

    private static double fed(RunResult result, Predicate<MaterialUse> which, ToDoubleFunction<MaterialUse> share) {
        return result.lines().stream()
                .flatMap(line -> line.use().materials().stream())
                .filter(which)
                .mapToDouble(use -> use.fedKg() * share.applyAsDouble(use))
                .sum();
    }

    /** Where every size is in store, each spool that was full or cut short came from there. */
    private void spoolsWound() {
        List<StockItem> spools = plant.materials().stocks().stream()
                .filter(item -> item.kind() == StockItem.Kind.SPOOLS)
                .toList();
        double used = result.stocks().stream()
                .filter(stock -> stock.kind().equals("empty spools"))
                .mapToDouble(StockResult::used)
                .sum();
        long wound = result.lines().stream().mapToLong(LineResult::swaps).sum();
        if (spools.size() == 3 ? used != wound : used > wound) {
            broken.add(used + " empty spools used but " + wound + " wound");
        }
    }

    private void regrind(RegrindResult regrind) {
        Regrind.Grinding grinding = plant.materials().regrind().orElseThrow().grinding();
        if (isOff(regrind.dustKg() - grinding.dust() * regrind.groundKg(), regrind.groundKg())) {
            broken.add("regrind " + regrind.polymer() + ": " + regrind.dustKg() + " kg of dust");
        }
        if (!(regrind.heldKg() >= 0 && regrind.heldKg() < grinding.batchKg())) {
            broken.add("regrind " + regrind.polymer() + ": " + regrind.heldKg() + " kg held");
        }
        double scrapKg = result.lines().stream()
                .flatMap(line -> line.scrapKg().entrySet().stream())
                .filter(entry -> isClean(entry.getKey()))
                .mapToDouble(entry -> entry.getValue())
                .sum();
        if (regrind.broughtKg() > scrapKg + SLACK_KG * (1 + scrapKg)) {
            broken.add("regrind " + regrind.polymer() + ": " + regrind.broughtKg() + " kg of " + scrapKg);
        }
    }

    /** What is scrap of one product, whatever is ground of it. */
    static boolean isClean(ScrapCause cause) {
        return cause != ScrapCause.COLOUR_PURGE && cause != ScrapCause.POLYMER_PURGE && cause != ScrapCause.APPROVAL;
    }
}
