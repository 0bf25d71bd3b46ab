package porebench.balance;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import porebench.port.SerialLines;

/** The serial lines of this machine. */
public final class SerialPorts implements SerialLines {
    private static final int LOOK_UP_MILLISECONDS = 300;
    private static final int LONGEST_WAIT = 600;
    private static final int DATA_BITS = 8;

    @Override
    public List<String> places() {
        return Stream.of(SerialPort.getCommPorts())
                .map(SerialPort::getSystemPortPath)
                .sorted()
                .toList();
    }

    @Override
    public Listening listen(String place, int baud, Consumer<String> line, Consumer<String> failed) {
        Listener listener = new Listener(place, baud, line, failed);
        Thread thread = new Thread(listener, "balance " + place);
        thread.setDaemon(true);
        thread.start();
        return listener;
    }

    /** Listens to one line until it is closed or breaks. */
    private static final class Listener implements Runnable, Listening {
        private final String place;
        private final int baud;
        private final LineCollector lines;
        private final Consumer<String> failed;
        private volatile boolean isClosed;

        Listener(String place, int baud, Consumer<String> line, Consumer<String> failed) {
            this.place = place;
            this.baud = baud;
            this.lines = new LineCollector(line);
            this.failed = failed;
        }

        @Override
        public void run() {
            SerialPort port;
            try {
                port = SerialPort.getCommPort(place);
            } catch (SerialPortInvalidPortException unknown) {
                fail();
                return;
            }
            port.setComPortParameters(baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
            port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, LOOK_UP_MILLISECONDS, 0);
            if (!isOpened(port)) {
                fail();
                return;
            }
            try {
                hear(port);
            } finally {
                port.closePort();
            }
        }

        /** Tells that the line is not there or broke; of one that was let go nobody wants to know. */
        private void fail() {
            if (!isClosed) {
                failed.accept(place);
            }
        }

        /** Opens it; a line that was let go a moment ago may still be held by whoever let it go. */
        private boolean isOpened(SerialPort port) {
            boolean isOpen = port.openPort();
            for (int wait = LOOK_UP_MILLISECONDS; !isOpen && !isClosed && wait <= LONGEST_WAIT; wait *= 2) {
                isOpen = port.openPort(wait);
            }
            return isOpen;
        }

        private void hear(SerialPort port) {
            byte[] heard = new byte[256];
            while (!isClosed) {
                int count = port.readBytes(heard, heard.length);
                if (count < 0) {
                    fail();
                    return;
                }
                if (count > 0 && !isClosed) {
                    lines.take(new String(heard, 0, count, StandardCharsets.ISO_8859_1));
                }
            }
        }

        /** Ends listening; the line is let go within a moment. */
        @Override
        public void close() {
            isClosed = true;
        }
    }
}
