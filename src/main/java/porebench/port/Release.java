package porebench.port;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Which version of Porebench this is: the build writes it, from the one place where it is kept. */
public final class Release {
    private static final String FILE = "/porebench/port/release.txt";

    private Release() {}

    /** Returns the version, such as {@code 1.0.0}; empty where the classes were not made by the build. */
    public static Optional<String> version() {
        try (InputStream in = Release.class.getResourceAsStream(FILE)) {
            return in == null ? Optional.empty() : read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException("could not read " + FILE, failure);
        }
    }

    /** Reads the version that a build wrote; empty where it left the place of the version as it was. */
    static Optional<String> read(String written) {
        return Optional.of(written.strip()).filter(version -> !version.isEmpty() && !version.startsWith("${"));
    }
}
