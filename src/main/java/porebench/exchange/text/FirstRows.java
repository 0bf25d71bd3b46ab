package porebench.exchange.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import porebench.evidence.intake.SheetLook;
import porebench.evidence.intake.SheetStyle;
import porebench.record.book.Progress;

/** Looks at the first rows of a file and says how it seems to be written; nothing is decided by that. */
public final class FirstRows {
    /** The heading and so many rows are shown. */
    private static final int SHOWN = 6;

    /** So many rows are looked at for decimal commas. */
    private static final int LOOKED_AT = 200;

    private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?\\d+,\\d+");

    private FirstRows() {}

    /**
     * Looks at a file.
     *
     * @param known returns how many columns of any format a row names
     */
    public static SheetLook look(byte[] bytes, ToLongFunction<Heading> known) {
        Map<SheetStyle.Apart, List<List<String>>> rows = new LinkedHashMap<>();
        for (SheetStyle.Apart apart : SheetStyle.Apart.values()) {
            rows.put(apart, rows(bytes, new SheetStyle(apart, SheetStyle.Decimal.POINT)));
        }
        SheetStyle.Apart apart = SheetStyle.DOCUMENTED.apart();
        long most = Math.max(1, named(rows.getOrDefault(apart, List.of()), known));
        for (Map.Entry<SheetStyle.Apart, List<List<String>>> one : rows.entrySet()) {
            long named = named(one.getValue(), known);
            if (named > most) {
                most = named;
                apart = one.getKey();
            }
        }
        boolean hasCommas = rows.getOrDefault(apart, List.of()).stream()
                .skip(1)
                .flatMap(List::stream)
                .anyMatch(cell -> COMMA_NUMBER.matcher(cell.strip()).matches());
        SheetStyle seems = new SheetStyle(apart, hasCommas ? SheetStyle.Decimal.COMMA : SheetStyle.Decimal.POINT);
        return new SheetLook(seems, shown(rows));
    }

    private static long named(List<List<String>> rows, ToLongFunction<Heading> known) {
        return rows.isEmpty()
                ? 0
                : known.applyAsLong(
                        new Heading(1, rows.get(0).stream().map(String::strip).toList()));
    }

    private static List<List<String>> rows(byte[] bytes, SheetStyle style) {
        CsvRows rows = new CsvRows(bytes, new Findings(""), Progress.UNHEARD, style);
        return Stream.generate(rows::next)
                .limit(LOOKED_AT)
                .takeWhile(Optional::isPresent)
                .map(row -> row.orElseThrow().fields())
                .toList();
    }

    private static Map<SheetStyle, List<List<String>>> shown(Map<SheetStyle.Apart, List<List<String>>> rows) {
        Map<SheetStyle, List<List<String>>> shown = new LinkedHashMap<>();
        rows.forEach((apart, all) -> Arrays.stream(SheetStyle.Decimal.values()).forEach(decimal -> {
            List<List<String>> first = new ArrayList<>();
            all.stream()
                    .limit(SHOWN)
                    .forEach(row -> first.add(
                            row.stream().map(cell -> asRead(cell, decimal)).toList()));
            shown.put(new SheetStyle(apart, decimal), List.copyOf(first));
        }));
        return shown;
    }

    private static String asRead(String cell, SheetStyle.Decimal decimal) {
        return decimal.parse(cell.strip()).map(BigDecimal::toPlainString).orElse(cell);
    }
}
