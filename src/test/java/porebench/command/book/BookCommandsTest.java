package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.evidence.FactorState;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.store.SqliteShelf;

/** Card, register, export and verify on a small lab book; the day is 1 July 2026. */
class BookCommandsTest {
    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void begin() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
    }

    private void issue(String inForceFrom, String recheckBy) {
        LabFiles.write(folder, "issues.csv", LabFiles.issue(inForceFrom, recheckBy));
        assertThat(terminal.json("import", "--book", "lab.book", "issues.csv").status())
                .isZero();
        confirm("lab.book");
    }

    /** Confirms the revision that came in, as somebody would who looked at everything it rests on. */
    private void confirm(String name) {
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve(name))) {
            Version<FactorIssue> version =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue issue = version.value();
            FactorIssue confirmed = issue.on(issue.grounds().from(FactorOrigin.CONFIRMED));
            assertThat(book.keep(List.of(Draft.correcting(version, confirmed)), "Ada Test", "looked at"))
                    .isEmpty();
        }
    }

    private Said card(String... more) {
        List<String> arguments = new java.util.ArrayList<>(
                List.of("card", "--book", "lab.book", "--mix-id", "M-1", "--out", "card.pdf"));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    private List<CardPrint> prints() {
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            return book.latest(CardPrint.class).stream()
                    .map(version -> version.value())
                    .toList();
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> counts(Said said) {
        return (Map<String, Object>) said.json().get("counts");
    }

    @Test
    void writesTheCardAndRecordsIt() throws IOException {
        issue("2026-06-10", "2027-06-10");
        Said said = card();
        assertThat(said.status()).isZero();
        Path file = folder.resolve("card.pdf");
        assertThat(said.json())
                .containsEntry("path", file.toString())
                .containsEntry("revision", 1)
                .containsEntry("factorPercent", new BigDecimal("0.4"))
                .containsEntry("number", 1);
        assertThat(Files.readAllBytes(file)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(card("--paper", "4x6in", "--replace").json()).containsEntry("number", 2);
        assertThat(prints()).extracting(CardPrint::paper).containsExactly("A6", "4x6in");
        assertThat(prints()).extracting(CardPrint::destination).containsOnly(file.toString());
    }

    @Test
    void saysWhereTheCardIs() {
        issue("2026-06-10", "2027-06-10");
        Said said = terminal.run("card", "--book", "lab.book", "--mix-id", "M-1", "--out", "card.pdf");
        assertThat(said.out().lines())
                .containsExactly(
                        "Card written to " + folder.resolve("card.pdf"), "Subtract G  0.4  % air", "Revision    1");
    }

    @Test
    void thereIsNoCardWithoutAFactor() {
        Said said = card();
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("issue.none-in-force");
        assertThat(folder.resolve("card.pdf")).doesNotExist();
    }

    @Test
    void thereIsNoCardBeforeTheFirstDayNorAfterTheLast() {
        issue("2026-07-02", "2027-07-02");
        assertThat(card().codes()).containsExactly("issue.none-in-force");
        Terminal other = new Terminal(folder);
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2026-06-30"));
        assertThat(other.json(
                                "import",
                                "--new",
                                "--book",
                                "late.book",
                                "sources.csv",
                                "meters.csv",
                                "mix.csv",
                                "trials.csv",
                                "issues.csv")
                        .status())
                .isZero();
        confirm("late.book");
        Said late = other.json("card", "--book", "late.book", "--mix-id", "M-1", "--out", "card.pdf");
        assertThat(late.status()).isEqualTo(1);
        assertThat(late.codes()).containsExactly("issue.not-usable");
        assertThat(late.list("problems").get(0).get("message").toString()).contains("lapsed");
        assertThat(prints()).isEmpty();
    }

    @Test
    void aMarkedCopyIsWrittenOnlyWhenAskedForAndSaysItsState() {
        issue("2026-07-02", "2027-07-02");
        Said said = card("--marked");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("state", "not-yet").containsEntry("marked", true);
        assertThat(said.codes()).containsExactly("issue.not-usable");
        assertThat(prints()).extracting(CardPrint::way).containsExactly(CardPrint.Way.MARKED_COPY);
    }

    @Test
    void theAnswerSaysHowFarTheLabBookReachedWhenTheCardWasMade() {
        issue("2026-06-10", "2027-06-10");
        Head before;
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            before = book.head();
        }
        assertThat(card().json())
                .containsEntry("state", "in-force")
                .containsEntry("marked", false)
                .containsEntry("head", before.shortHash())
                .containsEntry("entries", (int) before.entries());
    }

    @Test
    void aFileThatCannotBeWrittenIsSaidAndNothingIsRecorded() {
        issue("2026-06-10", "2027-06-10");
        Said said = terminal.json("card", "--book", "lab.book", "--mix-id", "M-1", "--out", "no-folder/card.pdf");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("output.folder-missing");
        assertThat(said.list("problems").get(0).get("message").toString()).contains("card.pdf");
        assertThat(said.err()).isEmpty();
        assertThat(prints()).isEmpty();
    }

    @Test
    void aCardIsWrittenOverNothingAndNeverOverALabBook() throws IOException {
        issue("2026-06-10", "2027-06-10");
        Files.writeString(folder.resolve("card.pdf"), "somebody's");
        assertThat(card().codes()).containsExactly("output.there");
        assertThat(folder.resolve("card.pdf")).hasContent("somebody's");
        byte[] book = Files.readAllBytes(folder.resolve("lab.book"));
        for (String target : List.of("lab.book", "lab.book-wal", "lab.book-shm", "lab.book-journal", "/dev/null")) {
            Said said = terminal.json("card", "--book", "lab.book", "--mix-id", "M-1", "--out", target, "--replace");
            assertThat(said.status()).as(target).isEqualTo(1);
            assertThat(said.codes())
                    .containsExactly(
                            switch (target) {
                                case "lab.book" -> "output.lab-book";
                                case "/dev/null" -> "output.not-a-file";
                                default -> "output.side-file";
                            });
        }
        assertThat(folder.resolve("lab.book")).hasBinaryContent(book);
        assertThat(prints()).isEmpty();
        assertThat(card("--replace").status()).isZero();
    }

    @Test
    void anExportReplacesFilesOnlyWhenTold() {
        assertThat(terminal.json("export", "--book", "lab.book", "out").status())
                .isZero();
        Said again = terminal.json("export", "--book", "lab.book", "out");
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.codes()).containsOnly("output.there").hasSizeGreaterThan(5);
        assertThat(terminal.json("export", "--book", "lab.book", "out", "--replace")
                        .status())
                .isZero();
        assertThat(terminal.json("export", "--book", "lab.book", "lab.book").codes())
                .containsExactly("output.not-a-folder");
    }

    @Test
    void refusesAnUnknownMixAndAFileThatIsNoLabBook() {
        assertThat(terminal.json("card", "--book", "lab.book", "--mix-id", "M-9", "--out", "c.pdf")
                        .codes())
                .containsExactly("book.not-there");
        for (String command : List.of("register", "verify")) {
            Said said = terminal.json(command, "--book", "mix.csv");
            assertThat(said.status()).isEqualTo(1);
            assertThat(said.codes()).containsExactly("book.not-a-lab-book");
        }
        Said text = terminal.run("verify", "--book", "nowhere.book");
        assertThat(text.status()).isEqualTo(1);
        assertThat(text.out()).isEmpty();
        assertThat(text.err()).startsWith("error: There is no file");
    }

    @Test
    void registersEveryMixWithItsState() {
        Said before = terminal.json("register", "--book", "lab.book");
        assertThat(before.status()).isZero();
        assertThat(before.json())
                .containsOnlyKeys("on", "counts", "cardsToComeBack", "coverage", "rows", "problems")
                .containsEntry("on", "2026-07-01");
        assertThat(before.list("rows").get(0))
                .containsOnlyKeys(
                        "mixId",
                        "title",
                        "state",
                        "factorPercent",
                        "expandedUncertaintyPercent",
                        "coverageFactor",
                        "uncertaintyNote",
                        "revision",
                        "inForceFrom",
                        "inForceAt",
                        "conditions",
                        "groupId",
                        "testedMix",
                        "recheckBy",
                        "countedTrials",
                        "plant",
                        "meters",
                        "firstTrialOn",
                        "lastTrialOn",
                        "withoutFactorSince",
                        "missing",
                        "cardsToComeBack",
                        "recheckG",
                        "due")
                .containsEntry("state", "no factor")
                .containsEntry("factorPercent", null)
                .containsEntry("revision", null)
                .containsEntry("inForceFrom", null)
                .containsEntry("countedTrials", 3);
        issue("2026-06-10", "2027-06-10");
        Said after = terminal.json("register", "--book", "lab.book");
        assertThat(after.list("rows").get(0)).containsEntry("expandedUncertaintyPercent", null);
        assertThat(String.valueOf(after.list("rows").get(0).get("uncertaintyNote")))
                .startsWith("Revision 1 states no uncertainty");
        assertThat(counts(after))
                .containsEntry("in force", 1)
                .containsEntry("no factor", 0)
                .hasSize(FactorState.values().length);
        assertThat(after.list("rows").get(0))
                .containsEntry("mixId", "M-1")
                .containsEntry("state", "in force")
                .containsEntry("factorPercent", new BigDecimal("0.4"))
                .containsEntry("revision", 1)
                .containsEntry("inForceFrom", "2026-06-10")
                .containsEntry("recheckBy", "2027-06-10")
                .extractingByKey("missing", org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .singleElement()
                .asString()
                .contains("register.doubts-taken-on", "Bo Check", "3 in all", "Bought new");
    }

    @Test
    void writesTheRegisterAsPdfAndAsCsv() throws IOException {
        issue("2026-06-10", "2027-06-10");
        Said csv = terminal.json("register", "--book", "lab.book", "--out", "register.csv", "--on", "2027-06-11");
        assertThat(csv.status()).isZero();
        assertThat(csv.json())
                .extractingByKey("coverage", org.assertj.core.api.InstanceOfAssertFactories.MAP)
                .containsEntry("mixes", 1)
                .containsEntry("covered", 0);
        List<String> lines = Files.readAllLines(folder.resolve("register.csv"));
        assertThat(lines.get(0))
                .isEqualTo(
                        "mix_id,mix_title,plant,state,factor_pct_air,revision,in_force_from,recheck_by,"
                                + "counted_trials,meters,first_trial_on,last_trial_on,without_factor_since,missing,in_force_at,conditions,group_id,tested_mix_id,expanded_u_pct,coverage_factor,due,cards_to_come_back");
        assertThat(lines.get(1)).startsWith("M-1,Plain,,lapsed,0.4,1,2026-06-10,2027-06-10,3,");
        assertThat(lines.get(1)).contains(",2027-06-11,", "A new test was due by 2027-06-10. Test now.; ");
        assertThat(lines).hasSize(2);
        assertThat(terminal.run("register", "--book", "lab.book", "--out", "register.pdf", "--paper", "letter")
                        .status())
                .isZero();
        assertThat(Files.readAllBytes(folder.resolve("register.pdf")))
                .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(terminal.run("register", "--book", "lab.book", "--out", "register.pdf")
                        .err())
                .contains("is there already");
        assertThat(terminal.run("register", "--book", "lab.book", "--out", "register.txt")
                        .err())
                .contains("Give a name that ends in .pdf or .csv.");
        assertThat(terminal.run("register", "--book", "lab.book", "--out", "r.pdf", "--paper", "A6")
                        .err())
                .contains("A4, letter");
    }

    /** The notice period of the profile is 30 days. */
    @Test
    void registersOnAnotherDay() {
        issue("2026-06-10", "2027-06-10");
        Map<String, String> states = Map.of(
                "2026-06-09",
                "no factor",
                "2027-05-10",
                "in force",
                "2027-05-11",
                "recheck due",
                "2027-06-11",
                "lapsed");
        states.forEach((day, state) -> assertThat(terminal.json("register", "--book", "lab.book", "--on", day)
                        .list("rows")
                        .get(0))
                .containsEntry("state", state));
        assertThat(terminal.run("register", "--book", "lab.book", "--on", "2027-06-11")
                        .out()
                        .lines())
                .contains(
                        "Factor register on 2027-06-11",
                        "M-1  lapsed        0.4         -         1  2026-06-10     2027-06-10       3  2027-06-11       Plain",
                        "M-1: A new test was due by 2027-06-10. Test now.");
    }

    @Test
    void exportsWhatImportsBackUnchanged() {
        issue("2026-06-10", "2027-06-10");
        Said said = terminal.json("export", "--book", "lab.book", "out");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsOnlyKeys("folder", "files", "counts", "problems");
        assertThat(counts(said)).containsEntry("trial", 3).containsEntry("factor_issue", 1);
        List<String> arguments = new java.util.ArrayList<>(List.of("import", "--book", "lab.book"));
        for (Object file : (List<?>) said.json().get("files")) {
            assertThat(Path.of(file.toString())).exists();
            arguments.add(file.toString());
        }
        Said back = terminal.json(arguments.toArray(String[]::new));
        assertThat(back.status()).isZero();
        assertThat(counts(back).values()).containsOnly(0);
        assertThat(terminal.run("export", "--book", "lab.book", "out2").out()).contains("  trial-sheet.csv");
    }

    @Test
    void verifiesALabBookNobodyTouched() {
        Said said = terminal.json("verify", "--book", "lab.book");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys("intact", "integrity", "schema", "head", "entries", "faults", "counts", "problems")
                .containsEntry("intact", true)
                .containsEntry("integrity", true)
                .containsEntry("schema", true)
                .containsEntry("faults", List.of());
        assertThat(terminal.run("verify", "--book", "lab.book").out())
                .contains("Every entry matches its hash")
                .containsPattern("Trials +3");
    }

    /** The mix's title is overwritten in the file itself, in as many letters. */
    @Test
    void findsAChangeMadeOutside() throws IOException {
        Path file = folder.resolve("lab.book");
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertThat(bytes).contains("Plain");
        Files.writeString(file, bytes.replace("Plain", "Stain"), StandardCharsets.ISO_8859_1);
        Said said = terminal.json("verify", "--book", "lab.book");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.json()).containsEntry("intact", false);
        assertThat(said.codes()).isNotEmpty().allMatch(code -> code.toString().startsWith("book.chain-"));
    }
}
