package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.profile.Profiles;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.LaboratoryProfile;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.store.SqliteShelf;

/** Production comes in with a sheet, and the register and the plan say what is due by the laboratory's rules. */
class RecheckCommandTest {
    private static final String HEADING = "production_id,mix_id,first_day,last_day,production_days,loads,"
            + "concrete_volume,concrete_volume_unit,concrete_mass,concrete_mass_unit,reported_by\n";
    private static final String SAID = "1050 t of 1000 t of aggregate since the newest trial, 2026-06-03. Test "
            + "again when the amount is reached.";

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void beginBook() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(
                folder,
                "mix.csv",
                LabFiles.PLAIN_MIX.replaceFirst("\n", ",profile_id\n").replaceAll(",\n", ",,own\n"));
        LabFiles.write(folder, "issues.csv", LabFiles.issue("2026-06-10", "2027-06-10"));
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            LaboratoryProfile own = new LaboratoryProfile(Profiles.standard()
                    .copyAs("own", "Own")
                    .with(FigureName.RECHECK_TONNES, new Figure("1000", "our rule", Mark.LABORATORY)));
            assertThat(book.keep(List.of(Draft.of(own)), "Ada Test", "our rules"))
                    .isEmpty();
        }
        assertThat(terminal.json("import", "--book", "lab.book", "mix.csv", "issues.csv")
                        .status())
                .isZero();
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("lab.book"))) {
            Version<FactorIssue> issued =
                    book.latest(FactorIssue.class, "M-1/r1").orElseThrow();
            FactorIssue confirmed = issued.value().on(issued.value().grounds().from(FactorOrigin.CONFIRMED));
            assertThat(book.keep(List.of(Draft.correcting(issued, confirmed)), "Ada Test", "looked at"))
                    .isEmpty();
        }
    }

    private Said take(String row) {
        LabFiles.write(folder, "production.csv", HEADING + row + "\n");
        return terminal.json("import", "--book", "lab.book", "production.csv");
    }

    /** 600 m3 of 1.75 t of aggregate each. */
    @Test
    void theRegisterAndThePlanSayWhatIsDueAndWhy() throws IOException {
        Said before = terminal.json("register", "--book", "lab.book");
        assertThat(before.list("rows").get(0))
                .containsEntry("state", "in force")
                .containsEntry("due", List.of());
        assertThat(take("p1,M-1,2026-06-15,2026-06-20,5,70,600,m3,,,Plant 2").status())
                .isZero();
        Said after = terminal.json("register", "--book", "lab.book");
        assertThat(after.list("rows").get(0))
                .containsEntry("state", "lapsed")
                .containsEntry("withoutFactorSince", "2026-06-20")
                .extractingByKey("due", InstanceOfAssertFactories.LIST)
                .singleElement()
                .asString()
                .contains("register.recheck-tonnes", SAID);
        assertThat(terminal.run("register", "--book", "lab.book").out()).contains("Due:\nM-1: " + SAID);
        assertThat(terminal.run("register", "--book", "lab.book", "--out", "r.csv")
                        .status())
                .isZero();
        assertThat(Files.readAllLines(folder.resolve("r.csv")).get(1)).endsWith("," + '"' + SAID + '"' + ",0");
        Said plan = terminal.json("plan", "--book", "lab.book");
        assertThat(plan.list("tests").get(0))
                .containsEntry("need", "no-longer-holds")
                .extractingByKey("due", InstanceOfAssertFactories.LIST)
                .singleElement()
                .asString()
                .contains(SAID);
        assertThat(terminal.run("plan", "--book", "lab.book").out()).contains("M-1: " + SAID);
    }

    @Test
    void aSpellThatOverlapsIsRefusedByName() {
        assertThat(take("p1,M-1,2026-06-15,2026-06-20,5,70,60,m3,,,Plant 2").status())
                .isZero();
        Said twice = take("p2,M-1,2026-06-20,2026-06-21,1,,,,,,Plant 2");
        assertThat(twice.status()).isEqualTo(1);
        assertThat(twice.codes()).containsExactly("production.overlaps");
        Said wrong = take("p2,M-1,2026-06-21,2026-07-02,13,,5,m3,3,t,Plant 2");
        assertThat(wrong.status()).isEqualTo(1);
        assertThat(wrong.codes())
                .containsExactlyInAnyOrder("production.to-come", "production.two-amounts", "production.many-days");
        assertThat(take("p2,M-1,2026-06-21,2026-06-22,,,,,1.5,ton,Plant 2").status())
                .isZero();
    }
}
