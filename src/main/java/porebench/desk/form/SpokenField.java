package porebench.desk.form;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import porebench.method.Texts;
import porebench.record.column.CellShape;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;

/**
 * What a field of a form says of itself, beside its name, to those who hear the window read: its unit, what a number in it may be, what
 * an empty one shows in pale letters, and what is wrong with what was typed.
 */
final class SpokenField {
    /** From here on a bound only says that no number is meant which nobody could mean. */
    private static final BigDecimal NO_BOUND = new BigDecimal("1e9");

    private final JComponent field;
    private String unit = "";
    private String range = "";
    private String hint = "";
    private String problems = "";

    private SpokenField(JComponent field) {
        this.field = field;
    }

    /** Returns the words of a field, which are made once. */
    static SpokenField of(JComponent field) {
        if (field.getClientProperty(SpokenField.class) instanceof SpokenField spoken) {
            return spoken;
        }
        SpokenField spoken = new SpokenField(field);
        field.putClientProperty(SpokenField.class, spoken);
        return spoken;
    }

    /** Says in which unit a number is typed; empty words say nothing. */
    void ofUnit(String words) {
        unit = words;
        say();
    }

    /** Says what may be typed. */
    void ofRange(String words) {
        range = words;
        say();
    }

    /** Says what an empty field shows. */
    void ofHint(String words) {
        hint = words;
        say();
    }

    /** Says what is wrong or doubtful; empty words say that nothing is. */
    void ofProblems(String words) {
        problems = words;
        say();
    }

    /** Says it again, where something else was said of the field meanwhile. */
    void again() {
        say();
    }

    private void say() {
        String all = Stream.of(unit, range, hint, problems)
                .filter(words -> !words.isBlank())
                .map(words -> words.replace("\n", " "))
                .collect(Collectors.joining("; "));
        String before = field.getAccessibleContext().getAccessibleDescription();
        if (!all.equals(before)) {
            field.getAccessibleContext().setAccessibleDescription(all.isEmpty() ? null : all);
        }
    }

    /**
     * Returns in words what a number of a column may be; empty where the column holds none, where its unit is chosen beside it, or where
     * its bounds only shut out what nobody could mean.
     */
    static String range(Column<?, ?> column, Locale locale) {
        if (column.unitsTyped().size() > 1 || column.type().isYesNo()) {
            return "";
        }
        Optional<NumberRange> range = CellShape.of(column).range();
        return range.map(bounds -> words(bounds, locale)).orElse("");
    }

    private static String words(NumberRange bounds, Locale locale) {
        Texts texts = Texts.of("porebench.desk.form.form", locale);
        Numbers numbers = new Numbers(locale);
        boolean isLow = bounds.lowInclusive().abs().compareTo(NO_BOUND) < 0;
        boolean isHigh = bounds.highInclusive().abs().compareTo(NO_BOUND) < 0;
        if (isLow && isHigh) {
            return texts.get(
                    "field.between", numbers.show(bounds.lowInclusive()), numbers.show(bounds.highInclusive()));
        }
        return isLow ? texts.get("field.least", numbers.show(bounds.lowInclusive())) : "";
    }
}
