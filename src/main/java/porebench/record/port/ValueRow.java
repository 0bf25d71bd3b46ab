package porebench.record.port;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A number and what it belongs to.
 *
 * @param factors the names by their columns, from left to right, such as {@code operator} to {@code Ada}; none is blank
 * @param value the number, finite
 */
public record ValueRow(Map<String, String> factors, double value) {
    public ValueRow {
        factors = Collections.unmodifiableMap(new LinkedHashMap<>(factors));
    }
}
