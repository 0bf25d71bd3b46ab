package porebench.store;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The file of a lab book failed: the message says what was being done and what is safe, the cause says why.
 *
 * <p>No SQL is in the message; the cause may hold some, for the log.
 */
public final class StoreException extends RuntimeException {
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

    StoreException(Task task, String book, String besides, Throwable cause) {
        super(text(task, book, besides), cause);
    }

    StoreException(Task task, String book, Throwable cause) {
        this(task, book, "", cause);
    }

    private static String text(Task task, String book, String besides) {
        String pattern = ResourceBundle.getBundle("porebench.store.failures", Locale.ROOT)
                .getString(task.key());
        return new MessageFormat(pattern, Locale.ROOT).format(new Object[] {book, besides});
    }
}
