package spoolyard.analysis.report;

import java.util.List;

/** The tables of a report. */
final class Sheets {
    /** Tables that become files, in the order in which the results folder lists them. */
    static final List<Sheet<?>> FILES = List.of(
            ShiftSheets.SHIFTS,
            ShiftSheets.SHIFT_LINES,
            LineSheets.LINES,
            OrderSheets.ORDERS,
            OrderSheets.ORDER_LINES,
            LineSheets.SCRAP,
            ChangeoverSheet.SHEET,
            StateSheet.SHEET,
            LineSheets.STOPPAGES,
            CrewSheet.SHEET,
            FinishingSheet.SHEET,
            QualitySheets.LAB,
            QualitySheets.LOTS,
            QualitySheets.EXPOSURE,
            BottleneckSheet.SHEET);

    /** All tables: the files and those that only the summary shows. */
    static final List<Sheet<?>> ALL = List.of(
            PlantSheet.SHEET,
            ShiftSheets.SHIFT_NAMES,
            LineSheets.SCRAP_CAUSES,
            ShiftSheets.SHIFTS,
            ShiftSheets.SHIFT_LINES,
            LineSheets.LINES,
            OrderSheets.ORDERS,
            OrderSheets.ORDER_LINES,
            LineSheets.SCRAP,
            ChangeoverSheet.SHEET,
            StateSheet.SHEET,
            LineSheets.STOPPAGES,
            CrewSheet.SHEET,
            FinishingSheet.SHEET,
            QualitySheets.LAB,
            QualitySheets.LOTS,
            QualitySheets.EXPOSURE,
            BottleneckSheet.SHEET);

    private Sheets() {}
}
