package porebench.evidence.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterScale;
import porebench.method.MeterType;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetPart;
import porebench.method.budget.DialCorrection;
import porebench.method.budget.FactorBudget;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.FieldInputs;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.budget.Sample;
import porebench.method.budget.Water;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** What a budget is made of comes from the lab book as it was on the days of the trials. */
class BudgetInputsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private FactorInputs inputs() {
        Evidence evidence = bench.evidence();
        return BudgetInputs.of(evidence, evidence.determination(Bench.FIRST).orElseThrow(), LaboratoryScatter.NONE)
                .orElseThrow();
    }

    private static Trial trial(String id, Withdrawal withdrawal, String fine, String coarse) {
        Trial plain = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings read = plain.readings();
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt(),
                plain.operator(),
                plain.meterId(),
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        Optional.of(Typed.of(fine, MassUnit.KILOGRAM)),
                        Optional.of(Typed.of(coarse, MassUnit.KILOGRAM)),
                        read.soakMinutes(),
                        Samples.some("20.0"),
                        Optional.of(withdrawal),
                        read.gaugePercent(),
                        read.h1Percent(),
                        read.h2Percent(),
                        false),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** Readings 5.4, 5.4, 5.5 less 5.0 % each, in a bowl stated as 7.050 L and never weighed. */
    @Test
    void takesReadingsAsTypedWhereNothingWasCalibrated() {
        FactorInputs inputs = inputs();
        assertThat(inputs.meterType()).isEqualTo(MeterType.B);
        assertThat(inputs.factors().mean()).isEqualTo(0.4333333, within(1e-6));
        assertThat(inputs.readingPercent()).isEqualTo(5.4333333, within(1e-6));
        assertThat(inputs.divisionPercent()).isEqualTo(0.1);
        assertThat(inputs.dial()).isEmpty();
        assertThat(inputs.bowl().litres()).isEqualTo(7.05, within(1e-12));
        assertThat(inputs.bowl().isWeighed()).isFalse();
        // A thousandth of a litre over the root of 12.
        assertThat(inputs.bowl().standardUncertaintyLitres()).isEqualTo(0.000288675, within(1e-9));
        Water water = inputs.water().orElseThrow();
        assertThat(water.sharePercent()).isEqualTo(5, within(1e-12));
        assertThat(water.stepPercent()).isEqualTo(0.1);
        assertThat(water.limitPercent()).isEqualTo(0.05);
        assertThat(water.millilitres()).isZero();
        assertThat(inputs.sample()).isEmpty();
        Budget budget = FactorBudget.of(inputs);
        assertThat(budget.valuePercent()).isEqualTo(inputs.factors().mean(), within(1e-12));
        assertThat(budget.omissions())
                .containsExactly(Omission.DIAL_NEVER_CHECKED, Omission.SAMPLE_NOT_STATED, Omission.OCCASIONS);
    }

    /**
     * A dial that reads 5.05 of 5 and 10.10 of 10 is wrong by one part in 101. Its knots were read to 0.1 and poured to 1 %: the
     * check states 0, 5 and 10 % as whole numbers.
     */
    @Test
    void takesTheDialAndTheBowlInForceOnTheDay() {
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"),
                SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.05", "10.10"));
        FactorInputs inputs = inputs();
        DialCorrection dial = inputs.dial().orElseThrow();
        // The mean reading is 5.4333: 5.4333 / 1.01 less that.
        assertThat(dial.correctionPercent()).isEqualTo(-5.4333333 / 101, within(1e-6));
        assertThat(dial.degreesOfFreedom()).isInfinite();
        assertThat(dial.restsOnBowl()).isFalse();
        // Checked with a vessel marked in % of the bowl, as the trials: one or two of them, nobody said.
        assertThat(dial.measure().orElseThrow().limitPercent()).isEqualTo(0.05);
        assertThat(dial.measure().orElseThrow().origin()).isEqualTo(Origin.ASSUMED);
        assertThat(dial.measure().orElseThrow().isOfTheTrials()).isFalse();
        // At 5.5 of knots 5.05 and 10.10 each with u^2 = (0.01 + 1) / 12; 5.4 has less of the far one and so a larger
        // u.
        double u = Math.sqrt(1.01 / 12);
        double part = (5.4 - 5.05) / 5.05;
        assertThat(dial.standardUncertaintyPercent()).isEqualTo(u * Math.hypot(1 - part, part), within(1e-9));
        assertThat(inputs.bowl().isWeighed()).isTrue();
        assertThat(inputs.bowl().litres()).isEqualTo(7.04964, within(1e-4));
        assertThat(inputs.noted())
                .containsExactlyInAnyOrder(Omission.BOWL_ONE_FILL, Omission.BOWL_BUOYANCY, Omission.OCCASIONS);
        assertThat(FactorBudget.of(inputs).valuePercent())
                .isEqualTo(inputs.factors().mean(), within(1e-9));
    }

    /** Checked with measured water in the volume in force, an error of the bowl moves reading and water alike. */
    @Test
    void knowsWhenTheDialRestsOnTheBowl() {
        MeterCalibration shares = SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.0", "5.0", "10.0");
        DialCheck check = shares.dial().orElseThrow();
        DialCheck measured = new DialCheck(
                Optional.empty(),
                Optional.empty(),
                List.of(
                        SampleCalibrations.point("0", CheckAmount.Unit.MILLILITRE, "0.0"),
                        SampleCalibrations.point("353", CheckAmount.Unit.MILLILITRE, "5.0"),
                        SampleCalibrations.point("353", CheckAmount.Unit.MILLILITRE, "5.2"),
                        SampleCalibrations.point("705", CheckAmount.Unit.MILLILITRE, "10.0")),
                check.initialLine(),
                check.leakMarks(),
                check.chamber(),
                check.initialPressure());
        Books.keep(
                bench.book,
                SampleCalibrations.bowlCalibration("C-1", "B-1", DAY, "11.207"),
                new MeterCalibration(
                        shares.id(),
                        shares.meterId(),
                        shares.meterType(),
                        DAY,
                        "",
                        shares.reason(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(measured),
                        Optional.empty(),
                        ""));
        DialCorrection dial = inputs().dial().orElseThrow();
        assertThat(dial.restsOnBowl()).isTrue();
        // One repeat, 5.0 and 5.2, has one degree of freedom; the step of the dial adds to the uncertainty and not to
        // the doubt.
        assertThat(dial.degreesOfFreedom()).isBetween(1.0, 3.0);
        Books.keep(bench.book, SampleCalibrations.bowlCalibration("C-3", "B-1", DAY, "11.217"));
        assertThat(inputs().dial().orElseThrow().restsOnBowl()).isFalse();
    }

    /** Of the two ways of measuring, the worse digits and limits stand for all; kilograms are the mean of the trials. */
    @Test
    void takesWaterAndSampleAsMeasured() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Books.keep(
                bench.book,
                trial("T-4", new Withdrawal(Samples.number("352.5"), Withdrawal.Unit.MILLILITRE), "4.900", "7.350"),
                trial("T-5", new Withdrawal(Samples.number("352"), Withdrawal.Unit.GRAM), "4.90", "7.37"));
        FactorInputs inputs = inputs();
        Water water = inputs.water().orElseThrow();
        assertThat(water.sharePercent()).isZero();
        // 352.5 mL and 352 g at 998.207 kg/m3, 352.632 mL.
        assertThat(water.millilitres()).isEqualTo(352.566, within(0.001));
        assertThat(water.stepMillilitres()).isEqualTo(1);
        assertThat(water.limitMillilitres()).isEqualTo(2.5);
        Sample sample = inputs.sample().orElseThrow();
        assertThat(sample.kilograms()).isEqualTo(12.26, within(1e-9));
        // Twice 0.01^2 / 12 of the digits; the balance weighs both masses with one error: (2 x 0.001)^2 / 3.
        assertThat(sample.standardUncertaintyKilograms()).isEqualTo(Math.sqrt(2 * 1e-4 / 12 + 4e-6 / 3), within(1e-9));
        Budget budget = FactorBudget.of(inputs);
        assertThat(budget.valuePercent()).isEqualTo(inputs.factors().mean(), within(1e-9));
        assertThat(budget.lines()).extracting(line -> line.part()).contains(BudgetPart.BOWL, BudgetPart.SAMPLE);
        assertThat(budget.omissions())
                .containsExactly(Omission.DIAL_NEVER_CHECKED, Omission.BOWL_NEVER_WEIGHED, Omission.OCCASIONS);
    }

    @Test
    void hasNoneWhereNoTrialCounts() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Evidence evidence = bench.evidence();
        assertThat(BudgetInputs.of(evidence, evidence.determination(Bench.FIRST).orElseThrow(), LaboratoryScatter.NONE))
                .isEmpty();
    }

    @Test
    void notesSeveralMetersAndReadsTypeATwice() {
        Trial plain = Samples.trial("T-6", "M-1", "M-1/1", "5.4");
        Readings read = plain.readings();
        Trial typeA = new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt(),
                plain.operator(),
                new MeterId("A-1"),
                new Readings(
                        MeterType.A,
                        Typed.of("7.98", VolumeUnit.LITRE),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Samples.some("0.70"),
                        Samples.some("0.30"),
                        false),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
        Books.keep(bench.book, Samples.meter("A-1", MeterType.A), typeA);
        assertThat(read.meterType()).isEqualTo(MeterType.B);
        FactorInputs inputs = inputs();
        assertThat(inputs.meterType()).isEqualTo(MeterType.A);
        assertThat(inputs.noted()).contains(Omission.SEVERAL_METERS);
        assertThat(inputs.water()).isEmpty();
        assertThat(FactorBudget.of(inputs).valuePercent())
                .isEqualTo(inputs.factors().mean(), within(1e-12));
    }

    /** The dial of the field reading is that of its own meter on its own day. */
    @Test
    void takesTheMeterOfAFieldReading() {
        Books.keep(bench.book, SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.05", "10.10"));
        Budget factor = FactorBudget.of(inputs());
        Evidence evidence = bench.evidence();
        MeterId meter = new MeterId("B-1");
        FieldBudgetInputs records = new FieldBudgetInputs(
                evidence.determination(Bench.FIRST).orElseThrow(),
                evidence.stories(),
                evidence.profile(),
                LaboratoryEquipment.NONE,
                factor);
        FieldInputs field = records.of(6.06, Optional.of(meter), DAY, 0.4, OptionalDouble.of(0.1));
        assertThat(field.dial().orElseThrow().correctionPercent()).isEqualTo(-0.06, within(1e-9));
        // C231, multi-operator, recalled.
        assertThat(field.scatterPercent()).isEqualTo(0.28);
        assertThat(field.factor()).isSameAs(factor);
        // Trials at 5.4333 and load at 6.06 between the knots 5.05 and 10.10, known alike: 0.9241 and 0.0759 of them
        // there, 0.8 and
        // 0.2 here; 0.75446 / sqrt(0.85972 x 0.68).
        assertThat(field.dialCoefficient()).isEqualTo(0.98674, within(1e-4));
        assertThat(field.isMeasureShared()).isTrue();
        FieldInputs before = records.of(6.06, Optional.of(meter), DAY.minusDays(1), 0.4, OptionalDouble.empty());
        assertThat(before.dial()).isEmpty();
        assertThat(before.dialCoefficient()).isZero();
        assertThat(before.isMeasureShared()).isFalse();
        FieldInputs other = records.of(6.06, Optional.of(new MeterId("E-9")), DAY, 0.4, OptionalDouble.empty());
        assertThat(other.isMeasureShared()).isFalse();
        assertThat(records.of(6.06, Optional.empty(), DAY, 0.4, OptionalDouble.empty())
                        .divisionPercent())
                .isEqualTo(MeterScale.USUAL_DIVISION_PERCENT);
    }

    /** B-2 reads like B-1, but another vessel may have been filled for it: nothing of its error is that of the trials. */
    @Test
    void anotherMeterSharesNothingWithTheDialOfTheTrials() {
        Books.keep(
                bench.book,
                Samples.meter("B-2", MeterType.B),
                SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.00", "5.05", "10.10"),
                SampleCalibrations.dialCalibration("C-3", "B-2", DAY, "0.00", "5.05", "10.10"));
        Evidence evidence = bench.evidence();
        FieldBudgetInputs records = new FieldBudgetInputs(
                evidence.determination(Bench.FIRST).orElseThrow(),
                evidence.stories(),
                evidence.profile(),
                LaboratoryEquipment.NONE,
                FactorBudget.of(inputs()));
        FieldInputs field = records.of(6.06, Optional.of(new MeterId("B-2")), DAY, 0.4, OptionalDouble.empty());
        assertThat(field.dial()).isPresent();
        assertThat(field.isMeasureShared()).isFalse();
        assertThat(field.dialCoefficient()).isZero();
    }
}
