package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.ShiftResult;

/** Output by shift: each shift, each shift and line, and all shifts of one name. */
final class ShiftSheets {
    static final Column<Each> SPOOLS =
            Column.amount("good_spools", each -> each.shift().totalGoodSpools());

    static final Sheet<Each> SHIFTS = new Sheet<>(
            "shifts",
            List.of("number", "shift", "start_local", "end_local", "full"),
            ShiftSheets::each,
            Each::key,
            List.of(
                    SPOOLS,
                    Column.amount("good_kg", each -> sum(each.shift().goodKg())),
                    Column.amount("scrap_kg", each -> sum(each.shift().scrapKg()))));

    static final Sheet<OnLine> SHIFT_LINES = new Sheet<>(
            "shift_lines",
            List.of("number", "shift", "start_local", "line"),
            ShiftSheets::onLines,
            OnLine::key,
            List.of(
                    Column.amount(
                            "good_spools", each -> each.shift().goodSpools().get(each.line())),
                    Column.amount("good_kg", each -> each.shift().goodKg().get(each.line())),
                    Column.amount("scrap_kg", each -> each.shift().scrapKg().get(each.line()))));

    static final Column<Named> SPOOLS_PER_SHIFT =
            Column.average("good_spools_per_shift", named -> named.mean(ShiftResult::totalGoodSpools));

    static final Sheet<Named> SHIFT_NAMES = new Sheet<>(
            "shift_names",
            List.of("shift", "full_shifts"),
            ShiftSheets::byName,
            named -> List.of(named.name(), String.valueOf(named.shifts().size())),
            List.of(
                    SPOOLS_PER_SHIFT,
                    Column.average("good_kg_per_shift", named -> named.mean(shift -> sum(shift.goodKg()))),
                    Column.average("scrap_kg_per_shift", named -> named.mean(shift -> sum(shift.scrapKg())))));

    private ShiftSheets() {}

    private static double sum(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static List<Each> each(Setting setting, RunResult result) {
        List<Integer> full = FullShifts.of(setting.plant());
        return IntStream.range(0, result.shifts().size())
                .mapToObj(i -> new Each(i, result.shifts().get(i), full.contains(i), setting.clock()))
                .toList();
    }

    private static List<OnLine> onLines(Setting setting, RunResult result) {
        List<OnLine> all = new ArrayList<>();
        for (int i = 0; i < result.shifts().size(); i++) {
            for (int line = 0; line < setting.plant().lines().size(); line++) {
                all.add(new OnLine(i, result.shifts().get(i), line, setting));
            }
        }
        return all;
    }

    private static List<Named> byName(Setting setting, RunResult result) {
        Map<String, List<ShiftResult>> shifts = new LinkedHashMap<>();
        for (int i : FullShifts.of(setting.plant())) {
            ShiftResult shift = result.shifts().get(i);
            shifts.computeIfAbsent(shift.name(), name -> new ArrayList<>()).add(shift);
        }
        return shifts.entrySet().stream()
                .map(entry -> new Named(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** A shift. */
    record Each(int index, ShiftResult shift, boolean isFull, PlantClock clock) {
        List<String> key() {
            return List.of(
                    String.valueOf(index + 1),
                    shift.name(),
                    clock.minute(shift.startTick()),
                    clock.minute(shift.endTick()),
                    isFull ? "yes" : "no");
        }
    }

    /** A line in a shift. */
    record OnLine(int index, ShiftResult shift, int line, Setting setting) {
        List<String> key() {
            return List.of(
                    String.valueOf(index + 1),
                    shift.name(),
                    setting.clock().minute(shift.startTick()),
                    setting.plant().lines().get(line).name());
        }
    }

    /** The full shifts of one name. */
    record Named(String name, List<ShiftResult> shifts) {
        double mean(ToDoubleFunction<ShiftResult> value) {
            return shifts.stream().mapToDouble(value).average().orElse(Double.NaN);
        }
    }
}
