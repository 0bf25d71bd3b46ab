package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.StringWriter;
import java.io.Writer;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.Source;

/** A sheet of which a part could not be written is a failure, wherever the device was full. */
class LostRowsTest {
    private static final List<Source> MANY = Collections.nCopies(2000, Samples.source("S-1", Role.FINE, "Ledge"));

    /** A device with room for some characters. */
    private static final class Full extends Writer {
        private int room;

        Full(int room) {
            this.room = room;
        }

        @Override
        public void write(char[] text, int from, int length) throws IOException {
            room -= length;
            if (room < 0) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 100, 9000, 90_000})
    void noRowIsLostSilently(int room) throws IOException {
        StringWriter whole = new StringWriter();
        Export.write(SheetFormats.SOURCES, MANY, whole);
        assertThat(whole.toString().length()).isGreaterThan(room);
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> Export.write(SheetFormats.SOURCES, MANY, new Full(room)))
                .withMessageContaining("No space left on device");
        Export.write(SheetFormats.SOURCES, MANY, new Full(whole.toString().length()));
    }
}
