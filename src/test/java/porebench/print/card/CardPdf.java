package porebench.print.card;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.port.OutputFile;
import porebench.port.Waiting;
import porebench.print.Presses;
import porebench.record.book.Progress;

/** The PDF of a card in any look, made as a file is. */
final class CardPdf {
    private CardPdf() {}

    /** Returns its bytes; what is refused leaves no file. */
    static byte[] of(FactorCard card, CardLook look) {
        try {
            Path folder = Files.createTempDirectory("card");
            Path file = folder.resolve("card.pdf");
            try (Waiting waiting =
                    Presses.PRESS.ready(List.of(card), look, OutputFile.replacing(file), Progress.UNHEARD)) {
                waiting.release();
                return Files.readAllBytes(file);
            } finally {
                Files.deleteIfExists(file);
                Files.delete(folder);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
