package porebench.record;

import porebench.quantity.Require;

/**
 * A factor card that left the laboratory: which revision, on what paper, where to.
 *
 * @param mixId the mix
 * @param revision the revision on the card
 * @param number counted from 1 for each revision
 * @param paper the name of the paper size
 * @param destination the file it was written to, or the word {@code printer}
 */
public record CardPrint(MixId mixId, int revision, int number, String paper, String destination) implements Kept {
    public CardPrint {
        Require.atLeast("revision", revision, 1);
        Require.atLeast("number", number, 1);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.CARD_PRINT;
    }

    @Override
    public String recordId() {
        return FactorIssue.idOf(mixId, revision) + "/" + number;
    }
}
