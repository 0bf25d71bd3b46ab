package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.record.SampleCalibrations;
import porebench.record.column.TrialColumns;
import porebench.record.id.TrialId;

/** What the form makes of a trial while it is typed: its moment, its name, its meter, and what is said about it. */
class TypedTrialTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private TrialsModel model() {
        return new TrialsModel(bench.select().desk);
    }

    private static void typeWholeTrial(BenchModel entry, String gauge) {
        entry.type(TrialColumns.FINE, "4900");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WATER, "21.5");
        entry.type(TrialColumns.WITHDRAWN, "420");
        entry.type(TrialColumns.GAUGE, gauge);
    }

    /** The clock stands at half past nine on 4 March. */
    @Test
    void aMomentThatWasTypedStaysWhenTheReadingsFollow() {
        BenchModel entry = model().entry();
        entry.type(TrialColumns.TESTED_AT, "2026-03-03 16:00");
        assertThat(entry.draft().text(TrialColumns.TESTED_AT)).isEqualTo("2026-03-03 16:00");
        typeWholeTrial(entry, "6.4");
        assertThat(entry.draft().text(TrialColumns.TESTED_AT)).isEqualTo("2026-03-03 16:00");
    }

    /** The last one made is K7-T1; somebody named an earlier one K7-T2. */
    @Test
    void aNameThatIsTakenIsNotProposed() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, DAY.plusDays(1), "6.4"), BenchBook.trial("K7-T2", 1, DAY, "6.4"));
        assertThat(model().entry().draft().text(TrialColumns.ID)).isEqualTo("K7-T3");
    }

    /** 11.217 - 3.450 - 0.720 = 7.047 kg, / 998.207 = 7.0597 L by today's calibration; the trial says 7.000 L. */
    @Test
    void aCorrectionKeepsTheBowlOfTheTrialUntilAnotherMeterIsChosen() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, BenchBook.TODAY, "6.4"));
        bench.keep(SampleCalibrations.bowlCalibration("C-1", "B-1", BenchBook.TODAY, "11.217"));
        TrialsModel model = model();
        assertThat(model.entry().bowl()).map(Object::toString).contains("7.0597 L");
        model.select(Optional.of(new TrialId("K7-T1")));
        model.correct();
        assertThat(model.entry().bowl()).map(Object::toString).contains("7.000 L");
        assertThat(model.entry().type()).isEqualTo(MeterType.B);
        model.entry().type(TrialColumns.METER, "E-1");
        assertThat(model.entry().type()).isEqualTo(MeterType.A);
    }

    @Test
    void aFieldThatCannotBeReadIsNotCalledEmptyAsWell() {
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "six");
        assertThat(entry.attempt())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("gauge", "form.not-a-number"));
    }

    @Test
    void aReadingThatIsStillMissingIsNoneThatWasRefused() {
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "");
        assertThat(entry.read().errors()).extracting(Problem::code).containsExactly("trial.reading-missing");
        assertThat(entry.read().refused()).isEmpty();
    }

    /** A factor below zero is a doubt; that nobody is named forbids keeping the trial and is none. */
    @Test
    void whatForbidsKeepingATrialIsNoDoubtAboutIt() {
        BenchModel entry = model().entry();
        typeWholeTrial(entry, "5.9");
        entry.type(TrialColumns.OPERATOR, "");
        assertThat(entry.read().errors()).extracting(Problem::code).containsExactly("form.required");
        assertThat(entry.read().doubts()).extracting(Problem::code).containsExactly("trial.factor-negative");
    }

    /** One trial is there and void: the one that is typed would be the first that counts. */
    @Test
    void nothingIsSaidOfEnoughWithTheFirstTrialThatCounts() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.leaked("K7-T1", 1, DAY));
        TrialsModel model = model();
        typeWholeTrial(model.entry(), "6.4");
        assertThat(model.entry().read().figures()).isPresent();
        assertThat(model.stop().withTyped(model.entry().read().figures())).isEmpty();
    }

    /** From the one looked at a factor was issued; the trial in the form joins none, and then a new one. */
    @Test
    void nothingIsSaidOfEnoughWhereTheTrialDoesNotJoinWhatIsLookedAt() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, DAY, "6.4"));
        bench.keep(BenchBook.issue(1, 1, DAY, "0.4"));
        TrialsModel model = model();
        typeWholeTrial(model.entry(), "6.4");
        assertThat(model.stop().withTyped(model.entry().read().figures())).isEmpty();
        model.begin("new source");
        assertThat(model.entry().read().figures()).isPresent();
        assertThat(model.stop().withTyped(model.entry().read().figures())).isEmpty();
    }
}
