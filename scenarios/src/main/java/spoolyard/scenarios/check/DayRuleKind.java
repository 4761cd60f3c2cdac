package spoolyard.scenarios.check;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spoolyard.scenarios.calendar.DayRule;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/**
 * The days on which a shift starts: weekdays if the cycle is a whole number of weeks, or day numbers of the cycle.
 *
 * @param cycleDays length of the cycle
 */
record DayRuleKind(int cycleDays) implements Kind<DayRule> {
    @Override
    public DayRule read(Node node, Reading reading) {
        boolean isWeekly = cycleDays % 7 == 0;
        if (isWeekly && !startsWithNumber(node)) {
            List<DayOfWeek> days = ListKind.some(Words.oneOf(weekdays())).read(node, reading);
            return new DayRule.Weekdays(new LinkedHashSet<>(days));
        }
        Set<Integer> days =
                new LinkedHashSet<>(ListKind.some(Numbers.whole(1, cycleDays)).read(node, reading));
        return new DayRule.CycleDays(days);
    }

    @Override
    public DayRule standIn() {
        return new DayRule.CycleDays(Set.of());
    }

    private static boolean startsWithNumber(Node node) {
        return node instanceof Node.Sequence list
                && !list.items().isEmpty()
                && list.items().get(0) instanceof Node.Text text
                && text.text().matches("\\d+");
    }

    private static Map<String, DayOfWeek> weekdays() {
        Map<String, DayOfWeek> words = new LinkedHashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            words.put(day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH).toLowerCase(Locale.ROOT), day);
        }
        for (DayOfWeek day : DayOfWeek.values()) {
            words.put(day.name().toLowerCase(Locale.ROOT), day);
        }
        return words;
    }
}
