package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Function;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.account.CostPart;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.Prices;

/**
 * Energy, money and pointers to labour law in the summary; what nobody asked for is not there.
 *
 * @param report what
 * @param form how an interval is written
 */
record EconomyJson(RunReport report, Function<Interval, ObjectNode> form) {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> TOTAL = List.of(CostRow.TOTAL);

    /**
     * Adds what there is.
     *
     * @param root the summary
     */
    void addTo(ObjectNode root) {
        Economy economy = report.setting().plant().economy();
        economy.energy().ifPresent(use -> root.set("energy", energy()));
        economy.prices().ifPresent(prices -> root.set("costs", costs(prices)));
        if (!report.setting().labourFlags().isEmpty()) {
            ArrayNode flags = root.putArray("labour_law");
            report.setting().labourFlags().forEach(flags::add);
        }
    }

    private ObjectNode energy() {
        Estimates uses = report.table(CostSheets.ENERGY_USES);
        ObjectNode node = NODES.objectNode();
        node.set("kwh", form.apply(uses.at(TOTAL, CostSheets.KWH)));
        node.set("kwh_per_kg_fed", form.apply(uses.at(TOTAL, CostSheets.KWH_PER_KG)));
        node.set("kwh_by_use", withoutTotal(uses, CostSheets.KWH));
        return node;
    }

    private ObjectNode costs(Prices prices) {
        Estimates parts = report.table(CostSheets.PARTS);
        ObjectNode node = NODES.objectNode();
        node.put("currency", prices.currency());
        node.set("total", form.apply(parts.at(TOTAL, CostSheets.COST)));
        node.set("per_good_spool", form.apply(parts.at(TOTAL, CostSheets.PER_SPOOL)));
        node.set("by_part", withoutTotal(parts, CostSheets.COST));
        node.set("per_good_spool_by_part", withoutTotal(parts, CostSheets.PER_SPOOL));
        node.set("labour_by_role", labour());
        prices.contributionPerKg().ifPresent(perKg -> {
            Estimates lost = report.table(CostSheets.LOST_CONTRIBUTION);
            node.set("contribution_lost", form.apply(lost.at(TOTAL, CostSheets.LOST)));
            node.set("contribution_lost_without_order", form.apply(lost.at(TOTAL, CostSheets.LOST_NO_ORDER)));
        });
        return node;
    }

    private ObjectNode withoutTotal(Estimates table, Column<?> column) {
        ObjectNode node = NODES.objectNode();
        table.keys().stream()
                .filter(key -> !key.equals(TOTAL))
                .forEach(key -> node.set(key.get(0), form.apply(table.at(key, column))));
        return node;
    }

    private ObjectNode labour() {
        ObjectNode node = NODES.objectNode();
        Estimates costs = report.table(CostSheets.COSTS);
        costs.keys().stream()
                .filter(key -> key.get(0).equals(CostPart.LABOUR.label()))
                .forEach(key -> node.set(key.get(1), form.apply(costs.at(key, CostSheets.COST))));
        return node;
    }
}
