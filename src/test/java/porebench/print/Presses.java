package porebench.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import porebench.evidence.paper.Printed;
import porebench.port.OutputFile;
import porebench.port.Paper;

/** A press on a fixed day, and the bytes it writes. */
public final class Presses {
    public static final Clock NOON = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
    public static final PdfPress PRESS = new PdfPress("Porebench 0.1.0", NOON, ZoneOffset.UTC);

    private Presses() {}

    public static byte[] pdf(Printed what, Paper paper, Locale locale) {
        try {
            Path file = Files.createTempFile("press", ".pdf");
            try {
                PRESS.write(what, paper, locale, OutputFile.replacing(file));
                return Files.readAllBytes(file);
            } finally {
                Files.delete(file);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    public static String text(Printed what, Paper paper, Locale locale) {
        return PageText.of(pdf(what, paper, locale));
    }
}
