package porebench.exchange.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rows that together state one record, such as a mix. What is about the whole record stands in its first row; further
 * rows leave it empty or repeat it.
 */
public final class RowGroup {
    private final String name;
    private final List<HeadedRow> rows = new ArrayList<>();
    private final Map<String, HeadedRow> stating = new HashMap<>();
    private boolean besideLost;

    private RowGroup(String name) {
        this.name = name;
    }

    /**
     * Reads all rows of a table into groups. A row of which nothing is known may belong to the record before it or after it,
     * and spoils both.
     *
     * @param nameColumn the column that says which group a row belongs to
     * @param shared the columns that are about the whole group
     */
    public static Collection<RowGroup> readAll(Table table, String nameColumn, List<String> shared) {
        Map<String, RowGroup> groups = new LinkedHashMap<>();
        RowGroup before = new RowGroup("");
        int lost = 0;
        boolean lostBefore = false;
        for (Optional<HeadedRow> next = table.next(); next.isPresent(); next = table.next()) {
            HeadedRow entry = next.get();
            Optional<String> name = entry.word(nameColumn);
            lostBefore |= table.lost() > lost;
            lost = table.lost();
            if (name.isEmpty() || CsvRows.isUnreadable(name.get())) {
                lostBefore = true;
                continue;
            }
            RowGroup group = groups.computeIfAbsent(name.get(), RowGroup::new);
            before.besideLost |= lostBefore;
            group.besideLost |= lostBefore;
            group.add(entry, shared);
            before = group;
            lostBefore = false;
        }
        before.besideLost |= lostBefore || table.lost() > lost;
        return groups.values();
    }

    private void add(HeadedRow entry, List<String> shared) {
        rows.add(entry);
        for (String column : shared) {
            Optional<String> stated = entry.optionalText(column);
            HeadedRow before = stated.isEmpty() ? null : stating.putIfAbsent(column, entry);
            if (before != null && !isSame(entry, before.text(column), stated.orElseThrow())) {
                entry.error(
                        column,
                        "csv.disagrees",
                        column,
                        Findings.quoted(stated.orElseThrow()),
                        Findings.quoted(before.text(column)),
                        before.line(),
                        Findings.quoted(name));
            }
        }
    }

    private static boolean isSame(HeadedRow entry, String one, String other) {
        Optional<BigDecimal> first = entry.plainNumber(one);
        Optional<BigDecimal> second = entry.plainNumber(other);
        boolean sameNumber =
                first.isPresent() && second.isPresent() && first.get().compareTo(second.get()) == 0;
        return sameNumber || one.strip().equals(other.strip());
    }

    public String name() {
        return name;
    }

    public List<HeadedRow> rows() {
        return rows;
    }

    public HeadedRow first() {
        return rows.get(0);
    }

    /** Returns the row that states a shared column: the first one where it is not empty, or the first of all. */
    public HeadedRow stating(String column) {
        return stating.getOrDefault(column, first());
    }

    public boolean isGood() {
        return rows.stream().allMatch(HeadedRow::isGood);
    }

    /** Notes that a bad row takes the whole record with it, and returns whether the record is good. */
    public boolean checkGood(Table table, String nameColumn) {
        if (isGood() && !besideLost) {
            return table.isWhole();
        }
        if (isGood()) {
            if (table.isWhole()) {
                table.findings().error(first().line(), 0, nameColumn, "csv.left-out-beside", Findings.quoted(name));
            }
            return false;
        }
        long bad = rows.stream().filter(row -> !row.isGood()).count();
        if (table.isWhole() && rows.size() > bad) {
            table.findings()
                    .error(first().line(), 0, nameColumn, "csv.left-out", Findings.quoted(name), rows.size(), bad);
        }
        return false;
    }
}
