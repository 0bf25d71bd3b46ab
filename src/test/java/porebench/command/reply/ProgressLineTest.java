package porebench.command.reply;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.record.book.Progress.Stage;

class ProgressLineTest {
    private final ByteArrayOutputStream terminal = new ByteArrayOutputStream();
    private long nanos;
    private final ProgressLine line =
            new ProgressLine(new PrintStream(terminal, true, StandardCharsets.UTF_8), Locale.ENGLISH, () -> nanos);

    private void at(double seconds, Stage stage, long done, long of) {
        nanos = Math.round(seconds * 1e9);
        line.at(stage, done, of);
    }

    private String shown() {
        String text = terminal.toString(StandardCharsets.UTF_8);
        terminal.reset();
        return text;
    }

    @Test
    void whatIsDoneWithinTwoSecondsShowsNothing() {
        at(0.0, Stage.CHECKING, 0, 100);
        at(1.9, Stage.CHECKING, 99, 100);
        line.clear();
        assertThat(shown()).isEmpty();
    }

    @Test
    void theLineIsWrittenOverTwiceASecondAndThenTakenAway() {
        at(0.0, Stage.CHECKING, 0, 100);
        at(2.0, Stage.CHECKING, 20, 100);
        assertThat(shown()).isEqualTo("\rChecking the records: 20 %, about 8 s left");
        at(2.4, Stage.CHECKING, 24, 100);
        assertThat(shown()).isEmpty();
        at(2.6, Stage.KEEPING, 0, 50);
        assertThat(shown()).isEqualTo("\rSaving the records: 0 %" + " ".repeat(19));
        line.clear();
        assertThat(shown()).isEqualTo("\r" + " ".repeat(23) + "\r");
        line.clear();
        assertThat(shown()).isEmpty();
    }
}
