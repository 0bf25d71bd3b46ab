package porebench.desk.frame;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.BookCopy;
import porebench.port.ChainSource;
import porebench.port.LabBookShelf;
import porebench.record.Belonging;
import porebench.record.BookCheck;
import porebench.record.Draft;
import porebench.record.Kept;
import porebench.record.KeptSince;
import porebench.record.LabBook;
import porebench.record.RecordKind;
import porebench.record.Summaries;
import porebench.record.Summary;
import porebench.record.Version;
import porebench.record.chain.ChainTaker;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * A lab book that lets one thread in at a time.
 *
 * <p>The window reads on the event thread while a copy, an export or a check goes on beside it.
 */
final class GuardedBook implements LabBook {
    private final LabBook book;

    GuardedBook(LabBook book) {
        this.book = book;
    }

    /** Returns a shelf whose lab books let one thread in at a time. */
    static LabBookShelf shelf(LabBookShelf shelf) {
        return new LabBookShelf() {
            @Override
            public LabBook open(Path file) {
                return new GuardedBook(shelf.open(file));
            }

            @Override
            public LabBook rebuild(Path file, ChainSource source) {
                return new GuardedBook(shelf.rebuild(file, source));
            }

            @Override
            public LabBook create(Path file) {
                return new GuardedBook(shelf.create(file));
            }

            @Override
            public Optional<LabBook> create(Path file, Predicate<LabBook> filling) {
                return shelf.create(file, filling).map(GuardedBook::new);
            }

            @Override
            public Answer<BookCopy> backUp(Path file, Path folder) {
                return shelf.backUp(file, folder);
            }

            @Override
            public Answer<BookCopy> restore(Path backup, Path file) {
                return shelf.restore(backup, file);
            }

            @Override
            public Answer<Path> setAside(Path file) {
                return shelf.setAside(file);
            }
        };
    }

    @Override
    public synchronized String name() {
        return book.name();
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        return book.latest(kind);
    }

    @Override
    public synchronized <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        return book.latest(kind, recordId);
    }

    @Override
    public synchronized <T extends Kept> Map<String, Version<T>> latest(Class<T> kind, Collection<String> recordIds) {
        return book.latest(kind, recordIds);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> latestOf(
            Belonging<T> belonging, Collection<String> ownerIds) {
        return book.latestOf(belonging, ownerIds);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        return book.history(kind, recordId);
    }

    @Override
    public synchronized <T extends Kept> Optional<Version<T>> version(Class<T> kind, String recordId, int number) {
        return book.version(kind, recordId, number);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, String ownerId) {
        return book.latestOf(belonging, ownerId);
    }

    @Override
    public synchronized List<String> ids(RecordKind kind) {
        return book.ids(kind);
    }

    @Override
    public synchronized Map<String, String> alike(RecordKind kind, Collection<String> names) {
        return book.alike(kind, names);
    }

    @Override
    public synchronized List<Problem> keep(List<Draft> drafts, String who, String why) {
        return book.keep(drafts, who, why);
    }

    @Override
    public synchronized KeptSince touchedSince(long entryNo) {
        return book.touchedSince(entryNo);
    }

    @Override
    public synchronized Summaries summaries() {
        Summaries summaries = book.summaries();
        return new Summaries() {
            @Override
            public long upTo(int edition) {
                synchronized (GuardedBook.this) {
                    return summaries.upTo(edition);
                }
            }

            @Override
            public Map<MixId, String> registerLines() {
                synchronized (GuardedBook.this) {
                    return summaries.registerLines();
                }
            }

            @Override
            public Map<MixId, String> trials() {
                synchronized (GuardedBook.this) {
                    return summaries.trials();
                }
            }

            @Override
            public void forget() {
                synchronized (GuardedBook.this) {
                    summaries.forget();
                }
            }

            @Override
            public boolean renew(int edition, long before, long upTo, List<Summary> renewed) {
                synchronized (GuardedBook.this) {
                    return summaries.renew(edition, before, upTo, renewed);
                }
            }
        };
    }

    @Override
    public synchronized long changeNumber() {
        return book.changeNumber();
    }

    @Override
    public synchronized Head head() {
        return book.head();
    }

    @Override
    public synchronized BookCheck check(Optional<Head> noted) {
        return book.check(noted);
    }

    @Override
    public synchronized List<Problem> warnings() {
        return book.warnings();
    }

    @Override
    public synchronized Optional<Problem> notWritable() {
        return book.notWritable();
    }

    @Override
    public synchronized void unroll(ChainTaker taker) {
        book.unroll(taker);
    }

    @Override
    public synchronized void saveCopy(Path file) {
        book.saveCopy(file);
    }

    @Override
    public synchronized void close() {
        book.close();
    }
}
