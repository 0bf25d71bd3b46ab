package porebench.print;

import java.io.IOException;
import java.util.function.Function;
import porebench.port.OutputFile;
import porebench.port.PreparedFile;
import porebench.port.Waiting;

/** A PDF that stands whole beside its place. */
final class WaitingFile implements Waiting {
    private final PreparedFile file;
    private final Function<IOException, PrintException> failing;

    private WaitingFile(PreparedFile file, Function<IOException, PrintException> failing) {
        this.file = file;
        this.failing = failing;
    }

    /** Writes a PDF beside its place; {@code failing} says what failed. */
    static WaitingFile of(OutputFile wanted, byte[] pdf, Function<IOException, PrintException> failing) {
        try {
            return new WaitingFile(wanted.prepare(stream -> stream.write(pdf)), failing);
        } catch (IOException failure) {
            throw failing.apply(failure);
        }
    }

    @Override
    public void release() {
        try {
            file.release();
        } catch (IOException failure) {
            throw failing.apply(failure);
        }
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException failure) {
            throw failing.apply(failure);
        }
    }
}
