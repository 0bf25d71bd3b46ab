package porebench.method;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import porebench.quantity.Typed;

/**
 * Says problems in the words of one language.
 *
 * <p>All layers share the one bundle {@code porebench.method.problems}, so that a thing is called the same everywhere. Numbers
 * have the decimal sign of the language and no thousands separators: typed ones keep their digits, computed ones show six.
 */
public final class ProblemText {
    /** Digits shown of a computed number; more would be noise in a message. */
    private static final MathContext SHOWN = new MathContext(6);

    /** With the zone, so that nobody takes another place's clock for the laboratory's. */
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss zzz", Locale.ROOT);

    private final Locale locale;
    private final ZoneId zone;

    private ProblemText(Locale locale, ZoneId zone) {
        this.locale = locale;
        this.zone = zone;
    }

    /** Reads the words only where there is something to say: most of what is asked for is done without a problem. */
    private Texts words() {
        return Texts.of("porebench.method.problems", locale);
    }

    /** Returns the texts in a language, English where it has no translation; moments in universal time, and so marked. */
    public static ProblemText in(Locale locale) {
        return new ProblemText(locale, ZoneId.of("UTC"));
    }

    /** Returns the texts in a language, moments by the laboratory's clock. */
    public static ProblemText in(Locale locale, ZoneId zone) {
        return new ProblemText(locale, zone);
    }

    /** Returns the message of a problem, without its place. */
    public String say(Problem problem) {
        return words().get(
                        problem.code(),
                        problem.values().stream().map(this::shown).toArray());
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

    private String shown(Object value) {
        if (value instanceof BigDecimal typed) {
            return number(typed);
        }
        if (value instanceof Double computed) {
            return number(new BigDecimal(computed).round(SHOWN).stripTrailingZeros());
        }
        if (value instanceof Typed<?> typed) {
            return number(typed.number()) + " " + typed.unit().symbol();
        }
        if (value instanceof Problem.Word word) {
            return words().plain("word." + word.id());
        }
        if (value instanceof Problem.Clause clause) {
            return SourceText.in(locale).say(clause.text());
        }
        if (value instanceof Instant moment) {
            return MOMENT.withLocale(locale).format(moment.atZone(zone));
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
