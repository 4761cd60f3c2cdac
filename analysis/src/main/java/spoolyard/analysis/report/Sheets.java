package spoolyard.analysis.report;

import java.util.List;

/** The tables of a report. */
final class Sheets {
    /** All tables, in the order in which the results folder lists them. */
    static final List<Sheet<?>> ALL = List.of(
            PlantSheet.SHEET,
            ShiftSheets.SHIFT_NAMES,
            LineSheets.SCRAP_CAUSES,
            ShiftSheets.SHIFTS,
            ShiftSheets.SHIFT_LINES,
            LineSheets.LINES,
            OrderSheets.ORDERS,
            OrderSheets.ORDER_LINES,
            LossSheet.SHEET,
            LineSheets.SCRAP,
            ChangeoverSheet.SHEET,
            StateSheet.SHEET,
            LineSheets.STOPPAGES,
            CrewSheet.SHEET,
            FinishingSheet.SHEET,
            StockSheet.SHEET,
            RegrindSheet.SHEET,
            QualitySheets.LAB,
            QualitySheets.LOTS,
            QualitySheets.EXPOSURE,
            QualitySheets.COLOUR,
            BottleneckSheet.SHEET,
            CostSheets.COSTS,
            CostSheets.PARTS,
            CostSheets.LOST_CONTRIBUTION,
            CostSheets.ENERGY,
            CostSheets.ENERGY_USES);

    private static final List<Sheet<?>> SUMMARY_ONLY = List.of(
            PlantSheet.SHEET,
            ShiftSheets.SHIFT_NAMES,
            LineSheets.SCRAP_CAUSES,
            CostSheets.PARTS,
            CostSheets.ENERGY_USES);

    /** Tables that become files. */
    static final List<Sheet<?>> FILES =
            ALL.stream().filter(sheet -> !SUMMARY_ONLY.contains(sheet)).toList();

    /** Tables that become files only if the scenario asks for what is in them. */
    private static final List<Sheet<?>> WHERE_ASKED = List.of(
            StockSheet.SHEET, RegrindSheet.SHEET, CostSheets.COSTS, CostSheets.LOST_CONTRIBUTION, CostSheets.ENERGY);

    private Sheets() {}

    /**
     * The tables of a report that become files.
     *
     * @param report the report
     * @return all but those that nobody asked for
     */
    static List<Sheet<?>> filesOf(RunReport report) {
        return FILES.stream()
                .filter(sheet -> !WHERE_ASKED.contains(sheet)
                        || !report.table(sheet).keys().isEmpty())
                .toList();
    }
}
