package porebench.evidence.paper;

import java.util.stream.Stream;
import porebench.record.book.LabBook;

/** Texts sealed as that of a plant's card is. */
public final class SealedTexts {
    private SealedTexts() {}

    /** Returns a text sealed for several revisions, by their names in the lab book. */
    public static String of(LabBook book, String text, String... revisions) {
        return CardSeal.together(Stream.of(revisions)
                        .map(name -> CardSeal.of(book, name).orElseThrow())
                        .toList())
                .orElseThrow()
                .sealed(text);
    }
}
