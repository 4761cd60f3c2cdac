package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.RunResult;

/**
 * An amount of money in one replication. Immutable.
 *
 * @param part what kind of cost, or {@link #TOTAL}
 * @param item what exactly; empty if the part is one thing
 * @param currency name or sign of the currency
 * @param amount money; negative for a credit
 * @param perGoodSpool money; not a number without a good spool
 * @param pctOfTotal share of the total, per cent; not a number if the total is 0
 */
record CostRow(String part, String item, String currency, double amount, double perGoodSpool, double pctOfTotal) {
    /** Part of the row that sums all others. */
    static final String TOTAL = "total";

    /**
     * Every cost by itself, then the total.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return rows; none for a plant without prices
     */
    static List<CostRow> items(Setting setting, RunResult result) {
        return account(setting.plant().economy(), result)
                .map(account -> {
                    List<CostRow> rows = new ArrayList<>();
                    account.items()
                            .forEach(each ->
                                    rows.add(row(setting, account, each.part().label(), each.item(), each.amount())));
                    rows.add(row(setting, account, TOTAL, "", account.total()));
                    return List.copyOf(rows);
                })
                .orElse(List.of());
    }

    /**
     * The costs of each part together, then the total.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return rows; none for a plant without prices
     */
    static List<CostRow> parts(Setting setting, RunResult result) {
        return account(setting.plant().economy(), result)
                .map(account -> {
                    List<CostRow> rows = new ArrayList<>();
                    account.byPart()
                            .forEach((part, amount) -> rows.add(row(setting, account, part.label(), "", amount)));
                    rows.add(row(setting, account, TOTAL, "", account.total()));
                    return List.copyOf(rows);
                })
                .orElse(List.of());
    }

    private static Optional<CostAccount> account(Economy economy, RunResult result) {
        Optional<EnergyAccount> energy = economy.energy().map(use -> EnergyAccount.of(use, result));
        return economy.prices().map(prices -> CostAccount.of(prices, energy, result));
    }

    private static CostRow row(Setting setting, CostAccount account, String part, String item, double amount) {
        String currency =
                setting.plant().economy().prices().map(Prices::currency).orElseThrow();
        return new CostRow(part, item, currency, amount, account.perGoodSpool(amount), 100 * amount / account.total());
    }
}
