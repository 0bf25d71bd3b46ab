package porebench.chart;

import java.util.OptionalDouble;
import porebench.method.RoundingRule;

/** How numbers and answers stand in the tables behind plots. */
final class TableCells {
    private static final String YES = "yes";
    private static final String NO = "no";

    private TableCells() {}

    static String number(double number) {
        return RoundingRule.withoutNoise(number).stripTrailingZeros().toPlainString();
    }

    static String number(OptionalDouble number) {
        return number.isPresent() ? number(number.getAsDouble()) : "";
    }

    static String yes(boolean is) {
        return is ? YES : NO;
    }
}
