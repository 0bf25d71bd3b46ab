package porebench.store;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import org.jspecify.annotations.Nullable;
import porebench.method.FixedNumbers;
import porebench.port.Spoken;

/**
 * The file of a lab book failed: the message says what was being done, what is safe and, where that is known, why
 * and what to do; the cause says the rest.
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
        REPLACED("replaced"),
        COPY("copy"),
        BACK_UP("back-up"),
        RESTORE("restore"),
        SET_ASIDE("set-aside"),
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
    private final Reason reason;

    StoreException(Task task, String book, String besides, @Nullable Throwable cause) {
        super(text(task, book, besides, Reason.of(cause), Locale.ROOT), cause);
        this.task = task;
        this.book = book;
        this.besides = besides;
        this.reason = Reason.of(cause);
    }

    StoreException(Task task, String book, @Nullable Throwable cause) {
        this(task, book, "", cause);
    }

    @Override
    public String say(Locale locale) {
        return text(task, book, besides, reason, locale);
    }

    private static String text(Task task, String book, String besides, Reason reason, Locale locale) {
        ResourceBundle words = ResourceBundle.getBundle(
                "porebench.store.failures",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        String done = new MessageFormat(FixedNumbers.in(locale, words.getString(task.key())), locale)
                .format(new Object[] {book, besides});
        return reason == Reason.OTHER ? done : done + " " + words.getString(reason.key());
    }
}
