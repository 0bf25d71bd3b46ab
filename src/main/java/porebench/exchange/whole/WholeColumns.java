package porebench.exchange.whole;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.RecordKind;
import porebench.record.chain.ChainEntry;
import porebench.record.column.CellShape;
import porebench.record.column.CellShape.Kind;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.FixedUnit;
import porebench.record.column.Part;
import porebench.record.column.RecordColumns;
import porebench.record.column.StatedColumn;

/** The columns of the files of a whole export: those of a record's table follow from the columns of the record. */
public final class WholeColumns {
    private static final List<StatedColumn> OUTLINE =
            List.of(StatedColumn.filled(Kind.TEXT, "name"), StatedColumn.filled(Kind.TEXT, "value"));

    private static final StatedColumn NUMBER = StatedColumn.filled(Kind.WHOLE, ChainEntry.NUMBER);

    private static final List<StatedColumn> ENTRY = List.of(
            NUMBER,
            StatedColumn.filled(Kind.CHOICE, "kind")
                    .oneOf(List.of(RecordKind.values()).stream()
                            .map(RecordKind::symbol)
                            .toList()),
            StatedColumn.filled(Kind.TEXT, "record_id"),
            StatedColumn.filled(Kind.WHOLE, "version"),
            StatedColumn.filled(Kind.TEXT, "who"),
            StatedColumn.filled(Kind.MOMENT, "at_utc"),
            StatedColumn.filled(Kind.TEXT, "why"),
            StatedColumn.filled(Kind.TEXT, "content_hash"),
            StatedColumn.filled(Kind.TEXT, "previous_hash"),
            StatedColumn.filled(Kind.TEXT, "hash"));

    private WholeColumns() {}

    /**
     * One file of a whole export.
     *
     * @param name its name
     * @param columns its columns
     * @param kind the kind of record whose table it is, or whose parts; empty for the files of the book itself
     * @param headings what its columns are called in the file of that kind of record
     * @param isOnePerEntry whether an entry has one row at most
     */
    public record File(
            String name,
            List<StatedColumn> columns,
            Optional<RecordKind> kind,
            Map<String, String> headings,
            boolean isOnePerEntry) {
        public File {
            columns = List.copyOf(columns);
            headings = Map.copyOf(headings);
        }
    }

    /** Returns the headings of {@code book.csv}. */
    static List<String> outline() {
        return OUTLINE.stream().map(StatedColumn::name).toList();
    }

    /** Returns all files but the photos. */
    public static List<File> files() {
        List<File> files = new ArrayList<>();
        files.add(new File(WholeExport.OUTLINE, OUTLINE, Optional.empty(), Map.of(), false));
        files.add(new File(WholeExport.fileName(ChainEntry.TABLE), ENTRY, Optional.empty(), Map.of(), true));
        for (RecordKind kind : RecordKind.values()) {
            Columns<?> columns = RecordColumns.of(kind);
            files.add(file(kind, columns, false, true));
            for (Part<?> part : columns.parts()) {
                files.add(file(kind, part.columns(), part.isOrdered(), false));
            }
        }
        return files;
    }

    private static File file(RecordKind kind, Columns<?> columns, boolean isOrdered, boolean isOnePerEntry) {
        List<StatedColumn> stated = new ArrayList<>(List.of(NUMBER));
        if (isOrdered) {
            stated.add(StatedColumn.filled(Kind.WHOLE, Part.POSITION.name()));
        }
        Map<String, String> headings = new LinkedHashMap<>();
        for (Column<?, ?> column : columns.all()) {
            if (column.type().partOf().isEmpty()) {
                // What a table took up later is empty in its older rows.
                boolean isFilled = column.isNeeded() && column.sinceStep() <= columns.sinceStep();
                stated.addAll(cells(column, isFilled));
                headings.put(column.name(), column.heading());
            }
        }
        return new File(WholeExport.fileName(columns.table()), stated, Optional.of(kind), headings, isOnePerEntry);
    }

    private static List<StatedColumn> cells(Column<?, ?> column, boolean isFilled) {
        CellShape shape = CellShape.of(column);
        String fixed = FixedUnit.of(column).map(FixedUnit::kept).orElse("");
        String beside = column.hasUnit() ? column.unitName() : "";
        StatedColumn own = new StatedColumn(column.name(), shape.kind(), isFilled, fixed, beside, shape.words());
        if (!column.hasUnit()) {
            return List.of(own);
        }
        StatedColumn unit = new StatedColumn(
                beside, Kind.CHOICE, isFilled, "", "", column.type().units());
        return List.of(own, unit);
    }
}
