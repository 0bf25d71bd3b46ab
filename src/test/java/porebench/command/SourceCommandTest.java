package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.command.Terminal.Said;

/** What a source touches, told and changed on the command line as a person would; the terminal's day is 1 July 2026. */
class SourceCommandTest {
    private static final String HEADING =
            "source_id,name,role,place,ledge,relative_density,absorption_pct,remarks,step,changed_on,reason\n";

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void theDemoBook() {
        terminal = new Terminal(folder);
        assertThat(terminal.json("demo", "--book", "one.book").status()).isZero();
    }

    private Said source(String id, String... more) {
        return terminal.json(
                Stream.concat(Stream.of("source", "--book", "one.book", "--source-id", id), Stream.of(more))
                        .toArray(String[]::new));
    }

    private static List<Object> each(Said said, String list, String key) {
        return said.list(list).stream().map(one -> one.get(key)).toList();
    }

    private static String whole(Said said, String key) {
        return String.valueOf(said.json().get(key));
    }

    private String state(String mix) {
        return terminal.json("register", "--book", "one.book").list("rows").stream()
                .filter(row -> row.get("mixId").equals(mix))
                .map(row -> String.valueOf(row.get("state")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutAChangeItTellsMixesFactorsAndCards() {
        assertThat(terminal.json("card", "--book", "one.book", "--mix-id", "HG-101", "--out", "card.pdf")
                        .status())
                .isZero();
        Said said = source("S-02");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json())
                .containsEntry("sourceId", "S-02")
                .containsEntry("changedOn", null)
                .containsEntry("on", "2026-07-01");
        assertThat(whole(said, "mixesTouched")).isEqualTo("3");
        assertThat(whole(said, "factorsMadeUntrue")).isEqualTo("0");
        assertThat(each(said, "mixes", "mixId")).contains("HG-101").isSorted();
        Map<String, Object> deck = said.list("mixes").get(0);
        assertThat(deck)
                .containsEntry("mixId", "HG-101")
                .containsEntry("state", "in force")
                .containsEntry("stateThen", "in force")
                .containsEntry("becomesUntrue", false);
        assertThat(String.valueOf(deck.get("cardFiles"))).isEqualTo("1");
        assertThat(String.valueOf(deck.get("cardsOut"))).isEqualTo("0");
        assertThat(state("HG-101")).isEqualTo("in force");
    }

    @Test
    void theStonesOfASourceAreToldInOrder() {
        Said said = source("S-09");
        assertThat(each(said, "periods", "ledge")).containsExactly("ledge 4", "ledge 5");
        assertThat(each(said, "periods", "from")).containsExactly(null, "2026-11-09");
        assertThat(each(said, "periods", "reason").get(1)).isEqualTo("Ledge 4 is worked out");
        assertThat(each(said, "mixes", "state")).containsExactly("in force");
    }

    @Test
    void aChangeIsKeptAndSaysWhatItDid() {
        Said said = source(
                "S-02", "--changed", "2026-06-25", "--reason", "bench 3", "--by", "A. Reed", "--ledge", "bench 3");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json()).containsEntry("changedOn", "2026-06-25");
        assertThat(whole(said, "version")).isEqualTo("2");
        long untrue = each(said, "mixes", "becomesUntrue").stream()
                .filter(Boolean.TRUE::equals)
                .count();
        assertThat(whole(said, "factorsMadeUntrue")).isEqualTo(Long.toString(untrue));
        assertThat(untrue).isPositive();
        assertThat(state("HG-101")).isEqualTo("source changed");
        Said after = source("S-02");
        assertThat(each(after, "periods", "declaredBy").get(1)).isEqualTo("A. Reed");
        assertThat(each(after, "periods", "ledge")).containsExactly("bench 2", "bench 3");
        assertThat(terminal.json("verify", "--book", "one.book").status()).isZero();
    }

    @Test
    void whoHoldsTheCardsIsNamedAndWhatIsCalledBack() {
        terminal.json("card", "--book", "one.book", "--mix-id", "HG-101", "--out", "card.pdf");
        assertThat(terminal.json(
                                "recall",
                                "--book",
                                "one.book",
                                "--card",
                                "HG-101/r2/1",
                                "--done",
                                "handed-out",
                                "--holder",
                                "truck 3")
                        .status())
                .isZero();
        Map<String, Object> deck = source("S-02").list("mixes").get(0);
        assertThat(deck)
                .containsEntry("holders", List.of("truck 3"))
                .containsEntry("cardsOut", 1)
                .containsEntry("cardFiles", 0);
        Said said = source("S-02", "--changed", "2026-06-25", "--reason", "bench 3", "--ledge", "bench 3");
        assertThat(each(said, "problems", "code")).contains("custody.called-back");
        assertThat(said.out()).contains("They are with: truck 3 (HG-101/r2/1).");
    }

    @Test
    void aChangeToComeIsSaidAndHoldsFromItsDay() {
        Said said = source("S-02", "--changed", "2026-07-15", "--reason", "bench 3", "--ledge", "bench 3");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json()).containsEntry("on", "2026-07-15");
        assertThat(each(said, "problems", "code")).contains("source.change-to-come");
        assertThat(state("HG-101")).isEqualTo("in force");
        Said then = terminal.json("register", "--book", "one.book", "--on", "2026-07-15");
        assertThat(then.list("rows").get(0)).containsEntry("mixId", "HG-101").containsEntry("state", "source changed");
        assertThat(terminal.run("register", "--book", "one.book").out())
                .contains("The material of source S-02 changes on 2026-07-15: the factor holds until then. Plan "
                        + "new trials.");
    }

