package porebench.exchange.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.evidence.study.ValueFile;
import porebench.evidence.study.ValueRow;
import porebench.record.column.NumberRange;

/** A table of numbers in the column {@code value}, the other columns saying what each belongs to. */
public final class ValueTable {
    private static final String VALUE = ValueFile.VALUE;
    /** What a reading may be. */
    public static final NumberRange ANY = NumberRange.ANY;

    private ValueTable() {}

    /** Reads the rows; without factors asked for, all columns besides the value are factors. */
    public static List<Sheet.Row<ValueRow>> read(CsvRows rows, List<String> asked, Findings findings) {
        return Heading.read(rows, findings)
                .map(heading -> read(rows, heading, asked, findings))
                .orElse(List.of());
    }

    /**
     * Reads readings of which each may say in a column what it belongs to. A file of one column without that name is a list of numbers,
     * one a line.
     *
     * @param rows those of the file
     * @param belongsTo the column that may be there
     * @param again the same rows from the beginning, for a list
     */
    public static List<Sheet.Row<ValueRow>> readings(CsvRows rows, String belongsTo, CsvRows again, Findings findings) {
        Findings unheard = new Findings("");
        Optional<Heading> heading = Heading.read(rows, unheard);
        if (heading.isEmpty() || isList(heading.get())) {
            return Values.read(again, findings).stream()
                    .map(row -> new Sheet.Row<>(row.line(), new ValueRow(Map.of(), BigDecimal.valueOf(row.value()))))
                    .toList();
        }
        List<String> named = heading.get().names();
        boolean isWrittenThere =
                named.contains(belongsTo) || named.size() == 1 && named.get(0).contains(belongsTo);
        List<String> asked = isWrittenThere ? List.of(belongsTo) : List.of();
        return Heading.read(again, findings)
                .map(known -> readRows(again, known, asked, findings))
                .orElse(List.of());
    }

    private static boolean isList(Heading heading) {
        return heading.names().size() == 1
                && !heading.names().contains(VALUE)
                && heading.names().get(0).indexOf(';') < 0
                && heading.names().get(0).indexOf('\t') < 0;
    }

    private static List<Sheet.Row<ValueRow>> read(
            CsvRows rows, Heading heading, List<String> asked, Findings findings) {
        List<String> factors = asked.isEmpty()
                ? heading.names().stream()
                        .filter(name -> !name.isEmpty() && !name.equals(VALUE))
                        .distinct()
                        .toList()
                : asked;
        return readRows(rows, heading, factors, findings);
    }

    private static List<Sheet.Row<ValueRow>> readRows(
            CsvRows rows, Heading heading, List<String> factors, Findings findings) {
        List<String> needed = new ArrayList<>(factors);
        needed.add(VALUE);
        Headings columns = new Headings(needed, List.of());
        Optional<String> separator = heading.otherSeparator(columns);
        if (heading.known(columns) == 0 && separator.isPresent()) {
            findings.error(
                    heading.line(), 0, "", "csv.separator", separator.get().equals("\t") ? "tab" : separator.get());
            return List.of();
        }
        Table table = Table.of(rows, heading, columns, findings);
        List<Sheet.Row<ValueRow>> good = new ArrayList<>();
        for (Optional<HeadedRow> next = table.next(); next.isPresent(); next = table.next()) {
            HeadedRow entry = next.get();
            Map<String, String> names = new LinkedHashMap<>();
            factors.forEach(factor -> entry.word(factor).ifPresent(name -> names.put(factor, name)));
            Optional<BigDecimal> value = entry.number(VALUE, ANY);
            if (entry.isGood() && table.isWhole() && value.isPresent()) {
                good.add(new Sheet.Row<>(entry.line(), new ValueRow(names, value.get())));
            }
        }
        return good;
    }
}
