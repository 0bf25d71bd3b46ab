package porebench.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.book.BookCheck;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.chain.ChainTaker;
import porebench.record.chain.Head;

/** What lies on the desk while no lab book is open: nothing, and nothing can be kept in it. */
class NoBook implements LabBook {
    @Override
    public String name() {
        return "";
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        return List.of();
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        return Optional.empty();
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        return List.of();
    }

    @Override
    public List<Problem> keep(List<Draft> drafts, String who, String why, Progress progress) {
        throw new IllegalStateException("a lab book must be open before something is kept");
    }

    @Override
    public long changeNumber() {
        return 0;
    }

    @Override
    public Head head() {
        return Head.EMPTY;
    }

    @Override
    public void unroll(ChainTaker taker) {
        // There is no chain.
    }

    @Override
    public BookCheck check(Optional<Head> noted, Progress progress) {
        return new BookCheck(true, true, Head.EMPTY, Map.of(), List.of(), List.of());
    }

    @Override
    public void saveCopy(Path file) {
        throw new IllegalStateException("a lab book must be open before it is copied");
    }

    @Override
    public void close() {
        // There is nothing to close.
    }
}
