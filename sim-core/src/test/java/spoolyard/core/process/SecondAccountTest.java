package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/** The second account disagrees with an account that forgets a kilowatt-hour or a wage. */
class SecondAccountTest {
    private Plant plant;
    private RunResult run;

    @BeforeEach
    void runForAShift() {
        plant = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000).plant();
        run = new PlantRun(plant, 1, 0, EventLog.SILENT).run();
    }

    @Test
    void agreesWithASoundAccount() {
        assertThat(SecondAccount.findings(plant, run)).isEmpty();
    }

    @Test
    void findsABaseLoadReadWrong() {
        EnergyUse sound = SecondAccount.energy(plant);
        EnergyUse spoilt =
                new EnergyUse(54, sound.baseColdKw(), sound.kwhPerKg(), sound.kwhPerKgGround(), sound.lines());

        EnergyAccount energy = EnergyAccount.of(spoilt, run);
        CostAccount cost = CostAccount.of(SecondAccount.PRICES, Optional.of(energy), run);

        assertThat(SecondAccount.findings(plant, run, energy, cost))
                .anyMatch(finding -> finding.startsWith("energy: "))
                .anyMatch(finding -> finding.startsWith("money: "));
    }

    @Test
    void findsAWageTooLow() {
        Prices sound = SecondAccount.PRICES;
        Prices spoilt = new Prices(
                sound.currency(),
                sound.polymerPerKg(),
                sound.concentrate(),
                sound.compoundPerKg(),
                sound.credit(),
                sound.packOutPerSpool(),
                Map.of("operator", 27.0),
                sound.energyPerKwh(),
                sound.contributionPerKg());

        EnergyAccount energy = EnergyAccount.of(SecondAccount.energy(plant), run);
        CostAccount cost = CostAccount.of(spoilt, Optional.of(energy), run);

        assertThat(SecondAccount.findings(plant, run, energy, cost))
                .singleElement()
                .asString()
                .startsWith("money: ");
    }
}
