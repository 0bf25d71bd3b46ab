package porebench.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.ConsoleHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * The file in which the details of failures stand, for whoever is asked to find out why.
 *
 * <p>It is made when there is something to write, so that a start without a failure leaves none. Each entry opens and closes
 * it: the window and a command may write side by side. Full, it becomes {@code porebench.1.log}, and the three before it move
 * on by one. A folder that cannot be written to stops nothing; {@link #file()} is then empty.
 *
 * <p>An entry has the moment (UTC), how grave it is, who logged it, the message and the trace of the failure: names of files
 * may be among it, names of persons and readings are not put there.
 */
final class LogFile extends Handler {
    private static final String NAME = "porebench";
    private static final int OLDER_FILES = 3;

    private final Path folder;
    private final long mostBytes;
    private boolean unwritable;

    /**
     * Makes a log.
     *
     * @param folder the folder of the log files, made when it is needed
     * @param mostBytes the size, in bytes, beyond which a new file is begun
     */
    LogFile(Path folder, long mostBytes) {
        this.folder = folder;
        this.mostBytes = mostBytes;
        setLevel(Level.WARNING);
    }

    /**
     * Sends the warnings of every logger here. What Porebench itself logs is told to the person in words as well, so the
     * console keeps to the warnings of the libraries.
     */
    void listen() {
        Logger root = Logger.getLogger("");
        for (Handler handler : root.getHandlers()) {
            if (handler instanceof ConsoleHandler) {
                handler.setFilter(entry -> !isOurs(entry));
            }
        }
        root.addHandler(this);
    }

    private static boolean isOurs(LogRecord entry) {
        String logger = entry.getLoggerName();
        return logger != null && logger.startsWith(NAME + ".");
    }

    /** Returns the file with the newest entries; empty when there is none, or the last entry could not be written. */
    synchronized Optional<Path> file() {
        return unwritable || !Files.exists(newest()) ? Optional.empty() : Optional.of(newest());
    }

    private Path newest() {
        return folder.resolve(NAME + ".log");
    }

    @Override
    public synchronized void publish(LogRecord entry) {
        if (!isLoggable(entry)) {
            return;
        }
        try {
            Files.createDirectories(folder);
            makeRoom();
            Files.writeString(
                    newest(),
                    inWords(entry),
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
            unwritable = false;
        } catch (IOException | SecurityException failure) {
            // There is nowhere left to tell it; the person is told the failure itself, without the name of a file.
            unwritable = true;
        }
    }

    private void makeRoom() throws IOException {
        if (!Files.exists(newest()) || Files.size(newest()) < mostBytes) {
            return;
        }
        for (int number = OLDER_FILES - 1; number >= 1; number--) {
            if (Files.exists(older(number))) {
                Files.move(older(number), older(number + 1), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.move(newest(), older(1), StandardCopyOption.REPLACE_EXISTING);
    }

    private Path older(int number) {
        return folder.resolve(NAME + "." + number + ".log");
    }

    private static String inWords(LogRecord entry) {
        StringBuilder words = new StringBuilder();
        words.append(String.format(
                Locale.ROOT,
                "%s %s %s %s%n",
                entry.getInstant(),
                entry.getLevel().getName(),
                entry.getLoggerName(),
                entry.getMessage()));
        @Nullable Throwable thrown = entry.getThrown();
        if (thrown != null) {
            StringWriter trace = new StringWriter();
            thrown.printStackTrace(new PrintWriter(trace));
            words.append(trace);
        }
        return words.toString();
    }

    @Override
    public void flush() {
        // Every entry is written when it comes.
    }

    @Override
    public void close() {
        // Nothing stays open between entries.
    }
}