    /** The demo's ledge 5 begins on 9 November: on 1 July that is still to come. */
    @Test
    void whatTheDemoBringsLaterIsSeenComing() {
        assertThat(terminal.json("register", "--book", "one.book", "--on", "2026-11-08")
                        .list("rows")
                        .get(5))
                .containsEntry("mixId", "HG-106")
                .containsEntry("state", "in force");
        assertThat(terminal.json("register", "--book", "one.book", "--on", "2026-11-09")
                        .list("rows")
                        .get(5))
                .containsEntry("mixId", "HG-106")
                .containsEntry("state", "source changed");
    }

    @Test
    void peopleReadItAsTables() {
        assertThat(terminal.run("source", "--book", "one.book", "--source-id", "S-09")
                        .out())
                .contains(
                        "Mixes that use source S-09: 1; cards of the factors in force that are out: 0.",
                        "ledge 5",
                        "HG-106");
        assertThat(terminal.run(
                                "source",
                                "--book",
                                "one.book",
                                "--source-id",
                                "S-02",
                                "--changed",
                                "2026-06-25",
                                "--reason",
                                "new bench",
                                "--ledge",
                                "bench 3")
                        .out())
                .contains(
                        "The material of source S-02 changed on 2026-06-25. Factors that no longer hold from then on:");
    }

    @Test
    void aSourceNobodyUsesSaysSo() throws IOException {
        Files.writeString(folder.resolve("sources.csv"), HEADING + "S-77,Sand,fine,Pit,lot 1,2.6,1,,,,\n");
        assertThat(terminal.json("import", "--book", "one.book", "sources.csv").status())
                .isZero();
        assertThat(terminal.run("source", "--book", "one.book", "--source-id", "S-77")
                        .out())
                .contains("No mix uses source S-77: a change of it changes no factor.");
        assertThat(source("S-77").list("mixes")).isEmpty();
    }

    @Test
    void aSourceThatIsNotThereIsRefusedAndAChangeWithoutAReasonIsNoCommand() {
        Said unknown = source("S-404");
        assertThat(unknown.status()).isEqualTo(1);
        assertThat(each(unknown, "problems", "code")).containsExactly("book.not-there");
        assertThat(source("S-02", "--changed", "2026-06-25").status()).isEqualTo(2);
        assertThat(source("S-02", "--changed", "soon", "--reason", "new").status())
                .isEqualTo(2);
    }

    /** One gate: what the command refuses, a file is refused for too, with the same words, and nothing is kept. */
    @ParameterizedTest
    @CsvSource({
        "S-09, 2026-11-09, worked out, source.change-not-after",
        "S-09, 2026-11-01, worked out, source.change-not-after",
        "S-02, 2027-07-02, worked out, source.change-too-far",
        "S-02, 2026-06-25, ' ', source.reason-wanting",
    })
    void theCommandAndAFileAreRefusedAlike(String id, String day, String reason, String code) throws IOException {
        Said byHand = source(id, "--changed", day, "--reason", reason, "--ledge", "another");
        assertThat(byHand.status()).isEqualTo(1);
        assertThat(each(byHand, "problems", "code")).contains(code);
        Files.writeString(
                folder.resolve("sources.csv"),
                HEADING + id + ",Stone,coarse,Quarry,another,2.6,1,,changed," + day + "," + reason.strip() + "\n");
        Said byFile = terminal.json("import", "--book", "one.book", "sources.csv");
        assertThat(byFile.status()).isEqualTo(1);
        assertThat(each(byFile, "problems", "code")).contains(code);
        assertThat(String.valueOf(source(id).json().get("version"))).isEqualTo(id.equals("S-09") ? "2" : "1");
    }
}
