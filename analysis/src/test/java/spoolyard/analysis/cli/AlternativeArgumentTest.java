package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class AlternativeArgumentTest {
    private static final Path BASE = Path.of("plants", "base");

    @Test
    void takesAPathForAScenarioNamedAfterItsFolder() {
        AlternativeArgument argument = AlternativeArgument.of("plants/night/plant.yaml", BASE);

        assertThat(argument.name()).isEqualTo("night");
        assertThat(argument.path()).isEqualTo(Path.of("plants/night/plant.yaml"));
        assertThat(argument.settings()).isEmpty();
    }

    @Test
    void takesAnAbsolutePathForAScenario() {
        assertThat(AlternativeArgument.of("/plants/night", BASE).path()).isEqualTo(Path.of("/plants/night"));
        assertThat(AlternativeArgument.of("new=/plants/night", BASE).path()).isEqualTo(Path.of("/plants/night"));
    }

    @Test
    void takesAPointerWithAValueForASettingOverTheBase() {
        AlternativeArgument argument = AlternativeArgument.of("/lines/L3/accumulator=80 m", BASE);

        assertThat(argument.name()).isEqualTo("/lines/L3/accumulator=80 m");
        assertThat(argument.path()).isEqualTo(BASE);
        assertThat(argument.settings()).containsExactly("/lines/L3/accumulator=80 m");
    }

    @Test
    void takesAllBeforeTheFirstEqualsSignForTheName() {
        AlternativeArgument argument = AlternativeArgument.of("wide=/lines/L3/x=[1, 2],/lines/L4/x=a=b", BASE);

        assertThat(argument.name()).isEqualTo("wide");
        assertThat(argument.settings()).isEqualTo(List.of("/lines/L3/x=[1, 2]", "/lines/L4/x=a=b"));
    }
}
