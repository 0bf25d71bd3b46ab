package porebench.method;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import porebench.quantity.Typed;

/**
 * Says problems in the words of one language.
 *
 * <p>All layers share the one bundle {@code porebench.method.problems}, so that a thing is called the same everywhere. Numbers
 * have the decimal sign of the language and no thousands separators: typed ones keep their digits, computed ones show four. Those in
 * per cent show three and at most hundredths, which is what a dial can be read to, and from ten on whole ones. More are shown where
 * two different numbers of a message would read alike.
 */
public final class ProblemText {
    /** Digits shown of a computed number; more would be noise in a message. */
    private static final int DIGITS = 4;

    /** From ten per cent on it is no reading of a dial: whole ones say enough. */
    private static final int PERCENT_DIGITS = 2;

    private static final int DIAL_DIGITS = 3;

    /** With so many digits more, numbers that still read alike are the same. */
    private static final int MOST_MORE = 4;

    private final Locale locale;
    private final ZoneId zone;
    private final BooleanSupplier readsUsUnits;

    private ProblemText(Locale locale, ZoneId zone, BooleanSupplier readsUsUnits) {
        this.locale = locale;
        this.zone = zone;
        this.readsUsUnits = readsUsUnits;
    }

    /** Reads the words only where there is something to say: most of what is asked for is done without a problem. */
    private Texts words() {
        return Texts.of("porebench.method.problems", locale);
    }

    /** Returns the texts in a language, English where it has no translation; moments in universal time, and so marked. */
    public static ProblemText in(Locale locale) {
        return in(locale, ZoneId.of("UTC"));
    }

    /** Returns the texts in a language, moments by the laboratory's clock. */
    public static ProblemText in(Locale locale, ZoneId zone) {
        return in(locale, zone, () -> false);
    }

    /**
     * Returns the texts for a reader who may change the units.
     *
     * @param readsUsUnits asked at each message; true for US units in the place of SI
     */
    public static ProblemText in(Locale locale, ZoneId zone, BooleanSupplier readsUsUnits) {
        return new ProblemText(locale, zone, readsUsUnits);
    }

    /** Returns the message of a problem, without its place. */
    public String say(Problem problem) {
        List<Object> values = problem.values();
        String pattern = words().plain(problem.code());
        if (readsUsUnits.getAsBoolean()) {
            MessageUnits turned = MessageUnits.us(pattern, values);
            pattern = turned.pattern();
            values = turned.values();
        }
        int more = 0;
        while (more < MOST_MORE && areAlike(values, pattern, more)) {
            more++;
        }
        Object[] shown = new Object[values.size()];
        for (int at = 0; at < shown.length; at++) {
            shown[at] = shown(values.get(at), isPercent(pattern, at), more);
        }
        return words().fill(pattern, shown);
    }

    private static boolean isPercent(String pattern, int at) {
        return pattern.contains("{" + at + "} %") || pattern.contains("{" + at + "}\u00a0%");
    }

    /** Returns whether numbers that are not the same would read the same. */
    private static boolean areAlike(List<Object> values, String pattern, int more) {
        Map<BigDecimal, BigDecimal> known = new HashMap<>();
        for (int at = 0; at < values.size(); at++) {
            Optional<BigDecimal> exact = number(values.get(at));
            if (exact.isPresent()) {
                BigDecimal read = values.get(at) instanceof Double
                        ? rounded(exact.get(), isPercent(pattern, at), more)
                        : exact.get();
                BigDecimal other = known.putIfAbsent(read, exact.get());
                if (other != null && !other.equals(exact.get())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Returns the message of a problem, led by the file, line and field where it stands. */
    public String sayWithPlace(Problem problem) {
        return problem.place().map(place -> placeText(place) + ": ").orElse("") + say(problem);
    }

    private String placeText(Place place) {
        if (place.line().isEmpty()) {
            return place.file();
        }
        String key = place.column().isEmpty() ? "place.line" : "place.field";
        return words().get(
                        key,
                        place.file(),
                        Integer.toString(place.line().get()),
                        place.column().map(String::valueOf).orElse(""));
    }

    private static Optional<BigDecimal> number(Object value) {
        if (value instanceof Double computed) {
            return Optional.of(RoundingRule.withoutNoise(computed).stripTrailingZeros());
        }
        if (value instanceof Typed<?> typed) {
            return Optional.of(typed.number().stripTrailingZeros());
        }
        return value instanceof BigDecimal typed ? Optional.of(typed.stripTrailingZeros()) : Optional.empty();
    }

    /** The digits before the decimal sign are never rounded away, and what is not nothing is never shown as nothing. */
    private static BigDecimal rounded(BigDecimal number, boolean isPercent, int more) {
        int whole = number.precision() - number.scale();
        int percentDigits = whole < PERCENT_DIGITS ? DIAL_DIGITS : PERCENT_DIGITS;
        int digits = Math.max(whole, more + (isPercent ? percentDigits : DIGITS));
        BigDecimal rounded = number.round(new MathContext(digits));
        if (isPercent && rounded.scale() > Digits.AIR + more) {
            BigDecimal hundredths = rounded.setScale(Digits.AIR + more, RoundingMode.HALF_EVEN);
            rounded = hundredths.signum() == 0 ? number.round(new MathContext(1)) : hundredths;
        }
        return rounded.stripTrailingZeros();
    }

    private String shown(Object value, boolean isPercent, int more) {
        if (value instanceof BigDecimal typed) {
            return number(typed);
        }
        if (value instanceof Double) {
            return number(rounded(number(value).orElseThrow(), isPercent, more));
        }
        if (value instanceof Typed<?> typed) {
            return number(typed.number()) + " " + typed.unit().symbol();
        }
        if (value instanceof MessageUnits.Turned turned) {
            return number(rounded(number(turned.number()).orElseThrow(), false, more)) + " " + turned.symbol();
        }
        if (value instanceof Problem.Word word) {
            return words().plain("word." + word.id());
        }
        if (value instanceof Problem.Clause clause) {
            return SourceText.in(locale).say(clause.text());
        }
        if (value instanceof Instant moment) {
            return Dates.moment(moment, zone, locale);
        }
        if (value instanceof Problem within) {
            return say(within);
        }
        return Glyphs.shown(value.toString());
    }

    private String number(BigDecimal number) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        return format.format(number);
    }
}
