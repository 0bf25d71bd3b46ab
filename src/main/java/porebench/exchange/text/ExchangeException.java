package porebench.exchange.text;

import java.util.Locale;
import porebench.method.Texts;
import porebench.port.Spoken;

/** A file could not be written or read: the disk, the folder or a right failed. The message says what is safe, the cause says why. */
public final class ExchangeException extends RuntimeException implements Spoken {
    private static final long serialVersionUID = 1L;

    /** What was being done. */
    public enum Task {
        EXPORT("export"),
        READ("read"),
        WRITE("write");

        private final String key;

        Task(String key) {
            this.key = key;
        }
    }

    private final Task task;
    private final String place;

    public ExchangeException(Task task, String place, Throwable cause) {
        super(text(task, place, Locale.ROOT), cause);
        this.task = task;
        this.place = place;
    }

    @Override
    public String say(Locale locale) {
        return text(task, place, locale);
    }

    private static String text(Task task, String place, Locale locale) {
        return Texts.of("porebench.exchange.text.failures", locale).get(task.key, place);
    }
}
