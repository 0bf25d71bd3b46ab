package porebench.evidence.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.MeterStory;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.budget.DialCorrection;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.DialCheck;
import porebench.method.profile.Profiles;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.SampleEquipment;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/**
 * How far the known air of a dial check may be wrong. The bowl holds 7.050 L, the limits are those of the standard profile: a
 * cylinder 2.5 mL, a balance 1 g, a vessel marked in % of the bowl 0.05 %.
 */
class DialMeasureTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "for a test");

    private static CheckPoint millilitres(String amount, String gauge) {
        return SampleCalibrations.point(amount, CheckAmount.Unit.MILLILITRE, gauge);
    }

    /** What the laboratory states of its own measures. */
    private static Profile stating(FigureName name, String value) {
        return Profiles.standard().copyAs("own", "Own").with(name, new Figure(value, "Looked up", Mark.LABORATORY));
    }

    private static MeterStory story(Profile profile, CheckPoint... points) {
        MeterCalibration any = SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0", "5", "10");
        MeterCalibration checked = new MeterCalibration(
                any.id(),
                any.meterId(),
                any.meterType(),
                DAY,
                "R. Vale",
                any.reason(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new DialCheck(
                        Optional.of(Typed.of("352.0", MassUnit.GRAM)),
                        Samples.some("20.0"),
                        List.of(points),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
                Optional.empty(),
                "");
        return MeterStory.of(
                new Version<>(Samples.meter("B-1", MeterType.B), 1, STAMP),
                List.of(new Version<>(checked, 1, STAMP)),
                profile);
    }

    private static Optional<DialCorrection.Measure> measure(
            Profile profile, double reading, Set<Withdrawal.Unit> ofTrials, CheckPoint... points) {
        return measure(profile, LaboratoryEquipment.NONE, DAY, reading, ofTrials, points);
    }

    private static Optional<DialCorrection.Measure> measure(
            Profile profile,
            LaboratoryEquipment equipment,
            LocalDate day,
            double reading,
            Set<Withdrawal.Unit> ofTrials,
            CheckPoint... points) {
        return new DialMeasure(new MeasureLimits(profile, equipment))
                .of(story(profile, points), day, reading, new DialMeasure.Uses(ofTrials, List.of(day)));
    }

    private static DialCorrection.Measure byCylinder(Profile profile, Set<Withdrawal.Unit> ofTrials) {
        return measure(profile, 5, ofTrials, millilitres("353", "5.0"), millilitres("705", "10.0"))
                .orElseThrow();
    }

    /** 2.5 mL are 0.25 % of a litre, and so 0.25 / 7.05 = 0.035461 % of the bowl. */
    @Test
    void aCylinderIsWrongByItsMillilitresInTheBowl() {
        assertThat(byCylinder(Profiles.standard(), Set.of()).limitPercent()).isEqualTo(0.035461, within(1e-6));
    }

    /** Nothing was poured at zero: that its amount is written in % of the bowl makes no vessel of the cylinder. */
    @Test
    void aPointWithoutWaterSaysNothingAboutTheMeasure() {
        DialCorrection.Measure measure = measure(
                        Profiles.standard(),
                        5,
                        Set.of(),
                        SampleCalibrations.point("0", CheckAmount.Unit.PERCENT, "0.0"),
                        millilitres("353", "5.0"),
                        millilitres("705", "10.0"))
                .orElseThrow();
        assertThat(measure.limitPercent()).isEqualTo(0.035461, within(1e-6));
    }

    /** One vessel of 352.0 g weighed to 1 g is wrong by one part in 352: at a reading of 5 % by 5 / 352 = 0.0142045 %. */
    @Test
    void aVesselThatWasWeighedIsWrongByTheShareThatItsWeighingIs() {
        CheckPoint one = SampleCalibrations.point("1", CheckAmount.Unit.VESSELS, "5.0");
        CheckPoint two = SampleCalibrations.point("2", CheckAmount.Unit.VESSELS, "10.0");
        DialCorrection.Measure measure =
                measure(Profiles.standard(), 5, Set.of(), one, two).orElseThrow();
        assertThat(measure.limitPercent()).isEqualTo(0.0142045, within(1e-7));
        assertThat(measure(Profiles.standard(), 0, Set.of(), one, two)).isEmpty();
    }

    @Test
    void aMeasureOfWhichTheLaboratoryStatedTheLimitIsItsOwn() {
        Profile stated = stating(FigureName.CYLINDER_LIMIT, "1.0");
        assertThat(byCylinder(stated, Set.of()).limitPercent()).isEqualTo(0.0141844, within(1e-7));
        assertThat(byCylinder(stated, Set.of()).origin()).isEqualTo(Origin.LABORATORY);
        assertThat(byCylinder(Profiles.standard(), Set.of()).origin()).isEqualTo(Origin.ASSUMED);
        assertThat(byCylinder(stating(FigureName.ONE_MEASURE, "yes"), Set.of()).origin())
                .as("what the laboratory stated is another figure")
                .isEqualTo(Origin.ASSUMED);
    }

    @Test
    void trialsShareTheMeasureWhereTheLaboratorySaysSoAndAllWaterWasMeasuredInOneWay() {
        Profile one = stating(FigureName.ONE_MEASURE, "yes");
        Set<Withdrawal.Unit> cylinder = Set.of(Withdrawal.Unit.MILLILITRE);
        assertThat(byCylinder(one, cylinder).isOfTheTrials()).isTrue();
        assertThat(byCylinder(Profiles.standard(), cylinder).isOfTheTrials()).isFalse();
        assertThat(byCylinder(one, Set.of(Withdrawal.Unit.GRAM)).isOfTheTrials())
                .isFalse();
        assertThat(byCylinder(one, Set.of(Withdrawal.Unit.MILLILITRE, Withdrawal.Unit.GRAM))
                        .isOfTheTrials())
                .isFalse();
        assertThat(byCylinder(one, Set.of()).isOfTheTrials()).isFalse();
    }

    /** Cylinder and balance at the check, both at the trials: nobody knows which water was measured by which. */
    @Test
    void twoMeasuresAreNeverShared() {
        Profile one = stating(FigureName.ONE_MEASURE, "yes");
        CheckPoint weighed = SampleCalibrations.point("704", CheckAmount.Unit.GRAM, "10.0");
        assertThat(measure(
                                one,
                                5,
                                Set.of(Withdrawal.Unit.MILLILITRE, Withdrawal.Unit.GRAM),
                                millilitres("353", "5.0"),
                                weighed)
                        .orElseThrow()
                        .isOfTheTrials())
                .isFalse();
        assertThat(measure(
                                one,
                                5,
                                Set.of(Withdrawal.Unit.GRAM),
                                SampleCalibrations.point("1", CheckAmount.Unit.VESSELS, "5.0"),
                                weighed)
                        .orElseThrow()
                        .isOfTheTrials())
                .isFalse();
    }

    private static final EquipmentKind CYLINDER = EquipmentKind.CYLINDER;

    /** 1 mL in 7.05 L is 0.1 / 7.05 = 0.0141844 %. */
    @Test
    void theLimitIsThatOfTheCylinderInUseOnTheDayOfTheCheck() {
        Equipment gone = SampleEquipment.lastUsedOn(SampleEquipment.equipment("CYL-1", CYLINDER, "1", "1"), DAY);
        Equipment come =
                SampleEquipment.usedFrom(SampleEquipment.equipment("CYL-2", CYLINDER, "1", "2"), DAY.plusDays(1));
        DialCorrection.Measure measure = measure(
                        Profiles.standard(),
                        LaboratoryEquipment.ofFile(List.of(gone, come)),
                        DAY.plusDays(30),
                        5,
                        Set.of(Withdrawal.Unit.MILLILITRE),
                        millilitres("353", "5.0"),
                        millilitres("705", "10.0"))
                .orElseThrow();
        assertThat(measure.limitPercent()).isEqualTo(0.0141844, within(1e-7));
        assertThat(measure.origin()).isEqualTo(Origin.EQUIPMENT);
        assertThat(measure.wanting()).isEmpty();
        assertThat(measure.isOfTheTrials())
                .as("the trials had another cylinder")
                .isFalse();
    }

    @Test
    void theOneCylinderOfTheLaboratoryMadeCheckAndTrialsWhateverTheProfileSays() {
        Equipment only = SampleEquipment.equipment("CYL-1", CYLINDER, "1", "1");
        Equipment other = SampleEquipment.equipment("CYL-2", CYLINDER, "1", "1");
        Set<Withdrawal.Unit> cylinder = Set.of(Withdrawal.Unit.MILLILITRE);
        CheckPoint[] points = {millilitres("353", "5.0"), millilitres("705", "10.0")};
        Profile one = stating(FigureName.ONE_MEASURE, "yes");
        assertThat(measure(Profiles.standard(), LaboratoryEquipment.ofFile(List.of(only)), DAY, 5, cylinder, points))
                .map(DialCorrection.Measure::isOfTheTrials)
                .contains(true);
        assertThat(measure(one, LaboratoryEquipment.ofFile(List.of(only, other)), DAY, 5, cylinder, points))
                .map(DialCorrection.Measure::isOfTheTrials)
                .contains(false);
        Equipment balance = SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "1", "1");
        assertThat(measure(one, LaboratoryEquipment.ofFile(List.of(balance)), DAY, 5, cylinder, points))
                .map(DialCorrection.Measure::isOfTheTrials)
                .contains(true);
    }

    /** A vessel of 352.0 g weighed to 0.5 g: 5 x 0.5 / 352 = 0.0071023 %. */
    @Test
    void aVesselWasWeighedOnTheBalanceOfThatDay() {
        Equipment balance = SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "0.1", "0.5");
        CheckPoint[] points = {
            SampleCalibrations.point("1", CheckAmount.Unit.VESSELS, "5.0"),
            SampleCalibrations.point("2", CheckAmount.Unit.VESSELS, "10.0")
        };
        DialCorrection.Measure measure = measure(
                        Profiles.standard(), LaboratoryEquipment.ofFile(List.of(balance)), DAY, 5, Set.of(), points)
                .orElseThrow();
        assertThat(measure.limitPercent()).isEqualTo(0.0071023, within(1e-7));
        assertThat(measure.origin()).isEqualTo(Origin.EQUIPMENT);
        assertThat(measure(
                        Profiles.standard(),
                        LaboratoryEquipment.ofFile(
                                List.of(SampleEquipment.uncalibrated("BAL-1", EquipmentKind.BALANCE, "0.1"))),
                        DAY,
                        5,
                        Set.of(),
                        points))
                .map(DialCorrection.Measure::wanting)
                .contains(Set.of(Omission.BALANCE_NOT_CALIBRATED));
    }

    /** Water by cylinder, by balance and in % of the bowl: what is said of each stands in one order, run after run. */
    @Test
    void everyMeasureWithoutACalibrationIsSaid() {
        DialCorrection.Measure measure = measure(
                        Profiles.standard(),
                        LaboratoryEquipment.ofFile(List.of(
                                SampleEquipment.uncalibrated("VES-1", EquipmentKind.VESSEL, "0.05"),
                                SampleEquipment.uncalibrated("BAL-1", EquipmentKind.BALANCE, "0.1"),
                                SampleEquipment.uncalibrated("CYL-1", CYLINDER, "1"))),
                        DAY,
                        5,
                        Set.of(),
                        SampleCalibrations.point("2.5", CheckAmount.Unit.PERCENT, "2.5"),
                        SampleCalibrations.point("352", CheckAmount.Unit.GRAM, "5.0"),
                        millilitres("705", "10.0"))
                .orElseThrow();
        assertThat(measure.wanting())
                .containsExactly(
                        Omission.CYLINDER_NOT_CALIBRATED,
                        Omission.BALANCE_NOT_CALIBRATED,
                        Omission.VESSEL_NOT_CALIBRATED);
    }
}
