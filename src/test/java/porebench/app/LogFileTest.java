package porebench.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogFileTest {
    private static final Instant MOMENT = Instant.parse("2026-11-25T09:30:00Z");

    @TempDir
    Path folder;

    private static LogRecord entry(Level level, String message) {
        LogRecord entry = new LogRecord(level, message);
        entry.setLoggerName("porebench.store");
        entry.setInstant(MOMENT);
        return entry;
    }

    @Test
    void thereIsNoFileUntilThereIsSomethingToWrite() {
        LogFile log = new LogFile(folder.resolve("state/porebench"), 1000);
        assertThat(log.file()).isEmpty();
        log.publish(entry(Level.INFO, "all is well"));
        assertThat(log.file()).isEmpty();
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void anEntryHasTheMomentTheLoggerTheMessageAndTheWholeTrace() throws IOException {
        LogFile log = new LogFile(folder.resolve("state/porebench"), 1000);
        LogRecord entry = entry(Level.WARNING, "a command failed");
        entry.setThrown(new IllegalStateException("reading", new IOException("no space left")));
        log.publish(entry);
        Path file = folder.resolve("state/porebench/porebench.log");
        assertThat(log.file()).contains(file);
        assertThat(Files.readString(file, StandardCharsets.UTF_8))
                .startsWith("2026-11-25T09:30:00Z WARNING porebench.store a command failed")
                .contains("java.lang.IllegalStateException: reading")
                .contains("LogFileTest.anEntryHasTheMoment")
                .contains("Caused by: java.io.IOException: no space left");
    }

    @Test
    void aFullFileMovesOnAndTheFifthIsForgotten() throws IOException {
        LogFile log = new LogFile(folder, 1);
        for (int number = 1; number <= 6; number++) {
            log.publish(entry(Level.WARNING, "entry " + number));
        }
        assertThat(Files.readString(folder.resolve("porebench.log"))).endsWith("entry 6" + System.lineSeparator());
        assertThat(Files.readString(folder.resolve("porebench.1.log"))).contains("entry 5");
        assertThat(Files.readString(folder.resolve("porebench.2.log"))).contains("entry 4");
        assertThat(Files.readString(folder.resolve("porebench.3.log"))).contains("entry 3");
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(4);
        }
    }

    @Test
    void aFileThatIsNotFullIsWrittenOn() throws IOException {
        LogFile log = new LogFile(folder, 100_000);
        log.publish(entry(Level.WARNING, "one"));
        new LogFile(folder, 100_000).publish(entry(Level.SEVERE, "two"));
        assertThat(Files.readAllLines(folder.resolve("porebench.log")))
                .containsExactly(
                        "2026-11-25T09:30:00Z WARNING porebench.store one",
                        "2026-11-25T09:30:00Z SEVERE porebench.store two");
    }

    @Test
    void aFolderThatCannotBeWrittenToStopsNothingAndIsNotNamed() throws IOException {
        Path inTheWay = Files.writeString(folder.resolve("state"), "a file where the folder should be");
        LogFile log = new LogFile(inTheWay.resolve("porebench"), 1000);
        log.publish(entry(Level.WARNING, "a command failed"));
        assertThat(log.file()).isEmpty();
        Files.delete(inTheWay);
        log.publish(entry(Level.WARNING, "a command failed"));
        assertThat(log.file()).contains(folder.resolve("state/porebench/porebench.log"));
    }
}
