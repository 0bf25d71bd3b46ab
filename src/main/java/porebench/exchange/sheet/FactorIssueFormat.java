package porebench.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.column.Column;
import porebench.record.column.FactorIssueColumns;

/**
 * {@code factor-issues.csv}: one row a revision of a mix's factor.
 *
 * <p>A revision without the versions of its trials is not verified where it comes in. Beside the columns of the record, an
 * export says of which revisions the ground has changed since; such a one is not verified where it comes in, either.
 */
public final class FactorIssueFormat implements Format.RowByRow<FactorIssue> {
    private static final String CHANGED_SINCE = "changed_since";

    private static final RowFormat<FactorIssue> PLAIN = new RowFormat<>(
            FactorIssue.class, "factor-issues.csv", FactorIssueColumns.ALL, List.of("mix_id", "revision"));

    private final Predicate<FactorIssue> hasChangedGround;

    /** The format of a file that is read, or of issues whose ground is not looked at. */
    public FactorIssueFormat() {
        this(any -> false);
    }

    /** The format of an export, which also says of which issues the ground has changed since. */
    public FactorIssueFormat(Predicate<FactorIssue> hasChangedGround) {
        this.hasChangedGround = hasChangedGround;
    }

    @Override
    public Class<FactorIssue> type() {
        return PLAIN.type();
    }

    @Override
    public String fileName() {
        return PLAIN.fileName();
    }

    @Override
    public Headings columns() {
        List<String> extra = new ArrayList<>(PLAIN.columns().extra());
        extra.add(CHANGED_SINCE);
        return new Headings(PLAIN.columns().needed(), extra);
    }

    @Override
    public Stated stated() {
        List<Column<?, ?>> ofRow = new ArrayList<>(PLAIN.stated().ofRow());
        ofRow.add(Column.<FactorIssue>mark(CHANGED_SINCE, hasChangedGround::test));
        return new Stated(ofRow, List.of(), false);
    }

    @Override
    public List<String> key() {
        return PLAIN.key();
    }

    @Override
    public Optional<FactorIssue> read(HeadedRow entry) {
        boolean changed = entry.optionalYesNo(CHANGED_SINCE).orElse(false);
        return PLAIN.read(entry).map(issue -> changed ? issue.on(issue.grounds().from(FactorOrigin.IMPORTED)) : issue);
    }

    @Override
    public List<String> row(FactorIssue value) {
        List<String> row = new ArrayList<>(PLAIN.row(value));
        row.add(hasChangedGround.test(value) ? HeadedRow.yesNoWord(true) : "");
        return row;
    }
}
