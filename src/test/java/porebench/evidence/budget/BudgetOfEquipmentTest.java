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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.method.MeterType;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetLine;
import porebench.method.budget.BudgetPart;
import porebench.method.budget.FactorBudget;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.FieldBudget;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.budget.Sample;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.method.trial.Readings;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.SampleEquipment;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** What a budget says of the vessel, the balance and the dial check; the trials were made on 2026-03-02, 5.0 % by a vessel. */
class BudgetOfEquipmentTest {
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

    private static BudgetLine line(Budget budget, BudgetPart part) {
        return budget.lines().stream()
                .filter(line -> line.part() == part)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theMarksOfTheVesselInUseHoldBeforeTheProfile() {
        Books.keep(bench.book, SampleEquipment.equipment("VES-1", EquipmentKind.VESSEL, "0.05", "0.03"));
        assertThat(inputs().water().orElseThrow().limitPercent()).isEqualTo(0.03);
        assertThat(inputs().water().orElseThrow().limitOrigin()).isEqualTo(Origin.EQUIPMENT);
        assertThat(line(FactorBudget.of(inputs()), BudgetPart.SHARE_MEASURE).origin())
                .isEqualTo(Origin.EQUIPMENT);
        Books.keep(bench.book, SampleEquipment.uncalibrated("VES-2", EquipmentKind.VESSEL, "0.05"));
        assertThat(inputs().water().orElseThrow().limitPercent()).isEqualTo(0.05);
        assertThat(FactorBudget.of(inputs()).omissions()).contains(Omission.VESSEL_NOT_CALIBRATED);
        assertThat(line(FactorBudget.of(inputs()), BudgetPart.SHARE_MEASURE).origin())
                .isEqualTo(Origin.ASSUMED);
    }

    /** Masses of 4.900 and 7.350 kg: digits of 1 g each, and the balance's 0.3 g twice, or the usual gram. */
    @Test
    void theBalanceInUseWeighedTheSample() {
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Books.keep(bench.book, weighed("T-4"), SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "0.1", "0.3"));
        Sample sample = inputs().sample().orElseThrow();
        assertThat(sample.origin()).isEqualTo(Origin.EQUIPMENT);
        assertThat(sample.standardUncertaintyKilograms())
                .isEqualTo(Math.sqrt(2 * 1e-6 / 12 + 0.0006 * 0.0006 / 3), within(1e-9));
        Books.keep(bench.book, SampleEquipment.uncalibrated("BAL-2", EquipmentKind.BALANCE, "0.1"));
        sample = inputs().sample().orElseThrow();
        assertThat(sample.origin()).isEqualTo(Origin.ASSUMED);
        assertThat(sample.standardUncertaintyKilograms())
                .isEqualTo(Math.sqrt(2 * 1e-6 / 12 + 0.002 * 0.002 / 3), within(1e-9));
        assertThat(FactorBudget.of(inputs()).omissions()).contains(Omission.BALANCE_NOT_CALIBRATED);
    }

    /** T-3 stays without masses, so that the sample has no line, and nothing is to be said of the balance. */
    @Test
    void aBalanceThatWeighedNothingOfTheBudgetIsNotSpokenOf() {
        bench.strike(List.of("T-1", "T-2"));
        Books.keep(bench.book, weighed("T-0"), SampleEquipment.uncalibrated("BAL-1", EquipmentKind.BALANCE, "0.1"));
        assertThat(inputs().sample()).isEmpty();
        assertThat(FactorBudget.of(inputs()).omissions()).doesNotContain(Omission.BALANCE_NOT_CALIBRATED);
    }

