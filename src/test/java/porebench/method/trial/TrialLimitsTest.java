package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.Said;
import porebench.method.profile.Profiles;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

class TrialLimitsTest {
    private static Readings readings(String bowl, String fine, String coarse, String soak, String water) {
        return new Readings(
                MeterType.B,
                Typed.of(bowl, VolumeUnit.LITRE),
                mass(fine),
                mass(coarse),
                Optional.of(new BigDecimal(soak)),
                Optional.of(new BigDecimal(water)),
                Optional.of(new Withdrawal(new BigDecimal("5"), Withdrawal.Unit.PERCENT)),
                Optional.of(new BigDecimal("5.4")),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static Optional<Typed<Mass>> mass(String kilograms) {
        return Optional.of(Typed.of(kilograms, MassUnit.KILOGRAM));
    }

    private static List<String> codes(Readings readings) {
        return Said.codes(TrialLimits.check(readings));
    }

    /** 8 kg a litre of the heaviest stone: 56 kg in 7 L. */
    @Test
    void whatIsPossibleAtItsEdgesIsNotRefused() {
        assertThat(codes(readings("7", "6", "50", "10080", "100"))).isEmpty();
        assertThat(codes(readings("0.5", "0", "4", "0", "-20"))).isEmpty();
        assertThat(codes(readings("50", "0", "0", "0", "20"))).isEmpty();
        // A bowl of 0 is refused elsewhere.
        assertThat(codes(readings("0", "1", "1", "0", "20"))).isEmpty();
    }

    @Test
    void whatCannotBeIsNamedAllAtOnceAndTheTrialIsVoid() {
        Readings impossible = readings("7", "6.01", "50", "10081", "440");
        assertThat(codes(impossible))
                .containsExactly("trial.sample-exceeds-bowl", "trial.soak-impossible", "trial.water-impossible");
        assertThat(TrialLimits.check(impossible))
                .extracting(problem -> problem.field())
                .containsExactly("coarse", "soak", "waterTemperature");
        assertThat(TrialFactor.of(impossible, Expected.UNKNOWN, Profiles.standard())
                        .counts())
                .isFalse();
        assertThat(TrialLimits.check(readings("7", "50", "7", "1", "20")))
                .extracting(problem -> problem.field())
                .containsExactly("fine");
        assertThat(codes(readings("0.49", "1", "1", "0", "-20.1")))
                .containsExactly("trial.bowl-impossible", "trial.water-impossible");
        assertThat(codes(readings("50.1", "1", "1", "0", "100.1")))
                .containsExactly("trial.bowl-impossible", "trial.water-impossible");
        assertThat(Said.text(
                        TrialLimits.check(readings("7", "5040", "7", "1", "20")).get(0)))
                .isEqualTo("The sample of 5047 kg does not go into a bowl of 7 L, which holds at most 56 kg of "
                        + "even the heaviest aggregate. Check the masses and their unit.");
    }
}
