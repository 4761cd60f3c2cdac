package spoolyard.analysis.crew;

import java.util.List;

/**
 * Lines under more and fewer people. Immutable.
 *
 * @param staffing the plant as it is and the role
 * @param load what the plant as it is asks of the role; the published curves rest on it
 * @param rows one a number of people, ascending
 * @param replications replications behind each
 */
public record CrewView(Staffing staffing, CrewLoad load, List<CrewRow> rows, int replications) {
    /** Copies the list. */
    public CrewView {
        rows = List.copyOf(rows);
    }
}
