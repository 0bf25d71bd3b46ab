package porebench.evidence.study;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A number and what it belongs to.
 *
 * @param factors the names by their columns, from left to right, such as {@code operator} to {@code Ada}; none is blank
 * @param number the number, its digits as typed
 */
public record ValueRow(Map<String, String> factors, BigDecimal number) {
    public ValueRow {
        factors = Collections.unmodifiableMap(new LinkedHashMap<>(factors));
    }

    /** Returns the number to compute with. */
    public double value() {
        return number.doubleValue();
    }
}
