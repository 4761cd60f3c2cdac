package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

final class SpoolyardCommandTest {
    @Test
    void showsItsHelpWhenCalledWithNothing() {
        Called called = Called.with();

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).contains("Usage: spoolyard", "Commands:", "Examples:");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"run", "compare", "select", "warmup", "check", "gauge", "buffer", "invest", "new", "completion"})
    void hasHelpWithExamplesForEachCommand(String command) {
        Called called = Called.with(command, "--help");

        assertThat(called.code()).isZero();
        assertThat(called.out()).contains("Usage: spoolyard " + command, "Examples:", "--debug", "--help");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void saysWhatEachOptionAndCommandIsFor() {
        CommandLine root = line();

        for (CommandLine command : root.getSubcommands().values()) {
            assertThat(command.getHelp().header()).isNotBlank();
            for (OptionSpec option : command.getCommandSpec().options()) {
                assertThat(option.description()).as(option.longestName()).isNotEmpty();
            }
        }
    }

    /** Footers are format strings of java.util.Formatter: a per cent sign in an example must be doubled. */
    @Test
    void hasExamplesThatCanBeFormatted() {
        for (CommandLine command : line().getSubcommands().values()) {
            for (String example : command.getCommandSpec().usageMessage().footer()) {
                assertThatCode(() -> String.format(Locale.ROOT, example))
                        .as(example)
                        .doesNotThrowAnyException();
            }
        }
    }

    @Test
    void tellsItsVersion() {
        assertThat(Called.with("--version").out()).matches("spoolyard \\d+\\.\\d+\\.\\d+ \\(Java .*\\)\\R");
    }

    @ParameterizedTest
    @CsvSource({"rnu, 'Not understood: rnu.'", "'', 'Not understood: .'"})
    void pointsToItsHelpWhenItDoesNotUnderstand(String argument, String message) {
        Called called = Called.with(argument);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith(message).endsWith("\n  Mend: see spoolyard --help.\n");
    }

    @Test
    void suggestsTheOptionThatWasMeant() {
        Called called = Called.with("run", "x", "--replicatoins=3");

        assertThat(called.err())
                .isEqualTo(
                        "Not understood: --replicatoins=3. Meant --replications?\n  Mend: see spoolyard run --help.\n");
    }

    @Test
    void refusesAWordForANumber() {
        Called called = Called.with("run", "x", "--seed=many");

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err())
                .isEqualTo("--seed = many. Must be a whole number.\n  Mend: see spoolyard run --help.\n");
    }

    @Test
    void writesACompletionScriptThatKnowsItsOptions() {
        Called called = Called.with("completion");

        assertThat(called.code()).isZero();
        assertThat(called.out()).startsWith("#!/usr/bin/env bash").contains("--replications", "complete -F");
    }

    @ParameterizedTest
    @CsvSource({
        "NO_COLOR, 1, Linux, false",
        "NO_COLOR, '', Linux, true",
        "TERM, dumb, Linux, false",
        "TERM, xterm, Linux, true",
        "TERM, xterm, Windows 10, false",
        "WT_SESSION, 1, Windows 11, true"
    })
    void usesColourOnlyWhereItIsWanted(String name, String value, String system, boolean isWanted) {
        assertThat(Console.wantsColour(Map.of(name, value), system)).isEqualTo(isWanted);
    }

    private static CommandLine line() {
        return SpoolyardCommand.line(Console.ofProcess(), Simulator.REAL);
    }
}
