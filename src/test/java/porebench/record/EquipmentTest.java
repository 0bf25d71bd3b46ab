package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.record.book.Version;
import porebench.record.id.EquipmentId;
import porebench.store.Books;

class EquipmentTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 4);

    @TempDir
    Path folder;

    private static Equipment piece(String division, String limit, LocalDate due, LocalDate from, LocalDate until) {
        return new Equipment(
                new EquipmentId("BAL-1"),
                EquipmentKind.BALANCE,
                "",
                new BigDecimal(division),
                Optional.of(new Equipment.Calibration(DAY, new BigDecimal(limit), due, "")),
                from,
                Optional.of(until),
                "");
    }

    private static List<String> said(Locale locale, List<Problem> problems) {
        return problems.stream().map(ProblemText.in(locale)::say).toList();
    }

    @Test
    void aCalibrationHoldsAtLeastADayAndAPieceIsUsedAtLeastADay() {
        assertThat(piece("1", "1", DAY.plusDays(1), DAY, DAY).check()).isEmpty();
        List<Problem> wrong = piece("1", "1", DAY, DAY, DAY.minusDays(1)).check();
        assertThat(wrong).allMatch(Problem::isError).extracting(Problem::field).containsExactly("usedUntil", "dueOn");
        assertThat(said(Locale.ENGLISH, wrong))
                .containsExactly(
                        "BAL-1 was last used on 2026-03-03, before its first day of use, 2026-03-04. Correct one of the"
                                + " two days.",
                        "BAL-1: the calibration holds until 2026-03-04, which is not after its day, 2026-03-04. Correct"
                                + " one of the two days.");
    }

    /** The calibration was made on 2026-03-04. */
    @Test
    void aCalibrationIsNeverOfADayToCome() {
        Equipment piece = piece("1", "1", DAY.plusDays(9), DAY, DAY);
        assertThat(piece.check(DAY)).isEmpty();
        assertThat(SampleEquipment.uncalibrated("E", EquipmentKind.BALANCE, "1").check(LocalDate.MIN))
                .isEmpty();
        List<Problem> early = piece.check(DAY.minusDays(1));
        assertThat(early).allMatch(Problem::isError).extracting(Problem::field).containsExactly("calibratedOn");
        assertThat(said(Locale.ENGLISH, early))
                .containsExactly("A calibration of 2026-03-04 cannot be saved on 2026-03-03: that day is still "
                        + "to come. Correct the date.");
        try (Bench bench = new Bench(folder)) {
            Incoming row = new Incoming(Place.of("equipment.csv", 2), piece);
            Intake.Result refused = Intake.check(bench.book, List.of(row), DAY.minusDays(1));
            assertThat(refused.drafts()).isEmpty();
            assertThat(Books.codes(refused.problems())).containsExactly("meter.date-to-come");
            assertThat(Intake.check(bench.book, List.of(row), DAY).problems()).isEmpty();
        }
    }

    /** Half of 0.1 is 0.05. */
    @Test
    void aLimitBelowHalfADivisionIsADoubt() {
        assertThat(piece("0.1", "0.050", DAY.plusDays(1), DAY, DAY).check()).isEmpty();
        List<Problem> doubt = piece("0.1", "0.049", DAY.plusDays(1), DAY, DAY).check();
        assertThat(doubt).noneMatch(Problem::isError).extracting(Problem::field).containsExactly("limit");
        assertThat(said(Locale.ENGLISH, doubt))
                .containsExactly("BAL-1 is stated to be wrong by at most 0.049 g, less than half its division of "
                        + "0.1 g. Check the certificate again.");
        assertThat(said(new Locale("es"), doubt).get(0)).contains("0,049 g", "0,1 g");
    }

    @Test
    void itIsUsedFromItsFirstDayToItsLastDay() {
        Equipment piece = piece("1", "1", DAY.plusDays(9), DAY, DAY.plusDays(2));
        assertThat(piece.isUsedOn(DAY.minusDays(1))).isFalse();
        assertThat(piece.isUsedOn(DAY)).isTrue();
        assertThat(piece.isUsedOn(DAY.plusDays(2))).isTrue();
        assertThat(piece.isUsedOn(DAY.plusDays(3))).isFalse();
        assertThat(SampleEquipment.uncalibrated("E", EquipmentKind.BALANCE, "1").isUsedOn(LocalDate.of(2199, 12, 31)))
                .isTrue();
    }

    @Test
    void aDivisionAndALimitAreAboveZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> piece("0", "1", DAY, DAY, DAY));
        assertThatIllegalArgumentException().isThrownBy(() -> piece("1", "0", DAY, DAY, DAY));
    }

    @Test
    void aFileIsHeldAgainstTheSameRulesAndACalibrationBecomesANewVersion() {
        Place place = Place.of("equipment.csv", 2);
        try (Bench bench = new Bench(folder)) {
            Equipment wrong = piece("1", "1", DAY, DAY, DAY);
            Intake.Result refused =
                    Intake.check(bench.book, List.of(new Incoming(place, wrong)), SampleCalibrations.TODAY);
            assertThat(refused.drafts()).isEmpty();
            assertThat(Books.codes(refused.problems())).containsExactly("equipment.due-before-calibrated");
            Equipment first = SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "0.1", "0.04");
            Intake.Result doubted =
                    Intake.check(bench.book, List.of(new Incoming(place, first)), SampleCalibrations.TODAY);
            assertThat(Books.codes(doubted.problems())).containsExactly("equipment.limit-below-division");
            assertThat(bench.book.keep(doubted.drafts(), "R. Vale", "new")).isEmpty();
            Equipment second = SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "0.1", "0.06");
            Intake.Result changed =
                    Intake.check(bench.book, List.of(new Incoming(place, second)), SampleCalibrations.TODAY);
            assertThat(Books.codes(changed.problems())).containsExactly("import.new-version");
            assertThat(bench.book.keep(changed.drafts(), "R. Vale", "calibrated"))
                    .isEmpty();
            assertThat(bench.book.history(Equipment.class, "BAL-1"))
                    .extracting(Version::value)
                    .containsExactly(first, second);
        }
    }
}
