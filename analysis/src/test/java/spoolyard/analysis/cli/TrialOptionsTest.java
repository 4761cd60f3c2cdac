package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import spoolyard.analysis.experiment.Effort;

final class TrialOptionsTest {
    @Command
    private static final class Both {
        @Mixin
        private TrialOptions trials;

        @Mixin
        private SearchOptions search;
    }

    private static Effort effort(String... arguments) {
        Both both = CommandLine.populateCommand(new Both(), arguments);
        return both.trials.effort(both.search);
    }

    @Test
    void isBoundedByTimeUnlessANumberIsGivenOrIterationsAre() {
        assertThat(effort().budget()).contains(Duration.ofSeconds(12));
        assertThat(effort("--seconds=5").budget()).contains(Duration.ofSeconds(12));
        assertThat(effort("--seconds=600").budget()).contains(Duration.ofSeconds(600));
        assertThat(effort("--replications=7")).isEqualTo(Effort.of(7));
        assertThat(effort("--iterations=1000")).isEqualTo(Effort.of(20));
    }

    @Test
    void saysHowManyThereWereIfFewerThanWanted() {
        TrialOptions trials = CommandLine.populateCommand(new Both()).trials;

        assertThat(trials.told(20)).isEmpty();
        assertThat(trials.told(13)).singleElement().asString().contains("13 of 20", "--replications 20");
    }
}
