package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Said;
import porebench.method.profile.Profiles;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/** Doubts about a trial, either side of each limit: a value at its limit is within it. */
class TrialDoubtsTest {
    private static final Readings SOUND = TrialReadings.typeB("350", Withdrawal.Unit.MILLILITRE, "5.4");
    private static final Expected MASSES = new Expected(
            Optional.of(new Mass(5)),
            Optional.of(new Mass(7.5)),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());

    private static Expected soak(double minutes) {
        return new Expected(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(minutes),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Expected air(double percent) {
        return new Expected(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(percent),
                OptionalDouble.empty());
    }

    private static Expected scale(double top) {
        return new Expected(
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(top));
    }

    private static List<Problem> problems(Readings readings, Expected expected) {
        return TrialFactor.of(readings, expected, Profiles.standard()).problems();
    }

    private static void accepts(Readings readings, Expected expected) {
        assertThat(Said.codes(problems(readings, expected))).isEmpty();
    }

    private static void doubts(Readings readings, Expected expected, String field, String code, String words) {
        Problem problem = Said.one(problems(readings, expected), code);
        assertThat(problem.isError()).isFalse();
        assertThat(problem.field()).isEqualTo(field);
        assertThat(Said.text(problem)).isEqualTo(words);
        assertThat(TrialFactor.of(readings, expected, Profiles.standard()).counts())
                .isTrue();
    }

    @Test
    void hasNoDoubtAboutASoundTrial() {
        accepts(SOUND, Expected.UNKNOWN);
        accepts(
                TrialReadings.withSoak(TrialReadings.withMasses(SOUND, "5.00", "7.50"), "15"),
                new Expected(
                        MASSES.fine(),
                        MASSES.coarse(),
                        OptionalDouble.of(15),
                        OptionalDouble.of(5),
                        OptionalDouble.of(10)));
    }

    /** G is gauge - 5: -0.1, 0, 0.79, 0.8. At 0.8 the volumetric test is due (Kansas KT-18, seen). */
    @Test
    void doubtsANegativeAndAHighFactor() {
        doubts(
                TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "4.9"),
                Expected.UNKNOWN,
                "factor",
                "trial.factor-negative",
                "The factor -0.1 % is negative. Look for a leak, a wrong water volume or a wrong initial "
                        + "pressure line.");
        accepts(TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "5.0"), Expected.UNKNOWN);
        accepts(TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "5.79"), Expected.UNKNOWN);
        doubts(
                TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "5.8"),
                Expected.UNKNOWN,
                "factor",
                "trial.factor-high",
                "The factor 0.8 % reaches 0.8 % (Laboratory's choice, after Kansas KT-18: volumetric test at least once at"
                        + " 0.8 % or more (seen)). Make a volumetric test, and look for porous or lightweight aggregate.");
    }

    /** In binary 5.8 - 5 is 0.7999999999999998 and 5.1 - 5.1 from 357 mL of 7 L may be a hair below 0. */
    @Test
    void readsALimitAsItStandsOnPaper() {
        assertThat(5.8 - 5).isLessThan(0.8);
        assertThat(Said.codes(
                        problems(TrialReadings.typeB("350", Withdrawal.Unit.MILLILITRE, "5.8"), Expected.UNKNOWN)))
                .containsExactly("trial.factor-high");
        for (int millilitres = 70; millilitres <= 700; millilitres += 7) {
            String percent = new java.math.BigDecimal(millilitres)
                    .divide(new java.math.BigDecimal(70))
                    .toPlainString();
            accepts(
                    TrialReadings.typeB(Integer.toString(millilitres), Withdrawal.Unit.MILLILITRE, percent),
                    Expected.UNKNOWN);
        }
    }

    /** Tolerance 1 %: fine 4.95 to 5.05 kg, coarse 7.425 to 7.575 kg. */
    @ParameterizedTest
    @CsvSource({"4.95, 7.425", "5.05, 7.575", "5, 7.5", "4.95, 7.575"})
    void takesMassesWithinTheirTolerance(String fine, String coarse) {
        accepts(TrialReadings.withMasses(SOUND, fine, coarse), MASSES);
    }

    /**
     * 10 % light: 4.5 + 6.75 = 11.25 kg for 12.5 kg. G read 0.4; at the right mass 0.4 x 12.5 / 11.25 = 0.444444.
     */
    @Test
    void saysWhichMassIsOffAndWhatTheFactorWouldBe() {
        Readings light = TrialReadings.withMasses(SOUND, "4.5", "6.75");
        List<Problem> problems = problems(light, MASSES);
        assertThat(problems.stream().map(Said::text))
                .containsExactly(
                        "The fine aggregate weighed 4500 g for a target of 5000 g: -10 % off, tolerance 1 %. "
                                + "Check the mass; weigh again if it is right.",
                        "The coarse aggregate weighed 6750 g for a target of 7500 g: -10 % off, tolerance 1 %. "
                                + "Check the mass; weigh again if it is right.",
                        "With the right mass the factor would be 0.44 %. Compare the two before the trial counts.");
        assertThat(problems.stream().map(Problem::field)).containsExactly("fine", "coarse", "masses");
        assertThat(problems).noneMatch(Problem::isError);
    }

    /** A sample of k times the right masses reads k times the factor: at the right mass it is G / k. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.8", "0.8, 0.5", "1.25, 0.32", "2, 0.2"})
    void scalesTheFactorToTheRightMass(double k, double atRightMass) {
        Readings readings = TrialReadings.withMasses(SOUND, Double.toString(5 * k), Double.toString(7.5 * k));
        Problem problem = Said.one(problems(readings, MASSES), "trial.factor-at-right-mass");
        assertThat((Double) problem.values().get(0)).isCloseTo(atRightMass, offset(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"4.949, 7.5, fine", "5.051, 7.5, fine", "5, 7.424, coarse", "5, 7.576, coarse"})
    void doubtsOneMassBeyondItsTolerance(String fine, String coarse, String field) {
        List<Problem> problems = problems(TrialReadings.withMasses(SOUND, fine, coarse), MASSES);
        assertThat(Said.codes(problems)).containsExactly("trial.mass-off-target", "trial.factor-at-right-mass");
        assertThat(problems.get(0).field()).isEqualTo(field);
    }

    @Test
    void doubtsMassesThatWereNotRecordedWhereTheyAreExpected() {
        String words = "The masses of the sample were not recorded, so they cannot be checked. Type the masses, "
                + "or save the trial with the reason.";
        doubts(SOUND, MASSES, "masses", "trial.masses-missing", words);
        doubts(TrialReadings.withFine(SOUND, "5"), MASSES, "masses", "trial.masses-missing", words);
        doubts(TrialReadings.withCoarse(SOUND, "7.5"), MASSES, "masses", "trial.masses-missing", words);
        accepts(SOUND, Expected.UNKNOWN);
    }

    /** A mix without sand expects none: 0 g is right, any sand is 100 % off. No factor is scaled from nothing. */
    @Test
    void checksAMassThatShouldBeNothing() {
        Expected noSand = new Expected(
                Optional.of(new Mass(0)),
                Optional.of(new Mass(7.5)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        accepts(TrialReadings.withMasses(SOUND, "0", "7.5"), noSand);
        List<Problem> sand = problems(TrialReadings.withMasses(SOUND, "0.001", "7.5"), noSand);
        assertThat(Said.text(Said.one(sand, "trial.mass-off-target")))
                .isEqualTo("The fine aggregate weighed 1 g for a target of 0 g: 100 % off, tolerance 1 %. Check "
                        + "the mass; weigh again if it is right.");
        assertThat(Said.codes(problems(TrialReadings.withMasses(SOUND, "0", "0"), MASSES)))
                .containsExactly("trial.mass-off-target", "trial.mass-off-target");
    }

    @Test
    void needsBothTargetsToCheckMasses() {
        Expected onlyFine = new Expected(
                MASSES.fine(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Expected onlyCoarse = new Expected(
                Optional.empty(),
                MASSES.coarse(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        accepts(TrialReadings.withMasses(SOUND, "9", "9"), onlyFine);
        accepts(TrialReadings.withMasses(SOUND, "9", "9"), onlyCoarse);
    }

    /** The mix soaks 15 min, tolerance 5 min. */
    @ParameterizedTest
    @CsvSource({"10", "15", "20"})
    void takesASoakWithinItsTolerance(String minutes) {
        accepts(TrialReadings.withSoak(SOUND, minutes), soak(15));
    }

    @Test
    void doubtsAShortALongAndAMissingSoak() {
        doubts(
                TrialReadings.withSoak(SOUND, "9.9"),
                soak(15),
                "soak",
                "trial.soak-short",
                "Soaked 9.9 min, shorter than the 15 min of the mix by more than 5 min: the factor may come out "
                        + "high. Make the trial again with the full soak, or save it with the reason.");
        doubts(
                TrialReadings.withSoak(SOUND, "20.1"),
                soak(15),
                "soak",
                "trial.soak-long",
                "Soaked 20.1 min, longer than the 15 min of the mix by more than 5 min: the factor may come out "
                        + "low. Make the trial again with the right soak, or save it with the reason.");
        doubts(
                SOUND,
                soak(15),
                "soak",
                "trial.soak-missing",
                "The soak time was not recorded; the mix asks for 15 min. Type the soak time, or save the trial "
                        + "with the reason.");
        accepts(TrialReadings.withSoak(SOUND, "90"), Expected.UNKNOWN);
    }

    /** 350 mL of 7 L is 5 %; tolerance 1 %. */
    @ParameterizedTest
    @CsvSource({"4, true", "6, true", "5, true", "3.99, false", "6.01, false"})
    void comparesTheWithdrawalWithTheTargetAir(double target, boolean close) {
        if (close) {
            accepts(SOUND, air(target));
        } else {
            assertThat(Said.codes(problems(SOUND, air(target)))).containsExactly("trial.withdrawal-far");
        }
    }

    @Test
    void saysHowFarTheWithdrawalIsFromTheTargetAir() {
        doubts(
                SOUND,
                air(6.5),
                "withdrawn",
                "trial.withdrawal-far",
                "Water withdrawn is 5 % of the bowl, further than 1 % from the target air of 6.5 %. Check the "
                        + "amount; make the trial again if it is right.");
    }

    /** A reading or water that belongs to the other type is not used, and not judged by its size either. */
    @Test
    void saysWhatIsNotUsedOnTheOtherType() {
        Readings typeA = TrialReadings.both(
                TrialReadings.typeA("0.5", "0.1"), TrialReadings.typeB("350", Withdrawal.Unit.MILLILITRE, "-5"));
        TrialFactor trial = TrialFactor.of(typeA, air(9), Profiles.standard());
        assertThat(Said.codes(trial.problems()))
                .containsExactly("trial.withdrawal-on-type-a", "trial.reading-not-used");
        assertThat(Said.text(trial.problems().get(1)))
                .isEqualTo("The gauge reading is not used: the meter is a Type A. Leave it empty, or correct the "
                        + "meter.");
        assertThat(trial.factorPercent()).hasValue(0.4);
        assertThat(trial.counts()).isTrue();
        Readings typeB = TrialReadings.both(SOUND, TrialReadings.typeA("50", "-1"));
        TrialFactor other = TrialFactor.of(typeB, Expected.UNKNOWN, Profiles.standard());
        assertThat(other.problems().stream().map(Said::text))
                .containsExactly(
                        "The reading h1 is not used: the meter is a Type B. Leave it empty, or correct the meter.",
                        "The reading h2 is not used: the meter is a Type B. Leave it empty, or correct the meter.");
        assertThat(other.counts()).isTrue();
    }

    /** The scale ends where the meter says, else at the profile's 10 %. */
    @Test
    void doubtsAReadingBeyondTheScale() {
        Readings nine = TrialReadings.typeB("9", Withdrawal.Unit.PERCENT, "9.1");
        accepts(nine, scale(9.1));
        doubts(
                nine,
                scale(9),
                "gauge",
                "trial.reading-off-scale",
                "The gauge reading of 9.1 % is beyond the top of the scale, 9 %. Read again, or correct the top "
                        + "of the scale in the register of meters.");
        accepts(TrialReadings.typeB("9.9", Withdrawal.Unit.PERCENT, "10"), Expected.UNKNOWN);
        doubts(
                TrialReadings.typeB("9.9", Withdrawal.Unit.PERCENT, "10.1"),
                Expected.UNKNOWN,
                "gauge",
                "trial.reading-off-scale",
                "The gauge reading of 10.1 % is beyond the top of the scale, 10 %. Read again, or correct the "
                        + "top of the scale in the register of meters.");
        doubts(
                TrialReadings.typeA("10.1", "9.9"),
                Expected.UNKNOWN,
                "h1",
                "trial.reading-off-scale",
                "The reading h1 of 10.1 % is beyond the top of the scale, 10 %. Read again, or correct the top "
                        + "of the scale in the register of meters.");
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0.1, h1", "0.5, -0.1, h2", "100.1, 0.1, h1"})
    void refusesAReadingThatCannotBe(String h1, String h2, String field) {
        TrialFactor trial = TrialFactor.of(TrialReadings.typeA(h1, h2), scale(100), Profiles.standard());
        Problem problem = Said.one(trial.problems(), "trial.reading-impossible");
        assertThat(problem.field()).isEqualTo(field);
        assertThat(problem.isError()).isTrue();
        assertThat(trial.counts()).isFalse();
        assertThat(trial.factorPercent()).isEmpty();
        assertThat(Said.codes(problems(TrialReadings.typeA("100", "99.9"), scale(100))))
                .isEmpty();
    }

    @Test
    void refusesAGaugeReadingThatCannotBe() {
        Problem problem = Said.one(
                problems(TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "-0.1"), Expected.UNKNOWN),
                "trial.reading-impossible");
        assertThat(Said.text(problem))
                .isEqualTo("The gauge reading of -0.1 % must be from 0 to 100 %. Correct " + "it.");
        assertThat(problem.field()).isEqualTo("gauge");
        assertThat(TrialFactor.of(
                                TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "100.1"),
                                Expected.UNKNOWN,
                                Profiles.standard())
                        .factorPercent())
                .isEmpty();
    }

    /** C231: a bowl of at least 6.0 L (recalled); EN 12350-7: 5 L (seen). */
    @Test
    void doubtsABowlBelowTheLeastOfTheProfile() {
        Readings six = TrialReadings.withBowl(
                TrialReadings.typeB("5", Withdrawal.Unit.PERCENT, "5.4"), Typed.of("6.0", VolumeUnit.LITRE));
        Readings less = TrialReadings.withBowl(six, Typed.of("5.99", VolumeUnit.LITRE));
        accepts(six, Expected.UNKNOWN);
        doubts(
                less,
                Expected.UNKNOWN,
                "bowl",
                "trial.bowl-small",
                "The bowl of 5.99 L is smaller than the 6 L of ASTM C231/C231M. Use a larger bowl, or save the "
                        + "trial with the reason.");
        assertThat(TrialFactor.of(
                                less,
                                Expected.UNKNOWN,
                                Profiles.find("en-12350-7").orElseThrow())
                        .problems())
                .isEmpty();
        // 0 L is refused, not called small.
        assertThat(Said.codes(problems(TrialReadings.withBowl(six, Typed.of("0", VolumeUnit.LITRE)), Expected.UNKNOWN)))
                .containsExactly("trial.bowl-not-positive");
    }

    /** The laboratory's own tolerances are used. */
    @Test
    void judgesByTheFiguresOfTheProfile() {
        Profile strict = Profiles.standard()
                .copyAs("ours", "Ours")
                .with(FigureName.MASS_TOLERANCE, new Figure("0.1", "our manual", Mark.LABORATORY))
                .with(FigureName.SOAK_TOLERANCE, new Figure("0", "our manual", Mark.LABORATORY))
                .with(FigureName.WITHDRAWAL_TOLERANCE, new Figure("0.1", "our manual", Mark.LABORATORY))
                .with(FigureName.ADVISE_VOLUMETRIC_FROM, new Figure("0.4", "our manual", Mark.LABORATORY))
                .with(FigureName.SCALE_TOP, new Figure("5", "our manual", Mark.LABORATORY));
        Expected expected = new Expected(
                MASSES.fine(), MASSES.coarse(), OptionalDouble.of(15), OptionalDouble.of(5.2), OptionalDouble.empty());
        Readings readings = TrialReadings.withSoak(TrialReadings.withMasses(SOUND, "5.006", "7.5"), "15.5");
        assertThat(Said.codes(TrialFactor.of(readings, expected, strict).problems()))
                .containsExactlyInAnyOrder(
                        "trial.factor-high",
                        "trial.mass-off-target",
                        "trial.factor-at-right-mass",
                        "trial.soak-long",
                        "trial.withdrawal-far",
                        "trial.reading-off-scale");
        accepts(readings, expected);
    }
}
