package porebench.port;

import java.util.List;
import java.util.function.Consumer;

/** The serial lines of the machine, on which a balance sends what it shows. */
public interface SerialLines {
    /** Returns the names of the lines there are now, such as {@code /dev/ttyUSB0} or {@code COM3}. */
    List<String> places();

    /**
     * Listens to a line, with 8 data bits, no parity and one stop bit. Returns at once; what is heard comes on a thread of its own.
     *
     * @param place the name of the line
     * @param baud signs a second, as both ends are set
     * @param line takes each line of text that has something in it, without its end
     * @param failed takes, once and at most, what went wrong in the words of the system; nothing is heard after it
     */
    Listening listen(String place, int baud, Consumer<String> line, Consumer<String> failed);

    /** A line that is listened to, until it is closed. */
    interface Listening extends AutoCloseable {
        @Override
        void close();
    }

    /** Has no lines. */
    static SerialLines none() {
        return new SerialLines() {
            @Override
            public List<String> places() {
                return List.of();
            }

            @Override
            public Listening listen(String place, int baud, Consumer<String> line, Consumer<String> failed) {
                failed.accept(place);
                return () -> {};
            }
        };
    }
}
