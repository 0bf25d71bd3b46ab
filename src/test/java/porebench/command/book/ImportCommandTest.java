package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

class ImportCommandTest {
    private static final String BAD_TRIALS = LabFiles.TRIAL_COLUMNS
            + LabFiles.trial("T-8", "M-1", 8, "5.3", "no")
            + LabFiles.trial("T-9", "M-9", 9, "5.4", "no")
            + LabFiles.trial("T-10", "M-1", 10, "x", "no");

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void open() {
        terminal = new Terminal(folder);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> counts(Said said) {
        return (Map<String, Object>) said.json().get("counts");
    }

    private int trialsInBook() {
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            return book.latest(Trial.class).size();
        }
    }

    @Test
    void countsWhatWasKept() {
        LabFiles.write(folder, "sources.csv", LabFiles.SOURCES);
        LabFiles.write(folder, "meters.csv", LabFiles.METERS);
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX);
        LabFiles.write(folder, "trials.csv", LabFiles.THREE_TRIALS);
        Said said = terminal.json(
                "import", "--new", "--book", "lab.book", "trials.csv", "mix.csv", "meters.csv", "sources.csv");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys("book", "counts", "newVersions", "alreadyThere", "determinations", "problems");
        assertThat(said.codes()).isEmpty();
        assertThat(counts(said))
                .containsEntry("source", 2)
                .containsEntry("meter", 1)
                .containsEntry("mix", 1)
                .containsEntry("determination", 1)
                .containsEntry("trial", 3)
                .containsEntry("factor_issue", 0);
    }

    /** Two trials on one meter at the same time, each after a soak of 15 minutes. */
    private static String together(String reason) {
        String rows = LabFiles.trial("T-8", "M-1", 8, "5.3", "no") + "," + reason
                + LabFiles.trial("T-9", "M-1", 8, "5.3", "no") + "," + reason + "\n";
        return LabFiles.TRIAL_COLUMNS + ",kept_because" + rows.replace(",kg,,", ",kg,15,");
    }

    private Optional<String> keptBecause(String trial) {
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            return book.latest(Trial.class, trial).orElseThrow().value().keptBecause();
        }
    }

    @Test
    void doubtedTrialsAreKeptForAReasonOnly() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "soon.csv", together(""));
        for (String way : List.of("--who=Ada", "--good-rows")) {
            Said refused = terminal.json("import", "--book", "lab.book", way, "soon.csv");
            assertThat(refused.status()).isEqualTo(1);
            assertThat(refused.codes()).contains("trial.soaks-overlap", "import.reason-missing");
            assertThat(trialsInBook()).isEqualTo(3);
        }
        Said kept = terminal.json("import", "--book", "lab.book", "--kept-because", " two bowls ", "soon.csv");
        assertThat(kept.status()).isZero();
        assertThat(kept.codes()).contains("trial.soaks-overlap");
        assertThat(keptBecause("T-9")).contains("two bowls");
        assertThat(keptBecause("T-1")).isEmpty();
    }

    /** 4.9 kg of sand belong in the bowl; 5.5 kg are beyond every tolerance. */
    @Test
    void aDoubtThatOnlyJudgingFindsIsAskedForToo() {
        LabFiles.beginBook(folder, terminal);
        String heavy = LabFiles.trial("T-8", "M-1", 8, "5.3", "no").replace(",4.9,", ",5.5,");
        LabFiles.write(folder, "heavy.csv", LabFiles.TRIAL_COLUMNS + heavy);
        Said refused = terminal.json("import", "--book", "lab.book", "heavy.csv");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.codes())
                .contains("import.reason-missing")
                .anyMatch(code -> code.toString().startsWith("trial.mass"));
        assertThat(trialsInBook()).isEqualTo(3);
        Said kept = terminal.json("import", "--book", "lab.book", "--kept-because", "checked", "heavy.csv");
        assertThat(kept.status()).isZero();
        assertThat(keptBecause("T-8")).contains("checked");
        assertThat(terminal.json("import", "--book", "lab.book", "heavy.csv").status())
                .as("what is kept already is not asked")
                .isZero();
    }

    @Test
    void aRowThatSaysItselfWhyItIsKeptIsNotAsked() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "said.csv", together("two buckets"));
        assertThat(terminal.json("import", "--book", "lab.book", "said.csv").status())
                .isZero();
        assertThat(keptBecause("T-9")).contains("two buckets");
    }

    /** Every determination that got trials says whether they are enough; nothing else does. */
    @Test
    void saysWhetherTheTrialsOfADeterminationAreEnough() {
        LabFiles.write(folder, "sources.csv", LabFiles.SOURCES);
        LabFiles.write(folder, "meters.csv", LabFiles.METERS);
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX);
        LabFiles.write(folder, "trials.csv", LabFiles.THREE_TRIALS);
        assertThat(terminal.json("import", "--new", "--book", "lab.book", "mix.csv", "meters.csv", "sources.csv")
                        .list("determinations"))
                .isEmpty();
        Said said = terminal.json("import", "--book", "lab.book", "trials.csv");
        assertThat(said.list("determinations")).singleElement().satisfies(one -> {
            assertThat(one)
                    .containsEntry("determinationId", "M-1/1")
                    .containsEntry("mixId", "M-1")
                    .containsEntry("accepted", 3);
            assertThat((Map<?, ?>) one.get("stop")).isNotNull();
        });
        assertThat(terminal.json("import", "--book", "lab.book", "trials.csv").list("determinations"))
                .isEmpty();
        LabFiles.write(folder, "more.csv", LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-20", "M-1", 9, "5.4", "no"));
        assertThat(terminal.run("import", "--book", "lab.book", "more.csv").out())
                .contains("Determination M-1/1, trials that count: 4. ")
                .contains("the 95 % interval of the mean reaches");
    }

    @Test
    void aSecondImportFindsEverythingThere() {
        LabFiles.beginBook(folder, terminal);
        Said said = terminal.json("import", "--book", "lab.book", "trials.csv", "mix.csv");
        assertThat(said.status()).isZero();
        assertThat(counts(said).values()).containsOnly(0);
        assertThat(said.json()).containsEntry("alreadyThere", 4);
        assertThat(terminal.run("import", "--book", "lab.book", "mix.csv").out())
                .contains("Already there, unchanged: 1");
    }

    @Test
    void aChangedMixBecomesANewVersionWithAWarning() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX.replace(",1050,", ",1040,"));
        Said said = terminal.json("import", "--book", "lab.book", "mix.csv");
        assertThat(said.status()).isZero();
        assertThat(said.codes()).containsExactly("import.new-version");
        assertThat(said.json()).containsEntry("newVersions", 1);
    }

    @Test
    void refusesWithAllProblemsAndKeepsNothing() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "bad.csv", BAD_TRIALS);
        Said said = terminal.json("import", "--book", "lab.book", "bad.csv", "no.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.json()).containsOnlyKeys("problems");
        assertThat(said.codes()).contains("csv.not-a-number", "csv.file-missing", "import.unknown-mix");
        assertThat(said.list("problems"))
                .anySatisfy(problem -> assertThat(problem)
                        .containsEntry("code", "import.unknown-mix")
                        .containsEntry("file", "bad.csv")
                        .containsEntry("line", 3));
        assertThat(trialsInBook()).isEqualTo(3);
    }

    @Test
    void saysProblemsWithTheirPlaceOnStandardError() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "bad.csv", BAD_TRIALS);
        Said said = terminal.run("import", "--book", "lab.book", "bad.csv");
        assertThat(said.out()).isEmpty();
        assertThat(said.err().lines())
                .anyMatch(line -> line.startsWith("error: bad.csv, line 4, column 16: gauge_pct"))
                .anyMatch(line -> line.startsWith("error: bad.csv, line 3: ") && line.contains("M-9"));
    }

    @Test
    void keepsTheGoodRowsWhenAskedTo() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "bad.csv", BAD_TRIALS);
        Said said = terminal.json("import", "--book", "lab.book", "--good-rows", "bad.csv");
        assertThat(said.status()).isZero();
        assertThat(counts(said)).containsEntry("trial", 1);
        assertThat(said.codes()).contains("csv.not-a-number", "import.unknown-mix");
        assertThat(trialsInBook()).isEqualTo(4);
    }

    @Test
    void refusesWhenNoRowIsGood() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "bad.csv", LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-9", "M-9", 9, "5.4", "no"));
        assertThat(terminal.json("import", "--book", "lab.book", "--good-rows", "bad.csv")
                        .status())
                .isEqualTo(1);
    }

    @Test
    void recordsWhoAndWhy() {
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "more.csv", LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-4", "M-1", 4, "5.4", "no"));
        terminal.run("import", "--book", "lab.book", "--who", "Cy Clerk", "more.csv");
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            assertThat(book.latest(Trial.class, "T-4").orElseThrow().stamp())
                    .matches(stamp -> stamp.who().equals("Cy Clerk"))
                    .matches(stamp -> stamp.why().equals("Imported from more.csv"));
            assertThat(book.latest(Trial.class, "T-1").orElseThrow().stamp().who())
                    .isEqualTo("Ada Test");
        }
    }

    @Test
    void needsALabBookUnlessOneIsBegun() {
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX);
        Said said = terminal.json("import", "--book", "lab.book", "mix.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("book.missing");
        assertThat(folder.resolve("lab.book")).doesNotExist();
    }

    @Test
    void aRefusedImportLeavesNoNewLabBook() {
        LabFiles.write(folder, "bad.csv", BAD_TRIALS);
        Said said = terminal.json("import", "--book", "lab.book", "--new", "bad.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).contains("csv.not-a-number", "import.unknown-mix");
        assertThat(folder).isDirectoryNotContaining("glob:**lab.book*");
    }

    @Test
    void doesNotBeginALabBookOverAFile() {
        LabFiles.beginBook(folder, terminal);
        Said said = terminal.json("import", "--book", "lab.book", "--new", "mix.csv");
        assertThat(said.codes()).containsExactly("book.file-exists");
        assertThat(trialsInBook()).isEqualTo(3);
    }

    @Test
    void readsSemicolonsAndDecimalCommasOnlyWhenTold() {
        LabFiles.beginBook(folder, terminal);
        String trials = LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-8", "M-1", 8, "5.3", "no");
        LabFiles.write(folder, "other.csv", trials.replace(',', ';').replace('.', ','));
        Said untold = terminal.json("import", "--book", "lab.book", "other.csv");
        assertThat(untold.status()).isEqualTo(1);
        assertThat(untold.codes()).containsExactly("csv.separator");
        assertThat(trialsInBook()).isEqualTo(3);
        Said halfTold = terminal.json("import", "--book", "lab.book", "--columns", "semicolon", "other.csv");
        assertThat(halfTold.codes()).contains("csv.decimal-comma");
        assertThat(trialsInBook()).isEqualTo(3);
        Said told = terminal.json(
                "import", "--book", "lab.book", "--columns", "semicolon", "--decimal", "comma", "other.csv");
        assertThat(told.status()).as(told.err()).isZero();
        assertThat(counts(told)).containsEntry("trial", 1);
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            assertThat(book.latest(Trial.class, "T-8")
                            .orElseThrow()
                            .value()
                            .readings()
                            .toString())
                    .contains("5.3");
        }
    }

    @Test
    void aSignThatCannotPartColumnsIsWrongUse() {
        assertThat(terminal.run("import", "--book", "lab.book", "--columns", "colon", "other.csv")
                        .status())
                .isEqualTo(2);
        assertThat(terminal.run("import", "--book", "lab.book", "--decimal", "dot", "other.csv")
                        .status())
                .isEqualTo(2);
    }
}
