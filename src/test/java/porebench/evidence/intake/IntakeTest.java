package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.FactorState;
import porebench.method.MeterType;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.CardPrint;
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
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

class IntakeTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private static Place line(int number) {
        return Place.of("file.csv", number);
    }

    /** Checks records that stand on lines 2, 3, 4... of a file. */
    private Intake.Result check(Kept... values) {
        return Intake.check(
                bench.book,
                IntStream.range(0, values.length)
                        .mapToObj(index -> new Incoming(line(index + 2), values[index]))
                        .toList(),
                SampleCalibrations.TODAY);
    }

    private static List<Kept> values(Intake.Result result) {
        return result.drafts().stream().map(Draft::value).toList();
    }

    private void keep(Intake.Result result) {
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
    }

    private static Trial unassigned(String id, String mix, String gauge) {
        return Samples.trial(id, mix, mix, gauge);
    }

    @Test
    void aFullSetOfFilesInAnyOrderCanBeKeptInOneGo() {
        Kept[] backwards = {
            new CardPrint(new MixId("M-7"), 1, 1, "A6", "printer"),
            Samples.issue("M-7", 1, "M-7/1", Bench.START),
            Samples.trial("T-7", "M-7", "M-7/1", "5.4"),
            Samples.determination("M-7/1", "M-7"),
            Samples.mix("M-7", "S-7", "S-2"),
            Samples.meter("B-7", MeterType.B),
            Samples.source("S-7", Role.FINE, "Ledge"),
        };
        Intake.Result result = check(backwards);
        assertThat(Books.codes(result.problems()))
                .containsExactly(
                        "import.not-verified",
                        "import.without-versions",
                        "issue.doubt-of-trial",
                        "issue.doubt-of-trial",
                        "determination.few-trials",
                        "trial.masses-missing");
        assertThat(result.alreadyThere()).isZero();
        keep(result);
        assertThat(bench.newest(FactorIssue.class, "M-7/r1").origin()).isEqualTo(FactorOrigin.IMPORTED);
        assertThat(bench.newest(CardPrint.class, "M-7/r1/1").paper()).isEqualTo("A6");
        Intake.Result again = check(backwards);
        assertThat(again.problems()).isEmpty();
        assertThat(again.drafts()).isEmpty();
        assertThat(again.alreadyThere()).isEqualTo(7);
    }

    @Test
    void theSameIdTwiceIsSaidWithThePlaceOfTheFirst() {
        Intake.Result result = check(
                Samples.source("S-5", Role.FINE, "Ledge 1"),
                Samples.source("S-5", Role.FINE, "Ledge 2"),
                Samples.source("S-5", Role.FINE, "Ledge 1"));
        assertThat(result.problems())
                .containsExactly(
                        Problem.error("id", "import.duplicate", RecordKind.SOURCE.word(), "S-5", "file.csv", 2)
                                .at(line(3)),
                        Problem.error("id", "import.duplicate", RecordKind.SOURCE.word(), "S-5", "file.csv", 2)
                                .at(line(4)));
        assertThat(result.drafts()).hasSize(1);
    }

    @Test
    void aChangedSourceMeterMixOrDeterminationBecomesANewVersion() {
        Source source = SampleSources.changed(Samples.source("S-1", Role.FINE, "Ledge 2"), Bench.START);
        MixDesign mix = Samples.mix("M-1", "S-1", "S-1");
        Determination determination =
                new Determination(Bench.FIRST, Bench.MIX, 1, Map.of(), LocalDate.of(2026, 3, 2), "another purpose");
        Intake.Result result = check(source, Samples.meter("B-1", MeterType.A), mix, determination);
        assertThat(result.drafts()).extracting(Draft::basedOn).containsExactly(1, 1, 1, 1);
        assertThat(Books.codes(result.problems()))
                .containsOnly("import.new-version")
                .hasSize(4);
        assertThat(result.problems()).noneMatch(Problem::isError);
        assertThat(result.problems().get(0).values()).containsExactly(RecordKind.SOURCE.word(), "S-1", 2);
        keep(result);
        assertThat(bench.book.history(Source.class, "S-1")).hasSize(2);
    }

    @Test
    void whatIsThereUnchangedIsPassedOver() {
        Intake.Result result = check(bench.mix(), bench.newest(Trial.class, "T-1"));
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems()).isEmpty();
        assertThat(result.alreadyThere()).isEqualTo(2);
    }

    @Test
    void aTrialIssueOrPrintThatDiffersIsRefused() {
        bench.issue(Bench.START);
        Books.keep(bench.book, new CardPrint(Bench.MIX, 1, 1, "A6", "printer"));
        Intake.Result result = check(
                Samples.trial("T-1", "M-1", "M-1/1", "5.40"),
                Samples.issue("M-1", 1, "M-1/1", Bench.START),
                new CardPrint(Bench.MIX, 1, 1, "A4", "printer"));
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .containsExactly(
                        Problem.error("id", "import.differs", RecordKind.TRIAL.word(), "T-1")
                                .at(line(2)),
                        Problem.error("id", "import.differs", RecordKind.FACTOR_ISSUE.word(), "M-1/r1")
                                .at(line(3)),
                        Problem.error("id", "import.differs", RecordKind.CARD_PRINT.word(), "M-1/r1/1")
                                .at(line(4)));
    }

    @Test
    void anUnknownMixIsAnErrorForAllThatNameIt() {
        Intake.Result result = check(
                Samples.determination("X/1", "X"),
                Samples.trial("T-8", "X", "X/1", "5.4"),
                Samples.issue("X", 1, "M-1/1", Bench.START));
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .containsExactly(
                        Problem.error("id", "import.unknown-mix", RecordKind.DETERMINATION.word(), "X/1", "X")
                                .at(line(2)),
                        Problem.error("id", "import.unknown-mix", RecordKind.TRIAL.word(), "T-8", "X")
                                .at(line(3)),
                        Problem.error("id", "import.unknown-mix", RecordKind.FACTOR_ISSUE.word(), "X/r1", "X")
                                .at(line(4)));
    }

    @Test
    void anUnknownMeterOrSourceIsADoubt() {
        Trial trial = Samples.trial("T-8", "M-8", "M-8/1", "5.4");
        Trial elsewhere = new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                new MeterId("Z-1"),
                trial.readings(),
                "",
                Optional.of("masses not noted"),
                trial.struckBecause(),
                Optional.empty(),
                false);
        Intake.Result result = check(Samples.mix("M-8", "S-1", "S-8"), elsewhere);
        assertThat(result.problems())
                .containsExactly(
                        Problem.warning("source_id", "import.unknown-source", "M-8", "S-8")
                                .at(line(2)),
                        Problem.warning("meter_id", "import.unknown-meter", "T-8", "Z-1")
                                .at(line(3)));
        keep(result);
    }

    @Test
    void unknownDeterminationsAndIssuesAreErrors() {
        Intake.Result result =
                check(Samples.issue("M-1", 1, "M-1/9", Bench.START), new CardPrint(Bench.MIX, 4, 1, "A6", "printer"));
        assertThat(result.drafts()).isEmpty();
        assertThat(result.problems())
                .containsExactly(
                        Problem.error("id", "import.unknown-determination", "M-1/r1", "M-1/9")
                                .at(line(2)),
                        Problem.error("id", "import.unknown-issue", "M-1/r4/1", "M-1/r4")
                                .at(line(3)));
    }

    @Test
    void aTrialDoesNotJoinTheDeterminationOfAnotherMix() {
        Intake.Result result = check(Samples.mix("M-8", "S-1", "S-2"), Samples.trial("T-8", "M-8", "M-1/1", "5.4"));
        assertThat(values(result)).containsExactly(Samples.mix("M-8", "S-1", "S-2"));
        assertThat(result.problems())
                .containsExactly(Problem.error("id", "import.determination-of-another-mix", "T-8", "M-1/1", "M-1")
                        .at(line(3)));
    }

    @Test
    void aTrialOfNoDeterminationJoinsTheOpenOne() {
        Intake.Result result = check(unassigned("T-8", "M-1", "5.4"), unassigned("T-9", "M-1", "5.4"));
        assertThat(Books.codes(result.problems())).containsOnly("trial.masses-missing");
        assertThat(values(result))
                .containsExactly(
                        Samples.trial("T-8", "M-1", "M-1/1", "5.4"), Samples.trial("T-9", "M-1", "M-1/1", "5.4"));
    }

    @Test
    void afterAnIssueATrialOfNoDeterminationBeginsTheNext() {
        bench.issue(Bench.START);
        Books.correct(bench.book, Samples.mix("M-1", "S-1", "S-1"));
        Intake.Result result = check(unassigned("T-8", "M-1", "5.4"), unassigned("T-9", "M-1", "5.4"));
        assertThat(Books.codes(result.problems())).containsOnly("trial.masses-missing");
        assertThat(values(result))
                .containsExactly(
                        new Determination(
                                new DeterminationId("M-1/2"),
                                Bench.MIX,
                                2,
                                Map.of(new SourceId("S-1"), 1),
                                LocalDate.of(2026, 3, 2),
                                ""),
                        Samples.trial("T-8", "M-1", "M-1/2", "5.4"),
                        Samples.trial("T-9", "M-1", "M-1/2", "5.4"));
        keep(result);
        // The same file again: the trials are found where they are.
        assertThat(check(unassigned("T-8", "M-1", "5.4"), unassigned("T-9", "M-1", "5.4")))
                .isEqualTo(new Intake.Result(List.of(), 2, List.of(), Set.of(), Set.of()));
    }

    @Test
    void aTrialOfNoDeterminationIsFoundWhereItWentEvenAfterTheIssue() {
        bench.issue(Bench.START);
        assertThat(check(unassigned("T-1", "M-1", "5.4")))
                .isEqualTo(new Intake.Result(List.of(), 1, List.of(), Set.of(), Set.of()));
        assertThat(Books.codes(check(unassigned("T-1", "M-1", "5.9")).problems()))
                .containsExactly("import.differs");
    }

    @Test
    void theFirstTrialOfANewMixBeginsItsFirstDetermination() {
        Intake.Result result = check(unassigned("T-8", "M-8", "5.4"), Samples.mix("M-8", "S-1", "S-2"));
        assertThat(Books.codes(result.problems())).containsOnly("trial.masses-missing");
        assertThat(values(result))
                .containsExactly(
                        Samples.mix("M-8", "S-1", "S-2"),
                        new Determination(
                                new DeterminationId("M-8/1"),
                                new MixId("M-8"),
                                1,
                                Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1),
                                LocalDate.of(2026, 3, 2),
                                ""),
                        Samples.trial("T-8", "M-8", "M-8/1", "5.4"));
        keep(result);
    }

    @Test
    void anIssueThatStatesNoVersionsRestsOnThoseOfItsDetermination() {
        FactorIssue stated = Samples.issue("M-1", 1, "M-1/1", Bench.START);
        FactorIssue open = stated.restingOn(0, Map.of());
        Books.correct(bench.book, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        Intake.Result result = check(open, Samples.source("S-1", Role.FINE, "Ledge 9"));
        Map<SourceId, Integer> sources = Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1);
        assertThat(values(result)).contains(stated.restingOn(1, sources).on(Grounds.NONE.from(FactorOrigin.IMPORTED)));
        keep(result);
        Books.correct(bench.book, Samples.source("S-2", Role.COARSE, "Ledge 3"));
        assertThat(check(open)).isEqualTo(new Intake.Result(List.of(), 1, List.of(), Set.of(), Set.of()));
    }

    /** A factor as the bench would export it, with its versions and the doubts taken on. */
    private FactorIssue exported() {
        return bench.issuing(Bench.decision(Bench.FIRST, Bench.START)).value().orElseThrow();
    }

    private FactorOrigin originOf(Intake.Result result) {
        return values(result).stream()
                .filter(FactorIssue.class::isInstance)
                .map(value -> ((FactorIssue) value).origin())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFactorThatItsTrialsAndVersionsBearIsKeptAsItIs() {
        Intake.Result result = check(exported());
        assertThat(result.problems()).isEmpty();
        assertThat(originOf(result)).isEqualTo(FactorOrigin.HERE);
        keep(result);
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.IN_FORCE);
    }

    @Test
    void aFactorThatItsTrialsDoNotBearIsNotVerifiedHere() {
        FactorIssue good = exported();
        Grounds grounds = good.grounds();
        List<FactorIssue> doubtful = List.of(
                good.on(Grounds.NONE),
                good.restingOn(0, good.sourceVersions()),
                good.on(grounds.from(FactorOrigin.IMPORTED)),
                good.on(new Grounds(
                        grounds.trialVersions(),
                        grounds.calibrationVersions(),
                        grounds.takenOn().subList(1, grounds.takenOn().size()),
                        FactorOrigin.HERE,
                        false)),
                withFactor(good, "0.5"));
        for (FactorIssue issue : doubtful) {
            Intake.Result result = check(issue);
            assertThat(originOf(result)).isEqualTo(FactorOrigin.IMPORTED);
            assertThat(Books.codes(result.problems())).contains("import.not-verified");
            assertThat(Problem.anyError(result.problems())).isFalse();
        }
    }

    private static FactorIssue withFactor(FactorIssue issue, String factor) {
        return new FactorIssue(
                issue.mixId(),
                issue.revision(),
                issue.action(),
                Samples.number(factor),
                issue.determinationId(),
                issue.meterType(),
                issue.inForceFrom(),
                issue.recheckBy(),
                issue.issuedBy(),
                issue.approvedBy(),
                issue.reason(),
                issue.mixVersion(),
                issue.sourceVersions(),
                issue.profileId(),
                "",
                "",
                issue.grounds());
    }

    @Test
    void aFactorOfADeterminationWithoutTrialsIsNotVerifiedHere() {
        Intake.Result result =
                check(Samples.determination("M-1/5", "M-1"), Samples.issue("M-1", 1, "M-1/5", Bench.START));
        assertThat(originOf(result)).isEqualTo(FactorOrigin.IMPORTED);
        keep(result);
        assertThat(bench.evidence().stateOn(Bench.START)).isEqualTo(FactorState.NOT_VERIFIED);
    }

    @Test
    void whatCanNeverBeRightIsRefusedByImportToo() {
        FactorIssue early = Samples.issue("M-1", 1, "M-1/1", java.time.LocalDate.of(1999, 1, 1));
        assertThat(Books.codes(check(early).problems())).contains("issue.before-evidence");
        assertThat(values(check(early))).noneMatch(FactorIssue.class::isInstance);
        Intake.Result negative = check(
                Samples.determination("M-1/6", "M-1"),
                Samples.trial("T-61", "M-1", "M-1/6", "3.37"),
                withFactor(Samples.issue("M-1", 1, "M-1/6", Bench.START), "-1.6"));
        assertThat(Books.codes(negative.problems())).contains("issue.beyond-limits");
        assertThat(values(negative)).noneMatch(FactorIssue.class::isInstance);
    }
}
