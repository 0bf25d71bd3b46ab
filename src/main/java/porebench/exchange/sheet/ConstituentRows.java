package porebench.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
import porebench.method.Problem;
import porebench.method.sample.Batch;
import porebench.method.sample.Constituent;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Volume;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.MixColumns;

/** The constituents of a mix design's rows, and what cannot be right about the batch they make, each fault at its cell. */
final class ConstituentRows {
    /** What is wrong with a batch does not depend on the bowl. */
    private static final Volume ANY_BOWL = new Volume(0.007);

    private static final Pattern OF_A_ROW = Pattern.compile("constituents\\.(\\d+)\\.(\\w+)");

    private final RowGroup group;
    private final List<HeadedRow> entries = new ArrayList<>();
    private final List<Constituent> values = new ArrayList<>();

    private ConstituentRows(RowGroup group) {
        this.group = group;
    }

    static ConstituentRows read(RowGroup group) {
        ConstituentRows rows = new ConstituentRows(group);
        Map<Constituent, Integer> seen = new HashMap<>();
        for (HeadedRow entry : group.rows()) {
            entry.optionalWord(MixColumns.NAME.heading()).ifPresent(entry::isAbout);
            MixColumns.OF_CONSTITUENT.read(SheetReader.of(entry)).ifPresent(constituent -> {
                Integer twin = seen.putIfAbsent(constituent, entry.line());
                if (twin != null) {
                    entry.error("constituent", "csv.constituent-twice", constituent.name(), group.name(), twin);
                }
                rows.entries.add(entry);
                rows.values.add(constituent);
            });
        }
        return rows;
    }

    /** Returns the constituents that could be read. */
    List<Constituent> values() {
        return List.copyOf(values);
    }

    /** Notes what cannot be right: of each row that could be read, and of the whole when all could. */
    void check(Batch batch) {
        boolean whole = group.isGood();
        for (Problem problem : CorrectionSample.of(batch, ANY_BOWL).problems()) {
            Matcher ofRow = OF_A_ROW.matcher(problem.field());
            if (problem.isError() && ofRow.matches()) {
                HeadedRow entry = entries.get(Integer.parseInt(ofRow.group(1)));
                noteOnce(entry, heading(MixColumns.OF_CONSTITUENT, ofRow.group(2), MixColumns.NAME), problem);
            } else if (problem.isError() && (whole || problem.kind() == Problem.Kind.OUT_OF_RANGE)) {
                String column = heading(MixColumns.ALL, problem.field(), MixColumns.VOLUME);
                noteOnce(group.stating(column), column, problem);
            }
        }
    }

    private static <R> String heading(Columns<R> columns, String field, Column<R, ?> otherwise) {
        return columns.ofField(field).orElse(otherwise).heading();
    }

    /** A cell that was refused already is not refused again for what follows from that. */
    private static void noteOnce(HeadedRow entry, String column, Problem problem) {
        if (!entry.isRefused(column)) {
            entry.error(column, problem);
        }
    }
}
