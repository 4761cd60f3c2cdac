package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CommonNumbersTest {
    private static final Trial<String> NAMED = (alternative, replication) -> replication + "/" + alternative;

    @Test
    void givesEachReplicationWithAllItsAlternativesInOrder() {
        List<List<String>> observed = new CommonNumbers<>(NAMED, 3).run(2, 5, 3, Progress.UNHEARD);

        assertThat(observed).containsExactly(List.of("5/0", "5/1"), List.of("6/0", "6/1"), List.of("7/0", "7/1"));
    }

    @Test
    void runsOnlyTheAlternativesAskedFor() {
        List<List<String>> observed = new CommonNumbers<>(NAMED, 2).run(List.of(4, 1), 0, 1, Progress.UNHEARD);

        assertThat(observed).containsExactly(List.of("0/4", "0/1"));
    }

    @Test
    void runsAgainForFurtherReplications() {
        CommonNumbers<String> numbers = new CommonNumbers<>(NAMED, 2);
        List<List<String>> observed = new ArrayList<>(numbers.run(1, 0, 1, Progress.UNHEARD));

        observed.addAll(numbers.run(1, 1, 1, Progress.UNHEARD));

        assertThat(observed).containsExactly(List.of("0/0"), List.of("1/0"));
    }

    @Test
    void namesTheReplicationThatBrokeOff() {
        Trial<String> breaking = (alternative, replication) -> {
            if (alternative == 1 && replication == 6) {
                throw new IllegalStateException("no room");
            }
            return "";
        };

        assertThatThrownBy(() -> new CommonNumbers<>(breaking, 1).run(3, 5, 4, Progress.UNHEARD))
                .isInstanceOfSatisfying(ReplicationFailedException.class, failure -> assertThat(failure.replication())
                        .isEqualTo(6))
                .hasMessage("replication 6: no room");
    }

    @Test
    void refusesToRunOnNoThread() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CommonNumbers<>(NAMED, 0))
                .withMessage("threads = 0. Must be >= 1.");
    }
}
