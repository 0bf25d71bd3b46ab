package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.GroupGround;
import porebench.record.SampleGroups;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.chain.Head;
import porebench.store.file.Steps;

/** That a lab book from before there were groups takes them. */
class OlderGroupsTest {
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
}
