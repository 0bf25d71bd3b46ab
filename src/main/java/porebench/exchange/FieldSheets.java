package porebench.exchange;

import java.util.List;
import porebench.exchange.sheet.Format;
import porebench.exchange.sheet.RowFormat;
import porebench.record.FieldReading;
import porebench.record.column.FieldReadingColumns;

/** The files that come home from the field. */
final class FieldSheets {
    static final Format<FieldReading> READINGS =
            new RowFormat<>(FieldReading.class, "field-readings.csv", FieldReadingColumns.ALL, List.of("reading_id"));

    private FieldSheets() {}
}
