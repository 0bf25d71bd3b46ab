package porebench.exchange.schema;

import java.math.BigDecimal;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Writes maps, lists, texts, numbers and flags as JSON, indented by two. Source of the form: RFC 8259 (recalled). */
final class JsonText {
    private final StringBuilder text = new StringBuilder();

    private JsonText() {}

    /** Returns a value as JSON with the end of its last line. */
    static String of(Object value) {
        JsonText json = new JsonText();
        json.value(value, 0);
        return json.text.append('\n').toString();
    }

    private void value(Object value, int depth) {
        if (value instanceof Map<?, ?> map) {
            several('{', '}', map.entrySet().iterator(), depth);
        } else if (value instanceof List<?> list) {
            several('[', ']', list.iterator(), depth);
        } else if (value instanceof Map.Entry<?, ?> entry) {
            quoted(String.valueOf(entry.getKey()));
            text.append(": ");
            value(entry.getValue(), depth);
        } else if (value instanceof BigDecimal number) {
            text.append(number.toPlainString());
        } else if (value instanceof Boolean || value instanceof Integer) {
            text.append(value);
        } else if (value instanceof String words) {
            quoted(words);
        } else {
            throw new IllegalArgumentException("value must be of a kind that JSON knows, but is a " + value.getClass());
        }
    }

    private void several(char open, char close, Iterator<?> each, int depth) {
        text.append(open);
        if (each.hasNext()) {
            while (each.hasNext()) {
                line(depth + 1);
                value(each.next(), depth + 1);
                text.append(each.hasNext() ? "," : "");
            }
            line(depth);
        }
        text.append(close);
    }

    private void line(int depth) {
        text.append('\n').append("  ".repeat(depth));
    }

    private void quoted(String words) {
        text.append('"');
        words.chars().forEach(each -> {
            char letter = (char) each;
            if (letter == '"' || letter == '\\') {
                text.append('\\').append(letter);
            } else if (letter < ' ') {
                text.append("\\u00")
                        .append(Character.forDigit(letter >> 4, 16))
                        .append(Character.forDigit(letter & 15, 16));
            } else {
                text.append(letter);
            }
        });
        text.append('"');
    }
}