    /** One dial checked in % of the bowl, one in mL, which is 0.04 % of 7.05 L against 0.05 %: the lesser is said as well. */
    @Test
    void whatTwoDialsWereCheckedByIsSaidOfBoth() {
        LocalDate before = DAY.minusDays(20);
        MeterCalibration shares = SampleCalibrations.dialCalibration("C-1", "B-1", before, "0.0", "5.0", "10.0");
        Books.keep(
                bench.book,
                Samples.meter("B-2", MeterType.B),
                read("T-0", "B-2"),
                shares,
                new MeterCalibration(
                        new CalibrationId("C-2"),
                        new MeterId("B-2"),
                        MeterType.B,
                        before,
                        "R. Vale",
                        shares.reason(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new DialCheck(
                                Optional.empty(),
                                Optional.empty(),
                                List.of(
                                        SampleCalibrations.point("0", CheckAmount.Unit.MILLILITRE, "0.0"),
                                        SampleCalibrations.point("353", CheckAmount.Unit.MILLILITRE, "5.0"),
                                        SampleCalibrations.point("705", CheckAmount.Unit.MILLILITRE, "10.0")),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())),
                        Optional.empty(),
                        ""),
                SampleEquipment.lastUsedOn(SampleEquipment.uncalibrated("VES-0", EquipmentKind.VESSEL, "0.05"), before),
                SampleEquipment.lastUsedOn(SampleEquipment.uncalibrated("CYL-0", EquipmentKind.CYLINDER, "1"), before));
        assertThat(inputs().dial().orElseThrow().measure().orElseThrow().wanting())
                .containsExactly(Omission.CYLINDER_NOT_CALIBRATED, Omission.VESSEL_NOT_CALIBRATED);
    }

    private static Trial read(String id, String meter) {
        Trial plain = Samples.trial(id, "M-1", "M-1/1", "5.4");
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt(),
                plain.operator(),
                new MeterId(meter),
                plain.readings(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static Trial weighed(String id) {
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
                        Optional.of(Typed.of("4.900", MassUnit.KILOGRAM)),
                        Optional.of(Typed.of("7.350", MassUnit.KILOGRAM)),
                        read.soakMinutes(),
                        read.waterCelsius(),
                        read.withdrawal(),
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

    /** The dial was checked in % of the bowl, by a vessel that was not calibrated that day; the trials had a sound one. */
    @Test
    void whatADialWasCheckedByIsSaidInTheBudgetsOfFactorAndReading() {
        LocalDate before = DAY.minusDays(20);
        Equipment old =
                SampleEquipment.lastUsedOn(SampleEquipment.uncalibrated("VES-0", EquipmentKind.VESSEL, "0.05"), before);
        Equipment sound = SampleEquipment.usedFrom(
                SampleEquipment.equipment("VES-1", EquipmentKind.VESSEL, "0.05", "0.03"), before.plusDays(1));
        Books.keep(
                bench.book, old, sound, SampleCalibrations.dialCalibration("C-1", "B-1", before, "0.0", "5.0", "10.0"));
        Budget factor = FactorBudget.of(inputs());
        assertThat(line(factor, BudgetPart.SHARE_MEASURE).origin()).isEqualTo(Origin.EQUIPMENT);
        assertThat(line(factor, BudgetPart.DIAL_MEASURE).origin()).isEqualTo(Origin.ASSUMED);
        assertThat(factor.omissions()).contains(Omission.VESSEL_NOT_CALIBRATED);
        Evidence evidence = bench.evidence();
        Budget field = FieldBudget.of(new FieldBudgetInputs(
                        evidence.determination(Bench.FIRST).orElseThrow(),
                        evidence.stories(),
                        evidence.profile(),
                        evidence.equipment(),
                        factor)
                .of(6.0, Optional.of(new MeterId("B-1")), DAY, 0.4, OptionalDouble.empty()));
        assertThat(line(field, BudgetPart.DIAL_MEASURE).origin()).isEqualTo(Origin.ASSUMED);
        assertThat(field.omissions()).containsExactly(Omission.VESSEL_NOT_CALIBRATED);
    }

    @ParameterizedTest
    @CsvSource({
        "EQUIPMENT, EQUIPMENT, EQUIPMENT",
        "EQUIPMENT, LABORATORY, LABORATORY",
        "LABORATORY, EQUIPMENT, LABORATORY",
        "LABORATORY, ASSUMED, ASSUMED",
        "ASSUMED, EQUIPMENT, ASSUMED"
    })
    void ofSeveralLimitsTheOneLeastVouchedForGivesTheOrigin(Origin one, Origin other, Origin together) {
        assertThat(MeasureLimits.least(one, other)).isEqualTo(together);
    }
}
