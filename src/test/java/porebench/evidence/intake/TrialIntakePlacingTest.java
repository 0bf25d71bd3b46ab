package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.TimeBook;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.SampleCalibrations;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;
import porebench.store.Books;

/** Which determination a trial that names none gets, beside those of the lab book and those of the same file. */
class TrialIntakePlacingTest {
    private final TimeBook time = new TimeBook();

    /** M-1 has the determination M-1/1 with a trial of the first day, and no factor yet. */
    @BeforeEach
    void begin() {
        time.begin("M-1/1", "M-1");
        time.trials("M-1/1", "M-1", TimeBook.START, 0.4);
    }

    private void issueFrom(String determination) {
        time.book.holdAsBefore(Samples.issue("M-1", 1, determination, TimeBook.START));
    }

    /** A trial in a file, some days after the first day; in a determination called as its mix it names none. */
    private static Trial filed(String id, String mix, String determination, int daysLater) {
        Trial plain = Samples.trial(id, mix, determination, "5.4");
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                LocalDateTime.of(TimeBook.START.plusDays(daysLater), LocalTime.NOON),
                plain.operator(),
                plain.meterId(),
                plain.readings(),
                plain.remarks(),
                Optional.of("masses not noted"),
                plain.struckBecause(),
                Optional.empty(),
                false);
    }

    private static Trial loose(String id, int daysLater) {
        return filed(id, "M-1", "M-1", daysLater);
    }

    private static Determination determination(String id, String mix, int daysLater) {
        return new Determination(
                new DeterminationId(id),
                new MixId(mix),
                1,
                Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1),
                TimeBook.START.plusDays(daysLater),
                "");
    }

    private Intake.Result check(Kept... values) {
        return Intake.check(
                time.book,
                IntStream.range(0, values.length)
                        .mapToObj(index -> new Incoming(Place.of("file.csv", index + 2), values[index]))
                        .toList(),
                SampleCalibrations.TODAY);
    }

    /** Returns where a trial of the file was put. */
    private static String placeOf(String trial, Intake.Result result) {
        return result.drafts().stream()
                .map(Draft::value)
                .filter(value -> value.recordId().equals(trial))
                .map(value -> ((Trial) value).determinationId().text())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theNextNumberCountsDeterminationsWhateverTheirNames() {
        time.begin("autumn", "M-2");
        time.book.holdAsBefore(Samples.issue("M-2", 1, "autumn", TimeBook.START));
        // One is there, by another name, and it has its factor.
        assertThat(placeOf("T-9", check(filed("T-9", "M-2", "M-2", 0)))).isEqualTo("M-2/2");
    }

    @Test
    void itJoinsADeterminationThatTheFileBrings() {
        issueFrom("M-1/1");
        assertThat(placeOf("T-9", check(determination("spring", "M-1", 3), loose("T-9", 4))))
                .isEqualTo("spring");
    }

    @Test
    void itDoesNotJoinADeterminationOfAnotherMix() {
        issueFrom("M-1/1");
        assertThat(placeOf("T-9", check(determination("spring", "M-2", 3), loose("T-9", 4))))
                .isEqualTo("M-1/2");
        assertThat(placeOf("T-9", check(filed("T-8", "M-2", "summer", 4), loose("T-9", 4))))
                .isEqualTo("M-1/2");
    }

    @Test
    void itDoesNotJoinADeterminationThatHasItsFactorThoughTheFileBringsItAgain() {
        issueFrom("M-1/1");
        Determination there =
                time.book.latest(Determination.class, "M-1/1").orElseThrow().value();
        assertThat(placeOf("T-9", check(there, loose("T-9", 1)))).isEqualTo("M-1/2");
        assertThat(placeOf("T-9", check(filed("T-8", "M-1", "M-1/1", 1), loose("T-9", 1))))
                .isEqualTo("M-1/2");
    }

    @Test
    void itJoinsTheDeterminationOfATrialOfTheFile() {
        issueFrom("M-1/1");
        assertThat(placeOf("T-9", check(filed("T-8", "M-1", "summer", 1), loose("T-9", 2))))
                .isEqualTo("summer");
    }

    /** 28 days after the trial in the book, and 14 after the one that the file adds to it. */
    @Test
    void aTrialOfTheFileThatNamesAnOpenDeterminationIsCompanyThere() {
        Intake.Result result = check(filed("T-8", "M-1", "M-1/1", 14), loose("T-9", 28));
        assertThat(placeOf("T-9", result)).isEqualTo("M-1/1");
        assertThat(result.problems()).isEmpty();
    }

    @Test
    void aTrialThatNamesItsDeterminationBeginsNoneHoweverLateItWasMade() {
        issueFrom("M-1/1");
        Intake.Result result = check(filed("T-8", "M-1", "M-1/1", 60), loose("T-9", 100));
        assertThat(placeOf("T-9", result)).isEqualTo("M-1/2");
        assertThat(Books.codes(result.problems())).doesNotContain("import.begun-apart");
    }

    @Test
    void aNameThatTheFileGivesToAnotherMixIsTaken() {
        issueFrom("M-1/1");
        assertThat(placeOf("T-9", check(determination("M-1/2", "M-2", 0), loose("T-9", 0))))
                .isEqualTo("M-1/3");
        assertThat(placeOf("T-9", check(filed("T-8", "M-2", "M-1/2", 0), loose("T-9", 0))))
                .isEqualTo("M-1/3");
    }

    @ParameterizedTest
    @CsvSource({"14, M-1/2", "15, M-1/3"})
    void anOpenDeterminationWithoutTrialsCountsFromTheDayItWasBegun(int daysLater, String expected) {
        issueFrom("M-1/1");
        time.begin("M-1/2", "M-1");
        assertThat(placeOf("T-9", check(loose("T-9", daysLater)))).isEqualTo(expected);
    }

    /** It is the name of a trial of M-1 in the book: a trial of M-2 that has it differs, and is not looked for there. */
    @Test
    void aTrialThatHasTheNameOfOneOfAnotherMixDiffers() {
        Trial twin = filed("T-001", "M-2", "M-2", 0);
        assertThat(time.book.latest(Trial.class, "T-001")).isPresent();
        assertThat(Books.codes(check(twin).problems())).contains("import.differs");
        assertThat(Books.codes(check(twin).problems())).doesNotContain("import.determination-of-another-mix");
    }

    @Test
    void theFirstTrialRestsOnTheVersionsThatItsFileBrings() {
        issueFrom("M-1/1");
        Intake.Result result = check(
                SampleSources.changed(Samples.source("S-1", Role.FINE, "Ledge 2"), TimeBook.START),
                Samples.mix(
                        "M-1",
                        Samples.constituent("Sand", Role.FINE, "S-1", "701"),
                        Samples.constituent("Stone", Role.COARSE, "S-2", "1050"),
                        Samples.constituent("Grit", Role.COARSE, "not registered", "10")),
                loose("T-9", 0));
        assertThat(result.problems()).noneMatch(Problem::isError);
        assertThat(result.drafts())
                .filteredOn(draft -> draft.value() instanceof Determination)
                .singleElement()
                .satisfies(draft -> {
                    Determination begun = (Determination) draft.value();
                    assertThat(begun.mixVersion()).isEqualTo(2);
                    assertThat(begun.sourceVersions())
                            .isEqualTo(Map.of(new SourceId("S-1"), 2, new SourceId("S-2"), 1));
                });
    }

    @Test
    void aTrialOfTheBookThatTheFileHasOnTheOtherTypeOfMeterIsHeldAgainstItsCompany() {
        time.trials("M-1/1", "M-1", TimeBook.START, 0.4);
        Trial there = time.book.latest(Trial.class, "T-001").orElseThrow().value();
        Trial typeA = TrialSetTest.onTypeA(there);
        assertThat(Books.codes(check(typeA).problems())).containsExactly("determination.mixed-meter-types");
        assertThat(check(there).problems()).isEmpty();
    }

    @Test
    void whatATrainingBookExportedStaysOutOfARealBook() {
        Source source = Samples.source("S-9", Role.FINE, "Ledge 1");
        List<Incoming> marked = List.of(new Incoming(Place.of("file.csv", 2), source, true));
        Intake.Result real = Intake.check(time.book, marked, SampleCalibrations.TODAY);
        assertThat(real.drafts()).isEmpty();
        assertThat(real.problems())
                .containsExactly(Problem.error("id", "import.simulated", RecordKind.SOURCE.word(), "S-9")
                        .at(Place.of("file.csv", 2)));
        Intake.Result training = Intake.check(new TimeBook(true).book, marked, SampleCalibrations.TODAY);
        assertThat(training.problems()).isEmpty();
        assertThat(training.drafts()).hasSize(1);
    }

    @Test
    void aMixThatCannotBeRightIsRefusedAtItsPlace() {
        MixDesign heavy = Samples.mix("M-9", Samples.constituent("Stone", Role.COARSE, "S-2", "9000"));
        Intake.Result result = check(heavy);
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .isEqualTo(heavy.check().stream()
                        .map(problem -> problem.at(Place.of("file.csv", 2)))
                        .toList())
                .anyMatch(Problem::isError);
    }

    @Test
    void aRevisionThatNamesNoTrialsIsTheOneThatIsThereAndOneThatNamesOthersDiffers() {
        FactorIssue there = Samples.issue("M-1", 1, "M-1/1", TimeBook.START)
                .on(new Grounds(Map.of(new TrialId("T-001"), 1), Map.of(), List.of(), FactorOrigin.CONFIRMED, false));
        time.book.holdAsBefore(there);
        assertThat(check(there.on(Grounds.NONE)).alreadyThere()).isEqualTo(1);
        assertThat(check(there.on(there.grounds().from(FactorOrigin.HERE))).alreadyThere())
                .isEqualTo(1);
        assertThat(Books.codes(check(there.on(new Grounds(
                                Map.of(new TrialId("T-001"), 2), Map.of(), List.of(), FactorOrigin.HERE, false)))
                        .problems()))
                .containsExactly("import.differs");
    }
}
