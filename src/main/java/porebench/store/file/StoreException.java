package porebench.store.file;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import porebench.method.Texts;
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
    public enum Task {
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

    public StoreException(Task task, String book, String besides, @Nullable Throwable cause) {
        super(text(task, book, besides, Reason.of(cause), Locale.ROOT), cause);
        this.task = task;
        this.book = book;
        this.besides = besides;
        this.reason = Reason.of(cause);
    }

    public StoreException(Task task, String book, @Nullable Throwable cause) {
        this(task, book, "", cause);
    }

    @Override
    public String say(Locale locale) {
        return text(task, book, besides, reason, locale);
    }

    private static String text(Task task, String book, String besides, Reason reason, Locale locale) {
        Texts words = Texts.of("porebench.store.file.failures", locale);
        String done = words.get(task.key(), book, besides);
        return reason == Reason.OTHER ? done : done + " " + words.plain(reason.key());
    }
}
