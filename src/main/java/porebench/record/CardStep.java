package porebench.record;

import java.time.LocalDateTime;
import java.util.Optional;
import porebench.method.Problem;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;
import porebench.record.id.MixId;

/**
 * One thing that happened to one factor card after it left the printer.
 *
 * @param mixId the mix of the card
 * @param revision the revision on the card
 * @param print which card of the revision, as {@link CardPrint#number()} counts
 * @param number counted from 1 for each card
 * @param act what happened
 * @param holder to whom it was handed, or who found it; of the other acts who held it, where that is said
 * @param at when, by the laboratory's clock
 * @param by who says so
 * @param remark anything else, may be empty where {@link CardSteps} asks for nothing
 */
public record CardStep(
        MixId mixId,
        int revision,
        int print,
        int number,
        Act act,
        Optional<CardHolder> holder,
        LocalDateTime at,
        String by,
        String remark)
        implements Kept {
    /** What can happen to a card. */
    public enum Act implements Symbolic {
        /** Given to a holder. */
        HANDED_OUT("act-handed-out"),
        /** The holder knows that it is to be given back. */
        ACKNOWLEDGED("act-acknowledged"),
        /** Back in the laboratory. */
        RETURNED("act-returned"),
        /** There is no such card any more. */
        DESTROYED("act-destroyed"),
        /** Nobody knows where it is. */
        LOST("act-lost"),
        /** A lost card is there again: with a holder, or in the laboratory where none is named. */
        FOUND("act-found");

        private final String word;

        Act(String word) {
            this.word = word;
        }

        /** Returns the act as a word inside a problem's message. */
        public Problem.Word word() {
            return new Problem.Word(word);
        }
    }

    public CardStep {
        Require.atLeast("revision", revision, 1);
        Require.atLeast("print", print, 1);
        Require.atLeast("number", number, 1);
        by = Require.notBlank("by", by).strip();
        remark = remark.strip();
    }

    /** Returns the name of the record of the card it happened to. */
    public String cardId() {
        return CardPrint.idOf(mixId, revision, print);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.CARD_STEP;
    }

    @Override
    public String recordId() {
        return cardId() + "/s" + number;
    }
}
