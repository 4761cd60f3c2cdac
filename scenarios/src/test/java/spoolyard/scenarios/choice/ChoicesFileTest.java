package spoolyard.scenarios.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.fault.ScenarioException;

final class ChoicesFileTest {
    @TempDir
    private Path folder;

    private Choices read(String text, int most) throws ScenarioException, IOException {
        Path file = folder.resolve("choices.yaml");
        Files.writeString(file, text);
        return ChoicesFile.read(file, most);
    }

    @Test
    void readsChoicesWithTheirPrices() throws ScenarioException, IOException {
        Choices choices = read(
                """
                interest: 8 %
                choices:
                  room of L3:
                    now: 60 m
                    options:
                      90 m:
                        set: {/lines/L3/accumulator: 90 m}
                        buy: 800
                        buy_per_metre: 60
                        life_years: 10
                        per_year: 25
                  winder:
                    options:
                      two-position:
                        set:
                          /lines/L3/winder: {type: two-position, unload: {lognormal: {mean: 28 s, cv: 0.25}}, list: [a, "it's"]}
                          /lines/L3/overflow: waste
                        per_hour: 31.5
                """,
                4);

        assertThat(choices.interest()).isEqualTo(0.08);
        assertThat(choices.mixCount()).isEqualTo(4);
        assertThat(choices.all()).extracting(Choice::now).containsExactly("60 m", "as it is");
        Option room = choices.all().get(0).options().get(0);
        assertThat(room.price().buy()).isEqualTo(800);
        assertThat(room.price().buyPerMetre()).isEqualTo(60);
        assertThat(room.price().lifeYears()).isEqualTo(10);
        assertThat(room.price().perYear()).isEqualTo(25);
        assertThat(room.price().perHour()).isEmpty();
        assertThat(choices.all().get(1).options().get(0).price().perHour()).hasValue(31.5);
        assertThat(choices.mixes().get(3).settings())
                .containsExactly(
                        "/lines/L3/accumulator='90 m'",
                        "/lines/L3/winder={'type': 'two-position', 'unload': {'lognormal': {'mean': '28 s', 'cv':"
                                + " '0.25'}}, 'list': ['a', 'it''s']}",
                        "/lines/L3/overflow='waste'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "set: {/lines/L3/accumulator: 90 m} | choices.yaml:4: /choices/c/options/o/per_year = (not given). Must have a price: buy, buy_per_metre, buy_per_winder, per_year or per_hour.",
                "set: {/lines/L3/accumulator: 90 m}, buy: -5, life_years: 3 | choices.yaml:4: /choices/c/options/o/buy = -5. Must be a number >= 0 and <= 1000000000, without a unit.",
                "set: {/lines/L3/accumulator: 90 m}, buy: 5 | choices.yaml:4: /choices/c/options/o/life_years = (not given). Must be given.",
                "set: {/lines/L3/accumulator: 90 m}, buy: 5, life_years: 0 | /choices/c/options/o/life_years = 0. Must be a number > 0 and <= 100",
                "set: {/lines/L3/accumulator: 90 m}, per_hour: much | choices.yaml:4: /choices/c/options/o/per_hour = much. Must be a number >= 0 and <= 10000, without a unit, or the word wages.",
                "set: {/lines/L3/accumulator: 90 m}, price: 5, per_year: 0 | choices.yaml:4: /choices/c/options/o/price = 5. The key is unknown.",
                "set: {accumulator: 90 m}, per_year: 0 | The key must be the JSON Pointer of a value.",
                "set: {}, per_year: 0 | Must be JSON Pointers with values (a mapping), one or more.",
                "per_year: 0 | choices.yaml:4: /choices/c/options/o/set = (not given). Must be given."
            })
    void saysWhatIsWrongWithAnOption(String option, String message) {
        String text = "choices:\n  c:\n    options:\n      o: {" + option + "}\n";

        assertThatExceptionOfType(ScenarioException.class)
                .isThrownBy(() -> read(text, 100))
                .satisfies(wrong -> assertThat(wrong.faults()).hasSize(1))
                .withMessageContaining(message)
                .withMessageContaining("Mend: ");
    }

    @Test
    void refusesTwoChoicesOfTheSameValue() {
        String text =
                """
                choices:
                  a: {options: {x: {set: {/lines/L3/winder: {type: manual}}, per_year: 0}}}
                  b: {options: {y: {set: {/lines/L3/winder/stop: 20 s}, per_year: 0}}}
                """;

        assertThatExceptionOfType(ScenarioException.class)
                .isThrownBy(() -> read(text, 100))
                .withMessageContaining("choices.yaml:3: ")
                .withMessageContaining("Must not be set by another choice too");
    }

    @Test
    void refusesMoreMixesThanThereMayBe() {
        String text =
                """
                choices:
                  a: {options: {x: {set: {/a: 1}, per_year: 0}, y: {set: {/a: 2}, per_year: 0}}}
                  b: {options: {z: {set: {/b: 1}, per_year: 0}}}
                """;

        assertThatExceptionOfType(ScenarioException.class)
                .isThrownBy(() -> read(text, 5))
                .withMessageContaining("Must make at most 5 mixes");
    }

    @Test
    void refusesAFileThatIsNotThereOrHasNoChoice() {
        assertThatExceptionOfType(ScenarioException.class)
                .isThrownBy(() -> ChoicesFile.read(folder.resolve("none.yaml"), 5))
                .withMessageContaining("none.yaml");
        assertThatExceptionOfType(ScenarioException.class)
                .isThrownBy(() -> read("choices: {}\n", 5))
                .withMessageContaining("Must have a choice.");
    }
}
