package porebench.method.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.quantity.Volume;

/** The weigh-out list by pencil. */
class WeighOutHandTest {
    private static final Profile TWO_PERCENT = Profiles.standard()
            .copyAs("ours", "Ours")
            .with(FigureName.MASS_TOLERANCE, new Figure("2", "our manual", Mark.LABORATORY));

    private static CorrectionSample sample() {
        return CorrectionSample.of(
                        MixLine.stated(
                                "1 m3",
                                "5",
                                MixLine.fine("800 kg").from("S-1"),
                                MixLine.coarse("1000 kg").named("20 mm")),
                        new Volume(0.01))
                .value()
                .orElseThrow();
    }

    /**
     * 8 kg of sand and 10 kg of stone a trial, three trials and 10 % spare, tolerance 2 %.
     *
     * <pre>
     * sand: 7.84 to 8.16, in all 8 x 3 x 1.1 = 26.4 kg; stone: 9.8 to 10.2, in all 33 kg
     * </pre>
     */
    @Test
    void listsTheMassItsLimitsAndTheTotal() {
        WeighOut list = WeighOut.of(sample(), 3, 10, TWO_PERCENT);
        assertThat(list.trials()).isEqualTo(3);
        assertThat(list.sparePercent()).isEqualTo(10);
        check(list.lines().get(0), "sand", "S-1", Role.FINE, 8, 7.84, 8.16, 26.4);
        check(list.lines().get(1), "20 mm", "20 mm", Role.COARSE, 10, 9.8, 10.2, 33);
        assertThat(list.lines()).hasSize(2);
    }

    private static void check(
            WeighOut.Line line,
            String name,
            String source,
            Role role,
            double each,
            double low,
            double high,
            double all) {
        assertThat(line.name()).isEqualTo(name);
        assertThat(line.source()).isEqualTo(source);
        assertThat(line.role()).isEqualTo(role);
        assertThat(line.each().kilograms()).isCloseTo(each, offset(1e-12));
        assertThat(line.lowest().kilograms()).isCloseTo(low, offset(1e-12));
        assertThat(line.highest().kilograms()).isCloseTo(high, offset(1e-12));
        assertThat(line.total().kilograms()).isCloseTo(all, offset(1e-12));
    }

    /**
     * 0.1 cement + 0.17 water + 0.3 sand + 0.38 stone, a quarter of it held on 37.5 mm: Vc = 0.855 m3, B' = 0.9 m3 at 5 % air.
     *
     * <pre>
     * stone passing 1064 x 0.75 x 0.01 / 0.9 = 8.866667 kg a trial
     * from the pile 8.866667 / 0.75 = 11.822222, for three trials with 10 % spare 39.013333 kg, not 29.26
     * sand 750 x 0.01 / 0.9 = 8.333333, in all 27.5 kg
     * </pre>
     */
    @Test
    void fetchesTheStoneBeforeItIsSieved() {
        CorrectionSample sieved = CorrectionSample.of(
                        MixLine.stated(
                                        "1 m3",
                                        "5",
                                        MixLine.cement("315 kg").dense("3.15"),
                                        MixLine.water("170 kg"),
                                        MixLine.fine("750 kg").dense("2.5"),
                                        MixLine.coarse("1064 kg").dense("2.8").retained("25"))
                                .withWetSieved(true),
                        new Volume(0.01))
                .value()
                .orElseThrow();
        WeighOut.Line stone = WeighOut.of(sieved, 3, 10, TWO_PERCENT).lines().get(1);
        assertThat(stone.each().kilograms()).isCloseTo(8.866667, offset(0.0000005));
        assertThat(stone.total().kilograms()).isCloseTo(39.013333, offset(0.0000005));
        assertThat(WeighOut.of(sieved, 3, 10, TWO_PERCENT)
                        .lines()
                        .get(0)
                        .total()
                        .kilograms())
                .isCloseTo(27.5, offset(1e-9));
    }

    @Test
    void takesOneTrialWithoutSpareAndNothingLess() {
        assertThat(WeighOut.of(sample(), 1, 0, TWO_PERCENT)
                        .lines()
                        .get(0)
                        .total()
                        .kilograms())
                .isCloseTo(8, offset(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeighOut.of(sample(), 0, 0, TWO_PERCENT))
                .withMessage("trials must be at least 1, but is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeighOut.of(sample(), 1, -1, TWO_PERCENT))
                .withMessage("sparePercent must be at least 0, but is -1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> WeighOut.of(sample(), 1, Double.NaN, TWO_PERCENT));
    }
}
