package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedTrial;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.trial.Readings;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Trials so soon after each other on one meter that the aggregate cannot have soaked in its bowl. */
class SoaksTest {
    private static final LocalDateTime NINE = LocalDateTime.of(2026, 3, 2, 9, 0);

    /** A trial on a meter some seconds after nine, with a soak in minutes; a dash where none was noted. */
    private static Trial trial(String id, String meter, int secondsLater, String soak) {
        Trial like = Samples.trial(id, "M-1", "M-1/1", "5.4");
        Readings read = like.readings();
        return new Trial(
                like.id(),
                like.mixId(),
                like.determinationId(),
                NINE.plusSeconds(secondsLater),
                like.operator(),
                new MeterId(meter),
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        read.fine(),
                        read.coarse(),
                        soak.equals("-") ? Optional.empty() : Optional.of(new BigDecimal(soak)),
                        read.waterCelsius(),
                        read.withdrawal(),
                        read.gaugePercent(),
                        Optional.empty(),
                        Optional.empty(),
                        false),
                like.remarks(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static Problem doubt(long minutes, String other, String soak) {
        return Problem.warning("testedAt", "trial.soaks-overlap", minutes, other, "B-1", new BigDecimal(soak));
    }

    /** The other trial was read at nine, after a soak of 15 minutes. */
    @ParameterizedTest
    @CsvSource({
        "B-1, 240, 15, 4",
        "B-1, -240, 15, 4",
        "B-1, 0, 15, 0",
        "B-1, 899, 15, 14",
        "B-1, 900, 15, -",
        "B-1, -899, 15, 14",
        "B-1, -900, 15, -",
        "B-1, 899, 40, 14",
        "B-1, 900, 40, -",
        "B-1, 479, 8, 7",
        "B-1, 480, 8, -",
        "B-1, 89, 1.5, 1",
        "B-1, 90, 1.5, -",
        "B-1, 240, -, -",
        "B-2, 240, 15, -"
    })
    void aTrialIsDoubtedWhereNeitherSoakFitsBetweenItAndAnotherOnItsMeter(
            String meter, int secondsLater, String soak, String minutesApart) {
        List<Problem> said =
                TrialSet.checkCompany(trial("T-2", meter, secondsLater, soak), List.of(trial("T-1", "B-1", 0, "15")));
        String shorter = soak.equals("-") || new BigDecimal(soak).compareTo(new BigDecimal("15")) > 0 ? "15" : soak;
        assertThat(said)
                .isEqualTo(
                        minutesApart.equals("-")
                                ? List.of()
                                : List.of(doubt(Long.parseLong(minutesApart), "T-1", shorter)));
    }

    @Test
    void theNearestIsNamedAndWhatHasNoSoakOrWasStruckOrIsItselfIsPassedOver() {
        Trial made = trial("T-9", "B-1", 0, "15");
        assertThat(TrialSet.checkCompany(
                        made,
                        List.of(
                                trial("T-1", "B-1", -600, "15"),
                                trial("T-2", "B-1", 300, "15"),
                                trial("T-3", "B-1", 60, "-"),
                                trial("T-4", "B-1", 120, "15").struck("spilt"),
                                trial("T-9", "B-1", 30, "15"))))
                .containsExactly(doubt(5, "T-2", "15"));
        assertThat(TrialSet.checkCompany(made.struck("spilt"), List.of(trial("T-1", "B-1", 60, "15"))))
                .isEmpty();
    }

    @Test
    void aTrialThatIsKeptIsDoubtedOnceWhereTheOneBeforeItLeavesNoSoak(@TempDir Path folder) {
        try (Bench bench = new Bench(folder)) {
            Books.keep(
                    bench.book,
                    trial("X-3", "B-1", 1320, "15"),
                    trial("X-2", "B-1", 240, "15"),
                    trial("X-1", "B-1", 0, "15"));
            List<JudgedTrial> judged =
                    Evidence.of(bench.book, new MixId("M-1")).orElseThrow().determinations().get(0).trials().stream()
                            .filter(one -> one.trial().value().recordId().startsWith("X-"))
                            .toList();
            assertThat(judged)
                    .extracting(one -> one.doubts().stream()
                            .filter(doubt -> doubt.code().equals("trial.soaks-overlap"))
                            .toList())
                    .containsExactly(List.of(), List.of(doubt(4, "X-1", "15")), List.of());
            assertThat(judged).allMatch(JudgedTrial::counts);
        }
    }

    @Test
    void aFileIsToldOnceForEachTrialBeforeWhichNoSoakFits() {
        List<Problem> problems = new ArrayList<>();
        TrialSet.of(
                List.of(
                        trial("T-3", "B-1", 420, "15"),
                        trial("T-1", "B-1", 0, "15"),
                        trial("T-2", "B-1", 240, "15"),
                        trial("T-4", "B-1", 1320, "15")),
                problems);
        assertThat(problems)
                .containsExactly(
                        Problem.warning("tested_at", "trial.soaks-overlap", 4L, "T-1", "B-1", new BigDecimal("15")),
                        Problem.warning("tested_at", "trial.soaks-overlap", 3L, "T-2", "B-1", new BigDecimal("15")));
    }

    @Test
    void anImportIsToldAtTheLineAndATrialThatIsKeptAlreadyIsNotAsked(@TempDir Path folder) {
        try (Bench bench = new Bench(folder)) {
            Books.keep(bench.book, trial("X-1", "B-1", 0, "15"));
            Trial soon = trial("X-2", "B-1", 240, "15");
            Place second = Place.of("file.csv", 3);
            Problem said = Problem.warning("tested_at", "trial.soaks-overlap", 4L, "X-1", "B-1", new BigDecimal("15"))
                    .at(second);
            List<Incoming> both = List.of(
                    new Incoming(Place.of("file.csv", 2), trial("X-1", "B-1", 0, "15")), new Incoming(second, soon));
            Intake.Result result = Intake.check(bench.book, both, SampleCalibrations.TODAY);
            assertThat(result.problems()).contains(said);
            assertThat(result.drafts())
                    .extracting(draft -> draft.value().recordId())
                    .containsExactly("X-2");

            Books.keep(bench.book, soon);
            assertThat(Intake.check(bench.book, both, SampleCalibrations.TODAY).problems())
                    .extracting(Problem::code)
                    .doesNotContain("trial.soaks-overlap");
            // Correcting the time of the first one takes its earlier version out of the way.
            List<Incoming> corrected = List.of(
                    new Incoming(second, trial("X-1", "B-1", -900, "15")),
                    new Incoming(second, trial("X-3", "B-1", -300, "15")));
            assertThat(Intake.check(bench.book, corrected, SampleCalibrations.TODAY)
                            .problems())
                    .filteredOn(problem -> problem.code().equals("trial.soaks-overlap"))
                    .extracting(Problem::values)
                    .containsExactly(List.of(9L, "X-2", "B-1", new BigDecimal("15")));
        }
    }
}
