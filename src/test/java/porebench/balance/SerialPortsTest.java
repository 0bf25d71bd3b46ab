package porebench.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import porebench.port.SerialLines;

/** Serial lines, heard over a pair of pseudo-terminals. */
class SerialPortsTest {
    private static final int LONGEST_SECONDS = 30;

    private final BlockingQueue<String> heard = new LinkedBlockingQueue<>();
    private final BlockingQueue<String> failed = new LinkedBlockingQueue<>();

    private String next(BlockingQueue<String> queue) throws InterruptedException {
        String came = queue.poll(LONGEST_SECONDS, TimeUnit.SECONDS);
        assertThat(came).as("something came; failed: " + failed).isNotNull();
        return came;
    }

    @Test
    @NeedsTerminals
    void linesOfABalanceAreHeardWhole() throws Exception {
        try (Terminals pair = new Terminals();
                SerialLines.Listening listening =
                        new SerialPorts().listen(pair.place(), 9600, heard::add, failed::add)) {
            assertThat(listening).isNotNull();
            pair.send("ST,GS,+  4902.0 g\r\n");
            assertThat(next(heard)).isEqualTo("ST,GS,+  4902.0 g");
            pair.send("US,GS,+  49");
            pair.send("03.0 g\r\n\r\n4903.5 g\n");
            assertThat(next(heard)).isEqualTo("US,GS,+  4903.0 g");
            assertThat(next(heard)).isEqualTo("4903.5 g");
        }
        assertThat(failed).isEmpty();
    }

    @Test
    @NeedsTerminals
    void aLineThatWasLetGoCanBeListenedToAgain() throws Exception {
        try (Terminals pair = new Terminals()) {
            new SerialPorts()
                    .listen(pair.place(), 9600, heard::add, failed::add)
                    .close();
            try (SerialLines.Listening again = new SerialPorts().listen(pair.place(), 1200, heard::add, failed::add)) {
                assertThat(again).isNotNull();
                // What comes in the very moment in which the line is let go is lost with it: the balance is asked
                // again.
                String came = null;
                for (int second = 0; came == null && second < LONGEST_SECONDS; second++) {
                    pair.send("1 g\n");
                    came = heard.poll(1, TimeUnit.SECONDS);
                }
                assertThat(came).isEqualTo("1 g");
            }
        }
        assertThat(failed).isEmpty();
    }

    @Test
    @NeedsTerminals
    void aPulledPlugIsTold() throws Exception {
        Terminals pair = new Terminals();
        try (SerialLines.Listening listening = new SerialPorts().listen(pair.place(), 9600, heard::add, failed::add)) {
            assertThat(listening).isNotNull();
            pair.send("1 g\n");
            assertThat(next(heard)).isEqualTo("1 g");
            pair.close();
            assertThat(next(failed)).isEqualTo(pair.place());
        }
    }

    @Test
    void aLineThatIsNotThereIsTold() throws Exception {
        try (SerialLines.Listening listening =
                new SerialPorts().listen("/dev/no-such-line", 9600, heard::add, failed::add)) {
            assertThat(listening).isNotNull();
            assertThat(next(failed)).isEqualTo("/dev/no-such-line");
        }
        assertThat(new SerialPorts().places()).doesNotContain("/dev/no-such-line");
    }

    @Test
    void noiseThatNeverEndsIsDropped() {
        List<String> lines = new ArrayList<>();
        LineCollector collector = new LineCollector(lines::add);
        collector.take("x".repeat(150));
        collector.take("x".repeat(150) + "\n  7 g \r\n");
        assertThat(lines).containsExactly("7 g");
    }

    @Test
    void withoutLinesNothingIsHeard() {
        assertThat(SerialLines.none().places()).isEmpty();
        SerialLines.none().listen("COM3", 9600, heard::add, failed::add).close();
        assertThat(failed).containsExactly("COM3");
    }
}
