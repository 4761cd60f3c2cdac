package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.invest.Extent;
import spoolyard.analysis.invest.Extent.Unit;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.MixPrice;
import spoolyard.analysis.invest.Worth;

/** Each option by itself: what it costs and gains, in all and for each metre, winder and hour. */
final class PayBackTable {
    private static final int OPTION = 34;
    private static final int SIZE = 10;
    private static final int NUMBER = 9;
    private static final int HALF = 10;
    private static final int EACH = 8;
    private static final int YEARS = 9;
    private static final double LONGEST_SHOWN_YEARS = 100;
    private static final double WHOLE_FROM = 1000;

    private final InvestReport report;
    private final Ink ink;
    private final Cell cell;

    PayBackTable(InvestReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    List<String> lines() {
        String money = report.currency() + "/year";
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(Cell.left("Option by itself", OPTION)
                + Cell.right("more", SIZE)
                + Cell.right("price", NUMBER)
                + Cell.left(Cell.right("net", NUMBER), NUMBER + HALF)
                + Cell.right("price", EACH)
                + Cell.right("gain", EACH)
                + Cell.right("pay-back", YEARS)));
        lines.add(ink.faint(Cell.left("", OPTION + SIZE)
                + Cell.right(money, NUMBER)
                + Cell.left(Cell.right(money, NUMBER), NUMBER + HALF)
                + Cell.right("of one", EACH)
                + Cell.right("of one", EACH)
                + Cell.right("years", YEARS)));
        report.alone().forEach(option -> lines.add(row(option)));
        Wrapped.lines(
                        "price, gain of one: of a metre, a winder or an hour, in a year; gain: what full accumulators lose"
                                + " less. pay-back: years until what was paid once has come back, without interest; ?:"
                                + " the data cannot tell a gain from none.",
                        "",
                        TextReport.MOST_COLUMNS)
                .forEach(line -> lines.add(ink.faint(line)));
        return lines;
    }

    private String row(MixFinding option) {
        Optional<Unit> unit = unit(extent(option));
        Worth worth = option.worth().orElseThrow();
        return Cell.left(Cell.clipped(report.label(option.number()), OPTION - 1), OPTION)
                + Cell.right(unit.map(each -> size(option, each)).orElse(ink.none()), SIZE)
                + Cell.right(Figures.shown(option.price().perYear(), 0), NUMBER)
                + cell.aligned(worth.net(), 0, NUMBER, HALF)
                + Cell.right(
                        unit.map(each -> ofOne(option, each, option.price().perYear()))
                                .orElse(ink.none()),
                        EACH)
                + Cell.right(
                        unit.map(each -> ofOne(option, each, worth.gain().mean()))
                                .orElse(ink.none()),
                        EACH)
                + Cell.right(years(option.price(), worth.gain()), YEARS);
    }

    private Extent extent(MixFinding option) {
        return report.extents().get(option.number());
    }

    private String size(MixFinding option, Unit unit) {
        return Figures.shown(extent(option).in(unit), 0) + " " + unit.sign();
    }

    private String ofOne(MixFinding option, Unit unit, double amount) {
        double one = amount / extent(option).in(unit);
        return Figures.shown(one, Math.abs(one) < WHOLE_FROM ? 2 : 0);
    }

    /** What the option has more of, if that is one thing. */
    static Optional<Unit> unit(Extent extent) {
        List<Unit> units =
                Stream.of(Unit.values()).filter(unit -> extent.in(unit) != 0).toList();
        return units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
    }

    private String years(MixPrice price, Interval gain) {
        double years = Worth.payBackYears(price, gain.mean());
        if (Double.isNaN(years)) {
            return ink.none();
        }
        double half = gain.halfWidth().orElse(Double.NaN);
        boolean isOpen = !(gain.mean() - half > 0 || gain.mean() + half < 0);
        if (isOpen) {
            return "?";
        }
        return years > LONGEST_SHOWN_YEARS ? "never" : Figures.shown(years, 1);
    }

    /** Columns for a spreadsheet. */
    static List<String> header() {
        List<String> header = new ArrayList<>(List.of(
                "option",
                "metres_more",
                "winders_that_differ",
                "paid_hours_per_year_more",
                "paid_once",
                "price_per_year",
                "gain_per_year",
                "gain_per_year_half_width",
                "net_per_year",
                "net_per_year_half_width",
                "unit",
                "price_of_one_per_year",
                "gain_of_one_per_year",
                "gain_of_one_per_year_half_width",
                "pay_back_years",
                "pay_back_years_least",
                "pay_back_years_most"));
        return header;
    }

    /** Cells for a spreadsheet; a pay-back that never comes is left empty. */
    List<String> cells(MixFinding option) {
        Extent extent = extent(option);
        Interval gain = option.worth().orElseThrow().gain();
        Interval net = option.worth().orElseThrow().net();
        double half = gain.halfWidth().orElse(Double.NaN);
        OptionalDouble size =
                unit(extent).map(unit -> OptionalDouble.of(extent.in(unit))).orElse(OptionalDouble.empty());
        double one = size.orElse(Double.NaN);
        return List.of(
                report.label(option.number()),
                Figures.cell(extent.metres()),
                Figures.cell(extent.winders()),
                Figures.cell(extent.paidHPerYear()),
                Figures.cell(option.price().once()),
                Figures.cell(option.price().perYear()),
                Figures.cell(gain.mean()),
                Figures.cell(half),
                Figures.cell(net.mean()),
                Figures.cell(net.halfWidth().orElse(Double.NaN)),
                unit(extent).map(Unit::sign).orElse(""),
                Figures.cell(option.price().perYear() / one),
                Figures.cell(gain.mean() / one),
                Figures.cell(half / Math.abs(one)),
                finite(Worth.payBackYears(option.price(), gain.mean())),
                finite(Worth.payBackYears(option.price(), gain.mean() + half)),
                finite(Worth.payBackYears(option.price(), gain.mean() - half)));
    }

    private static String finite(double years) {
        return Double.isInfinite(years) ? "" : Figures.cell(years);
    }
}
