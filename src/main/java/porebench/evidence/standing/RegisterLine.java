package porebench.evidence.standing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/**
 * The line of one mix in the register on every day, as long as nothing is kept that changes it: a row holds from a day on, until
 * the next one does. A new one begins where a revision takes effect, is due to be checked again, or lapses.
 */
final class RegisterLine {
    private final NavigableMap<LocalDate, RegisterRow> rows;

    private RegisterLine(NavigableMap<LocalDate, RegisterRow> rows) {
        this.rows = rows;
    }

    /** Returns the line of a mix of which everything is known. */
    static RegisterLine of(Evidence evidence) {
        SortedSet<LocalDate> days = new TreeSet<>();
        days.add(LocalDate.MIN);
        int notice = evidence.profile().count(FigureName.RECHECK_NOTICE_DAYS);
        for (Version<FactorIssue> version : evidence.issues()) {
            FactorIssue issue = version.value();
            days.add(issue.inForceFrom());
            days.add(issue.recheckBy().minusDays(notice));
            days.add(issue.recheckBy().plusDays(1));
        }
        NavigableMap<LocalDate, RegisterRow> rows = new TreeMap<>();
        for (LocalDate day : days) {
            RegisterRow row = RegisterRow.of(evidence, day);
            if (rows.isEmpty() || !rows.lastEntry().getValue().equals(row)) {
                rows.put(day, row);
            }
        }
        return new RegisterLine(rows);
    }

    /** Returns the row of a day. */
    RegisterRow on(LocalDate day) {
        return rows.floorEntry(day).getValue();
    }

    /** Returns the line as a text. */
    String text() {
        RegisterRow any = rows.firstEntry().getValue();
        List<String> parts = new ArrayList<>(List.of(any.mixId().text(), any.title()));
        rows.forEach((from, row) -> parts.add(Joined.of(List.of(
                from.equals(LocalDate.MIN) ? "" : from.toString(),
                row.state().name(),
                or(row.factorPercent()),
                or(row.revision()),
                or(row.inForceFrom()),
                or(row.recheckBy()),
                Integer.toString(row.countedTrials()),
                Joined.of(row.missing().stream().map(WrittenProblem::of).toList())))));
        return Joined.of(parts);
    }

    private static String or(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    /**
     * Returns the line of a text.
     *
     * @throws RuntimeException if that is no such text
     */
    static RegisterLine read(String text) {
        List<String> parts = Joined.parts(text);
        MixId mix = new MixId(parts.get(0));
        NavigableMap<LocalDate, RegisterRow> rows = new TreeMap<>();
        for (String part : parts.subList(2, parts.size())) {
            List<String> cells = Joined.parts(part);
            rows.put(
                    cells.get(0).isEmpty() ? LocalDate.MIN : LocalDate.parse(cells.get(0)),
                    new RegisterRow(
                            mix,
                            parts.get(1),
                            FactorState.valueOf(cells.get(1)),
                            some(cells.get(2), BigDecimal::new),
                            some(cells.get(3), Integer::valueOf),
                            some(cells.get(4), LocalDate::parse),
                            some(cells.get(5), LocalDate::parse),
                            Integer.parseInt(cells.get(6)),
                            problems(cells.get(7))));
        }
        return new RegisterLine(rows);
    }

    private static <T> Optional<T> some(String text, Function<String, T> read) {
        return text.isEmpty() ? Optional.empty() : Optional.of(read.apply(text));
    }

    private static List<Problem> problems(String text) {
        return Joined.parts(text).stream().map(WrittenProblem::read).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RegisterLine that && rows.equals(that.rows);
    }

    @Override
    public int hashCode() {
        return rows.hashCode();
    }

    @Override
    public String toString() {
        return rows.toString();
    }
}
