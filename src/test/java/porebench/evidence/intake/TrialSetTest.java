package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.trial.Readings;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** How the trials of a file that nobody has kept yet are parted into determinations, and which company a trial may keep. */
class TrialSetTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final List<Problem> problems = new ArrayList<>();

    /** A trial of mix M-1 some days after 2 March, in a determination; one called as the mix names none. */
    private static Trial trial(String id, String determination, int daysLater) {
        return with(Samples.trial(id, "M-1", determination, "5.4"), MeterType.B, daysLater);
    }

    static Trial onTypeA(Trial trial) {
        return with(trial, MeterType.A, (int)
                ChronoUnit.DAYS.between(DAY, trial.testedAt().toLocalDate()));
    }

    private static Trial with(Trial trial, MeterType type, int daysLater) {
        Readings read = trial.readings();
        boolean isTypeA = type == MeterType.A;
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                LocalDateTime.of(DAY.plusDays(daysLater), LocalTime.of(9, 30)),
                trial.operator(),
                trial.meterId(),
                new Readings(
                        type,
                        read.bowl(),
                        read.fine(),
                        read.coarse(),
                        read.soakMinutes(),
                        read.waterCelsius(),
                        isTypeA ? Optional.empty() : read.withdrawal(),
                        isTypeA ? Optional.empty() : read.gaugePercent(),
                        isTypeA ? Samples.some("0.8") : Optional.empty(),
                        isTypeA ? Samples.some("0.4") : Optional.empty(),
                        false),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                Optional.empty(),
                false);
    }

    /** Returns each set as its determination and its trials. */
    private List<String> parted(Trial... trials) {
        return TrialSet.of(List.of(trials), problems).stream()
                .map(set -> set.id().text() + ":"
                        + String.join(
                                ",",
                                set.trials().stream()
                                        .map(trial -> trial.id().text())
                                        .toList()))
                .toList();
    }

    @Test
    void trialsThatNameTheirDeterminationStayThereHoweverFarApart() {
        assertThat(parted(trial("T-3", "M-1/2", 50), trial("T-2", "M-1/1", 40), trial("T-1", "M-1/1", 0)))
                .containsExactly("M-1/1:T-1,T-2", "M-1/2:T-3");
        assertThat(problems).isEmpty();
    }

    @Test
    void trialsThatNameNoneArePutTogetherInTheOrderInWhichTheyWereMade() {
        assertThat(parted(trial("T-3", "M-1", 14), trial("T-2", "M-1", 0), trial("T-1", "M-1", 0)))
                .containsExactly("M-1/1:T-1,T-2,T-3");
        assertThat(problems).isEmpty();
    }

    @Test
    void oneThatWasMadeTooLongAfterTheOthersBeginsAnotherAndItIsSaid() {
        assertThat(parted(trial("T-1", "M-1", 0), trial("T-2", "M-1", 15))).containsExactly("M-1/1:T-1", "M-1/2:T-2");
        assertThat(problems)
                .containsExactly(Problem.warning(
                        "determination_id", "import.begun-apart", "T-2", "2026-03-17", 15L, "M-1/1", "M-1/2", 14));
    }

    @Test
    void oneThatNamesNoneJoinsTheNearestThatIsNamed() {
        assertThat(parted(trial("T-9", "M-1", 22), trial("T-1", "first", 0), trial("T-2", "second", 30)))
                .containsExactly("first:T-1", "second:T-9,T-2");
        assertThat(problems).isEmpty();
    }

    @Test
    void aDeterminationThatIsBegunDoesNotTakeANameThatAnotherHas() {
        assertThat(parted(trial("T-1", "M-1/1", 0), trial("T-2", "M-1", 20))).containsExactly("M-1/1:T-1", "M-1/2:T-2");
        assertThat(problems).extracting(Problem::code).containsExactly("import.begun-apart");
    }

    @Test
    void eachTrialIsInTheSetInWhichItStands() {
        List<TrialSet> sets = TrialSet.of(List.of(trial("T-1", "M-1", 3)), problems);
        assertThat(sets).singleElement().satisfies(set -> {
            assertThat(set.trials())
                    .singleElement()
                    .satisfies(trial -> assertThat(trial.determinationId()).isEqualTo(new DeterminationId("M-1/1")));
            assertThat(set.mixId()).isEqualTo(new MixId("M-1"));
            assertThat(set.openedOn()).isEqualTo(LocalDate.of(2026, 3, 5));
        });
    }

    @Test
    void bothTypesOfMeterInOneSetAreAnErrorAndAStruckTrialIsNotAsked() {
        Trial typeA = onTypeA(trial("T-2", "M-1/1", 1));
        assertThat(parted(trial("T-1", "M-1/1", 0), typeA)).containsExactly("M-1/1:T-1,T-2");
        Problem mixed =
                Problem.error("meter_type", "determination.mixed-meter-types", "M-1/1", "T-2", "B-1", "T-1", "B-1");
        assertThat(problems).containsExactly(mixed);
        problems.clear();
        parted(trial("T-1", "M-1/1", 0), typeA.struck("wrong meter"));
        assertThat(problems).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, false", "14, false", "15, true", "-14, false", "-15, true"})
    void aTrialMadeMoreThan14DaysBeforeOrAfterTheNearestOfItsCompanyIsDoubted(int daysLater, boolean isDoubted) {
        // The nearest other trial is of 2 March, another one is a year off.
        List<Trial> company = List.of(trial("T-1", "M-1/1", 0), trial("T-0", "M-1/1", 365));
        List<Problem> said = TrialSet.checkCompany(trial("T-9", "M-1/1", daysLater), company);
        assertThat(said)
                .isEqualTo(
                        isDoubted
                                ? List.of(Problem.warning("testedAt", "trial.far-apart", 15L, "M-1/1", 14))
                                : List.of());
    }

    @Test
    void aTrialIsNotHeldAgainstItsOwnEarlierVersionAndOneAloneAgainstNothing() {
        assertThat(TrialSet.checkCompany(trial("T-1", "M-1/1", 60), List.of(trial("T-1", "M-1/1", 0))))
                .isEmpty();
        assertThat(TrialSet.checkCompany(onTypeA(trial("T-1", "M-1/1", 0)), List.of(trial("T-1", "M-1/1", 0))))
                .isEmpty();
        assertThat(TrialSet.checkCompany(trial("T-1", "M-1/1", 0), List.of())).isEmpty();
    }

    @Test
    void theOtherTypeOfMeterIsSaidAtTheMeterOfTheForm() {
        assertThat(TrialSet.checkCompany(onTypeA(trial("T-9", "M-1/1", 1)), List.of(trial("T-1", "M-1/1", 0))))
                .containsExactly(
                        Problem.error("meter", "determination.mixed-meter-types", "M-1/1", "T-9", "B-1", "T-1", "B-1"));
    }
}
