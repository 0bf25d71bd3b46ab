package porebench.chart.look;

import java.util.OptionalDouble;
import porebench.method.RoundingRule;

/** How numbers and answers stand in the tables behind plots. */
public final class TableCells {
    private static final String YES = "yes";
    private static final String NO = "no";

    private TableCells() {}

    public static String number(double number) {
        return RoundingRule.withoutNoise(number).stripTrailingZeros().toPlainString();
    }

    public static String number(OptionalDouble number) {
        return number.isPresent() ? number(number.getAsDouble()) : "";
    }

    public static String yes(boolean is) {
        return is ? YES : NO;
    }
}
