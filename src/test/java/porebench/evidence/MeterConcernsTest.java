package porebench.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.MeterState;
import porebench.method.profile.Profiles;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.store.Books;

/** What a person should look at about a meter, and which measurement its calibration waits for. */
class MeterConcernsTest {
    private static final LocalDate SPRING = LocalDate.of(2026, 3, 2);
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "for a test");

    private static MeterStory story(MeterType type, MeterCalibration... calibrations) {
        return MeterStory.of(
                new Version<>(Samples.meter(type + "-1", type), 1, STAMP),
                List.of(calibrations).stream()
                        .map(one -> new Version<>(one, 1, STAMP))
                        .toList(),
                Profiles.standard());
    }

    private static MeterStory typeB(MeterCalibration... calibrations) {
        return story(MeterType.B, calibrations);
    }

    private static MeterCalibration bowl(String id, LocalDate day) {
        return SampleCalibrations.bowlCalibration(id, "B-1", day, "11.207");
    }

    private static MeterCalibration dial(String id, LocalDate day, String at5, String at10) {
        return SampleCalibrations.dialCalibration(id, "B-1", day, "0.000", at5, at10);
    }

    @Test
    void aDialThatIsOffIsNamedAlsoAfterTheBowlWasWeighedAgain() {
        MeterStory story =
                typeB(bowl("C-1", SPRING), dial("C-2", SPRING, "5.11", "10.00"), bowl("C-3", SPRING.plusDays(3)));
        assertThat(Books.codes(story.toLookAtOn(SPRING.plusDays(3)))).contains("meter.dial-off");
    }

    @Test
    void aSingleFillIsNamedAlsoAfterTheDialWasCheckedAgain() {
        MeterStory story = typeB(bowl("C-1", SPRING), dial("C-2", SPRING.plusDays(3), "5.00", "10.00"));
        assertThat(Books.codes(story.toLookAtOn(SPRING.plusDays(3)))).containsExactly("meter.one-fill");
    }

    /** 99 % is much for the expansion of a bowl: what a column check says is said of the meter. */
    @Test
    void whatIsDoubtfulAboutAColumnIsNamed() {
        MeterCalibration column = SampleCalibrations.columnCalibration("K", "A-1", SPRING);
        ColumnCheck check = column.column().orElseThrow();
        MeterCalibration wrong = new MeterCalibration(
                column.id(),
                column.meterId(),
                MeterType.A,
                SPRING,
                "",
                column.reason(),
                column.elevationMetres(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ColumnCheck(
                        check.vesselWater(),
                        check.bowlWater(),
                        Samples.number("99"),
                        check.workingPressure(),
                        check.elevationMetres())),
                "");
        assertThat(Books.codes(story(MeterType.A, column).toLookAtOn(SPRING)))
                .doesNotContain("meter.expansion-too-large");
        assertThat(Books.codes(story(MeterType.A, wrong).toLookAtOn(SPRING))).contains("meter.expansion-too-large");
    }

    /** 1 / 1.6 - 1 is -37.5 %, 1 / 1.01 - 1 is -1.0 %: the profile flags more than 2 %, where the readings can tell as much. */
    @Test
    void aChamberThatChangedByMoreThanTheLimitIsNamedFromTheDayItShowed() {
        LocalDate later = SPRING.plusDays(30);
        MeterStory changed = typeB(
                bowl("C-1", SPRING), dial("C-2", SPRING, "5.000", "10.000"), dial("C-3", later, "8.000", "16.000"));
        assertThat(changed.toLookAtOn(later))
                .filteredOn(problem -> problem.code().equals("meter.chamber-drifted"))
                .singleElement()
                .satisfies(problem -> assertThat(problem.values()).contains("C-2", "C-3", 2.0));
        assertThat(Books.codes(changed.toLookAtOn(later.minusDays(1)))).doesNotContain("meter.chamber-drifted");
        MeterStory same = typeB(
                bowl("C-1", SPRING), dial("C-2", SPRING, "5.000", "10.000"), dial("C-3", later, "5.050", "10.100"));
        assertThat(Books.codes(same.toLookAtOn(later))).doesNotContain("meter.chamber-drifted");
    }

    @Test
    void whatIsDueSaysItsLastDay() {
        MeterStory story = typeB(bowl("C-1", SPRING), dial("C-2", SPRING, "5.000", "10.000"));
        assertThat(story.toLookAtOn(LocalDate.of(2026, 6, 2)))
                .contains(Problem.warning("meter", "meter.calibration-due", "B-1", "2026-06-02"));
        assertThat(story.toLookAtOn(LocalDate.of(2026, 6, 3)))
                .contains(Problem.warning("meter", "meter.calibration-overdue", "B-1", "2026-06-02"));
    }

    /** A bowl holds 12 months, a dial 3: a dial checked ten months after the bowl is due with the bowl. */
    @Test
    void aMeterNeedsItsBowlAndItsDialAndIsDueWithTheEarlier() {
        assertThat(typeB(bowl("C-1", SPRING)).stateOn(SPRING)).isEqualTo(MeterState.NEVER);
        assertThat(typeB(dial("C-1", SPRING, "5.000", "10.000")).stateOn(SPRING))
                .isEqualTo(MeterState.NEVER);
        assertThat(typeB(bowl("C-1", SPRING), dial("C-2", SPRING.plusMonths(10), "5.000", "10.000"))
                        .nextDue())
                .contains(SPRING.plusMonths(12));
    }

    @Test
    void aDialIsOfATypeBMeter() {
        MeterCalibration dial = dial("C-2", SPRING, "5.000", "10.000");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeterCalibration(
                        dial.id(),
                        dial.meterId(),
                        MeterType.A,
                        SPRING,
                        "",
                        dial.reason(),
                        Optional.empty(),
                        Optional.empty(),
                        dial.dial(),
                        Optional.empty(),
                        ""))
                .withMessage("meterType must be B where a dial was checked, but is A");
    }
}
