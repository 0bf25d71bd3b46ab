package porebench.method.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.profile.Profiles;

/** How long a calibration holds, day by day. */
class IntervalsTest {
    private static final Intervals QUARTERLY = new Intervals(3, 12, 14, false);
    private static final LocalDate SPRING = LocalDate.of(2026, 3, 4);
    private static final Intervals.Known CALIBRATED =
            Intervals.Known.NOTHING.withMeter(SPRING).withBowl(SPRING);

    @Test
    void takesTheFiguresOfAProfile() {
        assertThat(Intervals.of(Profiles.standard())).isEqualTo(QUARTERLY);
        assertThat(Intervals.of(Profiles.standard()
                                .copyAs("ours", "Ours")
                                .with(
                                        FigureName.CALIBRATE_EACH_PROJECT,
                                        new Figure("yes", "our manual", Mark.LABORATORY)))
                        .isEachProject())
                .isTrue();
    }

    /** Three months from 4 March end on 4 June, on which day it still holds; notice of 14 days begins on 21 May. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-04, OK",
        "2026-05-20, OK",
        "2026-05-21, DUE",
        "2026-06-04, DUE",
        "2026-06-05, OVERDUE",
        "2030-01-01, OVERDUE"
    })
    void holdsToItsLastDay(LocalDate day, MeterState state) {
        assertThat(QUARTERLY.nextDue(CALIBRATED)).contains(LocalDate.of(2026, 6, 4));
        assertThat(QUARTERLY.stateOn(day, CALIBRATED)).isEqualTo(state);
    }

    /** The month end is kept within the month: three months from 30 November end on 28 February. */
    @Test
    void endsWithinAShortMonth() {
        assertThat(QUARTERLY.nextDue(CALIBRATED.withMeter(LocalDate.of(2026, 11, 30))))
                .contains(LocalDate.of(2027, 2, 28));
    }

    @Test
    void endsWithTheBowlWhenThatIsEarlier() {
        Intervals.Known oldBowl = CALIBRATED.withBowl(LocalDate.of(2025, 4, 1));
        assertThat(QUARTERLY.nextDue(oldBowl)).contains(LocalDate.of(2026, 4, 1));
        assertThat(QUARTERLY.stateOn(LocalDate.of(2026, 4, 2), oldBowl)).isEqualTo(MeterState.OVERDUE);
    }

    @Test
    void isNeverCalibratedWhileEitherIsMissing() {
        assertThat(QUARTERLY.stateOn(SPRING, Intervals.Known.NOTHING)).isEqualTo(MeterState.NEVER);
        assertThat(QUARTERLY.stateOn(SPRING, Intervals.Known.NOTHING.withMeter(SPRING)))
                .isEqualTo(MeterState.NEVER);
        assertThat(QUARTERLY.stateOn(SPRING, Intervals.Known.NOTHING.withBowl(SPRING)))
                .isEqualTo(MeterState.NEVER);
        assertThat(QUARTERLY.nextDue(Intervals.Known.NOTHING)).isEmpty();
    }

    @Test
    void failsWhateverTheDayWhenItDidNotPass() {
        assertThat(QUARTERLY.stateOn(SPRING, CALIBRATED.withPassed(false))).isEqualTo(MeterState.FAILED);
        assertThat(QUARTERLY.stateOn(SPRING.plusYears(3), CALIBRATED.withPassed(false)))
                .isEqualTo(MeterState.FAILED);
    }

    @Test
    void isDueAtOnceAfterARepairUntilItIsCalibratedAgain() {
        LocalDate repair = SPRING.plusDays(10);
        Intervals.Known repaired = CALIBRATED.withRepair(repair);
        assertThat(QUARTERLY.nextDue(repaired)).contains(repair);
        assertThat(QUARTERLY.stateOn(repair, repaired)).isEqualTo(MeterState.OVERDUE);
        assertThat(QUARTERLY.stateOn(repair, repaired.withMeter(repair))).isEqualTo(MeterState.OK);
        // Repaired in the morning and calibrated on the same day, or repaired before: nothing is upset.
        assertThat(QUARTERLY.stateOn(SPRING, CALIBRATED.withRepair(SPRING))).isEqualTo(MeterState.OK);
        assertThat(QUARTERLY.stateOn(SPRING, CALIBRATED.withRepair(SPRING.minusDays(1))))
                .isEqualTo(MeterState.OK);
    }

    @Test
    void isDueBeforeAProjectOnlyWhereTheLaboratorySaysSo() {
        LocalDate project = SPRING.plusDays(10);
        Intervals.Known begun = CALIBRATED.withProject(project);
        assertThat(QUARTERLY.stateOn(project, begun)).isEqualTo(MeterState.OK);
        Intervals each = new Intervals(3, 12, 14, true);
        assertThat(each.stateOn(project, begun)).isEqualTo(MeterState.OVERDUE);
        assertThat(each.nextDue(begun)).contains(project);
        assertThat(each.nextDue(begun.withRepair(project.minusDays(2)))).contains(project.minusDays(2));
        assertThat(each.stateOn(project, begun.withMeter(project))).isEqualTo(MeterState.OK);
    }

    @Test
    void saysItsStateInWordsAndWhetherTrialsMayRestOnIt() {
        assertThat(Arrays.stream(MeterState.values()).map(MeterState::words))
                .containsExactly(
                        "calibrated",
                        "calibration due",
                        "calibration overdue",
                        "calibration failed",
                        "never calibrated");
    }

    @Test
    void refusesIntervalsThatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Intervals(0, 12, 14, false))
                .withMessage("meterMonths must be at least 1, but is 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new Intervals(3, 0, 14, false));
        assertThatIllegalArgumentException().isThrownBy(() -> new Intervals(3, 12, -1, false));
    }
}
