package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceReader;
import porebench.evidence.FactorState;
import porebench.evidence.issue.GroupIssuing;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Verifying;
import porebench.method.Place;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.GroupGround;
import porebench.record.Kept;
import porebench.record.SampleCalibrations;
import porebench.record.SampleGroups;
import porebench.record.Samples;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Groups and their factors from files: the same rule as in the window. */
class GroupIntakeTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
        Books.keep(bench.book, SampleGroups.mix("M-2", "717.5", "1032.5"));
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private Intake.Result check(Kept... values) {
        List<Incoming> incoming = IntStream.range(0, values.length)
                .mapToObj(i -> new Incoming(Place.of("file.csv", i + 2), values[i]))
                .toList();
        return Intake.check(bench.book, incoming, SampleCalibrations.TODAY);
    }

    private List<String> codes(Kept... values) {
        return Books.codes(check(values).problems());
    }

    private void keep(Intake.Result result) {
        assertThat(bench.book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
    }

    @Test
    void aGroupIsHeldAgainstTheMixesOfTheLabBookAndThoseThatComeWithIt() {
        assertThat(codes(SampleGroups.group("G-1", "M-2"))).isEmpty();
        assertThat(codes(SampleGroups.group("G-1", "M-7"))).containsExactly("group.unknown-mix");
        assertThat(codes(SampleGroups.group("G-1", "M-7"), SampleGroups.mix("M-7", "700", "1050")))
                .isEmpty();
        assertThat(codes(SampleGroups.group("G-1"))).containsExactly("group.no-members");
        assertThat(check(SampleGroups.within("G-1", "0.9", "M-2")).drafts()).isEmpty();
        assertThat(codes(SampleGroups.within("G-1", "0.9", "M-2"))).containsOnly("group.share-off");
        assertThat(codes(new FactorGroup(
                        new GroupId("G-1"),
                        "",
                        new MixId("M-8"),
                        new BigDecimal("3"),
                        List.of(new MixId("M-8"), new MixId("M-2")),
                        "like")))
                .containsExactly("group.unknown-mix");
    }

    @Test
    void aMixIsInOneGroupOnly() {
        assertThat(codes(SampleGroups.group("G-1", "M-2"), SampleGroups.group("G-2", "M-2")))
                .containsExactly("group.member-elsewhere", "group.member-elsewhere");
        keep(check(SampleGroups.group("G-1", "M-2")));
        assertThat(codes(SampleGroups.group("G-2", "M-2")))
                .containsExactly("group.member-elsewhere", "group.member-elsewhere");
        // A group that was given up holds nobody.
        keep(check(SampleGroups.group("G-1")));
        assertThat(codes(SampleGroups.group("G-2", "M-2"))).isEmpty();
    }

    @Test
    void aChangedGroupIsANewVersionAndKeepsItsTestedMix() {
        keep(check(SampleGroups.group("G-1", "M-2")));
        assertThat(check(SampleGroups.group("G-1", "M-2")).alreadyThere()).isEqualTo(1);
        assertThat(codes(SampleGroups.within("G-1", "2", "M-2"))).containsExactly("import.new-version");
        FactorGroup other = new FactorGroup(
                new GroupId("G-1"),
                "",
                new MixId("M-2"),
                new BigDecimal("3"),
                List.of(new MixId("M-2"), new MixId("M-1")),
                "M-2 is easier to test");
        assertThat(codes(other)).containsExactly("group.other-tested-mix");
        // Who drifted out is a doubt of the group's next version and does not stand in its way.
        Books.correct(bench.book, SampleGroups.mix("M-2", "787.5", "962.5"));
        Intake.Result changed = check(SampleGroups.within("G-1", "2", "M-2"));
        assertThat(Books.codes(changed.problems()))
                .containsExactly("group.share-off", "group.share-off", "import.new-version");
        assertThat(changed.drafts()).hasSize(1);
    }

    private List<FactorIssue> issued() {
        Issuing.Decision decision = Bench.decision(Bench.FIRST, Bench.START);
        GroupIssuing issuing = new GroupIssuing(
                EvidenceReader.asking(bench.book)::readEach,
                bench.scatter(),
                bench.book.latest(FactorGroup.class, "G-1").orElseThrow(),
                Bench.FIRST);
        return issuing.issue(new Issuing.Decision(
                        decision.determinationId(),
                        decision.inForceFrom(),
                        Optional.empty(),
                        decision.issuedBy(),
                        decision.approvedBy(),
                        decision.reason(),
                        Optional.of(Bench.takingOn(issuing.doubts(), "M. Ash", "looked at"))))
                .value()
                .orElseThrow()
                .issues();
    }

    @Test
    void factorsOfAGroupComeInWithItsGroupAndHold() throws IOException {
        Books.keep(bench.book, SampleGroups.group("G-1", "M-2"));
        Kept[] issues = issued().toArray(Kept[]::new);
        try (Bench other = new Bench(Files.createDirectory(folder.resolve("other")))) {
            Books.keep(other.book, SampleGroups.mix("M-2", "717.5", "1032.5"));
            Kept[] all = Arrays.copyOf(issues, issues.length + 1);
            all[issues.length] = SampleGroups.group("G-1", "M-2");
            List<Incoming> incoming = IntStream.range(0, all.length)
                    .mapToObj(i -> new Incoming(Place.of("file.csv", i + 2), all[i]))
                    .toList();
            Intake.Result result = Intake.check(other.book, incoming, SampleCalibrations.TODAY);
            assertThat(result.problems()).isEmpty();
            assertThat(other.book.keep(result.drafts(), "R. Vale", "imported")).isEmpty();
            Evidence member = Evidence.of(other.book, new MixId("M-2")).orElseThrow();
            assertThat(member.stateOn(Bench.START)).isEqualTo(FactorState.IN_FORCE);
            assertThat(other.book.verify()).isEmpty();
        }
    }

    @Test
    void aFactorOfAGroupThatIsNotThereOrOfADriftedMemberIsNotVerified() {
        Books.keep(bench.book, SampleGroups.group("G-1", "M-2"));
        FactorIssue lent = issued().get(1);
        Books.correct(bench.book, SampleGroups.mix("M-2", "787.5", "962.5"));
        Intake.Result drifted = check(lent);
        assertThat(Books.codes(drifted.problems())).contains("import.not-verified", "register.drifted");
        FactorIssue elsewhere =
                lent.on(lent.grounds().of(Optional.of(new GroupGround(new GroupId("G-9"), 1, Bench.MIX))));
        Intake.Result unknown = check(elsewhere);
        assertThat(Books.codes(unknown.problems())).containsExactly("import.not-verified", "import.unknown-group");
        keep(unknown);
        Evidence member = Evidence.of(bench.book, new MixId("M-2")).orElseThrow();
        assertThat(member.newestIssue().orElseThrow().origin()).isEqualTo(FactorOrigin.IMPORTED);
        assertThat(member.stateOn(Bench.START)).isEqualTo(FactorState.NOT_VERIFIED);
    }

    @Test
    void aFactorThatIsConfirmedStaysThatOfItsGroup() {
        Books.keep(bench.book, SampleGroups.group("G-1", "M-2"));
        FactorIssue lent = issued().get(1);
        keep(check(lent.on(lent.grounds().from(FactorOrigin.IMPORTED))));
        Evidence member = Evidence.of(bench.book, new MixId("M-2")).orElseThrow();
        FactorIssue confirmed = Verifying.confirm(
                        member,
                        bench.scatter(),
                        member.issues().get(0),
                        "R. Vale",
                        "on our trials",
                        Optional.of(Bench.takingOn(
                                Issuing.doubts(member, bench.scatter(), Bench.FIRST), "M. Ash", "looked at")))
                .value()
                .orElseThrow();
        assertThat(confirmed.origin()).isEqualTo(FactorOrigin.CONFIRMED);
        assertThat(confirmed.grounds().group()).isEqualTo(lent.grounds().group());
        Books.correct(bench.book, confirmed);
        assertThat(Evidence.of(bench.book, new MixId("M-2")).orElseThrow().stateOn(Bench.START))
                .isEqualTo(FactorState.IN_FORCE);
    }

    /** Without a group that names it, a determination of another mix bears no factor. */
    @Test
    void aFactorFromTrialsOfAnotherMixIsRefused() {
        FactorIssue borrowed = Samples.issue("M-2", 1, "M-1/1", Bench.START);
        Intake.Result result = check(borrowed);
        assertThat(Books.codes(result.problems())).containsExactly("import.issue-of-another-mix");
        assertThat(result.drafts()).isEmpty();
    }
}
