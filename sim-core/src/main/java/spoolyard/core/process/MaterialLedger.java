package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Product;
import spoolyard.core.record.LineState;
import spoolyard.core.record.LineUse.MaterialUse;

/** What a line takes in, by product, and what it could have made of each in the time it gave to it. */
final class MaterialLedger {
    private final List<Account> accounts = new ArrayList<>();
    private Account current = new Account();
    private boolean takesCompound;
    private final Stores stores;
    private double compoundKg;

    MaterialLedger(Stores stores) {
        this.stores = stores;
        accounts.add(current);
    }

    /** A product and what belongs to it. Opened with no product, for a line that has not turned to any yet. */
    private static final class Account {
        private Optional<Product> product = Optional.empty();
        private Optional<ScrapBin> bin = Optional.empty();
        private double ratedKgPerS;
        private double fedKg;
        private double scheduledKg;
        private double noOrderKg;

        boolean isOf(Product other) {
            return product.filter(own -> own.sameMelt(other)).isPresent();
        }
    }

    /** The line turns to a product; what was fed before its first one counts as that. */
    void turnTo(Product product, double ratedKgPerS) {
        if (current.product.isPresent() && !current.isOf(product)) {
            current = accounts.stream()
                    .filter(account -> account.isOf(product))
                    .findFirst()
                    .orElseGet(this::open);
        }
        current.product = Optional.of(product);
        current.bin = stores.binFor(product);
        takesCompound = false;
        current.ratedKgPerS = ratedKgPerS;
    }

    /** What was on the line first; empty if nothing was yet. */
    Optional<Product> first() {
        return accounts.get(0).product;
    }

    private Account open() {
        Account account = new Account();
        accounts.add(account);
        return account;
    }

    /** From now on purge compound is fed, or the product's own material again. */
    void takesCompound(boolean does) {
        takesCompound = does;
    }

    /** Where clean scrap of what it takes in goes; empty if that is sold. */
    Optional<ScrapBin> bin() {
        return current.bin;
    }

    boolean isCompound() {
        return takesCompound;
    }

    void fed(double kg) {
        if (takesCompound) {
            compoundKg += kg;
        } else {
            current.fedKg += kg;
        }
    }

    /** Time goes by in a state. */
    void passed(double seconds, LineState state) {
        if (state != LineState.NOT_SCHEDULED) {
            current.scheduledKg += seconds * current.ratedKgPerS;
        }
        if (state == LineState.NO_ORDER) {
            current.noOrderKg += seconds * current.ratedKgPerS;
        }
    }

    double compoundKg() {
        return compoundKg;
    }

    /** One for each product, in order of first use; spool sizes are not told apart. */
    List<MaterialUse> uses() {
        return accounts.stream()
                .filter(account -> account.product.isPresent() || account.fedKg > 0)
                .map(MaterialLedger::use)
                .toList();
    }

    private static MaterialUse use(Account account) {
        return new MaterialUse(
                account.product.map(product -> product.polymer().code()).orElse(""),
                account.product.map(product -> product.colour().code()).orElse(""),
                account.product
                        .map(product -> product.colour().concentrateShare())
                        .orElse(0.0),
                account.fedKg,
                account.scheduledKg,
                account.noOrderKg);
    }
}
