package porebench.exchange;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.study.ValueFile;
import porebench.exchange.schema.DataPackage;
import porebench.exchange.schema.ListPackage;
import porebench.exchange.schema.ListedFile;
import porebench.exchange.sheet.Format;
import porebench.exchange.whole.WholeColumns;
import porebench.port.ReadingsTable;
import porebench.port.RegisterTable;
import porebench.record.RecordKind;
import porebench.record.chain.ChainEntry;
import porebench.record.column.StatedColumn;

/** What programs are told of all CSV files, in one data package for each thing that is done with them. */
final class Schemas {
    static final String LISTS = "lists." + DataPackage.FILE;
    static final String VALUES = "values." + DataPackage.FILE;
    static final String WHOLE = "whole." + DataPackage.FILE;

    /** Under this heading stands what the tables of a whole export have besides the columns of the records. */
    private static final String TABLE = "book-<table>.csv";

    private Schemas() {}

    /** Returns the descriptions by the names of their files. */
    static Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(DataPackage.FILE, DataPackage.of(CsvSheets.FORMATS, false));
        all.put(LISTS, lists());
        all.put(VALUES, values());
        all.put(WHOLE, whole());
        return all;
    }

    private static String lists() {
        return ListPackage.of(
                "porebench-lists",
                "Lists that Porebench writes for other programs",
                "A list may be written under any name. Import does not read these files.",
                List.of(
                        written("register.csv", RegisterTable.columns(), "mix_id"),
                        written("readings.csv", ReadingsTable.columns(), "reading_id")));
    }

    private static ListedFile written(String name, List<StatedColumn> columns, String key) {
        return new ListedFile(name, name, columns, List.of(key), 0, new ListedFile.Written());
    }

    private static String values() {
        return ListPackage.of(
                "porebench-values",
                "Tables of numbers that Porebench reads for a computation",
                "A table may have any name. Its columns may stand in any order. These files hold no records.",
                Arrays.stream(ValueFile.values())
                        .map(file -> new ListedFile(
                                file.example(),
                                file.example(),
                                file.columns(),
                                List.of(),
                                file.othersAtMost(),
                                new ListedFile.Read()))
                        .toList());
    }

    private static String whole() {
        return ListPackage.of(
                "porebench-whole-book",
                "The tables of a whole lab book",
                "One row a row of the lab book, every version of every record. An empty text is \\e, a backslash is doubled, and a"
                        + " control character is \\u and four hexadecimal digits. Yes is 1 and no is 0.",
                WholeColumns.files().stream().map(Schemas::stored).toList());
    }

    private static ListedFile stored(WholeColumns.File file) {
        Optional<Format<?>> described = file.kind().map(Schemas::formatOf).filter(format -> isRowOf(file, format));
        return new ListedFile(
                file.name(),
                file.kind().isPresent() ? TABLE : file.name(),
                file.columns(),
                file.isOnePerEntry() ? List.of(ChainEntry.NUMBER) : List.of(),
                0,
                new ListedFile.Stored(described.map(Format::fileName).orElse(""), file.headings()));
    }

    private static Format<?> formatOf(RecordKind kind) {
        return CsvSheets.FORMATS.stream()
                .filter(format -> format.type().equals(kind.type()))
                .findFirst()
                .orElseThrow();
    }

    /** Several things of a record have columns of their own in its file only where each has a row there. */
    private static boolean isRowOf(WholeColumns.File file, Format<?> format) {
        return file.isOnePerEntry() || !(format instanceof Format.RowByRow<?>);
    }
}
