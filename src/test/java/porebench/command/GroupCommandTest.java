package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.command.Terminal.Said;
import porebench.evidence.GroupBench;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.profile.Profiles;
import porebench.record.CardHolder;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.LaboratoryProfile;
import porebench.record.SampleGroups;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Groups on the command line, as a person would: looked for, brought in, looked at, issued for. The terminal's day is 1 July 2026. */
class GroupCommandTest {
    private static final String HEADING = "group_id,group_title,tested_mix_id,tolerance_pct,members,reason\n";

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void threeMixesOfLikeProportions() {
        terminal = new Terminal(folder);
        new GroupBench(folder).close();
    }

    private Said run(String command, String... more) {
        return terminal.json(Stream.concat(Stream.of(command, "--book", "book.porebench"), Stream.of(more))
                .toArray(String[]::new));
    }

    private Said issue(String... more) {
        return run(
                "issue",
                Stream.concat(
                                Stream.of(
                                        "--group",
                                        "G-1",
                                        "--reason",
                                        "Tested on M-1",
                                        "--override-by",
                                        "M. Ash",
                                        "--override-reason",
                                        "looked at"),
                                Stream.of(more))
                        .toArray(String[]::new));
    }

    private static List<Object> each(Said said, String list, String key) {
        return said.list(list).stream().map(one -> one.get(key)).toList();
    }

    @Test
    void mixesThatAreLikeOneAreListedWithHowFarTheyAre() {
        Said said = run("group", "--mix-id", "M-1", "--within", "2");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(each(said, "mixes", "mixId")).containsExactly("M-9", "M-2", "M-3");
        assertThat(each(said, "mixes", "groupId")).containsExactly(null, "G-1", "G-1");
        assertThat(((Number) said.list("mixes").get(2).get("apartPoints")).doubleValue())
                .isCloseTo(2, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(terminal.run("group", "--book", "book.porebench", "--mix-id", "M-1", "--within", "2")
                        .out())
                .contains("Mixes within 2 of mix M-1: 3");
        assertThat(each(run("group", "--mix-id", "M-1", "--within", "0.1"), "mixes", "mixId"))
                .containsExactly("M-9");
    }

    @ParameterizedTest
    @CsvSource({
        "0.09, group.tolerance-impossible",
        "10.1, group.tolerance-impossible",
    })
    void aToleranceThatCannotBeIsRefused(String within, String code) {
        Said said = run("group", "--mix-id", "M-1", "--within", within);
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.out()).contains(code);
        assertThat(run("group", "--mix-id", "M-1", "--within", "0.1").status()).isZero();
        assertThat(run("group", "--mix-id", "M-1", "--within", "10").status()).isZero();
    }

    @Test
    void whatIsNotThereIsRefused() {
        assertThat(run("group", "--group-id", "G-7").out()).contains("book.not-there");
        assertThat(run("group", "--mix-id", "M-7", "--within", "3").out()).contains("book.not-there");
        assertThat(run("issue", "--group", "G-7", "--reason", "r").out()).contains("book.not-there");
        assertThat(run("issue", "--group", "G-1", "--reason", "r", "--confirm").out())
                .contains("issue.confirm-one-mix");
        assertThat(run("issue", "--group", "G-1", "--mix-id", "M-1", "--reason", "r")
                        .status())
                .isEqualTo(2);
        assertThat(run("group").status()).isEqualTo(2);
    }

    @Test
    void aFactorIsIssuedForAllMembersAndLooksSoEverywhere() throws IOException {
        Said issued = issue();
        assertThat(issued.status()).as(issued.out()).isZero();
        assertThat(each(issued, "issues", "mixId")).containsExactly("M-1", "M-2", "M-3");
        assertThat(each(issued, "issues", "groupId")).containsOnly("G-1");
        assertThat(each(issued, "issues", "testedMix")).containsOnly("M-1");
        assertThat(issued.list("leftOut")).isEmpty();
        Said looked = run("group", "--group-id", "G-1");
        assertThat(each(looked, "members", "state")).containsOnly("in force");
        assertThat(each(looked, "members", "tested")).containsExactly(true, false, false);
        assertThat(looked.json()).containsEntry("determinationId", "M-1/1").containsEntry("testedMix", "M-1");
        Said register = run("register");
        assertThat(each(register, "rows", "groupId")).containsExactly("G-1", "G-1", "G-1", null);
        assertThat(each(register, "rows", "testedMix")).containsExactly("M-1", "M-1", "M-1", null);
        assertThat(terminal.run("register", "--book", "book.porebench").out())
                .contains("M-2: factor of group G-1, found on mix M-1");
        assertThat(run("register", "--out", "register.csv").status()).isZero();
        assertThat(Files.readAllLines(folder.resolve("register.csv")).get(2)).contains(",G-1,M-1,");
        assertThat(run("card", "--mix-id", "M-2", "--out", "card.pdf").status()).isZero();
        assertThat(run("verify").status()).isZero();
        // The same again is no second revision.
        assertThat(issue().out()).contains("issue.already-issued");
    }

