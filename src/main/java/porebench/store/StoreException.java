package porebench.store;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import porebench.method.FixedNumbers;
import porebench.record.port.Spoken;

/**
 * The file of a lab book failed: the message says what was being done and what is safe, the cause says why.
 *
 * <p>No SQL is in the message; the cause may hold some, for the log.
 */
public final class StoreException extends RuntimeException implements Spoken {
    private static final long serialVersionUID = 1L;

    /** What was being done with a lab book. */
    enum Task {
        OPEN("open"),
        CREATE("create"),
        COPY_ASIDE("copy-aside"),
        BRING_UP_TO_DATE("bring-up-to-date"),
        READ("read"),
        READ_ENTRY("unreadable"),
        KEEP("keep"),
        COPY("copy"),
        CLOSE("close");

        private final String key;

        Task(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    private final Task task;
    private final String book;
    private final String besides;

    StoreException(Task task, String book, String besides, Throwable cause) {
        super(text(task, book, besides, Locale.ROOT), cause);
        this.task = task;
        this.book = book;
        this.besides = besides;
    }

    StoreException(Task task, String book, Throwable cause) {
        this(task, book, "", cause);
    }

    @Override
    public String say(Locale locale) {
        return text(task, book, besides, locale);
    }

    private static String text(Task task, String book, String besides, Locale locale) {
        ResourceBundle words = ResourceBundle.getBundle(
                "porebench.store.failures",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        return new MessageFormat(FixedNumbers.in(locale, words.getString(task.key())), locale)
                .format(new Object[] {book, besides});
    }
}
