package porebench.record.book;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.evidence.issue.DecidedOn;
import porebench.method.Problem;
import porebench.record.Laboratory;
import porebench.record.RecordKind;
import porebench.record.chain.ChainTaker;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * The lab book: everything a laboratory keeps, append-only.
 *
 * <p>All methods may be called from any one thread at a time. When the file or database fails they throw an unchecked
 * exception that says what was being done; nothing is then half-written.
 */
public interface LabBook extends Records, AutoCloseable {
    /** Returns the lab book's name for people, such as the name of its file. */
    String name();

    /**
     * Keeps some records, all of them or none.
     *
     * @param drafts new records and corrections
     * @param who the person who keeps them
     * @param why the reason, one for all
     * @param progress hears how far it is; where it ends the work, nothing is kept
     * @return why nothing was kept: a record was changed meanwhile, is already there, or names one that is not there,
     *     simulated trials would stand beside real ones, or a factor was decided on evidence that is another one now
     *     ({@link DecidedOn}); empty when all was kept
     */
    List<Problem> keep(List<Draft> drafts, String who, String why, Progress progress);

    /** Keeps some records while nobody listens, as {@link #keep(List, String, String, Progress)}. */
    default List<Problem> keep(List<Draft> drafts, String who, String why) {
        return keep(drafts, who, why, Progress.UNHEARD);
    }

    /** Returns whether this is a training book: it holds simulated trials and no others, and is to be marked so everywhere. */
    default boolean isTraining() {
        return latest(Laboratory.class, Laboratory.ID)
                .map(laboratory -> laboratory.value().training())
                .orElse(false);
    }

    /** Returns what was kept since an entry, given by its number, and which mixes it may have changed; without looking, all of them. */
    default KeptSince touchedSince(long entryNo) {
        return new KeptSince(
                Set.of(RecordKind.values()),
                ids(RecordKind.MIX).stream().map(MixId::new).collect(Collectors.toSet()));
    }

    /** Returns what is kept of every mix beside the entries. */
    default Summaries summaries() {
        return Summaries.NONE;
    }

    /** Returns a number that grows with every record kept by anybody, so that a window can see that it is out of date. */
    long changeNumber();

    /**
     * Returns how far the lab book reaches now: noted outside it, on a card or on evidence, it shows later whether the newest
     * entries were cut off or written anew. {@link Head#EMPTY} for a book that holds nothing.
     */
    Head head();

    /**
     * Returns the hash, whole, of the entry by which a record was first kept: a secret of the lab book, by which what leaves it is
     * sealed. Empty when there is no such record.
     */
    default Optional<String> firstHash(RecordKind kind, String recordId) {
        return Optional.empty();
    }

    /**
     * Checks the whole lab book; nothing that is wrong in one place stops the report about the others.
     *
     * @param noted how far the lab book reached once, as a card or evidence says; empty when no such note is at hand
     * @param progress hears how far it is; where it ends the work, there is no report
     */
    BookCheck check(Optional<Head> noted, Progress progress);

    /** Checks the whole lab book while nobody listens, as {@link #check(Optional, Progress)}. */
    default BookCheck check(Optional<Head> noted) {
        return check(noted, Progress.UNHEARD);
    }

    /** Returns everything that a full check finds wrong or doubtful; none for a lab book nobody tampered with. */
    default List<Problem> verify() {
        return check(Optional.empty()).problems();
    }

    /**
     * Returns what is to be told about this lab book as it was opened and used: that it can only be read, what the quick look
     * at opening found wrong, that the clock went back. None of it stops reading.
     */
    default List<Problem> warnings() {
        return List.of();
    }

    /** Returns why nothing can be kept in this lab book as it was opened; empty when records can be kept. */
    default Optional<Problem> notWritable() {
        return Optional.empty();
    }

    /**
     * Hands out everything that is stored, all versions of all records with who, when and why and every hash, as it stood at
     * one moment.
     */
    void unroll(ChainTaker taker);

    /** Writes a copy of the lab book to a file that is not there yet. */
    void saveCopy(Path file);

    /** Closes the lab book; closing twice does no harm. */
    @Override
    void close();
}
