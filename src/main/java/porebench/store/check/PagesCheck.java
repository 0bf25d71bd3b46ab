package porebench.store.check;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.Query;

/**
 * Whether the file's pages and indexes fit together and every row refers to rows that are there: SQLite's own checks, their
 * findings by place.
 *
 * <p>Source: SQLite, "Pragma statements", {@code integrity_check}, {@code quick_check} and {@code foreign_key_check}. The
 * quick check does not compare the indexes with their tables.
 */
public final class PagesCheck {
    /** How many findings are asked for; a file with more is no longer read finding by finding. */
    private static final int MOST = 1000;

    private static final Pattern INDEX = Pattern.compile("\\bindex (\\w+)");
    private static final Pattern TREE = Pattern.compile("\\b[Tt]ree (\\d+)");
    private static final Pattern PAGE = Pattern.compile("\\b[Pp]age (\\d+)");
    private static final Pattern TABLE = Pattern.compile("value in (\\w+)\\.|failed in (\\w+)");

    private final Handle handle;
    private final Faults faults;
    private final Set<String> places = new LinkedHashSet<>();

    private PagesCheck(Handle handle, Faults faults) {
        this.handle = handle;
        this.faults = faults;
    }

    /** Looks at everything; each damaged place is told once. */
    public static void full(Handle handle, Faults faults) {
        new PagesCheck(handle, faults).run("PRAGMA integrity_check(" + MOST + ")");
    }

    /** Looks at the pages alone, which takes a fraction of the time. */
    static void quick(Handle handle, Faults faults) {
        new PagesCheck(handle, faults).run("PRAGMA quick_check(" + MOST + ")");
    }

    private void run(String pragma) {
        try {
            Map<String, String> trees = trees();
            for (String finding : strings(pragma)) {
                finding.lines()
                        .filter(line -> !line.equals("ok") && !line.startsWith("***"))
                        .forEach(line -> tell(line, trees));
            }
        } catch (JdbiException unreadable) {
            places.add("file");
        }
        for (String place : places) {
            faults.at(place, codeOf(place), place.substring(place.indexOf(' ') + 1));
        }
    }

    private static String codeOf(String place) {
        if (place.equals("file")) {
            return "book.damaged-file";
        }
        return switch (place.substring(0, place.indexOf(' '))) {
            case "index" -> "book.damaged-index";
            case "page" -> "book.damaged-page";
            default -> "book.damaged-table";
        };
    }

    private void tell(String finding, Map<String, String> trees) {
        Matcher index = INDEX.matcher(finding);
        Matcher tree = TREE.matcher(finding);
        Matcher table = TABLE.matcher(finding);
        Matcher page = PAGE.matcher(finding);
        if (index.find()) {
            places.add("index " + index.group(1));
        } else if (tree.find() && trees.containsKey(tree.group(1))) {
            places.add(trees.get(tree.group(1)));
        } else if (table.find()) {
            places.add("table " + (table.group(1) == null ? table.group(2) : table.group(1)));
        } else {
            places.add(page.find() ? "page " + page.group(1) : "file");
        }
    }

    /** Returns the tables and indexes by the page at which they begin. */
    private Map<String, String> trees() {
        Map<String, String> trees = new HashMap<>();
        try (Query query = handle.createQuery("SELECT type, name, rootpage FROM sqlite_master WHERE rootpage > 0")) {
            query.map((row, context) ->
                            Map.entry(row.getString("rootpage"), row.getString("type") + " " + row.getString("name")))
                    .forEach(tree -> trees.put(tree.getKey(), tree.getValue()));
        }
        return trees;
    }

    private List<String> strings(String sql) {
        try (Query query = handle.createQuery(sql)) {
            return query.mapTo(String.class).list();
        }
    }

    /** Adds every row that refers to one that is not there, unless its entry is known to be wrong already. */
    static void references(Handle handle, Faults faults) {
        try (Query query = handle.createQuery("PRAGMA foreign_key_check")) {
            query.map((row, context) -> Map.entry(row.getString("table"), row.getLong("rowid")))
                    .list()
                    .forEach(row -> lost(handle, row.getKey(), row.getValue(), faults));
        } catch (JdbiException unreadable) {
            if (faults.isEmpty()) {
                faults.at("file", "book.damaged-file", "file");
            }
        }
    }

    private static void lost(Handle handle, String table, long rowid, Faults faults) {
        try (Query query = handle.createQuery("SELECT entry_no FROM " + table + " WHERE rowid = :rowid")) {
            long entryNo =
                    query.bind("rowid", rowid).mapTo(Long.class).findFirst().orElse(rowid);
            if (!faults.hasEntry(entryNo)) {
                faults.ofEntry(entryNo, "book.lost-reference", entryNo, table);
            }
        }
    }
}
