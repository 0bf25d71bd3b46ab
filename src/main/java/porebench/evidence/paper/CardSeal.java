package porebench.evidence.paper;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.quantity.Require;
import porebench.record.FactorIssue;
import porebench.record.RecordKind;
import porebench.record.book.LabBook;

/**
 * What seals the texts of the cards of one revision: its name, and a key that the lab book holds.
 *
 * <p>The key is the hash, whole, of the lab book's entry by which the revision was first kept. A card bears at most a quarter of one
 * entry's hash (the short form of the newest), so that nobody makes a code from a card; whoever can read the lab book can.
 *
 * <p>The text of a plant's card is sealed with those of all its rows together.
 *
 * @param name the revision's name in the lab book, such as {@code TW-214/r3}; several with {@code +} between them
 * @param key never printed
 */
public record CardSeal(String name, String key) {
    /** Stands between the names of revisions that one text is sealed with. */
    static final String BETWEEN = " + ";

    public CardSeal {
        Require.notBlank("name", name);
        Require.notBlank("key", key);
    }

    /** Returns what seals the cards of a revision; empty when the lab book does not hold it. */
    public static Optional<CardSeal> of(LabBook book, FactorIssue issue) {
        return of(book, issue.recordId());
    }

    static Optional<CardSeal> of(LabBook book, String name) {
        return book.firstHash(RecordKind.FACTOR_ISSUE, name).map(hash -> new CardSeal(name, hash));
    }

    /** Returns what seals one text of several revisions together; empty where there are none. */
    static Optional<CardSeal> together(List<CardSeal> seals) {
        return seals.isEmpty()
                ? Optional.empty()
                : Optional.of(new CardSeal(
                        seals.stream().map(CardSeal::name).collect(Collectors.joining(BETWEEN)),
                        seals.stream().map(CardSeal::key).collect(Collectors.joining(" "))));
    }

    /** Returns a text with its last line: the revision's name in brackets, and the code of all before the code. */
    public String sealed(String text) {
        String named = text.stripTrailing() + "\n[" + name + "] ";
        return named + CheckCode.of(key, named).printed();
    }

    /** Returns the code of a text that {@link #sealed} would end in. */
    public CheckCode code(String text) {
        return CheckCode.of(key, text.stripTrailing() + "\n[" + name + "] ");
    }

    /** Says the name alone: what is logged or shown by mistake must not give the key away. */
    @Override
    public String toString() {
        return "CardSeal[" + name + "]";
    }
}
