package spoolyard.scenarios.read;

import java.util.regex.Pattern;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;

/** Turns decimal commas into points where a table with {@code ;} uses them, and insists on one sign all through. */
final class DecimalSign {
    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
    private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d+\\.\\d+");

    private final String file;
    private final boolean commaIsAllowed;
    private final Faults faults;
    private int firstCommaLine;
    private int firstPointLine;

    DecimalSign(String file, boolean commaIsAllowed, Faults faults) {
        this.file = file;
        this.commaIsAllowed = commaIsAllowed;
        this.faults = faults;
    }

    String withPoint(String text, int line) {
        if (!commaIsAllowed) {
            return text;
        }
        if (WITH_POINT.matcher(text).matches()) {
            firstPointLine = firstPointLine == 0 ? line : firstPointLine;
            requireOneSign(text, line, firstCommaLine);
            return text;
        }
        if (WITH_COMMA.matcher(text).matches()) {
            firstCommaLine = firstCommaLine == 0 ? line : firstCommaLine;
            requireOneSign(text, line, firstPointLine);
            return text.replace(',', '.');
        }
        return text;
    }

    private void requireOneSign(String text, int line, int firstLineOfOther) {
        if (firstLineOfOther > 0) {
            faults.add(new Fault(
                    FaultKind.NOT_A_VALUE,
                    new Origin(file, line, "number"),
                    text,
                    "Must use the same decimal sign all through; line " + firstLineOfOther + " uses the other.",
                    "write all numbers of the file with a comma, or all with a point"));
        }
    }
}
