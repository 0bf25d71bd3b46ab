package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.UnitSystem;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.trial.TrialFactor;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Determination;
import porebench.record.Laboratory;
import porebench.record.SampleCalibrations;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.column.TrialColumns;

class BenchModelTest {
    private final BenchBook bench = new BenchBook();

    private TrialsModel model() {
        return new TrialsModel(bench.select().desk);
    }

    private static void typeWholeTrial(BenchModel entry, String gauge) {
        entry.type(TrialColumns.FINE, "4905.0");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WATER, "21.50");
        entry.type(TrialColumns.WITHDRAWN, "420.0");
        entry.type(TrialColumns.GAUGE, gauge);
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    private Trial kept(String id) {
        return bench.book.latest(Trial.class, id).map(Version::value).orElseThrow();
    }

    @Test
    void theFactorFollowsTheDialOfTheDayAndTheOneAsTypedIsAtHand() {
        bench.keep(
                SampleCalibrations.bowlCalibration("C-1", "B-1", BenchBook.TODAY, "11.157"),
                SampleCalibrations.dialCalibration("C-2", "B-1", BenchBook.TODAY, "0.00", "5.05", "10.10"));
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "6.06");
        TrialFactor figures = entry.read().figures().orElseThrow();
        // 6.06 / 1.01 = 6.00 % true air; 11.157 - 3.450 - 0.720 = 6.987 kg, / 998.207 = 6.99955 L, which is the 7.000
        // typed.
        assertThat(figures.factorPercent().orElseThrow()).isEqualTo(6.00 - 100 * 0.4200 / 6.99955, within(1e-5));
        // 6.06 - 100 x 420 / 7000
        assertThat(figures.uncorrectedPercent().orElseThrow()).isEqualTo(0.06, within(1e-9));
    }

    @Test
    void aTrialIsEnteredInTheBowlOfItsDay() {
        // 11.217 - 3.450 - 0.720 = 7.047 kg, / 998.207 = 7.0597 L from today on; the register says 7.000 L.
        bench.keep(SampleCalibrations.bowlCalibration("C-1", "B-1", BenchBook.TODAY, "11.217"));
        BenchModel entry = model().entry();
        assertThat(entry.bowl()).map(Object::toString).contains("7.0597 L");
        typeWholeTrial(entry, "6.40");
        assertThat(codes(entry.read().problems())).doesNotContain("trial.bowl-not-in-force");
        entry.type(TrialColumns.TESTED_AT, BenchBook.TODAY.minusDays(1) + " 09:00");
        assertThat(entry.bowl()).map(Object::toString).contains("7.000 L");
    }

    @Test
    void aTrialTypedIntoATrainingBookIsNoRealOne() {
        bench.keep(new Laboratory("Training", "", true));
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "6.40");
        assertThat(entry.attempt()).isEmpty();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        assertThat(kept("K7-T1").simulated()).isTrue();
    }

    @Test
    void aFirstTrialIsKeptWithItsDigitsTogetherWithItsDetermination() {
        TrialsModel model = model();
        BenchModel entry = model.entry();
        typeWholeTrial(entry, "6.40");
        entry.type(TrialColumns.REMARKS, "  steady  ");
        assertThat(entry.attempt()).isEmpty();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();

        Trial trial = kept("K7-T1");
        assertThat(trial.readings().fine()).contains(Typed.of("4905.0", MassUnit.GRAM));
        assertThat(trial.readings().coarse()).contains(Typed.of("7350", MassUnit.GRAM));
        assertThat(trial.readings().gaugePercent().orElseThrow().toPlainString())
                .isEqualTo("6.40");
        assertThat(trial.readings().waterCelsius().orElseThrow().toPlainString())
                .isEqualTo("21.50");
        assertThat(trial.readings().withdrawal().orElseThrow().number().toPlainString())
                .isEqualTo("420.0");
        assertThat(trial.readings().withdrawal().orElseThrow().unit()).isEqualTo(Withdrawal.Unit.MILLILITRE);
        assertThat(trial.readings().bowl()).isEqualTo(Typed.of("7.000", VolumeUnit.LITRE));
        assertThat(trial.remarks()).isEqualTo("steady");
        assertThat(trial.operator()).isEqualTo("R. Vane");
        assertThat(trial.testedAt()).isEqualTo(LocalDateTime.of(2026, 3, 4, 9, 30));
        Version<Determination> begun =
                bench.book.latest(Determination.class, "K7/1").orElseThrow();
        assertThat(trial.determinationId()).isEqualTo(begun.value().id());
        assertThat(begun.value().openedOn()).isEqualTo(BenchBook.TODAY);
        // 6.40 % read less 420 mL of 7.000 L, that is 6 %.
        assertThat(model.rows()).hasSize(1);
        assertThat(model.rows().get(0).judged().factorPercent().orElseThrow()).isCloseTo(0.40, within(1e-12));
    }

    @Test
    void aTrialIsRefusedWhoseNameHidesSomethingOrLooksLikeAnother() {
        TrialsModel model = model();
        BenchModel entry = model.entry();
        typeWholeTrial(entry, "6.40");
        entry.type(TrialColumns.ID, "K7-T1\u200B");
        assertThat(codes(entry.attempt())).containsExactly("text.unseen");
        assertThat(codes(Refused.by(out -> entry.keep(Optional.empty(), "entered", out))))
                .containsExactly("text.unseen");
        entry.type(TrialColumns.ID, "K7-T1");
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        typeWholeTrial(entry, "6.40");
        entry.type(TrialColumns.ID, "\uFF2B7-T1");
        assertThat(codes(entry.attempt())).containsExactly("id.looks-the-same");
    }

    @Test
    void theNextTrialStartsFromTheLast() {
        BenchModel entry = model().entry();
        entry.type(TrialColumns.METER, "B-1");
        entry.chooseUnit(TrialColumns.FINE, MassUnit.KILOGRAM.symbol());
        entry.chooseUnit(TrialColumns.WITHDRAWN, Withdrawal.Unit.PERCENT.symbol());
        entry.type(TrialColumns.ID, "K7-099");
        entry.type(TrialColumns.FINE, "4.9");
        entry.type(TrialColumns.COARSE, "7.35");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WITHDRAWN, "6");
        entry.type(TrialColumns.GAUGE, "6.4");
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();

        TypedDraft next = entry.draft();
        assertThat(next.text(TrialColumns.ID)).isEqualTo("K7-100");
        assertThat(next.text(TrialColumns.METER)).isEqualTo("B-1");
        assertThat(next.unit(TrialColumns.FINE)).isEqualTo("kg");
        assertThat(next.unit(TrialColumns.WITHDRAWN)).isEqualTo(Withdrawal.Unit.PERCENT.symbol());
        assertThat(next.text(TrialColumns.FINE)).isEmpty();
        assertThat(next.text(TrialColumns.GAUGE)).isEmpty();
        assertThat(entry.history().isChanged()).isFalse();
    }

    @Test
    void onATypeAMeterBothReadingsAreAskedForAndNoWater() {
        TrialsModel model = model();
        BenchModel entry = model.entry();
        entry.type(TrialColumns.WITHDRAWN, "420");
        entry.type(TrialColumns.GAUGE, "6.4");
        entry.type(TrialColumns.METER, "E-1");
        assertThat(entry.type()).isEqualTo(MeterType.A);
        entry.type(TrialColumns.FINE, "4900");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.H1, "0.7");
        assertThat(codes(entry.attempt())).containsExactly("trial.reading-missing");
        entry.type(TrialColumns.H2, "0.3");
        assertThat(entry.attempt()).isEmpty();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();

        Trial trial = kept("K7-T1");
        assertThat(trial.readings().meterType()).isEqualTo(MeterType.A);
        assertThat(trial.readings().withdrawal()).isEmpty();
        assertThat(trial.readings().gaugePercent()).isEmpty();
        assertThat(model.rows().get(0).reading()).isEqualTo("0.7 / 0.3");
        assertThat(model.rows().get(0).factor()).isEqualTo("0.40");
    }

    @Test
    void emptyFieldsAreNoProblemUntilThePersonWantsToSave() {
        BenchModel entry = model().entry();
        entry.type(TrialColumns.OPERATOR, "");
        assertThat(entry.shown()).isEmpty();
        assertThat(codes(entry.attempt())).contains("form.required", "trial.reading-missing");
        assertThat(entry.shown()).extracting(Problem::field).contains("operator", "gauge", "withdrawn", "soak");
        assertThat(codes(Refused.by(out -> entry.keep(Optional.empty(), "entered", out))))
                .contains("form.required");
        assertThat(bench.book.latest(Trial.class)).isEmpty();
    }

    @Test
    void whatIsNotANumberIsSaidAtOnceAndOnlyOnce() {
        BenchModel entry = model().entry();
        entry.type(TrialColumns.GAUGE, "6,4");
        entry.type(TrialColumns.FINE, "-3");
        entry.type(TrialColumns.TESTED_AT, "2026-02-30 09:00");
        assertThat(entry.shown())
                .extracting(Problem::field, Problem::code)
                .containsExactlyInAnyOrder(
                        tuple("gauge", "form.sign-is-point"),
                        tuple("fine", "form.negative"),
                        tuple("testedAt", "form.not-a-moment"));
        entry.type(TrialColumns.TESTED_AT, "0026-02-03 09:00");
        assertThat(entry.shown()).extracting(Problem::code).contains("form.year-impossible");
    }

    @Test
    void numbersAreReadAsThePersonWritesThem() {
        BenchBook german = new BenchBook(Locale.GERMANY);
        BenchModel entry = new TrialsModel(german.select().desk).entry();
        typeWholeTrial(entry, "6.4");
        assertThat(codes(entry.shown())).isEmpty();
        entry.type(TrialColumns.FINE, "4.900");
        assertThat(codes(entry.shown())).containsExactly("form.point-or-thousands");
        entry.type(TrialColumns.FINE, "4900,5");
        entry.type(TrialColumns.WATER, "21,5");
        entry.type(TrialColumns.WITHDRAWN, "420");
        entry.type(TrialColumns.GAUGE, "6,4");
        assertThat(entry.attempt()).isEmpty();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        assertThat(german.book
                        .latest(Trial.class, "K7-T1")
                        .orElseThrow()
                        .value()
                        .readings()
                        .fine())
                .contains(Typed.of("4900.5", MassUnit.GRAM));
    }

    @Test
    void aDoubtfulTrialWantsAReasonAndKeepsIt() {
        TrialsModel model = model();
        BenchModel entry = model.entry();
        typeWholeTrial(entry, "5.9");
        assertThat(entry.attempt()).isEmpty();
        assertThat(codes(entry.read().doubts())).containsExactly("trial.factor-negative");
        assertThat(entry.wantsReason()).isTrue();
        assertThat(Refused.by(out -> entry.keep(Optional.of("the line was checked twice"), "entered", out)))
                .isEmpty();
        assertThat(kept("K7-T1").keptBecause()).contains("the line was checked twice");
        assertThat(model.rows().get(0).judged().counts()).isTrue();
    }

    @Test
    void aTrialWithoutDoubtsKeepsNoReason() {
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "6.4");
        assertThat(entry.wantsReason()).isFalse();
        assertThat(Refused.by(out -> entry.keep(Optional.of("not needed"), "entered", out)))
                .isEmpty();
        assertThat(kept("K7-T1").keptBecause()).isEmpty();
    }

    @Test
    void massesOffTargetTellWhatTheFactorWouldBe() {
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "6.4");
        // 4.655 kg instead of 4.900 kg is 5 % light: 12.250 / 12.005 of 0.4 is 0.4082.
        entry.type(TrialColumns.FINE, "4655");
        assertThat(codes(entry.shown())).containsExactly("trial.mass-off-target", "trial.factor-at-right-mass");
        double atRight = (Double) entry.shown().get(1).values().get(0);
        assertThat(atRight).isCloseTo(0.4 * 12.250 / 12.005, within(1e-9));
    }

    @Test
    void doubtsAboutAFieldWaitUntilItIsLeft() {
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "6.4");
        entry.focus(Optional.of(TrialColumns.SOAK));
        entry.type(TrialColumns.SOAK, "1");
        assertThat(entry.shown()).isEmpty();
        entry.focus(Optional.of(TrialColumns.WATER));
        assertThat(codes(entry.shown())).containsExactly("trial.soak-short");
    }

    @Test
    void aLeakIsKeptAsAVoidTrialEvenWithoutAReading() {
        TrialsModel model = model();
        BenchModel entry = model.entry();
        typeWholeTrial(entry, "");
        entry.type(TrialColumns.LEAK, "yes");
        assertThat(entry.attempt()).isEmpty();
        assertThat(entry.wantsReason()).isFalse();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        assertThat(model.rows().get(0).stateWord()).isEqualTo("void");
        assertThat(model.rows().get(0).factor()).isEqualTo("-");
    }

    @Test
    void aNameThatIsTakenIsRefusedAtItsField() {
        bench.keep(BenchBook.determination(1, LocalDate.of(2026, 3, 2)));
        bench.keep(BenchBook.trial("K7-T1", 1, LocalDate.of(2026, 3, 2), "6.4"));
        BenchModel entry = model().entry();
        assertThat(entry.draft().text(TrialColumns.ID)).isEqualTo("K7-T2");
        entry.type(TrialColumns.ID, "K7-T1");
        assertThat(entry.shown()).extracting(Problem::field).containsExactly("trialId");
    }

    @Test
    void aCorrectionIsANewVersionInWhichTheRestIsUntouched() {
        bench.keep(BenchBook.determination(1, LocalDate.of(2026, 3, 2)));
        Trial before = BenchBook.trial("K7-T1", 1, LocalDate.of(2026, 3, 2), "6.4");
        bench.keep(before);
        TrialsModel model = model();
        model.select(Optional.of(before.id()));
        model.correct();
        BenchModel entry = model.entry();
        entry.type(TrialColumns.GAUGE, "6.30");
        assertThat(entry.attempt()).isEmpty();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "the dial was misread", out)))
                .isEmpty();

        List<Version<Trial>> versions = bench.book.history(Trial.class, "K7-T1");
        assertThat(versions).hasSize(2);
        assertThat(versions.get(0).value()).isEqualTo(before);
        assertThat(versions.get(1).stamp().why()).isEqualTo("the dial was misread");
        Trial after = versions.get(1).value();
        assertThat(after.readings().gaugePercent().orElseThrow().toPlainString())
                .isEqualTo("6.30");
        assertThat(after.readings().fine()).isEqualTo(before.readings().fine());
        assertThat(after.readings().waterCelsius()).isEqualTo(before.readings().waterCelsius());
        assertThat(after.testedAt()).isEqualTo(before.testedAt());
        assertThat(entry.base()).isEmpty();
        assertThat(model.story())
                .anyMatch(line -> line.startsWith("Version 2,") && line.contains("Gauge reading: 6.4, now 6.30"));
    }

    @Test
    void theWaterIsTypedInTheUnitsShownAndKeptInCelsius() {
        bench.desk.show(UnitSystem.US);
        BenchModel entry = model().entry();
        assertThat(entry.massUnit()).isEqualTo(MassUnit.POUND);
        entry.chooseUnit(TrialColumns.FINE, MassUnit.GRAM.symbol());
        typeWholeTrial(entry, "6.4");
        entry.type(TrialColumns.WATER, "68");
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        // (68 - 32) / 1.8 = 20.
        assertThat(kept("K7-T1").readings().waterCelsius().orElseThrow()).isEqualByComparingTo("20");
    }

    @Test
    void targetsFollowTheMassUnit() {
        BenchModel entry = model().entry();
        assertThat(Masses.show(
                        entry.target().orElseThrow().fine(),
                        entry.massUnit(),
                        bench.desk.tools().numbers()))
                .isEqualTo("4900");
        entry.chooseUnit(TrialColumns.FINE, MassUnit.POUND.symbol());
        // 4.900 kg / 0.45359237 kg = 10.8027 lb.
        assertThat(Masses.show(
                        entry.target().orElseThrow().fine(),
                        entry.massUnit(),
                        bench.desk.tools().numbers()))
                .isEqualTo("10.803");
        assertThat(entry.soakTarget()).contains("15");
    }

    @Test
    void typingIsTakenBackFieldByField() {
        BenchModel entry = model().entry();
        entry.type(TrialColumns.FINE, "4");
        entry.type(TrialColumns.FINE, "49");
        entry.type(TrialColumns.COARSE, "7");
        entry.history().undo();
        assertThat(entry.draft().text(TrialColumns.COARSE)).isEmpty();
        assertThat(entry.draft().text(TrialColumns.FINE)).isEqualTo("49");
        entry.history().undo();
        assertThat(entry.draft().text(TrialColumns.FINE)).isEmpty();
        entry.history().redo();
        assertThat(entry.draft().text(TrialColumns.FINE)).isEqualTo("49");
    }

    @Test
    void aDraftSurvivesAChangeByAnybodyElse() {
        TrialsModel model = model();
        model.entry().type(TrialColumns.FINE, "4900");
        bench.keep(BenchBook.determination(1, LocalDate.of(2026, 3, 2)));
        bench.desk.refresh();
        assertThat(model.entry().draft().text(TrialColumns.FINE)).isEqualTo("4900");
    }
}
