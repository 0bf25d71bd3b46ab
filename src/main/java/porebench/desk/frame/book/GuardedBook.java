package porebench.desk.frame.book;

import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.BookCopy;
import porebench.port.ChainSource;
import porebench.port.LabBookShelf;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.BookCheck;
import porebench.record.book.Draft;
import porebench.record.book.KeptSince;
import porebench.record.book.LabBook;
import porebench.record.book.MixSummary;
import porebench.record.book.Progress;
import porebench.record.book.Summaries;
import porebench.record.book.Version;
import porebench.record.chain.ChainTaker;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * A lab book that lets one thread in at a time, and looks that it is never the event thread.
 *
 * <p>Pages read while a copy, an export or a check goes on; each does so beside the event thread.
 */
public final class GuardedBook implements LabBook {
    private final LabBook book;
    private final Consumer<IllegalStateException> strayed;

    private GuardedBook(LabBook book, Consumer<IllegalStateException> strayed) {
        this.book = book;
        this.strayed = strayed;
    }

    /** Returns a shelf whose lab books let one thread in at a time, and refuse the event thread. */
    public static LabBookShelf shelf(LabBookShelf shelf) {
        return shelf(shelf, stray -> {
            throw stray;
        });
    }

    /**
     * Returns a shelf whose lab books let one thread in at a time.
     *
     * @param strayed takes each call that came on the event thread, before it is done
     */
    public static LabBookShelf shelf(LabBookShelf shelf, Consumer<IllegalStateException> strayed) {
        return new LabBookShelf() {
            private LabBook guarded(LabBook book) {
                return new GuardedBook(book, strayed);
            }

            private LabBookShelf beside(String what) {
                look(what, strayed);
                return shelf;
            }

            @Override
            public LabBook open(Path file) {
                return guarded(beside("open").open(file));
            }

            @Override
            public LabBook rebuild(Path file, ChainSource source) {
                return guarded(beside("rebuild").rebuild(file, source));
            }

            @Override
            public LabBook create(Path file) {
                return guarded(beside("create").create(file));
            }

            @Override
            public Optional<LabBook> create(Path file, Predicate<LabBook> filling) {
                return beside("create").create(file, filling).map(this::guarded);
            }

            @Override
            public Answer<BookCopy> backUp(Path file, Path folder, Progress progress) {
                return beside("backUp").backUp(file, folder, progress);
            }

            @Override
            public Answer<BookCopy> restore(Path backup, Path file, Progress progress) {
                return beside("restore").restore(backup, file, progress);
            }

            @Override
            public Answer<Path> setAside(Path file) {
                return beside("setAside").setAside(file);
            }
        };
    }

    /** Sees that a call does not come on the event thread, which would stand still while it is done. */
    private static void look(String what, Consumer<IllegalStateException> strayed) {
        if (EventQueue.isDispatchThread()) {
            strayed.accept(new IllegalStateException(what + " of a lab book must be called beside the event thread"));
        }
    }

    private LabBook beside(String what) {
        look(what, strayed);
        return book;
    }

    /** Returns its name, which is known without a look into the file, as are {@link #warnings()} and {@link #notWritable()}. */
    @Override
    public String name() {
        return book.name();
    }

    @Override
    public synchronized <T extends Kept> void each(Class<T> kind, Consumer<Version<T>> taker) {
        beside("each").each(kind, taker);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        return beside("latest").latest(kind);
    }

    @Override
    public synchronized <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        return beside("latest").latest(kind, recordId);
    }

    @Override
    public synchronized <T extends Kept> Map<String, Version<T>> latest(Class<T> kind, Collection<String> recordIds) {
        return beside("latest").latest(kind, recordIds);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> latestOf(
            Belonging<T> belonging, Collection<String> ownerIds) {
        return beside("latestOf").latestOf(belonging, ownerIds);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        return beside("history").history(kind, recordId);
    }

    @Override
    public synchronized <T extends Kept> Optional<Version<T>> version(Class<T> kind, String recordId, int number) {
        return beside("version").version(kind, recordId, number);
    }

    @Override
    public synchronized <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, String ownerId) {
        return beside("latestOf").latestOf(belonging, ownerId);
    }

    @Override
    public synchronized List<String> ids(RecordKind kind) {
        return beside("ids").ids(kind);
    }

    @Override
    public synchronized Map<String, String> alike(RecordKind kind, Collection<String> names) {
        return beside("alike").alike(kind, names);
    }

    @Override
    public synchronized List<Problem> keep(List<Draft> drafts, String who, String why, Progress progress) {
        return beside("keep").keep(drafts, who, why, progress);
    }

    @Override
    public synchronized KeptSince touchedSince(long entryNo) {
        return beside("touchedSince").touchedSince(entryNo);
    }

    @Override
    public synchronized Summaries summaries() {
        Summaries summaries = beside("summaries").summaries();
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
            public boolean renew(int edition, long before, long upTo, List<MixSummary> renewed) {
                synchronized (GuardedBook.this) {
                    return summaries.renew(edition, before, upTo, renewed);
                }
            }
        };
    }

    @Override
    public synchronized long changeNumber() {
        return beside("changeNumber").changeNumber();
    }

    @Override
    public synchronized Head head() {
        return beside("head").head();
    }

    @Override
    public synchronized BookCheck check(Optional<Head> noted, Progress progress) {
        return beside("check").check(noted, progress);
    }

    @Override
    public List<Problem> warnings() {
        return book.warnings();
    }

    @Override
    public Optional<Problem> notWritable() {
        return book.notWritable();
    }

    @Override
    public synchronized void unroll(ChainTaker taker) {
        beside("unroll").unroll(taker);
    }

    @Override
    public synchronized void saveCopy(Path file) {
        beside("saveCopy").saveCopy(file);
    }

    @Override
    public synchronized void close() {
        beside("close").close();
    }
}
