package porebench.exchange.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.quantity.Typed;

/** A plain list of numbers, one a line; a first line that is a word is its heading. */
public final class Values {
    private static final List<String> NO_HEADING = List.of("nan", "inf", "infinity", "na");

    private Values() {}

    public static List<Sheet.Row<Double>> read(CsvRows rows, Findings findings) {
        List<Sheet.Row<Double>> values = new ArrayList<>();
        boolean atTop = true;
        boolean any = false;
        for (Optional<CsvRows.Raw> next = rows.next(); next.isPresent(); next = rows.next()) {
            CsvRows.Raw row = next.get();
            any = true;
            String text = String.join(",", row.fields()).strip();
            Optional<BigDecimal> number = Typed.parseNumber(text);
            if (number.isPresent()) {
                values.add(new Sheet.Row<>(row.line(), number.get().doubleValue()));
            } else if (!(atTop && isHeading(text))) {
                note(row, text, findings);
            }
            atTop = false;
        }
        if (!any && findings.isEmpty()) {
            findings.error(0, 0, "", "csv.empty");
        }
        return values;
    }

    private static boolean isHeading(String text) {
        int first = text.codePointAt(0);
        return Character.isLetter(first) && !NO_HEADING.contains(text.toLowerCase(Locale.ROOT));
    }

    private static void note(CsvRows.Raw row, String text, Findings findings) {
        if (row.damaged()) {
            return;
        }
        String code = HeadedRow.numberFault(text);
        if (row.fields().size() > 1 && !HeadedRow.isWrittenOtherwise(text)) {
            findings.error(
                    row.line(),
                    0,
                    "value",
                    "csv.one-number-a-line",
                    row.fields().size());
        } else {
            findings.error(row.line(), 1, "value", code, "value", Findings.quoted(text));
        }
    }
}
