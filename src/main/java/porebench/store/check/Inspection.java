package porebench.store.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.Query;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.evidence.standing.StandingCheck;
import porebench.method.Problem;
import porebench.record.book.BookCheck;
import porebench.record.book.Progress;
import porebench.record.chain.Head;
import porebench.store.chain.Entry;
import porebench.store.chain.EntryTable;
import porebench.store.file.Steps;
import porebench.store.records.NameLooks;
import porebench.store.records.StoredRecords;
import porebench.store.records.SummaryTables;
import porebench.store.records.TouchedSince;

/** Looks a lab book over: in full when asked, and quickly when it is opened. */
public final class Inspection {
    /** How many of the newest entries the quick look follows. */
    private static final int NEWEST = 50;

    /** Up to this many bytes the quick look goes through all pages; at 64 MiB that takes well under a second. */
    private static final long PAGES_UP_TO_BYTES = 64L << 20;

    private Inspection() {}

    /** Looks at everything. */
    public static BookCheck full(Handle handle, Steps steps, Optional<Head> noted, Progress progress) {
        Faults pages = new Faults();
        PagesCheck.full(handle, pages);
        Faults schema = new Faults();
        SchemaCheck.run(handle.getConnection(), steps, schema);
        Faults chain = new Faults();
        ChainCheck.Seen seen = seen(handle, chain, progress);
        Faults references = chain;
        int before = chain.count();
        PagesCheck.references(handle, references);
        boolean isWhole = chain.isEmpty() && schema.isEmpty();
        if (isWhole) {
            looks(handle, references);
        }
        boolean integrity = pages.isEmpty() && chain.count() == before;
        if (isWhole) {
            summaries(handle, chain, progress);
        }
        Head head = headOf(handle);
        noted.filter(note -> !holds(handle, note)).ifPresent(note -> tellCut(note, head, chain));
        return new BookCheck(
                integrity, schema.isEmpty(), head, seen.counts(), together(pages, schema, chain), seen.doubts());
    }

    /** Adds what is kept beside the entries and does not follow from them. */
    private static void summaries(Handle handle, Faults faults, Progress progress) {
        try {
            SummaryTables tables = new SummaryTables(handle, LaboratoryStanding.EDITION);
            if (tables.upTo() > 0) {
                StandingCheck.differences(
                                new StoredRecords(handle, "lab book"),
                                tables.said(SummaryTables.REGISTER),
                                tables.said(SummaryTables.TRIALS),
                                new TouchedSince(handle, tables.upTo()).read().mixes(),
                                progress)
                        .forEach(mix ->
                                faults.at("table " + SummaryTables.REGISTER, "book.summary-differs", mix.text()));
            }
        } catch (JdbiException unreadable) {
            faults.at("table " + SummaryTables.REGISTER, "book.damaged-table", SummaryTables.REGISTER);
        }
    }

    /** Adds that the index of how names look, which is ours and not the database's, does not fit the names. */
    private static void looks(Handle handle, Faults faults) {
        try {
            if (!new NameLooks(handle).isRight()) {
                faults.at("table " + NameLooks.TABLE, "book.looks-differ", NameLooks.TABLE);
            }
        } catch (JdbiException unreadable) {
            faults.at("table " + NameLooks.TABLE, "book.damaged-table", NameLooks.TABLE);
        }
    }

    private static ChainCheck.Seen seen(Handle handle, Faults chain, Progress progress) {
        try {
            return ChainCheck.run(handle, chain, progress);
        } catch (JdbiException unreadable) {
            chain.at("table entry", "book.damaged-table", "entry");
            return new ChainCheck.Seen(Map.of(), List.of());
        }
    }

    /** Returns how far a lab book reaches; {@link Head#EMPTY} when not even that can be read. */
    public static Head headOf(Handle handle) {
        try {
            return new EntryTable(handle).head();
        } catch (JdbiException unreadable) {
            return Head.EMPTY;
        }
    }

    /** Returns the newest entry, if there is one that can be read. */
    public static Optional<Entry> newest(Handle handle) {
        try {
            return new EntryTable(handle).last();
        } catch (JdbiException unreadable) {
            return Optional.empty();
        }
    }

    private static List<BookCheck.Fault> together(Faults... all) {
        return List.of(all).stream().flatMap(each -> each.found().stream()).toList();
    }

    private static void tellCut(Head noted, Head head, Faults faults) {
        if (noted.entries() > head.entries()) {
            faults.ofEntry(noted.entries(), "book.head-cut", noted.entries(), noted.printed(), head.entries());
        } else {
            faults.ofEntry(noted.entries(), "book.head-differs", noted.entries(), noted.printed());
        }
    }

    /** Returns whether a lab book still holds the entry that was once its newest. */
    public static boolean holds(Handle handle, Head noted) {
        if (noted.entries() == 0) {
            return noted.equals(Head.EMPTY);
        }
        try {
            return new EntryTable(handle)
                    .at(noted.entries())
                    .filter(entry ->
                            Head.of(entry.computedHash(), 0).shortHash().equals(noted.shortHash()))
                    .isPresent();
        } catch (JdbiException unreadable) {
            return false;
        }
    }

    /**
     * What the quick look at opening found.
     *
     * @param problems what is wrong, as warnings: it does not stop reading
     * @param notWritable why nothing can be kept on top of it, if so
     */
    public record Quick(List<Problem> problems, Optional<Problem> notWritable) {}

    /** Looks at the tables' definitions, the pages of a file that is not too large, and the newest entries. */
    public static Quick quick(Handle handle, Steps steps, String name) {
        Faults frame = new Faults();
        SchemaCheck.run(handle.getConnection(), steps, frame);
        Faults chain = new Faults();
        try {
            if (bytes(handle) <= PAGES_UP_TO_BYTES) {
                PagesCheck.quick(handle, frame);
            }
            ChainCheck.tail(handle, NEWEST, chain);
        } catch (JdbiException unreadable) {
            frame.at("file", "book.damaged-file", "file");
        }
        boolean isSound = frame.isEmpty() && !chain.hasEntry(headOf(handle).entries());
        List<Problem> warnings = List.of(frame, chain).stream()
                .flatMap(faults -> faults.problems().stream())
                .map(problem -> Problem.warning(
                        problem.field(), problem.code(), problem.values().toArray()))
                .toList();
        return new Quick(
                warnings, isSound ? Optional.empty() : Optional.of(Problem.error("file", "book.not-sound", name)));
    }

    private static long bytes(Handle handle) {
        return number(handle, "page_count") * number(handle, "page_size");
    }

    private static long number(Handle handle, String pragma) {
        try (Query query = handle.createQuery("PRAGMA " + pragma)) {
            return query.mapTo(Long.class).one();
        }
    }
}
