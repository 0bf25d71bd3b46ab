package porebench.store.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.record.RecordKind;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.Part;
import porebench.record.column.RecordColumns;
import porebench.store.Books;
import porebench.store.rows.PhotoTable;

/** The schema steps, written by hand, make the tables that the stated columns ask for, after each step. */
class SchemaColumnsTest {
    private static final String MAY_BE_NULL = " null";

    private static IntStream steps() {
        return IntStream.rangeClosed(1, Steps.ALL.newest());
    }

    @ParameterizedTest
    @MethodSource("steps")
    void madeByAStepAreTheColumnsStatedSince(int step) throws SQLException, IOException {
        Map<String, String> stated = new TreeMap<>();
        Arrays.stream(RecordKind.values()).map(RecordColumns::of).forEach(columns -> state(columns, step, stated));
        Map<String, String> made = made(step);
        // A column that a record may leave empty may still be one that the lab book always fills.
        stated.replaceAll((name, kind) ->
                kind.endsWith(MAY_BE_NULL) && !made.getOrDefault(name, kind).endsWith(MAY_BE_NULL)
                        ? kind.replace(MAY_BE_NULL, "")
                        : kind);
        assertThat(made).containsExactlyInAnyOrderEntriesOf(stated);
    }

    /** Says of each column whether it holds a text or a whole number, and whether it may be null. */
    private static void state(Columns<?> columns, int step, Map<String, String> stated) {
        if (columns.sinceStep() > step) {
            return;
        }
        columns.all().forEach(column -> state(columns.table(), column, step, stated));
        columns.parts().forEach(part -> state(part, step, stated));
    }

    private static void state(Part<?> part, int step, Map<String, String> stated) {
        if (part.isOrdered() && part.columns().sinceStep() <= step) {
            state(part.table(), Part.POSITION, step, stated);
        }
        state(part.columns(), step, stated);
    }

    private static void state(String table, Column<?, ?> column, int step, Map<String, String> stated) {
        if (column.sinceStep() <= step && column.type().partOf().isEmpty()) {
            String mayBeNull = column.isNeeded() ? "" : MAY_BE_NULL;
            stated.put(table + "." + column.name(), (column.type().isWhole() ? "INTEGER" : "TEXT") + mayBeNull);
            if (column.hasUnit()) {
                stated.put(table + "." + column.unitName(), "TEXT" + mayBeNull);
            }
        }
    }

    /** The bytes of photos stand beside the records and are no column of any. */
    private static Map<String, String> made(int step) throws SQLException, IOException {
        Map<String, String> made = new TreeMap<>();
        try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statement statement = memory.createStatement()) {
            for (String text : StepFiles.upTo(Steps.ALL.locations(), step)) {
                statement.executeUpdate(text);
            }
            try (ResultSet rows = statement.executeQuery(
                    "SELECT t.name AS of_table, c.name, c.type, c.\"notnull\" FROM (" + Books.TABLES_OF_THE_HISTORY
                            + ") t JOIN pragma_table_info(t.name) c WHERE t.name NOT IN ('entry', '" + PhotoTable.TABLE
                            + "') AND c.name <> 'entry_no'")) {
                while (rows.next()) {
                    String name = rows.getString("of_table") + "." + rows.getString("name");
                    made.put(name, rows.getString("type") + (rows.getInt("notnull") == 1 ? "" : MAY_BE_NULL));
                }
            }
        }
        return made;
    }
}