    /** Truck 12 has the card of M-2's own revision 1, crew North the one of M-3's; a new revision for the group calls both back. */
    @Test
    void whoHoldsCardsOfTheMembersIsNamed() {
        try (LabBook book = Books.SHELF.open(folder.resolve("book.porebench"))) {
            for (String mix : List.of("M-2", "M-3")) {
                Books.keep(
                        book,
                        Samples.determination(mix + "/1", mix),
                        Samples.trial(mix + "-T", mix, mix + "/1", "5.4"),
                        Samples.issue(mix, 1, mix + "/1", LocalDate.of(2026, 3, 9)));
                CardPrint print = new CardPrint(new MixId(mix), 1, 1, "A6", CardPrint.PRINTER);
                Books.keep(book, print);
                CardHolder holder = mix.equals("M-2")
                        ? new CardHolder(CardHolder.Kind.TRUCK, "12")
                        : new CardHolder(CardHolder.Kind.CREW, "North");
                Books.keep(
                        book,
                        new CardStep(
                                new MixId(mix),
                                1,
                                1,
                                1,
                                CardStep.Act.HANDED_OUT,
                                Optional.of(holder),
                                LocalDateTime.of(2026, 3, 10, 8, 0),
                                "M. Ash",
                                ""));
            }
        }
        Said issued = issue();
        assertThat(issued.status()).as(issued.out()).isZero();
        assertThat(issued.out()).contains("custody.called-back");
        assertThat(issued.err() + issued.out()).contains("truck 12 (M-2/r1/1)", "crew North (M-3/r1/1)");
    }

    @Test
    void aMemberThatIsNotLikeIsLeftOutAndNamed() {
        try (var book = Books.SHELF.open(folder.resolve("book.porebench"))) {
            Books.correct(book, SampleGroups.mix("M-3", "787.5", "962.5"));
        }
        Said issued = issue("--from", "2026-07-02", "--determination", "M-1/1");
        assertThat(issued.status()).as(issued.out()).isZero();
        assertThat(each(issued, "issues", "mixId")).containsExactly("M-1", "M-2");
        assertThat(each(issued, "leftOut", "mixId")).containsExactly("M-3");
        Said looked = run("group", "--group-id", "G-1");
        assertThat(String.valueOf(looked.list("members").get(2).get("unlike"))).contains("group.share-off");
        assertThat(terminal.run("group", "--book", "book.porebench", "--group-id", "G-1")
                        .out())
                .contains("Source S-1 makes up 45.0 % of the aggregate of M-3 and 40.0 % of that of M-1");
    }

    @Test
    void aGroupComesInFromAFileAndGoesOutAgain() throws IOException {
        Files.writeString(folder.resolve("groups.csv"), HEADING + "G-1,,M-1,2.5,M-2;M-3;M-9,M-9 is as M-1\n");
        Said imported = run("import", "groups.csv");
        assertThat(imported.status()).as(imported.out()).isZero();
        assertThat(imported.out()).contains("import.new-version");
        assertThat(each(run("group", "--group-id", "G-1"), "members", "mixId"))
                .containsExactly("M-1", "M-2", "M-3", "M-9");
        assertThat(run("export", "out").status()).isZero();
        assertThat(Files.readString(folder.resolve("out/factor-groups.csv")))
                .contains("G-1,,M-1,2.5,M-1;M-2;M-3;M-9,M-9 is as M-1");
        Files.writeString(folder.resolve("groups.csv"), HEADING + "G-2,,M-9,3,M-2,like\n");
        assertThat(run("import", "groups.csv").out()).contains("group.member-elsewhere");
    }

    private Said step(String step, String who, String reason) {
        return run("issue", "--group", "G-1", "--step", step, "--who", who, "--reason", reason);
    }

    /** The laboratory wants its factors checked: in its copy of the profile under which the mixes stand. */
    private void askForChecks() {
        try (LabBook book = Books.SHELF.open(folder.resolve("book.porebench"))) {
            Books.keep(
                    book,
                    new LaboratoryProfile(Profiles.standard()
                            .copyAs("own", "Own figures")
                            .copyAs("astm-c231", "Own figures")
                            .with(FigureName.FACTOR_STEPS, new Figure("checked", "Own choice", Mark.LABORATORY))));
        }
    }

    @Test
    void theFactorOfAGroupIsDraftedCheckedAndPutInForceForAllItsMembers() {
        askForChecks();
        assertThat(issue().codes()).contains("issue.steps-needed");
        assertThat(step("check", "M. Ash", "seen").codes()).containsExactly("proposal.none-of-group");
        assertThat(step("sign", "M. Ash", "seen").codes()).containsExactly("proposal.no-such-step");
        Said drafted = issue("--step", "draft", "--who", "R. Vale");
        assertThat(drafted.status()).isZero();
        assertThat(each(drafted, "drafts", "mixId")).containsExactly("M-1", "M-2", "M-3");
        assertThat(each(drafted, "drafts", "groupId")).containsOnly("G-1");
        assertThat(each(drafted, "drafts", "testedMix")).containsOnly("M-1");
        assertThat(each(run("group", "--group-id", "G-1"), "members", "draft")).containsOnly("drafted");
        assertThat(step("check", "R. Vale", "seen").codes()).contains("proposal.own-draft-checked");
        assertThat(each(step("send-back", "M. Ash", "look again"), "drafts", "step"))
                .containsOnly("sent-back");
        assertThat(issue("--step", "draft", "--who", "R. Vale").status()).isZero();
        assertThat(each(step("check", "M. Ash", "seen"), "drafts", "step")).containsOnly("checked");
        Said put = step("put-in-force", "M. Ash", "agreed");
        assertThat(each(put, "drafts", "step")).containsExactly("issued", "issued", "issued");
        assertThat(each(put, "drafts", "revision")).hasSize(3);
        assertThat(each(run("group", "--group-id", "G-1"), "members", "state")).doesNotContain("no factor");
        assertThat(step("drop", "M. Ash", "none").codes()).containsExactly("proposal.none-of-group");
        assertThat(run("issue", "--group", "G-9", "--step", "check", "--reason", "x", "--who", "M. Ash")
                        .codes())
                .containsExactly("book.not-there");
    }
}
