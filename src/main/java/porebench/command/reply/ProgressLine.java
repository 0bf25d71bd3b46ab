package porebench.command.reply;

import java.io.PrintStream;
import java.time.Duration;
import java.util.Locale;
import java.util.function.LongSupplier;
import porebench.port.Pace;
import porebench.record.book.Progress;

/** The last line of a terminal while a command takes long: how far it is, and how long the rest takes. It is gone in the end. */
public final class ProgressLine implements Progress {
    private static final Duration FIRST_AFTER = Duration.ofSeconds(2);
    private static final Duration AGAIN_AFTER = Duration.ofMillis(500);

    private final PrintStream terminal;
    private final Locale locale;
    private final LongSupplier nanos;
    private final Pace pace;
    private long nextAt;
    private int width;

    /**
     * Makes one of a command that begins now.
     *
     * @param terminal where people see it
     * @param nanos a clock that never goes back, in nanoseconds
     */
    public ProgressLine(PrintStream terminal, Locale locale, LongSupplier nanos) {
        this.terminal = terminal;
        this.locale = locale;
        this.nanos = nanos;
        this.pace = new Pace(nanos);
        this.nextAt = nanos.getAsLong() + FIRST_AFTER.toNanos();
    }

    @Override
    public void at(Stage stage, long done, long of) {
        pace.at(stage, done, of);
        long now = nanos.getAsLong();
        if (now - nextAt >= 0) {
            nextAt = now + AGAIN_AFTER.toNanos();
            pace.words(locale).ifPresent(this::show);
        }
    }

    private void show(String words) {
        terminal.print("\r" + words + " ".repeat(Math.max(0, width - words.length())));
        terminal.flush();
        width = words.length();
    }

    /** Takes the line away, so that an answer can follow. */
    public void clear() {
        if (width > 0) {
            terminal.print("\r" + " ".repeat(width) + "\r");
            terminal.flush();
            width = 0;
        }
    }
}
