package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Tours of kinds that the search was not made for, against a bound from outside the project: the linear programme of Dantzig, Fulkerson
 * and Johnson, Operations Research 2 (1954), solved with HiGHS through SciPy 1.17, circles cut off until none was left or 200 s
 * were over. In the second case, from 170 cities on, the bound is valid but low, for drills most of all.
 */
final class TourClassTest {
    private static final double LIMIT_S = Double.parseDouble(System.getProperty("spoolyard.tours.seconds", "0"));

    private static double aboveBound(String row, SearchLimit limit) {
        String[] cells = row.split(",");
        double lowest = Double.parseDouble(cells[2]);
        double[][] distances = TourClass.valueOf(cells[0]).distances(Integer.parseInt(cells[1]));
        SearchSettings settings = new SearchSettings(limit, 1, 2, 2);
        Solution found =
                new Sequencer(Instances.tour(distances), settings, new Stop(), SearchProgress.UNHEARD).solve(List.of());
        double cost = found.plan().cost();
        assertThat(cost).as(row).isGreaterThanOrEqualTo(lowest - 0.01).isGreaterThanOrEqualTo(found.bound() - 0.01);
        System.out.printf(
                "%s | %s | %s | %.0f | %.2f %%%n", cells[0], cells[1], cells[2], cost, 100 * (cost / lowest - 1));
        return cost / lowest - 1;
    }

    private static List<String> rows() throws IOException {
        return Instances.text("tour-bounds.csv").lines().skip(1).toList();
    }

    /** Random tours are up to 1 % above this bound at best: Johnson and McGeoch, 1996, from memory. */
    @Test
    void isWithinTwoPercentOfABoundFromOutside() throws IOException {
        assertThat(rows().stream().filter(row -> row.contains(",48,")))
                .hasSize(TourClass.values().length)
                .allSatisfy(row -> assertThat(aboveBound(row, SearchLimit.iterations(60_000)))
                        .isLessThanOrEqualTo(0.02));
    }

    /** All sizes, {@code -Dspoolyard.tours.seconds=S} each; prints what docs/benchmarks.md shows. */
    @Test
    @EnabledIfSystemProperty(named = "spoolyard.tours.seconds", matches = ".+")
    void showsHowFarAboveTheBoundLargeToursAre() throws IOException {
        assertThat(rows()).allSatisfy(row -> assertThat(aboveBound(row, SearchLimit.seconds(LIMIT_S)))
                .isGreaterThanOrEqualTo(-1e-6));
    }
}
