package spoolyard.analysis.report;

import java.util.List;
import java.util.stream.Stream;
import spoolyard.core.account.CostPart;
import spoolyard.core.plant.Prices;

/** Energy and money. Without the part of the scenario that asks for it a table has no rows and becomes no file. */
final class CostSheets {
    static final Column<CostRow> COST = Column.amount("cost", CostRow::amount);
    static final Column<CostRow> PER_SPOOL = Column.amount("cost_per_good_spool", CostRow::perGoodSpool);

    static final Sheet<CostRow> COSTS = new Sheet<>(
            "costs",
            List.of("part", "item", "currency"),
            CostRow::items,
            row -> List.of(row.part(), row.item(), row.currency()),
            List.of(COST, PER_SPOOL, Column.amount("pct_of_total", CostRow::pctOfTotal)),
            setting -> Ranked.by(
                            0, Stream.of(CostPart.values()).map(CostPart::label).toList())
                    .thenComparing(Ranked.by(1, named(setting)))
                    .thenComparing(Ranked.alphabet(1)));

    static final Sheet<CostRow> PARTS = new Sheet<>(
            "cost_parts", List.of("part"), CostRow::parts, row -> List.of(row.part()), List.of(COST, PER_SPOOL));

    static final Column<LostRow> LOST = Column.amount("contribution", LostRow::contribution);
    static final Column<LostRow> LOST_NO_ORDER = Column.amount("no_order_contribution", LostRow::noOrderContribution);

    static final Sheet<LostRow> LOST_CONTRIBUTION = new Sheet<>(
            "lost_contribution",
            List.of("polymer"),
            LostRow::of,
            row -> List.of(row.polymer()),
            List.of(
                    Column.amount("lost_kg", LostRow::kg),
                    Column.amount("no_order_kg", LostRow::noOrderKg),
                    LOST,
                    LOST_NO_ORDER));

    static final Column<EnergyRow> KWH = Column.amount("kwh", EnergyRow::kwh);
    static final Column<EnergyRow> KWH_PER_KG = Column.average("kwh_per_kg_fed", EnergyRow::kwhPerKgFed);

    static final Sheet<EnergyRow> ENERGY = new Sheet<>(
            "energy",
            List.of("station", "use"),
            EnergyRow::of,
            row -> List.of(row.station(), row.use()),
            List.of(
                    KWH,
                    Column.average("hours", EnergyRow::hours),
                    Column.average("heat_ups", EnergyRow::count),
                    KWH_PER_KG));

    static final Sheet<EnergyRow> ENERGY_USES = new Sheet<>(
            "energy_uses", List.of("use"), EnergyRow::uses, row -> List.of(row.use()), List.of(KWH, KWH_PER_KG));

    private CostSheets() {}

    /** Polymers and roles in the order of the scenario; colours and uses of energy follow. */
    private static List<String> named(Setting setting) {
        return setting.plant().economy().prices().stream()
                .flatMap(CostSheets::namedBy)
                .toList();
    }

    private static Stream<String> namedBy(Prices prices) {
        return Stream.concat(prices.polymerPerKg().keySet().stream(), prices.labourPerH().keySet().stream());
    }
}
