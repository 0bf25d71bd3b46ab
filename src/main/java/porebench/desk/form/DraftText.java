package porebench.desk.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A typed draft as text and back, so that it can be kept outside the lab book.
 *
 * <p>One line a field, in the order of their names: {@code =}, the field, a tab and what was typed. A column of which the record
 * has several follows as {@code *}, the field, a tab and how many, and then the drafts of these, each ended by a line {@code .}.
 */
public final class DraftText {
    private static final String TYPED = "=";
    private static final String SEVERAL = "*";
    private static final String END = ".";

    private DraftText() {}

    /** Returns a draft as text; two drafts that are equal have the same. */
    public static String of(TypedDraft draft) {
        StringBuilder text = new StringBuilder();
        write(draft, text);
        return text.toString();
    }

    private static void write(TypedDraft draft, StringBuilder text) {
        new TreeMap<>(draft.texts()).forEach((field, typed) -> line(text, TYPED, field, typed));
        new TreeMap<>(draft.parts()).forEach((field, rows) -> {
            line(text, SEVERAL, field, Integer.toString(rows.size()));
            rows.forEach(row -> write(row, text));
        });
        text.append(END).append('\n');
    }

    private static void line(StringBuilder text, String kind, String field, String said) {
        text.append(kind)
                .append(escaped(field))
                .append('\t')
                .append(escaped(said))
                .append('\n');
    }

    /** Returns the draft that a text holds; empty where it holds none, as when another program wrote it. */
    public static Optional<TypedDraft> parse(String text) {
        try {
            Iterator<String> lines = text.lines().iterator();
            TypedDraft draft = read(lines);
            return lines.hasNext() ? Optional.empty() : Optional.of(draft);
        } catch (NoSuchElementException | IllegalArgumentException unknown) {
            return Optional.empty();
        }
    }

    private static TypedDraft read(Iterator<String> lines) {
        Map<String, String> texts = new HashMap<>();
        Map<String, List<TypedDraft>> parts = new HashMap<>();
        for (String line = lines.next(); !line.equals(END); line = lines.next()) {
            int tab = line.indexOf('\t');
            if (tab < 1) {
                throw new IllegalArgumentException("line must have a field and a tab, but is " + line);
            }
            String field = plain(line.substring(1, tab));
            String said = plain(line.substring(tab + 1));
            if (line.startsWith(TYPED)) {
                texts.put(field, said);
            } else if (line.startsWith(SEVERAL)) {
                int count = Integer.parseInt(said);
                List<TypedDraft> rows = new ArrayList<>();
                while (rows.size() < count) {
                    rows.add(read(lines));
                }
                parts.put(field, rows);
            } else {
                throw new IllegalArgumentException("line must be of a field, but is " + line);
            }
        }
        return new TypedDraft(texts, parts);
    }

    private static String escaped(String typed) {
        return typed.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }

    private static String plain(String escaped) {
        StringBuilder typed = new StringBuilder();
        for (int i = 0; i < escaped.length(); i++) {
            char sign = escaped.charAt(i);
            if (sign == '\\' && i + 1 < escaped.length()) {
                i++;
                sign = switch (escaped.charAt(i)) {
                    case 't' -> '\t';
                    case 'n' -> '\n';
                    case 'r' -> '\r';
                    default -> escaped.charAt(i);
                };
            }
            typed.append(sign);
        }
        return typed.toString();
    }
}
