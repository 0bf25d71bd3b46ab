package porebench.desk.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.method.RoundingRule;
import porebench.quantity.Spelling;
import porebench.quantity.Typed;
import porebench.quantity.Unit;

/**
 * Numbers as a person of one locale types and reads them; the one place where the window does so.
 *
 * <p>The whole input must be a number. Points and commas between thousands are refused, because they are read differently elsewhere;
 * a space or an apostrophe there is taken where the locale writes one, as French and Swiss do: it can mean nothing else.
 */
public final class Numbers {
    /** A point and three digits behind one to three that are not 0: in a language of commas it may be thousands. */
    private static final Pattern THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2}\\.\\d{3}");

    private static final Pattern WITH_SIGNS = Pattern.compile("[+-]?\\d+[.,]\\d[\\d.,]*");

    private static final Pattern WITH_SPACES = Pattern.compile("[+-]?\\d{1,3}(?:\\h\\d{3})+(?:[.,]\\d+)?");
    private static final Pattern WITH_APOSTROPHES = Pattern.compile("[+-]?\\d{1,3}(?:['\u2019]\\d{3})+(?:[.,]\\d+)?");

    private final Locale locale;
    private final char decimalSign;
    /** A number as this locale sets its thousands apart; none where that is done with a point or a comma. */
    private final Optional<Pattern> setApart;

    public Numbers(Locale locale) {
        this.locale = locale;
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(locale);
        this.decimalSign = symbols.getDecimalSeparator();
        char between = symbols.getGroupingSeparator();
        this.setApart = Character.isSpaceChar(between)
                ? Optional.of(WITH_SPACES)
                : Optional.of(WITH_APOSTROPHES).filter(apart -> between == '\'' || between == '\u2019');
    }

    /** Returns a text without the space around it and without what this locale sets between thousands. */
    private String plain(String text) {
        String stripped = Spelling.stripped(text);
        boolean isSetApart =
                setApart.isPresent() && setApart.get().matcher(stripped).matches();
        return isSetApart ? stripped.replaceAll("[\\h'\u2019]", "") : stripped;
    }

    /** Returns the decimal sign. */
    char sign() {
        return decimalSign;
    }

    /** Returns whether others have the same decimal sign. */
    boolean isSpeltAs(Numbers others) {
        return decimalSign == others.decimalSign;
    }

    /**
     * Reads a number typed with the locale's decimal sign; empty when the text is anything else.
     *
     * <p>Where that sign is a comma, the point of a keypad is taken for it, unless it may stand between thousands.
     */
    public Optional<BigDecimal> parse(String text) {
        String stripped = plain(text);
        if (decimalSign != '.' && stripped.indexOf('.') >= 0) {
            boolean isClear = stripped.indexOf(decimalSign) < 0
                    && !THOUSANDS.matcher(stripped).matches();
            return isClear ? Typed.parseNumber(stripped) : Optional.empty();
        }
        return Typed.parseNumber(stripped.replace(decimalSign, '.'));
    }

    /**
     * Reads a number of which more is known: a point that may stand between thousands is understood when only one of its two
     * meanings can be.
     *
     * @param canBe whether the field may hold a number
     */
    public Optional<BigDecimal> parse(String text, Predicate<BigDecimal> canBe) {
        String stripped = plain(text);
        if (decimalSign == '.' || !THOUSANDS.matcher(stripped).matches()) {
            return parse(stripped);
        }
        List<BigDecimal> possible = Stream.of(stripped, stripped.replace(".", ""))
                .map(BigDecimal::new)
                .filter(canBe)
                .toList();
        return possible.size() == 1 ? Optional.of(possible.get(0)) : Optional.empty();
    }

    /**
     * Says what is wrong with a text that is no number.
     *
     * @param field the field it was typed in
     * @param name how the field is called in a sentence
     */
    public Problem fault(String field, String name, String text) {
        String stripped = Spelling.stripped(text);
        if (decimalSign != '.' && THOUSANDS.matcher(stripped).matches()) {
            return ofSign(
                    field,
                    "form.point-or-thousands",
                    name,
                    stripped,
                    stripped.replace('.', decimalSign),
                    stripped.replace(".", ""));
        }
        if (WITH_SIGNS.matcher(stripped).matches()) {
            return ofSign(field, decimalSign == '.' ? "form.sign-is-point" : "form.sign-is-comma", name, stripped);
        }
        return Problem.notANumber(field, name, stripped);
    }

    private static Problem ofSign(String field, String code, Object... values) {
        return Problem.error(field, code, values).of(Problem.Kind.NOT_A_NUMBER);
    }

    /** Returns typed digits as they were typed, with the locale's decimal sign. */
    public String show(BigDecimal typed) {
        return typed.toPlainString().replace('.', decimalSign);
    }

    /**
     * Returns a quantity in a unit, without its symbol: its own digits where it was typed in that unit.
     *
     * @param decimals digits after the decimal sign where it is converted
     */
    public <Q> String show(Typed<Q> typed, Unit<Q> unit, int decimals) {
        return typed.unit().equals(unit) ? show(typed.number()) : show(unit.in(typed.value()), decimals);
    }

    /**
     * Returns a computed value with a fixed number of decimals, rounded once and ties to even.
     *
     * @param decimals digits after the decimal sign, at least 0
     */
    public String show(double computed, int decimals) {
        BigDecimal rounded = RoundingRule.withoutNoise(computed).setScale(decimals, RoundingMode.HALF_EVEN);
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(rounded);
    }
}
