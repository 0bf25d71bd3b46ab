package porebench.desk.form;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/** Date and time of the laboratory's clock as a person types and reads them, read the same everywhere. */
public final class Moments {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private Moments() {}

    /** Returns a moment as text, such as {@code 2026-03-04 09:30}. */
    public static String show(LocalDateTime moment) {
        return MINUTE.format(moment);
    }

    /** Reads a moment; empty when the text is no moment of the calendar written that way. */
    public static Optional<LocalDateTime> parse(String text) {
        try {
            return Optional.of(LocalDateTime.parse(text.strip().replace('T', ' '), MINUTE));
        } catch (DateTimeParseException noMoment) {
            return Optional.empty();
        }
    }
}
