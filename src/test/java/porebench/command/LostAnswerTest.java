package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.command.Terminal.Said;

/** An answer that does not get out whole is not "done". */
class LostAnswerTest {
    private static final String LOST =
            "error: The answer could not be written in full to standard output: the disk is full, or nobody "
                    + "reads it. What the command did stays done. Ask again.";

    @TempDir
    Path folder;

    /** A device that takes some bytes and is full then. */
    private static final class Quota extends OutputStream {
        private int left;

        Quota(int bytes) {
            left = bytes;
        }

        @Override
        public void write(int one) throws IOException {
            if (left == 0) {
                throw new IOException("No space left on device");
            }
            left--;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"air --reading 5.4 --factor 0.4 --json", "air --reading 5.4 --factor 0.4", "air --help"})
    void isRefusedWithWords(String line) {
        String[] arguments = line.split(" ");
        Terminal terminal = new Terminal(folder);
        int needed = terminal.run(arguments).out().length();
        assertThat(terminal.runInto(new Quota(needed), arguments).status()).isZero();
        for (int bytes : new int[] {0, 1, needed - 1}) {
            Said said = terminal.runInto(new Quota(bytes), arguments);
            assertThat(said.status()).as("%d bytes", bytes).isEqualTo(1);
            assertThat(said.err().lines()).contains(LOST);
        }
    }

    @Test
    void isRefusedOnTheSystemsFullDevice() throws IOException {
        try (OutputStream full = Files.newOutputStream(Path.of("/dev/full"))) {
            Said said = new Terminal(folder)
                    .in(new Locale("es"))
                    .runInto(full, "air", "--reading", "5.4", "--factor", "0.4", "--json");
            assertThat(said.status()).isEqualTo(1);
            assertThat(said.err()).contains("el disco está lleno");
        }
    }

    @Test
    void wrongUsageStaysWrongUsage() {
        assertThat(new Terminal(folder)
                        .runInto(new Quota(0), "air", "--nothing")
                        .status())
                .isEqualTo(2);
    }
}
