package spoolyard.analysis.report;

import java.util.List;

/** Scrap that is ground and fed again. A plant that sells its scrap has no rows. */
final class RegrindSheet {
    /** Texts of the row that sums all others. */
    static final List<String> TOTAL = List.of(CostRow.TOTAL);

    static final Column<RegrindRow> GROUND = Column.amount("ground_kg", RegrindRow::groundKg);
    static final Column<RegrindRow> TAKEN = Column.amount("taken_kg", RegrindRow::takenKg);
    static final Column<RegrindRow> TAKEN_PCT = Column.average("taken_pct_of_natural", RegrindRow::takenPct);
    static final Column<RegrindRow> SAVED = Column.average("resin_saved", RegrindRow::saved);
    static final Column<RegrindRow> FORGONE = Column.average("credit_forgone", RegrindRow::forgone);

    static final Sheet<RegrindRow> SHEET = new Sheet<>(
            "regrind",
            List.of("polymer"),
            RegrindRow::of,
            row -> List.of(row.polymer()),
            List.of(
                    Column.amount("brought_kg", RegrindRow::broughtKg),
                    GROUND,
                    Column.amount("dust_kg", RegrindRow::dustKg),
                    Column.amount("no_room_kg", RegrindRow::noRoomKg),
                    Column.amount("held_kg", RegrindRow::heldKg),
                    TAKEN,
                    TAKEN_PCT,
                    SAVED,
                    FORGONE));

    private RegrindSheet() {}
}
