package porebench.evidence.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.budget.DialCorrection;
import porebench.method.budget.FactorInputs;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.method.profile.Profiles;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.LaboratoryProfile;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.SampleCalibrations;
import porebench.record.SampleEquipment;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.store.Books;

/**
 * What a budget takes of cylinder and balance where trials and dial checks share them. In a bowl of 7.050 L the 2.5 mL of the
 * cylinder are 0.25 / 7.05 = 0.035461 %, the gram of the balance 0.1 / 7.05 = 0.014184 %.
 */
class BudgetOfMeasuresTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
        bench.strike(List.of("T-1", "T-2", "T-3"));
        Books.keep(bench.book, Samples.meter("B-2", MeterType.B), trial("T-8", "B-1"));
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

    private DialCorrection.Measure measure() {
        return inputs().dial().orElseThrow().measure().orElseThrow();
    }

    /** The mix is tested by the laboratory's own profile, in which it says something about its measures. */
    private void state(FigureName name, String value) {
        Profile own = Profiles.standard().copyAs("own", "Own");
        Books.keep(bench.book, new LaboratoryProfile(own.with(name, new Figure(value, "Looked up", Mark.LABORATORY))));
        MixDesign mix = bench.mix();
        Books.correct(
                bench.book,
                new MixDesign(
                        mix.id(),
                        mix.title(),
                        mix.batch(),
                        mix.soakMinutes(),
                        mix.airTolerancePercent(),
                        "own",
                        "",
                        Optional.empty()));
    }

    /** A trial whose 352.5 mL were measured by a cylinder. */
    private static Trial trial(String id, String meter) {
        Trial plain = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings read = plain.readings();
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt(),
                plain.operator(),
                new MeterId(meter),
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        read.fine(),
                        read.coarse(),
                        read.soakMinutes(),
                        Samples.some("20.0"),
                        Optional.of(new Withdrawal(Samples.number("352.5"), Withdrawal.Unit.MILLILITRE)),
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

    /** A dial that was found right with water measured in one way. */
    private void checkDial(String id, String meter, CheckAmount.Unit unit) {
        MeterCalibration any = SampleCalibrations.dialCalibration(id, meter, DAY, "0", "5", "10");
        Books.keep(
                bench.book,
                new MeterCalibration(
                        any.id(),
                        any.meterId(),
                        any.meterType(),
                        DAY,
                        any.by(),
                        any.reason(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new DialCheck(
                                Optional.empty(),
                                Samples.some("20.0"),
                                List.of(
                                        SampleCalibrations.point("352.5", unit, "5.0"),
                                        SampleCalibrations.point("705.0", unit, "10.0")),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())),
                        Optional.empty(),
                        ""));
    }

    @Test
    void oneCylinderForTrialsAndDialMovesBothAlikeWhereTheLaboratorySaysSo() {
        checkDial("C-1", "B-1", CheckAmount.Unit.MILLILITRE);
        assertThat(measure().isOfTheTrials()).isFalse();
        state(FigureName.ONE_MEASURE, "yes");
        assertThat(measure().isOfTheTrials()).isTrue();
        assertThat(measure().limitPercent()).isEqualTo(0.035461, within(1e-6));
        Books.keep(bench.book, trial("T-9", "B-2"));
        checkDial("C-2", "B-2", CheckAmount.Unit.MILLILITRE);
        assertThat(measure().isOfTheTrials()).isTrue();
    }

    @Test
    void ofTwoDialsTheOneCheckedWorseStandsForBothWhicheverComesFirst() {
        state(FigureName.ONE_MEASURE, "yes");
        checkDial("C-1", "B-1", CheckAmount.Unit.MILLILITRE);
        Books.keep(bench.book, trial("T-9", "B-2"));
        checkDial("C-2", "B-2", CheckAmount.Unit.GRAM);
        assertThat(measure().limitPercent()).isEqualTo(0.035461, within(1e-6));
        assertThat(measure().isOfTheTrials()).isFalse();
        bench.strike(List.of("T-8"));
        assertThat(measure().limitPercent()).isEqualTo(0.014184, within(1e-6));
        Books.keep(bench.book, trial("T-91", "B-1"));
        assertThat(measure().limitPercent()).isEqualTo(0.035461, within(1e-6));
        assertThat(measure().isOfTheTrials()).isFalse();
    }

    @Test
    void theLimitOfTheWaterIsAssumedUntilTheLaboratoryStatesItsOwn() {
        assertThat(inputs().water().orElseThrow().limitOrigin()).isEqualTo(Origin.ASSUMED);
        state(FigureName.CYLINDER_LIMIT, "1.0");
        assertThat(inputs().water().orElseThrow().limitOrigin()).isEqualTo(Origin.LABORATORY);
        assertThat(inputs().water().orElseThrow().limitMillilitres()).isEqualTo(1.0);
    }

    /** The trial that counts was made on 2026-03-02 with a cylinder. */
    @Test
    void theEquipmentInUseOnTheDayOfATrialHoldsBeforeTheProfile() {
        state(FigureName.CYLINDER_LIMIT, "1.5");
        Books.keep(bench.book, SampleEquipment.equipment("CYL-1", EquipmentKind.CYLINDER, "1", "0.8"));
        FactorInputs inputs = inputs();
        assertThat(inputs.water().orElseThrow().limitMillilitres()).isEqualTo(0.8);
        assertThat(inputs.water().orElseThrow().limitOrigin()).isEqualTo(Origin.EQUIPMENT);
        assertThat(inputs.noted()).doesNotContain(Omission.CYLINDER_NOT_CALIBRATED);
        Books.keep(bench.book, SampleEquipment.uncalibrated("CYL-2", EquipmentKind.CYLINDER, "1"));
        inputs = inputs();
        assertThat(inputs.water().orElseThrow().limitMillilitres()).isEqualTo(1.5);
        assertThat(inputs.water().orElseThrow().limitOrigin()).isEqualTo(Origin.ASSUMED);
        assertThat(inputs.noted()).contains(Omission.CYLINDER_NOT_CALIBRATED);
        Books.correct(
                bench.book,
                SampleEquipment.lastUsedOn(
                        SampleEquipment.uncalibrated("CYL-2", EquipmentKind.CYLINDER, "1"), DAY.minusDays(1)));
        assertThat(inputs().water().orElseThrow().limitOrigin()).isEqualTo(Origin.EQUIPMENT);
    }

    @Test
    void aNewCalibrationLeavesTheTrialsBeforeItAsTheyWere() {
        Equipment first = SampleEquipment.equipment("CYL-1", EquipmentKind.CYLINDER, "1", "0.8");
        Books.keep(bench.book, first);
        Books.correct(bench.book, SampleEquipment.calibrated(first, DAY.plusDays(1), "2"));
        assertThat(inputs().water().orElseThrow().limitMillilitres()).isEqualTo(0.8);
        Books.correct(bench.book, SampleEquipment.calibrated(first, DAY, "0.9"));
        assertThat(inputs().water().orElseThrow().limitMillilitres()).isEqualTo(0.9);
    }

    @Test
    void theOneCylinderOfTheLaboratoryMovesTrialsAndDialAlike() {
        checkDial("C-1", "B-1", CheckAmount.Unit.MILLILITRE);
        Books.keep(bench.book, SampleEquipment.equipment("CYL-1", EquipmentKind.CYLINDER, "1", "0.8"));
        assertThat(measure().isOfTheTrials()).isTrue();
        assertThat(measure().origin()).isEqualTo(Origin.EQUIPMENT);
        Books.keep(bench.book, SampleEquipment.equipment("CYL-2", EquipmentKind.CYLINDER, "1", "0.8"));
        assertThat(measure().isOfTheTrials()).isFalse();
    }
}
