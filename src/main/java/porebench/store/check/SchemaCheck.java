package porebench.store.check;

import java.io.IOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import porebench.method.Problem;
import porebench.store.file.SqliteFile;
import porebench.store.file.StepFiles;
import porebench.store.file.Steps;

/**
 * Compares the tables, indexes, views and triggers of a lab book with those that its schema steps make: the steps are taken
 * once more, in memory, so that no list has to be kept.
 *
 * <p>The table in which the steps are noted is left out, as are the statistics another program may have gathered.
 */
public final class SchemaCheck {
    private static final String QUERY = """
            SELECT type, name, coalesce(sql, '') AS sql FROM sqlite_master
            WHERE NOT (tbl_name = 'schema_step' AND type IN ('table', 'index')) AND name NOT LIKE 'sqlite\\_stat%' ESCAPE '\\'
            """;

    /** What the steps make, kept because taking them takes longer than comparing; steps do not change while a program runs. */
    private static final ConcurrentMap<Steps, SortedMap<String, String>> MADE = new ConcurrentHashMap<>();

    private SchemaCheck() {}

    /** Adds everything that is missing, changed, or there without belonging. */
    public static void run(Connection connection, Steps steps, Faults faults) {
        try {
            SortedMap<String, String> there = objects(connection);
            SortedMap<String, String> wanted = made(new Steps(steps.locations(), SqliteFile.version(connection)));
            wanted.forEach((place, sql) -> {
                if (!there.containsKey(place)) {
                    tell(faults, place, "book.schema-missing");
                } else if (!there.get(place).equals(sql)) {
                    tell(faults, place, "book.schema-changed");
                }
            });
            there.keySet().stream()
                    .filter(place -> !wanted.containsKey(place))
                    .forEach(place -> tell(faults, place, "book.schema-foreign"));
        } catch (SQLException unreadable) {
            faults.at("file", "book.damaged-file", "file");
        }
    }

    private static void tell(Faults faults, String place, String code) {
        int space = place.indexOf(' ');
        faults.at(place, code, word(place.substring(0, space)), place.substring(space + 1));
    }

    private static SortedMap<String, String> made(Steps steps) throws SQLException {
        SortedMap<String, String> known = MADE.get(steps);
        if (known != null) {
            return known;
        }
        try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statement statement = memory.createStatement()) {
            for (String step : StepFiles.upTo(steps.locations(), steps.newest())) {
                statement.executeUpdate(step);
            }
            SortedMap<String, String> made = Collections.unmodifiableSortedMap(objects(memory));
            MADE.put(steps, made);
            return made;
        } catch (IOException unreadable) {
            throw new IllegalStateException("the schema steps belong to the program", unreadable);
        }
    }

    private static SortedMap<String, String> objects(Connection connection) throws SQLException {
        SortedMap<String, String> objects = new TreeMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(QUERY)) {
            while (row.next()) {
                objects.put(
                        row.getString("type").toLowerCase(Locale.ROOT) + " " + row.getString("name"),
                        row.getString("sql"));
            }
        }
        return objects;
    }

    private static Problem.Word word(String type) {
        return new Problem.Word(
                switch (type) {
                    case "index" -> "db-index";
                    case "trigger" -> "db-trigger";
                    case "view" -> "db-view";
                    default -> "db-table";
                });
    }
}
