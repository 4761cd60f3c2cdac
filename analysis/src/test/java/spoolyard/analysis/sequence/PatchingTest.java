package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class PatchingTest {
    private static final double NEVER = 1e12;

    /** Circles 0 1 2 and 3 4 5 of edges that cost 1; others cost 20, but for 1 to 5 (4) and 4 to 2 (3). */
    private static double[] twoCircles() {
        double[] distance = new double[36];
        Arrays.fill(distance, 20);
        IntStream.range(0, 6).forEach(node -> distance[node * 7] = NEVER);
        int[] next = {1, 2, 0, 4, 5, 3};
        IntStream.range(0, 6).forEach(node -> distance[node * 6 + next[node]] = 1);
        distance[1 * 6 + 5] = 4;
        distance[4 * 6 + 2] = 3;
        return distance;
    }

    private static double length(double[] distance, int[] tour) {
        int size = tour.length;
        return IntStream.range(0, size)
                .mapToDouble(i -> distance[tour[i] * size + tour[(i + 1) % size]])
                .sum();
    }

    /**
     * By hand: the six edges of 1 are the least assignment, 6. Opened at 1-2 and 4-5 the circles are joined by 1-5 and 4-2: 6 + 4 + 3 -
     * 2 = 11. Any other pair has an edge of 20, and a tour must leave each circle.
     */
    @Test
    void joinsTwoCirclesWhereThatAddsLeast() {
        double[] distance = twoCircles();
        Assignment assignment = Assignment.of(6, distance);

        int[] tour = Patching.tour(6, distance, assignment.columns());

        assertThat(assignment.least()).isEqualTo(6);
        assertThat(assignment.columns()).containsExactly(1, 2, 0, 4, 5, 3);
        assertThat(tour).containsExactly(0, 1, 5, 3, 4, 2);
        assertThat(length(distance, tour)).isEqualTo(11);
    }

    @Test
    void leavesASingleCircleAsItIs() {
        int[] tour = Patching.tour(4, new double[16], new int[] {2, 3, 1, 0});

        assertThat(tour).containsExactly(0, 2, 1, 3);
    }

    /** Linear programming duality: what a dual solution is. */
    @ParameterizedTest
    @EnumSource
    void potentialsProveTheLeastAssignment(TourClass kind) {
        double[] cost = withoutLoops(kind.distances(70));

        Assignment assignment = Assignment.of(70, cost);

        double[] rows = assignment.rowPotentials();
        double[] columns = assignment.columnPotentials();
        for (int i = 0; i < cost.length; i++) {
            assertThat(cost[i] - rows[i / 70] - columns[i % 70]).isGreaterThanOrEqualTo(-1e-6);
        }
        assertThat(Arrays.stream(rows).sum() + Arrays.stream(columns).sum())
                .isCloseTo(assignment.least(), within(1e-3));
        assertThat(assignment.columns()).doesNotHaveDuplicates();
    }

    private static double[] withoutLoops(double[][] distances) {
        for (int i = 0; i < distances.length; i++) {
            distances[i][i] = NEVER;
        }
        return Arrays.stream(distances).flatMapToDouble(Arrays::stream).toArray();
    }

    /** A tour is an assignment. That all nodes are in it, plans check. */
    @ParameterizedTest
    @EnumSource
    void isATourThatCostsNoLessThanTheAssignment(TourClass kind) {
        SequencingProblem problem = Instances.tour(kind.distances(170));

        LineTour tour = new LineTour(problem);

        tour.patched().check(problem);
        assertThat(TimedPlan.of(problem, tour.patched()).cost())
                .isGreaterThanOrEqualTo(tour.least - 1e-3)
                .isCloseTo(tour.least + length(tour.distance, tour.nodes(tour.patched())), within(1e-3));
    }
}
