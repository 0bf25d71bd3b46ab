package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.print.PageText;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.MixDesign;
import porebench.record.PlantMark;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** What happens to the cards of a small lab book, by the command line; the day is 1 July 2026. */
class RecallCommandTest {
    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void twoCardsAreWritten() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2027-06-10"));
        assertThat(terminal.json("import", "--book", "lab.book", "issues.csv").status())
                .isZero();
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            Version<FactorIssue> version =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue issue = version.value();
            book.keep(
                    List.of(Draft.correcting(version, issue.on(issue.grounds().from(FactorOrigin.CONFIRMED)))),
                    "Ada Test",
                    "looked at");
        }
        for (String file : List.of("a.pdf", "b.pdf")) {
            assertThat(terminal.json("card", "--book", "lab.book", "--mix-id", "M-1", "--out", file)
                            .status())
                    .isZero();
        }
    }

    private Said recall(String... more) {
        List<String> arguments = new ArrayList<>(List.of("recall", "--book", "lab.book"));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    @Test
    void saysForATruckWhichNumberItCarries() {
        assertThat(recall().json()).containsEntry("cardsOut", 0);
        Said handed = recall(
                "--card",
                "M-1/r1/1",
                "--card",
                "M-1/r1/2",
                "--done",
                "handed-out",
                "--holder",
                "truck 12",
                "--by",
                "Ada");
        assertThat(handed.codes()).isEmpty();
        assertThat(handed.list("steps")).extracting(step -> step.get("card")).containsExactly("M-1/r1/1", "M-1/r1/2");
        recall("--card", "M-1/r1/2", "--done", "handed-out", "--holder", "truck 7", "--remark", "trucks swapped");
        Said truck = recall("--holder", "truck 12", "--mix-id", "M-1");
        assertThat(truck.list("cards")).singleElement().satisfies(card -> {
            assertThat(card).containsEntry("card", "M-1/r1/1").containsEntry("revision", 1);
            assertThat(card).containsEntry("state", "holds").containsEntry("toComeBack", false);
            assertThat(card).containsEntry("holder", "truck 12").containsEntry("place", "out");
        });
        assertThat(recall().json()).containsEntry("cardsOut", 2).containsEntry("toComeBack", 0);
    }

    @Test
    void aCardThatIsOutWhenTheFactorLapsedHasToComeBack() {
        recall("--card", "M-1/r1/1", "--done", "handed-out", "--holder", "truck 12");
        assertThat(recall("--at", "2027-06-10T23:59").json()).containsEntry("toComeBack", 0);
        Said lapsed = recall("--at", "2027-06-11T00:00");
        assertThat(lapsed.json()).containsEntry("toComeBack", 1);
        assertThat(lapsed.list("cards").get(0))
                .containsEntry("state", "lapsed")
                .containsEntry("since", "2027-06-11T00:00");
        recall("--card", "M-1/r1/1", "--done", "returned");
        assertThat(recall("--at", "2027-06-11T00:00").json()).containsEntry("toComeBack", 0);
    }

    @Test
    void aCardStillOutIsAnAlarmInTheRegisterUntilItIsSettled() {
        recall("--card", "M-1/r1/1", "--done", "handed-out", "--holder", "truck 12");
        List<String> lapsed = List.of("register", "--book", "lab.book", "--on", "2027-06-11", "--out", "register.csv");
        assertThat(alarmed(lapsed, "--replace")).containsEntry("cards", 1).containsEntry("mixes", 1);
        Said said = terminal.run(lapsed.subList(0, 5).toArray(String[]::new));
        assertThat(said.out())
                .contains("ALARM: cards still out whose factor no longer holds: 1 (mixes: 1)")
                .contains("M-1: A card whose factor no longer holds is still out: truck 12 (M-1/r1/1).");
        assertThat(folder.resolve("register.csv"))
                .content()
                .contains(",cards_to_come_back\r\n")
                .endsWith(",1\r\n");
        recall("--card", "M-1/r1/1", "--done", "lost", "--remark", "blown off");
        assertThat(alarmed(lapsed, "--replace")).containsEntry("cards", 0).containsEntry("mixes", 0);
        assertThat(folder.resolve("register.csv")).content().endsWith(",0\r\n");
        assertThat(terminal.run(lapsed.subList(0, 5).toArray(String[]::new)).out())
                .doesNotContain("ALARM");
    }

    @SuppressWarnings("unchecked") // an object of JSON
    private Map<String, Object> alarmed(List<String> command, String more) {
        List<String> arguments = new ArrayList<>(command);
        arguments.add(more);
        Said said = terminal.json(arguments.toArray(String[]::new));
        assertThat(said.codes()).isEmpty();
        Map<String, Object> alarm = (Map<String, Object>) said.json().get("cardsToComeBack");
        assertThat(said.list("rows"))
                .singleElement()
                .satisfies(row -> assertThat(row).containsEntry("cardsToComeBack", alarm.get("cards")));
        return alarm;
    }

    private String written(String name) {
        try {
            return PageText.of(Files.readAllBytes(folder.resolve(name)));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Test
    void aNewRevisionNamesTheCardsThatItCallsBack() {
        recall("--card", "M-1/r1/1", "--done", "handed-out", "--holder", "truck 12");
        Said issued = terminal.json(
                "issue",
                "--book",
                "lab.book",
                "--mix-id",
                "M-1",
                "--reason",
                "found anew",
                "--determination",
                "M-1/1",
                "--override-by",
                "M. Ash",
                "--override-reason",
                "looked at");
        assertThat(issued.status()).as(issued.out()).isZero();
        assertThat(issued.codes()).contains("custody.called-back");
        assertThat(issued.out()).contains("They are with: truck 12 (M-1/r1/1).");
        assertThat(recall().json()).containsEntry("toComeBack", 1);
    }

    @Test
    void theListIsWrittenForAllWhoHaveToGiveBackAndForOneTruck() {
        recall("--card", "M-1/r1/1", "--done", "handed-out", "--holder", "truck 12");
        recall("--card", "M-1/r1/2", "--done", "handed-out", "--holder", "crew North");
        Said all = recall("--at", "2027-06-11T00:00", "--out", "recall.pdf");
        assertThat(all.json())
                .containsEntry("toComeBack", 2)
                .containsEntry("file", folder.resolve("recall.pdf").toString());
        assertThat(written("recall.pdf"))
                .contains("Cards that have to come back", "truck 12", "crew North", "M-1/r1/1", "lapsed");
        assertThat(recall("--out", "truck.pdf", "--holder", "truck 12", "--paper", "letter")
                        .codes())
                .isEmpty();
        assertThat(written("truck.pdf"))
                .contains("What truck 12 carries", "M-1/r1/1", "holds")
                .doesNotContain("crew North");
        recall("--out", "out.pdf", "--all");
        assertThat(written("out.pdf"))
                .contains(
                        "Cards out by who holds them", "Cards out: 2. Of these with a factor that no longer holds: 0.");
        assertThat(recall("--out", "recall.csv").codes()).containsExactly("custody.list-ending");
        assertThat(recall("--out", "never.pdf", "--card", "M-1/r1/1", "--done", "returned")
                        .codes())
                .containsExactly("custody.list-and-act");
        assertThat(folder.resolve("never.pdf")).doesNotExist();
    }

    @Test
    void refusesWithWords() {
        assertThat(recall("--holder", "lorry 12").codes()).containsExactly("custody.not-a-holder");
        assertThat(recall("--done", "returned").codes()).containsExactly("custody.card-and-act");
        assertThat(recall("--card", "M-1/r1/1").codes()).containsExactly("custody.card-and-act");
        assertThat(recall("--mix-id", "M-9").codes()).containsExactly("book.not-there");
        Said both = recall("--card", "M-1/r1/1", "--card", "M-1/r1/9", "--done", "found");
        assertThat(both.status()).isEqualTo(1);
        assertThat(both.codes()).containsExactly("custody.cannot-follow", "custody.no-such-card");
        assertThat(recall().json()).containsEntry("cardsOut", 0);
    }

    @Test
    void whatHappenedLeavesAndComesBackAsAFile() {
        recall("--card", "M-1/r1/1", "--done", "handed-out", "--holder", "plant North yard");
        recall("--card", "M-1/r1/1", "--done", "lost", "--remark", "blown off");
        assertThat(terminal.json("export", "--book", "lab.book", "out").status())
                .isZero();
        assertThat(folder.resolve("out/card-steps.csv"))
                .content()
                .contains("M-1,1,1,1,handed-out,plant,North yard,")
                .contains("M-1,1,1,2,lost,,,");
        assertThat(terminal.json("import", "--book", "lab.book", "out/card-steps.csv")
                        .status())
                .isZero();
    }

    /** M-1 and M-2 stand on the card of plant North; the card of M-2 is recorded by hand, as no factor of it is in force. */
    @Test
    void whatHappensToOneMixOnAPlantsCardHappensToAllAlsoWhereOneMixIsAskedFor() {
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            MixDesign plain = book.latest(MixDesign.class, "M-1").orElseThrow().value();
            FactorIssue first =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow().value();
            MixId other = new MixId("M-2");
            MixDesign second = new MixDesign(
                    other,
                    plain.title(),
                    plain.batch(),
                    plain.soakMinutes(),
                    plain.airTolerancePercent(),
                    plain.profileId(),
                    plain.remarks(),
                    Optional.of("North"));
            String paper = new PlantMark("North", 9, 1).onto("A6");
            assertThat(book.keep(
                            List.of(
                                    Draft.of(second),
                                    Draft.of(new CardPrint(first.mixId(), 1, 3, paper, CardPrint.PRINTER)),
                                    Draft.of(new CardPrint(other, 1, 1, paper, CardPrint.PRINTER))),
                            "Ada",
                            "by hand"))
                    .isEmpty();
        }
        Said handed = recall(
                "--mix-id",
                "M-1",
                "--card",
                "M-1/r1/3",
                "--done",
                "handed-out",
                "--holder",
                "truck 7",
                "--by",
                "Ada",
                "--remark",
                "on the way");
        assertThat(handed.status()).as(handed.out()).isZero();
        assertThat(handed.list("steps")).extracting(step -> step.get("card")).containsExactly("M-1/r1/3", "M-2/r1/1");
        assertThat(handed.list("steps"))
                .extracting(step -> step.get("remark"))
                .containsOnly("on the way (card 9 page 1 of plant North)");
        assertThat(recall("--mix-id", "M-1", "--holder", "truck 7").json()).containsEntry("cardsOut", 1);
        assertThat(recall("--holder", "truck 7").json()).containsEntry("cardsOut", 2);
        assertThat(recall("--mix-id", "M-9", "--card", "M-1/r1/3", "--done", "returned")
                        .codes())
                .containsExactly("book.not-there");
    }
}
