package porebench.record;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.record.id.MixId;

/**
 * A factor card that left the program: which revision, on what paper, where to.
 *
 * <p>Only a card printed on paper, unmarked, is handed out to a crew. One saved as a file is no more than that: what becomes of
 * the file the lab book cannot know. A marked copy carries the state of its revision across it.
 *
 * @param mixId the mix
 * @param revision the revision on the card
 * @param number counted from 1 for each revision
 * @param paper the name of the paper size
 * @param destination the file it was written to, or the word {@code printer}; {@value #MARKED} stands before a marked copy's,
 *     and {@value #NOT_RELEASED} before that of one that was recorded and then could not be written or printed
 * @param printedAt when it left, by the laboratory's clock; empty of a card from before that was kept
 */
public record CardPrint(
        MixId mixId, int revision, int number, String paper, String destination, Optional<LocalDateTime> printedAt)
        implements Kept {
    /** The destination of a card on paper. */
    public static final String PRINTER = "printer";

    private static final String MARKED = "marked copy: ";
    private static final String NOT_RELEASED = "not released: ";

    public CardPrint {
        Require.atLeast("revision", revision, 1);
        Require.atLeast("number", number, 1);
    }

    /** A card of which nobody kept when it left. */
    public CardPrint(MixId mixId, int revision, int number, String paper, String destination) {
        this(mixId, revision, number, paper, destination, Optional.empty());
    }

    /** What became of a card. */
    public enum Way {
        /** On paper and unmarked: for the crew. */
        HANDED_OUT,
        /** Unmarked, in a file. */
        SAVED,
        /** With its state across it, on paper or in a file. */
        MARKED_COPY,
        /** Nothing came of it. */
        NOT_RELEASED
    }

    /** Returns the destination of a card written to a file, which is named in full: a relative name says nothing a year later. */
    public static String toFile(Path file, boolean marked) {
        return (marked ? MARKED : "") + file.toAbsolutePath();
    }

    /** Returns the destination of a card put on paper. */
    public static String toPrinter(boolean marked) {
        return (marked ? MARKED : "") + PRINTER;
    }

    /** Returns this print as one that was recorded before it left, and then did not. */
    public CardPrint notReleased() {
        return new CardPrint(mixId, revision, number, paper, NOT_RELEASED + destination, printedAt);
    }

    /** Returns what became of it. */
    public Way way() {
        if (destination.startsWith(NOT_RELEASED)) {
            return Way.NOT_RELEASED;
        }
        if (destination.startsWith(MARKED)) {
            return Way.MARKED_COPY;
        }
        return destination.equals(PRINTER) ? Way.HANDED_OUT : Way.SAVED;
    }

    @Override
    public RecordKind kind() {
        return RecordKind.CARD_PRINT;
    }

    @Override
    public String recordId() {
        return idOf(mixId, revision, number);
    }

    /** Returns the record id of a card of a revision. */
    public static String idOf(MixId mixId, int revision, int number) {
        return FactorIssue.idOf(mixId, revision) + "/" + number;
    }
}
