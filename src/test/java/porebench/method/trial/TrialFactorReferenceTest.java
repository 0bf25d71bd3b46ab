package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.method.RoundingRule;
import porebench.method.Ties;
import porebench.method.profile.Profiles;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** Against a manual's table of a calibration vessel in per cent of the bowl. */
class TrialFactorReferenceTest {
    /** Iowa DOT I.M. 318 (seen), printed to 0.05 %: the water of a 0.0125 ft3 vessel withdrawn from four bowls. */
    @Test
    void readsAVesselOfWaterAsAManualPrintsIt() {
        RoundingRule printed = new RoundingRule(new BigDecimal("0.05"), Ties.TO_EVEN, "I.M. 318, table");
        for (ReferenceFile.Row row : ReferenceFile.read("withdrawal-vessel.csv").rows()) {
            double millilitres =
                    Volume.of(row.number("vessel_ft3"), VolumeUnit.CUBIC_FOOT).in(VolumeUnit.MILLILITRE);
            TrialFactor trial = TrialFactor.of(
                    TrialReadings.typeB(
                            Typed.of(row.text("bowl_ft3"), VolumeUnit.CUBIC_FOOT),
                            BigDecimal.valueOf(millilitres),
                            Withdrawal.Unit.MILLILITRE,
                            "5.5"),
                    Expected.UNKNOWN,
                    Profiles.standard());
            double withdrawn = trial.withdrawnPercent().orElseThrow();
            assertThat(withdrawn).isCloseTo(row.number("exact_pct"), offset(0.0005));
            assertThat(printed.round(withdrawn)).isEqualTo(new BigDecimal(row.text("printed_pct")));
            assertThat(trial.factorPercent().orElseThrow()).isCloseTo(5.5 - row.number("exact_pct"), offset(0.0005));
        }
    }
}
