package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.method.Role;
import porebench.record.ChangeDecision;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.Grounds;
import porebench.record.GroupGround;
import porebench.record.SampleDecisions;
import porebench.record.SampleGroups;
import porebench.record.SamplePlans;
import porebench.record.Samples;
import porebench.record.StatedUncertainty;
import porebench.record.TestPlan;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;
import porebench.store.file.Steps;

/** That a lab book of the sixteenth step takes groups, plans and decisions from then on. */
class SixteenthStepTest {
    @TempDir
    Path folder;

    private static List<String> strings(Path file, String query) throws SQLException {
        List<String> strings = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            while (row.next()) {
                strings.add(row.getString(1));
            }
        }
        return strings;
    }

    /** The step adds tables and columns that may be empty: what was there keeps its hashes, and groups are taken from then on. */
    @Test
    void aLabBookOfTheSixteenthStepTakesGroupsFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Head then;
        FactorIssue issue = Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9));
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 16)).create(old)) {
            Books.keep(book, Samples.mix("M-1", "S-1", "S-2"), Samples.determination("M-1/1", "M-1"), issue);
            then = book.head();
        }
        List<String> hashes = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        FactorGroup group = SampleGroups.full();
        FactorIssue lent = Samples.issue("M-2", 1, "M-1/1", LocalDate.of(2026, 3, 9))
                .on(issue.grounds().of(Optional.of(new GroupGround(group.id(), 1, group.testedMix()))));
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(FactorIssue.class).get(0).value()).isEqualTo(issue);
            assertThat(book.latest(FactorGroup.class)).isEmpty();
            Books.keep(book, group, Samples.mix("M-2", "S-1", "S-2"), lent);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        assertThat(strings(old, "SELECT content_hash || hash FROM entry WHERE entry_no <= 3 ORDER BY entry_no"))
                .isEqualTo(hashes);
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(FactorGroup.class).get(0).value()).isEqualTo(group);
            assertThat(book.latest(FactorIssue.class, "M-2/r1").orElseThrow().value())
                    .isEqualTo(lent);
        }
    }

    /** The step only adds tables: what was there keeps its hashes, and plans are taken from then on. */
    @Test
    void aLabBookOfTheSixteenthStepTakesPlansFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 16)).create(old)) {
            Books.keep(book, Samples.source("S-9", Role.COARSE, "Ledge 1"));
            then = book.head();
        }
        LocalDate day = LocalDate.of(2026, 11, 28);
        TestPlan plan = SamplePlans.plan(
                day,
                SamplePlans.row("M-2", day.plusDays(1), "R. Vale", 4, "B-1", TestPlan.Mark.BY_HAND, "first"),
                SamplePlans.row("M-1", day));
        TestPlan other = SamplePlans.plan(day, SamplePlans.row("M-1", day));
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(TestPlan.class)).isEmpty();
            Books.keep(book, plan);
            Books.correct(book, other);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.history(TestPlan.class, "2026-11-28"))
                    .extracting(version -> version.value())
                    .containsExactly(plan, other);
        }
        assertThatThrownBy(() -> Books.sql(old, "UPDATE test_plan_row SET who = 'x'"))
                .hasMessageContaining("never changed");
        assertThatThrownBy(() -> Books.sql(old, "DELETE FROM test_plan")).hasMessageContaining("never removed");
    }
    /** The step adds tables and columns that say nothing of what was there, and takes decisions from then on. */
    @Test
    void aLabBookOfTheSixteenthStepTakesDecisionsAndUncertaintiesFromThenOn() throws SQLException {
        Path old = folder.resolve("old.porebench");
        FactorIssue before = Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9));
        Head then;
        try (LabBook book = new SqliteShelf(Books.CLOCK, new Steps(Steps.ALL.locations(), 16)).create(old)) {
            Books.keep(
                    book,
                    Samples.source("S-1", Role.FINE, "Ledge 1"),
                    Samples.mix("M-1", "S-1", "S-1"),
                    Samples.determination("M-1/1", "M-1"),
                    before);
            then = book.head();
        }
        List<String> hashes = strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no");
        ChangeDecision decision = SampleDecisions.keep("M-1/c1", "M-1");
        FactorIssue kept = before.on(new Grounds(
                Map.of(),
                Map.of(),
                List.of(),
                FactorOrigin.HERE,
                false,
                Optional.empty(),
                Optional.of(decision.id()),
                Optional.of(new StatedUncertainty(
                        new BigDecimal("0.12"), Optional.of(new BigDecimal("2.05")), FactorOrigin.IMPORTED))));
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.head()).isEqualTo(then);
            assertThat(book.latest(FactorIssue.class, "M-1/r1").orElseThrow().value())
                    .isEqualTo(before);
            Books.keep(book, decision);
            Books.correct(book, kept);
            assertThat(book.check(Optional.of(then)).problems()).isEmpty();
        }
        assertThat(strings(old, "SELECT content_hash || hash FROM entry ORDER BY entry_no"))
                .startsWith(hashes.toArray(String[]::new));
        try (LabBook book = Books.SHELF.open(old)) {
            assertThat(book.latest(ChangeDecision.class, "M-1/c1").orElseThrow().value())
                    .isEqualTo(decision);
            assertThat(book.latest(FactorIssue.class, "M-1/r1").orElseThrow().value())
                    .isEqualTo(kept);
        }
    }
}
