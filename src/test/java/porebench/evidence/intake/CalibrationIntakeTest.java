package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.MeterType;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.DialCheck;
import porebench.record.Kept;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;
import porebench.store.Books;

/** Calibrations from files are checked against their meter, and its bowl, before any is kept. */
class CalibrationIntakeTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(book, Samples.meter("B-1", MeterType.B), Samples.meter("A-1", MeterType.A));
    }

    @AfterEach
    void end() {
        book.close();
    }

    private Intake.Result check(Kept... values) {
        List<Incoming> incoming = new ArrayList<>();
        for (Kept value : values) {
            incoming.add(new Incoming(Place.of("c.csv", incoming.size() + 2), value));
        }
        return Intake.check(book, incoming, SampleCalibrations.TODAY);
    }

    /** A dial checked at 100 and 600 mL, the second being 8.5 % of a bowl of 7.05 L and more than one of 0.5 L holds. */
    private static MeterCalibration millilitres(String id, LocalDate day) {
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId("B-1"),
                MeterType.B,
                day,
                "",
                MeterCalibration.Reason.ROUTINE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new DialCheck(
                        Optional.empty(),
                        Optional.empty(),
                        List.of(
                                SampleCalibrations.point("100", CheckAmount.Unit.MILLILITRE, "1.40"),
                                SampleCalibrations.point("600", CheckAmount.Unit.MILLILITRE, "8.50")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
                Optional.empty(),
                "");
    }

    @Test
    void goodOnesComeInWithTheirMeterWhateverTheOrderOfRows() {
        Intake.Result result = check(
                SampleCalibrations.dialCalibration("C-1", "B-9", DAY, "0.0", "5.0", "10.0"),
                Samples.meter("B-9", MeterType.B));
        assertThat(result.problems()).isEmpty();
        assertThat(book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
        assertThat(book.latest(MeterCalibration.class)).hasSize(1);
    }

    @Test
    void oneWithoutItsMeterIsRefusedByRow() {
        Intake.Result result = check(SampleCalibrations.note("N-1", "X-1", DAY, MeterCalibration.Reason.REPAIR));
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .containsExactly(Problem.error("meter_id", "import.calibration-without-meter", "N-1", "X-1")
                        .at(Place.of("c.csv", 2)));
    }

    @Test
    void oneOfADayToComeIsRefusedByRowAsTheFormRefusesIt() {
        LocalDate tomorrow = SampleCalibrations.TODAY.plusDays(1);
        Intake.Result result = check(SampleCalibrations.note("N-1", "B-1", tomorrow, MeterCalibration.Reason.REPAIR));
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .containsExactly(Problem.error("calibratedOn", "meter.date-to-come", tomorrow, SampleCalibrations.TODAY)
                        .at(Place.of("c.csv", 2)));
        assertThat(check(SampleCalibrations.note(
                                "N-1", "B-1", SampleCalibrations.TODAY, MeterCalibration.Reason.REPAIR))
                        .problems())
                .isEmpty();
    }

    @Test
    void oneOfAnotherTypeIsRefused() {
        assertThat(Books.codes(check(SampleCalibrations.note("N-1", "A-1", DAY, MeterCalibration.Reason.REPAIR))
                        .problems()))
                .containsExactly("import.calibration-of-other-type");
    }

    @Test
    void aDialIsHeldAgainstTheBowlInForceThatDay() {
        assertThat(check(millilitres("C-1", DAY)).problems()).isEmpty();
        // 3.450 + 0.720 + 0.500 kg: a bowl of half a litre, weighed the day before, in a later row.
        MeterCalibration tiny = SampleCalibrations.bowlCalibration("C-0", "B-1", DAY.minusDays(1), "4.670");
        Intake.Result result = check(millilitres("C-1", DAY), tiny);
        assertThat(result.problems())
                .extracting(
                        Problem::code,
                        problem -> problem.place().flatMap(Place::line).orElseThrow())
                .containsExactly(org.assertj.core.groups.Tuple.tuple("meter.amount-exceeds-bowl", 2));
        assertThat(check(millilitres("C-1", DAY.minusDays(2)), tiny).problems()).isEmpty();
        Books.keep(book, tiny);
        assertThat(Books.codes(check(millilitres("C-1", DAY)).problems())).contains("meter.amount-exceeds-bowl");
    }

    @Test
    void theSameAgainIsPassedOverAndAChangedOneIsRefused() {
        MeterCalibration there = SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.0", "5.0", "10.0");
        Books.keep(book, there);
        assertThat(check(there).alreadyThere()).isEqualTo(1);
        assertThat(Books.codes(check(SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.0", "5.1", "10.0"))
                        .problems()))
                .containsExactly("import.differs");
    }

    /** C-0 weighed a bowl of half a litre, as above; the dial checks in millilitres do not fit into it. */
    private static MeterCalibration tiny(LocalDate day) {
        return SampleCalibrations.bowlCalibration("C-0", "B-1", day, "4.670");
    }

    @Test
    void aGoodOneIsNotRefusedForOneThatStandsInTheBook() {
        Books.keep(book, tiny(DAY.minusDays(1)), millilitres("C-1", DAY));
        Intake.Result result = check(SampleCalibrations.dialCalibration("C-2", "B-1", DAY, "0.0", "5.0", "10.0"));
        assertThat(result.problems()).isEmpty();
        assertThat(result.drafts()).hasSize(1);
    }

    /** What the book holds under the name is another measurement: it says nothing about this one. */
    @Test
    void aChangedOneIsRefusedForThatAndNotHeldAgainstItsOwnFormerState() {
        Books.keep(book, tiny(DAY.minusDays(1)));
        assertThat(Books.codes(check(millilitres("C-0", DAY)).problems())).containsExactly("import.differs");
    }

    /** C-0 comes in as a bowl of seven litres weighed a day earlier: that is refused, but it is what the file's C-1 rests on. */
    @Test
    void theRestOfAFileIsHeldAgainstTheFile() {
        Books.keep(book, tiny(DAY.minusDays(1)));
        Intake.Result result = check(
                SampleCalibrations.bowlCalibration("C-0", "B-1", DAY.minusDays(2), "11.207"), millilitres("C-1", DAY));
        assertThat(Books.codes(result.problems())).containsExactly("import.differs");
        assertThat(result.drafts()).hasSize(1);
    }
}
