package porebench.balance;

import java.io.BufferedReader;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A pair of pseudo-terminals: what a balance writes into one end comes out of the other. */
public final class Terminals implements AutoCloseable {
    private static final Pattern END = Pattern.compile("PTY is (/\\S+)");

    private final Process program;
    private final List<String> ends = new ArrayList<>();
    private final FileInputStream held;

    /** Makes the pair. */
    public Terminals() throws IOException {
        program = new ProcessBuilder("socat", "-d", "-d", "pty,raw,echo=0", "pty,raw,echo=0")
                .redirectErrorStream(true)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(program.getInputStream(), StandardCharsets.UTF_8));
        for (String line = said.readLine();
                line != null && ends.size() < 2;
                line = ends.size() < 2 ? said.readLine() : line) {
            Matcher matcher = END.matcher(line);
            if (matcher.find()) {
                ends.add(matcher.group(1));
            }
        }
        // The pair ends when nobody holds an end of it, as a cable does not.
        held = new FileInputStream(ends.get(0));
    }

    /** Returns the name of the end that is listened to. */
    public String place() {
        return ends.get(0);
    }

    /** Writes as a balance does, at the other end. */
    public void send(String text) throws IOException {
        try (OutputStream balance = new FileOutputStream(ends.get(1))) {
            balance.write(text.getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** Ends the pair, as when a plug is pulled. */
    @Override
    public void close() throws IOException {
        held.close();
        program.destroy();
        program.onExit().join();
    }
}
